// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.unit.Quantity;
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
 */
public record Given(
        String name,
        Quantity quantity,
        Grid si,
        Optional<Grid> us,
        int readings,
        java.math.BigDecimal scatter,
        java.math.BigDecimal step) {

    private static final int FIXED_ROW = -1;

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

    /** A single number. */
    public static Given number(String name, Quantity quantity, Grid si, Optional<Grid> us) {
        return new Given(
                name, quantity, si, us, 0, java.math.BigDecimal.ZERO, java.math.BigDecimal.ONE);
    }
}
