// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.unit.Numbers;
import java.math.BigDecimal;

/**
 * The marks of an axis that answers are read off: fixed with the numbers, so that what can be read
 * does not hang on the size of a window.
 *
 * @param step between two numbered marks, exact, in the unit shown
 * @param first the lowest mark, in steps
 * @param last the highest mark, in steps; above first
 */
public record AxisMarks(BigDecimal step, long first, long last) {
    /** A value this share of a step beyond a mark is still on it. */
    private static final double EDGE = 1e-9;

    /**
     * Marks from below the smallest to above the largest number.
     *
     * @param about how many steps are wished for
     */
    static AxisMarks covering(double min, double max, boolean fromZero, int about) {
        double low = fromZero ? Math.min(0, min) : min;
        double high = fromZero ? Math.max(0, max) : max;
        if (!(high - low > EDGE * Math.max(Math.abs(low), Math.abs(high)))) {
            throw new IllegalArgumentException("nothing to read between " + low + " and " + high);
        }
        BigDecimal step = Numbers.niceStep((high - low) / about);
        double width = step.doubleValue();
        return new AxisMarks(
                step, (long) Math.floor(low / width + EDGE), (long) Math.ceil(high / width - EDGE));
    }

    public double low() {
        return value(first);
    }

    public double high() {
        return value(last);
    }

    /** The length of the axis. */
    public double span() {
        return high() - low();
    }

    /** Between two small marks: a fifth of a step, or a fourth of a step of two. */
    public double minor() {
        return step.doubleValue() / parts();
    }

    /** How many small divisions a step has. */
    public int parts() {
        return step.unscaledValue().abs().toString().startsWith("2") ? 4 : 5;
    }

    /** The numbered mark nearest to a number. */
    public double nearest(double number) {
        return value(Math.round(number / step.doubleValue()));
    }

    private double value(long steps) {
        return step.multiply(BigDecimal.valueOf(steps)).doubleValue();
    }
}
