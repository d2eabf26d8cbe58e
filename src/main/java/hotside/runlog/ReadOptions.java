// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.unit.DecimalHabit;
import hotside.unit.Units;
import java.util.List;

/**
 * What a reader of logs is told beforehand.
 *
 * @param ambient absolute ambient pressure in Pa, for columns that count from it
 * @param habit the file's decimal mark; UNKNOWN to let the file show it
 * @param mappings columns whose meaning is said here
 */
public record ReadOptions(double ambient, DecimalHabit habit, List<Mapping> mappings) {
    /** The standard atmosphere around, all else as the file shows it. */
    public static final ReadOptions PLAIN =
            new ReadOptions(Units.STANDARD_ATMOSPHERE, DecimalHabit.UNKNOWN, List.of());

    public ReadOptions {
        mappings = List.copyOf(mappings);
    }

    public ReadOptions withAmbient(double pascal) {
        return new ReadOptions(pascal, habit, mappings);
    }

    public ReadOptions withMappings(List<Mapping> others) {
        return new ReadOptions(ambient, habit, others);
    }

    public ReadOptions withHabit(DecimalHabit other) {
        return new ReadOptions(ambient, other, mappings);
    }
}
