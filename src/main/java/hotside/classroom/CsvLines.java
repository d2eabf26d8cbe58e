// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.content.Excerpt;
import hotside.content.Finding;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a CSV file that somebody may have worked on, and tells which of its lines do not fit. */
final class CsvLines {
    /** Of a file that is wrong from end to end, the first lines say enough. */
    static final int MOST_FINDINGS = 50;

    private static final int LARGEST = 20_000_000;

    private final List<String> head;
    private final CSVFormat format;
    private final List<Finding> findings = new ArrayList<>();
    private Path file = Path.of("");
    private long wrong;

    /** Takes a line that has as many cells as the head. */
    @FunctionalInterface
    interface Taking {
        void take(long line, CSVRecord row);
    }

    private CsvLines(List<String> head, Character remark) {
        this.head = head;
        this.format =
                CSVFormat.RFC4180
                        .builder()
                        .setIgnoreEmptyLines(true)
                        .setCommentMarker(remark)
                        .get();
    }

    /** Of a file that begins with these cells. */
    static CsvLines under(List<String> head) {
        return new CsvLines(head, null);
    }

    /** The same, where a line that begins with {@code #} is a remark and read past. */
    static CsvLines withRemarks(List<String> head) {
        return new CsvLines(head, '#');
    }

    /**
     * Reads all lines behind the head.
     *
     * @param large what to say if the file is too large
     * @throws IOException if it cannot be read, or is too large
     */
    void read(Path from, String large, Taking taking) throws IOException {
        file = from;
        if (Files.size(file) > LARGEST) {
            throw new IOException(large);
        }
        String text = GrowingFile.text(file, LARGEST);
        if (text.contains(GrowingFile.LOST)) {
            wrong(1, ClassWords.of("csv.letters"), "UTF-8");
        }
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord row : parser) {
                if (row.getRecordNumber() > 1) {
                    take(parser.getCurrentLineNumber(), row, taking);
                } else if (!row.toList().equals(head)) {
                    wrong(1, ClassWords.of("csv.first-line"), form());
                    break;
                }
            }
        } catch (UncheckedIOException e) {
            wrong(1, ClassWords.of("csv.none", e.getMessage()), form());
        }
    }

    private void take(long line, CSVRecord row, Taking taking) {
        if (row.size() == head.size()) {
            taking.take(line, row);
        } else {
            wrong(line, ClassWords.of("csv.cells", row.size()), form());
        }
    }

    private String form() {
        return String.join(",", head);
    }

    void wrong(long line, String what, String expected) {
        wrong++;
        if (wrong <= MOST_FINDINGS) {
            findings.add(
                    new Finding(file.toString(), (int) line, 1, what, Excerpt.NONE, expected, ""));
        }
    }

    /** What does not fit; of very many, the first and how many more there are. */
    List<Finding> findings() {
        if (wrong <= MOST_FINDINGS) {
            return List.copyOf(findings);
        }
        List<Finding> all = new ArrayList<>(findings);
        all.add(
                Finding.about(
                        file.toString(),
                        ClassWords.of("csv.more", wrong - MOST_FINDINGS),
                        form(),
                        ""));
        return all;
    }
}
