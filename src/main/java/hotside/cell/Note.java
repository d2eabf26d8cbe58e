// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import java.util.List;

/**
 * What became so during a pull.
 *
 * @param speed of the crankshaft from which on it is so, turns per second
 * @param statements see {@link OperatingPoint#statements}
 */
public record Note(double speed, List<String> statements) {
    public Note {
        statements = List.copyOf(statements);
    }
}
