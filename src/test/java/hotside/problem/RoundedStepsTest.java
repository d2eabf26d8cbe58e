// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotside.relation.Chain;
import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.relation.Values;
import hotside.unit.Numbers;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Whoever writes every result on the way down with three figures still ends inside the band. */
class RoundedStepsTest {
    private static final int SEEDS = 20;
    private static final int FIGURES = 3;

    @Test
    void threeFiguresOnTheWayAreEnough() {
        Set<String> strayed = new TreeSet<>();
        for (Template template : ProblemBank.shipped().all()) {
            if (!(template.task() instanceof Task.Work)) {
                continue;
            }
            for (UnitSystem system : UnitSystem.values()) {
                for (long seed = 1; seed <= SEEDS; seed++) {
                    strayed.addAll(strayed(Variants.draw(template, seed, system)));
                }
            }
        }
        assertEquals(new TreeSet<>(List.of()), strayed);
    }

    private static List<String> strayed(Variant variant) {
        Template template = variant.template();
        Values rounded =
                template.chain()
                        .run(
                                variant.givens(),
                                (place, value, known) ->
                                        value instanceof Double number && isResult(template, place)
                                                ? (Object) threeFigures(variant, place, number)
                                                : value);
        List<String> strayed = new ArrayList<>();
        for (int i = 0; i < template.asks().size(); i++) {
            double off =
                    Math.abs(
                            rounded.number(template.asks().get(i).place())
                                    - variant.answers().get(i).value());
            if (off > 1.000001 * variant.answers().get(i).band()) {
                strayed.add(template.id() + " " + template.asks().get(i).place());
            }
        }
        return strayed;
    }

    /** True for what a relation gives and another takes, not for what goes into the first. */
    private static boolean isResult(Template template, String place) {
        for (Chain.Use use : template.chain().uses()) {
            for (Chain.Feed feed : use.feeds().values()) {
                if (feed.equals(new Chain.From(place)) && place.contains(".")) {
                    return true;
                }
            }
        }
        return false;
    }

    private static double threeFigures(Variant variant, String place, double si) {
        Slot slot = variant.template().chain().slotAt(place).orElseThrow();
        Scale scale = SlotScale.of(slot, variant.system());
        double shown = scale.fromSi(si, slot.quantity(), variant.ambient());
        return scale.toSi(Numbers.rounded(shown, FIGURES), slot.quantity(), variant.ambient());
    }
}
