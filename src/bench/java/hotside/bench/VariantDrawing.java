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

    private final List<Template> templates;
    private long seed;
    private long steps;

    private VariantDrawing(List<Template> templates) {
        this.templates = templates;
    }

    public static void main(String[] args) {
        List<Template> all = ProblemBank.shipped().all();
        tell("", all);
        tell("number-", all.stream().filter(t -> t.kind() == Template.Kind.NUMBER).toList());
    }

    private static void tell(String which, List<Template> templates) {
        VariantDrawing drawing = new VariantDrawing(templates);
        drawing.rate(WARM_SECONDS);
        System.out.println(which + "variants-a-second " + drawing.rate(SECONDS));
        System.out.println(which + "problems " + drawing.templates.size());
        System.out.println(which + "steps-a-variant " + (double) drawing.steps / drawing.drawn());
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
