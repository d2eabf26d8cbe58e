// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.content.Finding;
import hotside.content.Visible;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The learners of a class. The only place where names meet ids; it stays with the instructor. */
public final class Roster {
    private static final int LARGEST = 5_000_000;
    static final int MOST = 20_000;
    private static final int LONGEST_NAME = 80;
    private static final List<String> ID_HEADS = List.of("learner_id", "sourcedid");

    private final Map<String, Learner> byId = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    private Roster() {}

    /**
     * A learner.
     *
     * @param id what files and papers call the learner
     * @param name for the instructor; the id where none is told
     * @param group empty if there is none
     */
    public record Learner(String id, String name, String group) {
        /** The name with the id beside it, or the id alone. */
        public String shown() {
            return name.equals(id) ? id : name + " (" + id + ")";
        }
    }

    /** A roster without a file. */
    public static Roster of(List<Learner> learners) {
        Roster roster = new Roster();
        learners.forEach(l -> roster.byId.put(Ids.require(ClassWords.of("id.learner"), l.id()), l));
        return roster;
    }

    /** New learners without names. */
    public static Roster fresh(int count) {
        Map<String, Learner> learners = new LinkedHashMap<>();
        while (learners.size() < count) {
            String id = Ids.fresh();
            learners.put(id, new Learner(id, id, ""));
        }
        return of(List.copyOf(learners.values()));
    }

    /**
     * Reads a CSV file with the columns {@code learner_id}, {@code display_name} and {@code group}
     * in any order; only the first must be there, and others are let be. Wrong rows become findings
     * and are left out.
     */
    public static Roster read(Path file) throws IOException {
        if (Files.size(file) > LARGEST) {
            throw new IOException(ClassWords.of("roster.large", file));
        }
        return read(file.toString(), Files.readAllBytes(file));
    }

    static Roster read(String path, byte[] bytes) {
        Roster roster = new Roster();
        String text;
        try {
            text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            roster.findings.add(
                    Finding.about(
                            path,
                            ClassWords.of("text.no-utf8"),
                            ClassWords.of("roster.utf8"),
                            ClassWords.of("roster.save")));
            return roster;
        }
        roster.read(path, text.startsWith("\ufeff") ? text.substring(1) : text);
        return roster;
    }

    private void read(String path, String text) {
        CSVFormat format =
                CSVFormat.RFC4180
                        .builder()
                        .setIgnoreEmptyLines(true)
                        .setIgnoreSurroundingSpaces(true)
                        .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            Columns columns = null;
            for (CSVRecord row : parser) {
                if (columns == null) {
                    columns = Columns.of(row);
                    if (columns.id < 0) {
                        wrong(
                                path,
                                1,
                                ClassWords.of("roster.no-column"),
                                ClassWords.of("roster.head"));
                        return;
                    }
                } else {
                    add(path, parser.getCurrentLineNumber(), columns, row);
                }
            }
        } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
            wrong(path, 1, ClassWords.of("csv.none", e.getMessage()), ClassWords.of("csv.form"));
        }
        if (byId.isEmpty() && findings.isEmpty()) {
            wrong(path, 1, ClassWords.of("roster.empty"), ClassWords.of("roster.each"));
        }
    }

    private record Columns(int id, int name, int group) {
        static Columns of(CSVRecord head) {
            List<String> names =
                    head.stream().map(cell -> cell.strip().toLowerCase(Locale.ROOT)).toList();
            int id =
                    ID_HEADS.stream()
                            .mapToInt(names::indexOf)
                            .filter(i -> i >= 0)
                            .findFirst()
                            .orElse(-1);
            return new Columns(id, names.indexOf("display_name"), names.indexOf("group"));
        }
    }

    private void add(String path, long line, Columns columns, CSVRecord row) {
        String id = cell(row, columns.id);
        String name = cell(row, columns.name);
        if (!Ids.isId(id)) {
            wrong(path, line, ClassWords.of("roster.unfit", id), Ids.form());
        } else if (byId.containsKey(id)) {
            wrong(path, line, ClassWords.of("roster.twice", id), ClassWords.of("roster.own"));
        } else if (byId.size() >= MOST) {
            wrong(path, line, ClassWords.of("roster.many", MOST), ClassWords.of("roster.classes"));
        } else {
            byId.put(id, new Learner(id, name.isEmpty() ? id : name, cell(row, columns.group)));
        }
    }

    /** Without direction marks and controls, which could make one name look like another. */
    private static String cell(CSVRecord row, int column) {
        if (column < 0 || column >= row.size()) {
            return "";
        }
        return Visible.cut(CsvText.unguarded(row.get(column)).strip(), LONGEST_NAME)
                .replace("\ufffd", "");
    }

    private void wrong(String path, long line, String what, String expected) {
        findings.add(
                new Finding(path, (int) line, 1, what, hotside.content.Excerpt.NONE, expected, ""));
    }

    /** The roster as a CSV file. */
    public String csv() {
        StringWriter out = new StringWriter();
        CsvText csv = new CsvText(out);
        csv.row(List.of("learner_id", "display_name", "group"));
        all().forEach(l -> csv.row(List.of(l.id(), l.name(), l.group())));
        return out.toString();
    }

    public List<Learner> all() {
        return List.copyOf(byId.values());
    }

    public Optional<Learner> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    public List<Finding> findings() {
        return List.copyOf(findings);
    }
}
