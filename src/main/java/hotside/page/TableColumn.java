// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * How the numbers of one column are written: all with the same decimals, so that they can be read
 * down.
 *
 * @param decimals after the point; negative where plain digits would not do
 */
record TableColumn(int decimals) {
    /** Significant digits of the largest number. */
    private static final int DIGITS = 5;

    private static final double LARGEST_PLAIN = 1e7;
    private static final double SMALLEST_PLAIN = 1e-3;
    private static final String NONE = "–";

    static TableColumn of(List<Double> values) {
        double largest =
                values.stream()
                        .filter(TableColumn::isNumber)
                        .mapToDouble(Math::abs)
                        .max()
                        .orElse(0);
        if (largest >= LARGEST_PLAIN || largest > 0 && largest < SMALLEST_PLAIN) {
            return new TableColumn(-1);
        }
        int most = DIGITS - 1 - (largest == 0 ? 0 : (int) Math.floor(Math.log10(largest)));
        int wanted =
                values.stream()
                        .filter(TableColumn::isNumber)
                        .mapToInt(value -> decimals(value, Math.max(0, most)))
                        .max()
                        .orElse(0);
        return new TableColumn(wanted);
    }

    String shown(double value) {
        if (!isNumber(value)) {
            return NONE;
        }
        return decimals < 0
                ? DecimalHabit.spoken().write(Numbers.significant(value, DIGITS))
                : DecimalHabit.spoken()
                        .write(rounded(value, decimals).toPlainString().replace('-', '−'));
    }

    private static boolean isNumber(double value) {
        return !new ChartData.Point(value, 0).isGap();
    }

    /** Decimals that the number has, up to the most. */
    private static int decimals(double value, int most) {
        return Math.max(0, rounded(value, most).stripTrailingZeros().scale());
    }

    private static BigDecimal rounded(double value, int decimals) {
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
    }
}
