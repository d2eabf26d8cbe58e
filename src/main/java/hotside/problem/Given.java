// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.Channel;
import hotside.relation.Values;
import hotside.unit.Quantity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something the learner is told: a number drawn from a grid, or a row of readings scattered about
 * one.
 *
 * @param name what the text calls it, in double braces
 * @param quantity what it measures
 * @param si the grid in an SI shop
 * @param us the grid in a US shop; where absent, the SI number is converted and rounded to three
 *     digits
 * @param readings how many readings to draw; 0 for a single number, negative if the grid is the row
 *     itself
 * @param scatter how far a reading may lie from the drawn number, in steps of the grid's unit; 0
 *     for a number
 * @param step what readings are rounded to, on the grid's scale
 * @param means where the readings come out of pulls that are made for the variant: of which
 */
public record Given(
        String name,
        Quantity quantity,
        Grid si,
        Optional<Grid> us,
        int readings,
        java.math.BigDecimal scatter,
        java.math.BigDecimal step,
        Optional<Means> means) {

    private static final int FIXED_ROW = -1;
    private static final int OUT_OF_PULLS = -2;

    /**
     * Means over the band of a trial, one for each pull.
     *
     * @param part letter of the part that the pulls are made with, or {@code all} of them
     * @param channel what is averaged
     */
    public record Means(String part, Channel channel) {
        static final String ALL = "all";

        boolean isOfAll() {
            return part.equals(ALL);
        }

        /** True if a pull with this part is among them. */
        boolean holds(char letter) {
            return isOfAll() || part.charAt(0) == letter;
        }
    }

    public Given(
            String name,
            Quantity quantity,
            Grid si,
            Optional<Grid> us,
            int readings,
            java.math.BigDecimal scatter,
            java.math.BigDecimal step) {
        this(name, quantity, si, us, readings, scatter, step, Optional.empty());
    }

    /**
     * Readings that come out of pulls.
     *
     * @param step what they are rounded to, with its unit
     */
    static Given means(String name, Quantity quantity, Grid step, Means means) {
        return new Given(
                name,
                quantity,
                step,
                Optional.empty(),
                OUT_OF_PULLS,
                java.math.BigDecimal.ZERO,
                step.values().get(0),
                Optional.of(means));
    }

    /** A row of readings that is always the same. */
    public static Given row(String name, Quantity quantity, Grid row) {
        return new Given(
                name,
                quantity,
                row,
                Optional.empty(),
                FIXED_ROW,
                java.math.BigDecimal.ZERO,
                java.math.BigDecimal.ONE);
    }

    /** True if the grid's values are the readings themselves. */
    public boolean isFixedRow() {
        return readings == FIXED_ROW;
    }

    /** True for a row of readings, false for a single number. */
    public boolean isRow() {
        return readings != 0;
    }

    /**
     * What givens say that leave nothing to be drawn, in SI.
     *
     * @param ambient absolute pressure of the air around, Pa
     */
    public static Values values(List<Given> fixed, double ambient) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (Given given : fixed) {
            List<Double> si =
                    given.si.values().stream()
                            .map(
                                    n ->
                                            given.si
                                                    .scale()
                                                    .toSi(n.doubleValue(), given.quantity, ambient))
                            .toList();
            map.put(given.name, given.isRow() ? (Object) si : si.get(0));
        }
        return Values.of(map);
    }

    /** A single number. */
    public static Given number(String name, Quantity quantity, Grid si, Optional<Grid> us) {
        return new Given(
                name, quantity, si, us, 0, java.math.BigDecimal.ZERO, java.math.BigDecimal.ONE);
    }
}
