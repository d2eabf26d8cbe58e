// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.unit.DecimalHabit;
import hotside.unit.Shown;

/** A variant's numbers in the units of its shop, for people. */
public final class Answers {
    private static final int DIGITS = 4;

    private Answers() {}

    /** The right answer to an ask, such as {@code 133.0 N}. */
    public static String told(Variant variant, int ask) {
        return told(variant, ask, variant.answers().get(ask).value());
    }

    /** Some answer to an ask, SI. */
    public static String told(Variant variant, int ask, double value) {
        Ask asked = variant.template().asks().get(ask);
        return Shown.of(
                        value,
                        asked.quantity(),
                        asked.scale(variant.system()),
                        variant.ambient(),
                        DIGITS,
                        DecimalHabit.POINT)
                .text();
    }
}
