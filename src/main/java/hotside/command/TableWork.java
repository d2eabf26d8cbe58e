// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Works a relation for every row of a table in constant memory: the table goes in at one end and
 * comes out at the other with the outputs added. A bad row is reported with its line and left out;
 * the rest goes on.
 */
final class TableWork {
    private static final char BYTE_ORDER_MARK = 0xFEFF;

    private final Relation relation;
    private final InputStream standardInput;
    private int bad;

    /**
     * @param standardInput what {@code -} stands for
     */
    TableWork(Relation relation, InputStream standardInput) {
        this.relation = relation;
        this.standardInput = standardInput;
    }

    /**
     * @param source a file's path, or {@code -} for standard input
     * @return the exit code: 1 if rows were left out
     */
    int run(String source, PrintWriter out, PrintWriter err) throws IOException {
        try (Reader reader = open(source)) {
            return run(reader, out, err);
        } catch (NoSuchFileException e) {
            throw new UsageException("There is no file " + source + ".");
        } catch (IOException e) {
            throw new UsageException(source + " cannot be read: " + e.getMessage() + ".");
        }
    }

    int run(Reader reader, PrintWriter out, PrintWriter err) throws IOException {
        CSVFormat format =
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setAllowMissingColumnNames(true)
                        .setIgnoreEmptyLines(true)
                        .setIgnoreSurroundingSpaces(true)
                        .setTrim(true)
                        .get();
        try (CSVParser parser = CSVParser.builder().setReader(reader).setFormat(format).get()) {
            List<String> header = parser.getHeaderNames();
            int[] columns = columns(header);
            write(out, header, relation.outputs().stream().map(Slot::name).toList());
            for (CSVRecord row : parser) {
                work(row, header.size(), columns, out, err, parser.getCurrentLineNumber());
            }
        } catch (UncheckedIOException e) {
            err.println("The table cannot be read further: " + e.getCause().getMessage());
            bad++;
        }
        return bad == 0 ? CommandLineDoor.FINE : CommandLineDoor.FINDINGS;
    }

    /** Bytes that are no UTF-8 become a sign that is no number: the row is bad, not the table. */
    private Reader open(String source) throws IOException {
        InputStream in = source.equals("-") ? standardInput : Files.newInputStream(Path.of(source));
        BufferedReader reader =
                new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8), 1 << 16);
        reader.mark(1);
        if (reader.read() != BYTE_ORDER_MARK) {
            reader.reset();
        }
        return reader;
    }

    /** The column of each input; −1 for an optional one that the table leaves out. */
    private int[] columns(List<String> header) {
        for (String name : header) {
            if (header.indexOf(name) != header.lastIndexOf(name)) {
                throw new UsageException("The table has two columns \"" + name + "\".");
            }
            if (!relation.isInput(name)) {
                throw new UsageException(
                        "The table's column \""
                                + name
                                + "\" is no input of "
                                + relation.id()
                                + "; its inputs are "
                                + String.join(
                                        ", ", relation.inputs().stream().map(Slot::name).toList())
                                + ".");
            }
        }
        return relation.inputs().stream()
                .mapToInt(
                        slot -> {
                            int column = header.indexOf(slot.name());
                            if (column < 0 && slot.fallback().isEmpty()) {
                                throw new UsageException(
                                        "The table has no column \""
                                                + slot.name()
                                                + "\" ("
                                                + slot.meaning()
                                                + ").");
                            }
                            return column;
                        })
                .toArray();
    }

    private void work(
            CSVRecord row,
            int width,
            int[] columns,
            PrintWriter out,
            PrintWriter err,
            long lastLine) {
        try {
            if (row.size() != width) {
                throw new IllegalArgumentException(
                        row.size() + " cells, but the table has " + width + " columns");
            }
            Object[] inputs = new Object[columns.length];
            for (int i = 0; i < columns.length; i++) {
                Slot slot = relation.inputs().get(i);
                inputs[i] =
                        columns[i] < 0
                                ? slot.fallback().orElseThrow()
                                : value(slot, row.get(columns[i]));
            }
            double[] outputs = relation.solveRow(inputs);
            StringBuilder text = new StringBuilder(160);
            for (int i = 0; i < row.size(); i++) {
                text.append(quoted(row.get(i))).append(',');
            }
            for (int i = 0; i < outputs.length; i++) {
                text.append(i == 0 ? "" : ",").append(outputs[i]);
            }
            out.print(text.append("\r\n"));
        } catch (RelationException | IllegalArgumentException e) {
            bad++;
            err.println("line " + (lastLine - lineEnds(row)) + ": " + e.getMessage());
        }
    }

    /** How many lines a row takes beyond its first, where quoted cells hold line ends. */
    private static long lineEnds(CSVRecord row) {
        return row.stream().flatMapToInt(String::chars).filter(c -> c == '\n').count();
    }

    private static Object value(Slot slot, String cell) {
        if (cell.isEmpty() && slot.fallback().isPresent()) {
            return slot.fallback().get();
        }
        return switch (slot.kind()) {
            case NUMBER -> number(slot, cell);
            case NUMBERS -> {
                List<Double> readings = new ArrayList<>();
                Arrays.stream(cell.split("[;\\s]+"))
                        .forEach(text -> readings.add(number(slot, text)));
                yield readings;
            }
            case CHOICE, TEXT -> cell;
        };
    }

    private static Double number(Slot slot, String cell) {
        try {
            return Double.valueOf(plain(cell));
        } catch (NumberFormatException e) {
            String unit = slot.quantity().siScale().label();
            throw new IllegalArgumentException(
                    slot.name()
                            + " = \""
                            + cell
                            + "\" is not a number"
                            + (unit.isEmpty() ? "" : " in " + unit),
                    e);
        }
    }

    /** Java takes 1d, 1f and 0x1p3 for numbers, a table does not. */
    private static String plain(String cell) {
        boolean letters =
                !cell.isEmpty() && Character.isLetter(cell.charAt(cell.length() - 1))
                        || cell.indexOf('x') >= 0
                        || cell.indexOf('X') >= 0;
        if (letters) {
            throw new NumberFormatException(cell);
        }
        return cell;
    }

    private static String quoted(String cell) {
        boolean needs =
                cell.indexOf(',') >= 0
                        || cell.indexOf('"') >= 0
                        || cell.indexOf('\n') >= 0
                        || cell.indexOf('\r') >= 0;
        return needs ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
    }

    private static void write(PrintWriter out, List<String> header, List<String> outputs) {
        List<String> all = new ArrayList<>(header);
        all.addAll(outputs);
        out.print(String.join(",", all) + "\r\n");
    }
}
