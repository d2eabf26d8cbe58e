// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.unit.UnitSystem;
import java.util.List;

/** Draws variants of every shipped problem in turn, each with answers, mistakes and working. */
public final class VariantDrawing {
    private static final double WARM_SECONDS = 3;
    private static final double SECONDS = 5;

    private final List<Template> templates = ProblemBank.shipped().all();
    private long seed;
    private long steps;

    private VariantDrawing() {}

    public static void main(String[] args) {
        VariantDrawing drawing = new VariantDrawing();
        drawing.rate(WARM_SECONDS);
        System.out.println("variants-a-second " + drawing.rate(SECONDS));
        System.out.println("problems " + drawing.templates.size());
        System.out.println("steps-a-variant " + (double) drawing.steps / drawing.drawn());
    }

    private double rate(double seconds) {
        long start = System.nanoTime();
        long before = drawn();
        double passed = 0;
        while (passed < seconds) {
            seed++;
            templates.forEach(this::draw);
            passed = (System.nanoTime() - start) / 1e9;
        }
        return (drawn() - before) / passed;
    }

    private long drawn() {
        return seed * templates.size();
    }

    private void draw(Template template) {
        Variant variant = Variants.draw(template, seed, UnitSystem.SI_SHOP);
        if (variant.answers().isEmpty()) {
            throw new IllegalStateException(template.id() + " has no answer");
        }
        variant.run().workings().forEach(worked -> steps += worked.steps().size());
    }
}
