// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.unit.DecimalHabit;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.Shown;

/** Core numbers as pages tell them. */
final class Told {
    private Told() {}

    /** Number and unit. */
    static String text(double si, Quantity quantity, Scale scale, double ambient, int digits) {
        return Shown.of(si, quantity, scale, ambient, digits, DecimalHabit.POINT).text();
    }

    /** The number alone. */
    static String number(double si, Quantity quantity, Scale scale, double ambient, int digits) {
        return Shown.of(si, quantity, scale, ambient, digits, DecimalHabit.POINT).number();
    }
}
