// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Reads a row of readings. */
final class RowReader {
    private static final Pattern BETWEEN_CELLS = Pattern.compile("[;\n\r\u2028\u2029\u0085]+");
    private static final Pattern BETWEEN_READINGS = Pattern.compile("(?:,\\s|\\s)+");
    private static final Pattern NUMBER_AHEAD =
            Pattern.compile("[+-]?[.,]?(?:[0-9]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]).*");
    private static final Pattern UNIT_LIKE_ONE_PER = Pattern.compile("1/[A-Za-z].*");
    private static final Pattern FRACTION = Pattern.compile("[0-9]+[/⁄][0-9]+");
    private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]+");

    private final Expected expected;

    RowReader(Expected expected) {
        this.expected = expected;
    }

    Typed.Row read(String text) {
        List<String> cells = cells(Spelling.marks(text));
        if (cells.isEmpty()) {
            return new Typed.NotUnderstood(
                    UnitWords.of("no-readings", expected.written("12.5 12.7")));
        }
        Expected known = expected.withHabit(habit(cells));
        Typed.Row row = read(cells, known);
        return row instanceof Typed.Readings readings ? withOneUnit(cells, known, readings) : row;
    }

    private static Typed.Row read(List<String> cells, Expected expected) {
        LineReader reader = new LineReader(expected);
        List<Typed.Understood> readings = new ArrayList<>();
        for (String cell : cells) {
            Typed typed = reader.read(cell);
            if (typed instanceof Typed.Understood understood) {
                readings.add(understood);
            } else if (typed instanceof Typed.NotUnderstood not) {
                return new Typed.NotUnderstood(
                        UnitWords.of("reading", readings.size() + 1, not.message()));
            } else {
                return (Typed.Ambiguous) typed;
            }
        }
        return new Typed.Readings(readings);
    }

    /** Spreads a unit that stands after the last reading alone over the whole row. */
    private Typed.Row withOneUnit(List<String> cells, Expected known, Typed.Readings row) {
        List<Typed.Understood> readings = row.readings();
        int last = readings.size() - 1;
        long withUnit = readings.stream().filter(Typed.Understood::unitTyped).count();
        if (withUnit == 0 || withUnit == readings.size()) {
            return row;
        }
        if (withUnit == 1 && readings.get(last).unitTyped()) {
            return read(cells, known.withScale(readings.get(last).scale()));
        }
        int bare =
                IntStream.rangeClosed(0, last)
                        .filter(i -> !readings.get(i).unitTyped())
                        .findFirst()
                        .orElse(0);
        return new Typed.NotUnderstood(UnitWords.of("reading-bare", bare + 1));
    }

    /** One text for each reading, its unit with it. */
    private static List<String> cells(String text) {
        if (text.indexOf(';') >= 0) {
            return BETWEEN_CELLS.splitAsStream(text).filter(cell -> !cell.isBlank()).toList();
        }
        List<String> cells = new ArrayList<>();
        for (String word : BETWEEN_READINGS.split(text)) {
            if (!word.isBlank()) {
                add(cells, word);
            }
        }
        return cells;
    }

    private static void add(List<String> cells, String word) {
        boolean first = cells.isEmpty();
        String before = first ? "" : cells.get(cells.size() - 1);
        boolean mixedNumber = FRACTION.matcher(word).matches() && WHOLE.matcher(before).matches();
        boolean newReading =
                NUMBER_AHEAD.matcher(word).matches()
                        && !UNIT_LIKE_ONE_PER.matcher(word).matches()
                        && !mixedNumber;
        if (first || newReading) {
            cells.add(word);
        } else {
            cells.set(cells.size() - 1, before + " " + word);
        }
    }

    /** The person's decimal mark, as known or as the readings themselves show it. */
    private DecimalHabit habit(List<String> cells) {
        if (expected.habit() != DecimalHabit.UNKNOWN) {
            return expected.habit();
        }
        List<DecimalHabit> shown =
                cells.stream()
                        .filter(cell -> cell.length() <= LineReader.LONGEST)
                        .map(DecimalHabit::shownIn)
                        .filter(habit -> habit != DecimalHabit.UNKNOWN)
                        .distinct()
                        .toList();
        return shown.size() == 1 ? shown.get(0) : DecimalHabit.UNKNOWN;
    }
}
