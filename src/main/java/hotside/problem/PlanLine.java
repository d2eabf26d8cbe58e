// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.unit.Quantity;
import hotside.unit.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The lines of a test plan that a learner writes, in the order in which they are asked. */
public enum PlanLine {
    ORDER("the order of the pulls, a letter for each", "ABBA"),
    WARM_UP("pulls before these, which warm up and do not count", "1"),
    INTERVAL("from the start of one pull to the start of the next", "10 min"),
    HOLD("the boost that a control holds with every part, or free", "free"),
    LOG("what is logged besides engine speed and torque", "boost, ambient temperature");

    private final String phrase;
    private final String example;

    PlanLine(String phrase, String example) {
        this.phrase = phrase;
        this.example = example;
    }

    /** As problem files write it: {@code warm-up}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What may stand there, for people. */
    public String example() {
        return example;
    }

    private Ask ask() {
        return new Ask(
                id(),
                phrase,
                Quantity.FLAG,
                Quantity.FLAG.shown(UnitSystem.SI_SHOP),
                Quantity.FLAG.shown(UnitSystem.US_SHOP),
                Ask.Tolerance.USUAL);
    }

    static List<Ask> asks() {
        return Arrays.stream(values()).map(PlanLine::ask).toList();
    }
}
