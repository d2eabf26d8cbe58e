// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import java.io.BufferedReader;
import java.io.IOException;
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
    private final Relation relation;
    private int bad;

    TableWork(Relation relation) {
        this.relation = relation;
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
        }
    }

    int run(Reader reader, PrintWriter out, PrintWriter err) throws IOException {
        CSVFormat format =
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setIgnoreSurroundingSpaces(true)
                        .setTrim(true)
                        .get();
        try (CSVParser parser = CSVParser.builder().setReader(reader).setFormat(format).get()) {
            List<String> header = parser.getHeaderNames();
            int[] columns = columns(header);
            write(out, header, relation.outputs().stream().map(Slot::name).toList());
            for (CSVRecord row : parser) {
                work(row, columns, out, err, parser.getCurrentLineNumber());
            }
        } catch (UncheckedIOException e) {
            err.println("The table cannot be read further: " + e.getCause().getMessage());
            bad++;
        }
        return bad == 0 ? CommandLineDoor.FINE : CommandLineDoor.FINDINGS;
    }

    private static Reader open(String source) throws IOException {
        return source.equals("-")
                ? new BufferedReader(
                        new InputStreamReader(System.in, StandardCharsets.UTF_8), 1 << 16)
                : Files.newBufferedReader(Path.of(source), StandardCharsets.UTF_8);
    }

    /** The column of each input; −1 for an optional one that the table leaves out. */
    private int[] columns(List<String> header) {
        for (String name : header) {
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

    private void work(CSVRecord row, int[] columns, PrintWriter out, PrintWriter err, long line) {
        try {
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
        } catch (RelationException | IllegalArgumentException | ArrayIndexOutOfBoundsException e) {
            bad++;
            err.println("line " + line + ": " + reason(row, e));
        }
    }

    private static String reason(CSVRecord row, RuntimeException e) {
        return e instanceof ArrayIndexOutOfBoundsException
                ? "only " + row.size() + " cells"
                : e.getMessage();
    }

    private static Object value(Slot slot, String cell) {
        return switch (slot.kind()) {
            case NUMBER ->
                    cell.isEmpty() && slot.fallback().isPresent()
                            ? slot.fallback().get()
                            : number(slot, cell);
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
            return Double.valueOf(cell);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    slot.name()
                            + " = \""
                            + cell
                            + "\" is not a number in "
                            + slot.quantity().siScale().label(),
                    e);
        }
    }

    private static String quoted(String cell) {
        boolean needs = cell.indexOf(',') >= 0 || cell.indexOf('"') >= 0 || cell.indexOf('\n') >= 0;
        return needs ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
    }

    private static void write(PrintWriter out, List<String> header, List<String> outputs) {
        List<String> all = new ArrayList<>(header);
        all.addAll(outputs);
        out.print(String.join(",", all) + "\r\n");
    }
}
