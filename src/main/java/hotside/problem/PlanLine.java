// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.unit.Quantity;
import hotside.unit.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The lines of a test plan that a learner writes, in the order in which they are asked. */
public enum PlanLine {
    ORDER,
    WARM_UP,
    INTERVAL,
    HOLD,
    LOG;

    /** As problem files write it: {@code warm-up}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What may stand there, for people, in the language spoken. */
    public String example() {
        return ProblemWords.of("plan." + id() + ".example");
    }

    private Ask ask() {
        return new Ask(
                id(),
                ProblemWords.of("plan." + id()),
                Quantity.FLAG,
                Quantity.FLAG.shown(UnitSystem.SI_SHOP),
                Quantity.FLAG.shown(UnitSystem.US_SHOP),
                Ask.Tolerance.USUAL);
    }

    static List<Ask> asks() {
        return Arrays.stream(values()).map(PlanLine::ask).toList();
    }
}
