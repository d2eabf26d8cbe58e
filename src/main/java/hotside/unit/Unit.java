// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import java.util.List;

/**
 * One unit of the table.
 *
 * @param symbol as printed, such as {@code kPa}
 * @param name as said, such as {@code kilopascal}
 * @param dimension what it measures
 * @param factor how many SI units one of it is; above 0
 * @param offset SI value of its zero point; only temperature scales have one other than 0
 * @param aliases other spellings that are understood; no two units of the table share one
 */
public record Unit(
        String symbol,
        String name,
        Dimension dimension,
        double factor,
        double offset,
        List<String> aliases) {
    public Unit {
        aliases = List.copyOf(aliases);
    }

    /** The symbol as a person reads it in the language spoken; empty for a pure number. */
    public String told() {
        return symbol.equals("1") ? "" : UnitWords.symbol(symbol);
    }
}
