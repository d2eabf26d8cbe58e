// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.Shown;
import java.util.List;
import java.util.stream.Collectors;

/** Core numbers as pages tell them. */
final class Told {
    private static final int GIVEN_DIGITS = 6;

    private Told() {}

    /** Number and unit. */
    static String text(double si, Quantity quantity, Scale scale, double ambient, int digits) {
        return Shown.of(si, quantity, scale, ambient, digits, DecimalHabit.spoken()).text();
    }

    /** The number alone. */
    static String number(double si, Quantity quantity, Scale scale, double ambient, int digits) {
        return Shown.of(si, quantity, scale, ambient, digits, DecimalHabit.spoken()).number();
    }

    /** A given with no more digits than it has, six at most. */
    static String given(double si, Quantity quantity, Scale scale, double ambient) {
        if (quantity == Quantity.FLAG || quantity == Quantity.COUNT) {
            return text(si, quantity, scale, ambient, GIVEN_DIGITS);
        }
        String number = Numbers.upTo(scale.fromSi(si, quantity, ambient), GIVEN_DIGITS);
        return new Shown(DecimalHabit.spoken().write(number), scale).text();
    }

    /** A row of readings with one unit behind it. */
    static String row(List<?> readings, Quantity quantity, Scale scale, double ambient) {
        String numbers =
                readings.stream()
                        .map(r -> Numbers.upTo(scale.fromSi((Double) r, quantity, ambient), 5))
                        .collect(Collectors.joining("; "));
        return new Shown(DecimalHabit.spoken().write(numbers), scale).text();
    }
}
