// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.runlog.LogReading;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the page of the run logs holds.
 *
 * @param files in the order they were opened
 * @param typed what stands in the fields, by name; those of a file begin with its key
 * @param result of the last comparison
 * @param fault what stands in the way
 * @param busy true while files are read
 */
public record RunLogsState(
        List<LogFile> files,
        Map<String, String> typed,
        Optional<ComparisonView> result,
        Optional<String> fault,
        boolean busy,
        UnitSystem system) {

    /**
     * A file that was opened.
     *
     * @param key names its fields
     * @param name for people
     * @param reading what came of it
     * @param invented true for a sample out of the simulated cell
     */
    public record LogFile(String key, String name, LogReading reading, boolean invented) {}

    /** Nothing open. */
    public static RunLogsState fresh(UnitSystem system) {
        return new RunLogsState(
                List.of(), Map.of(), Optional.empty(), Optional.empty(), false, system);
    }

    public RunLogsState {
        files = List.copyOf(files);
        typed = Map.copyOf(typed);
    }

    public String field(String name) {
        return typed.getOrDefault(name, "");
    }

    public RunLogsState typed(String name, String value) {
        Map<String, String> other = new LinkedHashMap<>(typed);
        other.put(name, value);
        return new RunLogsState(files, other, result, fault, busy, system);
    }

    /**
     * With another file, or one read anew under the key it had; what was compared is out of date.
     */
    public RunLogsState with(LogFile file) {
        List<LogFile> other = new ArrayList<>(files);
        int at = files.stream().map(LogFile::key).toList().indexOf(file.key());
        if (at < 0) {
            other.add(file);
        } else {
            other.set(at, file);
        }
        return new RunLogsState(other, typed, Optional.empty(), Optional.empty(), busy, system);
    }

    public RunLogsState without(String key) {
        return new RunLogsState(
                files.stream().filter(file -> !file.key().equals(key)).toList(),
                typed,
                Optional.empty(),
                Optional.empty(),
                busy,
                system);
    }

    public RunLogsState busy(boolean now) {
        return new RunLogsState(files, typed, result, Optional.empty(), now, system);
    }

    public RunLogsState fault(String text) {
        return new RunLogsState(files, typed, result, Optional.of(text), false, system);
    }

    public RunLogsState result(Optional<ComparisonView> view) {
        return new RunLogsState(files, typed, view, Optional.empty(), busy, system);
    }

    public RunLogsState in(UnitSystem other) {
        return new RunLogsState(files, typed, result, fault, busy, other);
    }
}
