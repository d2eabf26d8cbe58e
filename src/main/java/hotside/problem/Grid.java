// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.unit.Scale;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/**
 * The numbers that a given may take, as a person would write them.
 *
 * @param values in ascending or the author's order, on this scale
 * @param scale the unit and zero that they are read on
 */
public record Grid(List<BigDecimal> values, Scale scale) {
    /** More than this many places is no grid but a continuum, and a slip of the author's. */
    public static final int MOST_VALUES = 10_000;

    /** About so many steps make a natural grid. */
    private static final int PLACES = 40;

    public Grid {
        values = List.copyOf(values);
    }

    /** From one number to another in equal steps, both ends included where the steps reach them. */
    public static Grid steps(BigDecimal from, BigDecimal to, BigDecimal step, Scale scale) {
        int count = to.subtract(from).divide(step, 0, RoundingMode.FLOOR).intValueExact();
        if (count < 0 || count >= MOST_VALUES) {
            throw new IllegalArgumentException("a grid of " + (count + 1L) + " values");
        }
        return new Grid(
                java.util.stream.IntStream.rangeClosed(0, count)
                        .mapToObj(i -> from.add(step.multiply(BigDecimal.valueOf(i))))
                        .toList(),
                scale);
    }

    /**
     * A natural grid over a range: steps of 1, 2 or 5 times a power of ten, about forty of them.
     *
     * @param low lower end on the scale
     * @param high upper end, above {@code low}
     */
    public static Grid natural(double low, double high, Scale scale) {
        double rough = (high - low) / PLACES;
        double power = StrictMath.pow(10, StrictMath.floor(StrictMath.log10(rough)));
        double lead = rough / power;
        BigDecimal step =
                new BigDecimal(lead < 1.5 ? 1 : lead < 3.5 ? 2 : lead < 7.5 ? 5 : 10)
                        .multiply(new BigDecimal(power, new MathContext(1)));
        return within(low, high, step, scale);
    }

    /** As {@link #natural}, of whole numbers: nobody has two and a half cylinders. */
    public static Grid whole(double low, double high, Scale scale) {
        return high - low <= PLACES
                ? within(low, high, BigDecimal.ONE, scale)
                : natural(low, high, scale);
    }

    private static Grid within(double low, double high, BigDecimal step, Scale scale) {
        BigDecimal from = decimal(low).divide(step, 0, RoundingMode.CEILING).multiply(step);
        BigDecimal to = decimal(high).divide(step, 0, RoundingMode.FLOOR).multiply(step);
        return from.compareTo(to) > 0 ? new Grid(List.of(to), scale) : steps(from, to, step, scale);
    }

    /** The number that is meant: 0.3, not the 0.29999… that a conversion makes of it. */
    private static BigDecimal decimal(double end) {
        return new BigDecimal(end, new MathContext(12));
    }
}
