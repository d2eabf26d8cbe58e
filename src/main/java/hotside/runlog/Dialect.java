// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.unit.DecimalHabit;
import hotside.unit.Dimension;
import hotside.unit.Units;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * How a file is written, found from its beginning.
 *
 * @param delimiter between cells
 * @param habit the decimal mark
 * @param doubtful true if every mark seen could be either
 * @param header the row of names; null if the file has none
 * @param units the row of units under it; null if there is none
 * @param firstData line of the first row of readings; 0 if there is none in the sample
 */
record Dialect(
        char delimiter,
        DecimalHabit habit,
        boolean doubtful,
        SampleRow header,
        SampleRow units,
        int firstData) {
    private static final char[] DELIMITERS = {'\t', ';', '|', ','};
    private static final Pattern EITHER = Pattern.compile("[+-]?[1-9][0-9]{0,2},[0-9]{3}");
    private static final Pattern COMMA_DECIMAL =
            Pattern.compile("[+-]?[0-9.' \u00A0]*,[0-9]*(?:[eE][+-]?[0-9]+)?");

    private static final Pattern POINT_GROUPS =
            Pattern.compile("[+-]?[1-9][0-9]{0,2}(?:\\.[0-9]{3})+");
    private static final Pattern POINT_DECIMAL =
            Pattern.compile("[+-]?[0-9,' \u00A0]*\\.[0-9]*(?:[eE][+-]?[0-9]+)?");

    /** A row of the sample that is not blank. */
    record SampleRow(int line, String text, List<String> cells) {}

    static Dialect of(String sample, DecimalHabit told, ChannelNames names) {
        char delimiter = delimiter(sample);
        List<SampleRow> rows = rows(sample, delimiter);
        int data = firstData(rows, names);
        if (data < 0) {
            SampleRow header = rows.isEmpty() ? null : rows.get(0);
            return new Dialect(delimiter, DecimalHabit.POINT, false, header, null, 0);
        }
        SampleRow above = data > 0 ? rows.get(data - 1) : null;
        boolean units = data > 1 && isUnits(above.cells);
        SampleRow header = units ? rows.get(data - 2) : above;
        List<SampleRow> readings = rows.subList(data, rows.size());
        DecimalHabit shown = told == DecimalHabit.UNKNOWN ? habit(readings) : told;
        return new Dialect(
                delimiter,
                shown == DecimalHabit.UNKNOWN
                        ? delimiter == ',' ? DecimalHabit.POINT : DecimalHabit.COMMA
                        : shown,
                shown == DecimalHabit.UNKNOWN,
                header,
                units ? above : null,
                rows.get(data).line);
    }

    /** The one that cuts most rows into the same number of cells. */
    private static char delimiter(String sample) {
        char best = ',';
        int most = 0;
        for (char candidate : DELIMITERS) {
            int alike = alike(rows(sample, candidate))[1];
            if (alike > most) {
                most = alike;
                best = candidate;
            }
        }
        return best;
    }

    /** The commonest number of cells above one, and how many rows have it. */
    private static int[] alike(List<SampleRow> rows) {
        Map<Integer, Integer> counts = new HashMap<>();
        rows.forEach(row -> counts.merge(row.cells.size(), 1, Integer::sum));
        counts.remove(1);
        return counts.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(e -> new int[] {e.getKey(), e.getValue()})
                .orElse(new int[] {1, 0});
    }

    private static List<SampleRow> rows(String sample, char delimiter) {
        List<SampleRow> rows = new ArrayList<>();
        RowSplitter splitter = new RowSplitter(new StringReader(sample), delimiter);
        try {
            while (splitter.next()) {
                if (!splitter.blankRow() && !splitter.tooLong()) {
                    List<String> cells = new ArrayList<>();
                    for (int i = 0; i < splitter.cells(); i++) {
                        cells.add(splitter.cell(i));
                    }
                    rows.add(new SampleRow(splitter.line(), splitter.text(), cells));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    /** The first row of numbers under a row that names something known; else the first of all. */
    private static int firstData(List<SampleRow> rows, ChannelNames names) {
        int usual = alike(rows)[0];
        int first = -1;
        for (int i = 0; i < rows.size(); i++) {
            List<String> cells = rows.get(i).cells;
            if (cells.size() == usual && mostlyNumbers(cells)) {
                first = first < 0 ? i : first;
                if (named(rows, i - 1, names) || named(rows, i - 2, names)) {
                    return i;
                }
            }
        }
        return first;
    }

    private static boolean named(List<SampleRow> rows, int i, ChannelNames names) {
        return i >= 0
                && !mostlyNumbers(rows.get(i).cells)
                && rows.get(i).cells.stream().anyMatch(c -> HeaderName.of(c, names).isPresent());
    }

    private static boolean mostlyNumbers(List<String> cells) {
        long numbers = cells.stream().filter(Dialect::isNumber).count();
        long filled = cells.stream().filter(c -> !c.isEmpty()).count();
        return numbers > 0 && 2 * numbers >= filled;
    }

    private static boolean isNumber(String cell) {
        char[] text = cell.toCharArray();
        return !Double.isNaN(CellNumber.of(text, 0, text.length, DecimalHabit.POINT))
                || !Double.isNaN(CellNumber.of(text, 0, text.length, DecimalHabit.COMMA));
    }

    private static boolean isUnits(List<String> cells) {
        long filled = cells.stream().filter(c -> !c.isEmpty()).count();
        long units = cells.stream().filter(c -> !c.isEmpty() && isUnit(c)).count();
        return filled > 0 && 2 * units > filled;
    }

    private static boolean isUnit(String cell) {
        String unit = HeaderName.bare(cell);
        String unmarked = unit.replaceAll("(?i)[ (]*(gauge|abs|rel|absolute)\\)?$", "");
        return unit.isEmpty()
                || Arrays.stream(Dimension.values())
                        .anyMatch(
                                d ->
                                        Units.find(d, unmarked).isPresent()
                                                || unmarked.length() > 1
                                                        && d == Dimension.PRESSURE
                                                        && Units.find(
                                                                        d,
                                                                        unmarked.substring(
                                                                                0,
                                                                                unmarked.length()
                                                                                        - 1))
                                                                .isPresent());
    }

    private static DecimalHabit habit(List<SampleRow> rows) {
        boolean comma = false;
        boolean point = false;
        boolean either = false;
        for (SampleRow row : rows) {
            for (String cell : row.cells) {
                boolean doubt = EITHER.matcher(cell).matches();
                either |= doubt;
                comma |= !doubt && COMMA_DECIMAL.matcher(cell).matches();
                point |=
                        !POINT_GROUPS.matcher(cell).matches()
                                && POINT_DECIMAL.matcher(cell).matches();
            }
        }
        if (comma != point) {
            return comma ? DecimalHabit.COMMA : DecimalHabit.POINT;
        }
        return comma || either ? DecimalHabit.UNKNOWN : DecimalHabit.POINT;
    }
}
