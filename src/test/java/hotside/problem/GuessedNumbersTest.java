// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.statistics.draw.SplitMix64;
import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whoever types numbers at random is hardly ever right. */
class GuessedNumbersTest {
    private static final int GUESSES = 200;

    @Test
    void numbersAreNotHitByLuck() {
        SplitMix64 random = new SplitMix64(20261125);
        List<String> told = new ArrayList<>();
        double sum = 0;
        List<Template> numbers =
                ProblemBank.shipped().all().stream()
                        .filter(template -> template.kind().isNumeric())
                        .toList();
        for (Template template : numbers) {
            double share = share(template, random);
            told.add(template.id() + " " + share);
            sum += share;
            assertTrue(share < 0.2, template.id() + ": " + share);
        }
        assertTrue(sum / numbers.size() < 0.05, told.toString());
    }

    private static double share(Template template, SplitMix64 random) {
        int right = 0;
        Variant variant = Variants.draw(template, 1, UnitSystem.SI_SHOP);
        for (int i = 0; i < GUESSES; i++) {
            String guess = guess(variant, random.below(10_001) / 10_000.0);
            Verdict verdict =
                    Marker.mark(variant, List.of(guess), DecimalHabit.POINT).get(0).orElseThrow();
            right += verdict.kind() == Verdict.Kind.RIGHT ? 1 : 0;
        }
        return (double) right / GUESSES;
    }

    /** Somewhere on the axis that is read; or between nothing and twice what is right. */
    private static String guess(Variant variant, double part) {
        Ask ask = variant.template().asks().get(0);
        Scale scale = ask.scale(variant.system());
        double value =
                2
                        * part
                        * scale.fromSi(
                                variant.answers().get(0).value(),
                                ask.quantity(),
                                variant.ambient());
        if (variant.template().task() instanceof Task.Read read
                && read.reading().sort() != Reading.Sort.CHANGE) {
            Figure figure = variant.figures().get(0);
            AxisMarks marks =
                    read.reading().sort().alongX() ? figure.x().marks() : figure.y().marks();
            value = marks.low() + part * marks.span();
        }
        return Numbers.significant(value, 5) + " " + scale.label();
    }
}
