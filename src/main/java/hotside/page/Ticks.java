// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.problem.AxisMarks;
import hotside.speech.Language;
import hotside.unit.Numbers;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * The marks along an axis: multiples of 1, 2 or 5 times a power of ten that reach from below the
 * smallest to above the largest number.
 *
 * @param step between two marks, exact
 * @param first the lowest mark, in steps
 * @param last the highest mark, in steps; above first
 */
record Ticks(BigDecimal step, long first, long last) {
    /** Numbers closer together than this part of their size are one number. */
    private static final double SAME = 1e-8;

    private static final double EDGE = 1e-9;

    private static final double SMALLEST = 1e-300;
    private static final double LONGEST_PLAIN = 1e7;
    private static final double SHORTEST_PLAIN = 1e-5;

    /**
     * Marks for numbers from min to max.
     *
     * @param min finite
     * @param max finite, at least min
     * @param fromZero true if zero must be among them
     * @param about how many steps are wished for; up to twice as many may come
     */
    static Ticks covering(double min, double max, boolean fromZero, int about) {
        double low = fromZero ? Math.min(0, min) : min;
        double high = fromZero ? Math.max(0, max) : max;
        double size = Math.max(Math.abs(low), Math.abs(high));
        if (high - low <= Math.max(SAME * size, SMALLEST)) {
            // One number alone: room on both sides of it, or above zero.
            double room = size > SMALLEST ? 0.1 * size : 1;
            low = size > SMALLEST || low < 0 ? low - room : 0;
            high = high + room;
        }
        BigDecimal step = Numbers.niceStep((high - low) / about);
        double width = step.doubleValue();
        return new Ticks(
                step, (long) Math.floor(low / width + EDGE), (long) Math.ceil(high / width - EDGE));
    }

    /** Marks that a problem has fixed. */
    static Ticks of(AxisMarks marks) {
        return new Ticks(marks.step(), marks.first(), marks.last());
    }

    double low() {
        return value(first);
    }

    double high() {
        return value(last);
    }

    /** True if zero lies outside, so that lengths along the axis are no measure of size. */
    boolean isBroken() {
        return first > 0 || last < 0;
    }

    List<Double> values() {
        List<Double> list = new ArrayList<>();
        for (long i = first; i <= last; i++) {
            list.add(value(i));
        }
        return list;
    }

    List<String> labels() {
        List<String> list = new ArrayList<>();
        for (long i = first; i <= last; i++) {
            list.add(label(i));
        }
        return list;
    }

    private double value(long i) {
        return step.multiply(BigDecimal.valueOf(i)).doubleValue();
    }

    /** Plain with the decimals of the step, or times one power of ten for the whole axis. */
    private String label(long i) {
        double size = Math.max(Math.abs(low()), Math.abs(high()));
        boolean plain = size < LONGEST_PLAIN && step.doubleValue() >= SHORTEST_PLAIN;
        int power = plain || i == 0 ? 0 : (int) Math.floor(Math.log10(size));
        String tens = power == 0 ? "" : "×10" + Numbers.superscript(power);
        int decimals = Math.max(0, step.stripTrailingZeros().scale() + (plain ? 0 : power));
        return step.multiply(BigDecimal.valueOf(i))
                        .scaleByPowerOfTen(-power)
                        .setScale(i == 0 && !plain ? 0 : decimals, RoundingMode.UNNECESSARY)
                        .toPlainString()
                        .replace('-', '−')
                        .replace('.', Language.spoken().decimalMark())
                + tens;
    }
}
