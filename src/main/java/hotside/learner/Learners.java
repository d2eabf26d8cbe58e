// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The learners of one machine. Each has a folder with a record of their own: the first that of the
 * person who runs the program, the others one below it. Nothing is shared, so deleting one leaves
 * nothing of it behind and touches no other.
 */
public final class Learners {
    /** Name of the setting that holds what a learner wants to be called here; may be missing. */
    public static final String NICKNAME = "nickname";

    /** Longest nickname, in characters. */
    public static final int LONGEST_NICKNAME = 40;

    /** Settings that a file may bring: none that could lead the program to other files. */
    private static final Set<String> TAKEN_OVER =
            Set.of("units", "theme", "text", "lesson", NICKNAME, Tutor.EXAM, Tutor.RETENTION);

    private static final String BELOW = "learners";
    private static final String CURRENT = "learner.txt";

    private final Path root;

    /**
     * @param root the folder of the person who runs the program; see {@link RecordFolder}
     */
    public Learners(Path root) {
        this.root = root.toAbsolutePath();
    }

    /**
     * A learner.
     *
     * @param folder where the record lies
     * @param id random, ten characters; empty if the record cannot be read now
     * @param nickname what the learner wants to be called; empty if nothing
     */
    public record Seat(Path folder, String id, String nickname) {
        /** How a list calls the learner. */
        public String told() {
            return !nickname.isEmpty()
                    ? nickname
                    : !id.isEmpty() ? id : folder.getFileName().toString();
        }
    }

    /** The folder of the first learner. */
    public Path first() {
        return root;
    }

    /** All learners who have a record here, the first one first. */
    public List<Seat> all() {
        List<Path> folders = new ArrayList<>(List.of(root));
        Path below = root.resolve(BELOW);
        if (Files.isDirectory(below)) {
            try (Stream<Path> inside = Files.list(below)) {
                inside.filter(Files::isDirectory)
                        .sorted(Comparator.comparing(Path::getFileName))
                        .forEach(folders::add);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return folders.stream()
                .filter(f -> Files.exists(f.resolve(RecordFile.NAME)))
                .map(Learners::seat)
                .toList();
    }

    private static Seat seat(Path folder) {
        String url = "jdbc:sqlite:" + folder.resolve(RecordFile.NAME).toUri();
        try (Connection connection = DriverManager.getConnection(url)) {
            Rows rows = new Rows(connection);
            String id =
                    rows.query("SELECT id FROM learner LIMIT 1", row -> row.getString(1)).stream()
                            .findFirst()
                            .orElse("");
            String nickname =
                    rows
                            .query(
                                    "SELECT value FROM setting WHERE key = ?",
                                    row -> row.getString(1),
                                    NICKNAME)
                            .stream()
                            .findFirst()
                            .orElse("");
            return new Seat(folder, id, nickname);
        } catch (SQLException unreadable) {
            return new Seat(folder, "", "");
        }
    }

    /** The folder of the learner who worked last; of the first one if that is not known. */
    public Path current() {
        try {
            String name = Files.readString(root.resolve(CURRENT), StandardCharsets.UTF_8).strip();
            Path folder = root.resolve(BELOW).resolve(name);
            return LearnerRecord.isId(name) && Files.isDirectory(folder) ? folder : root;
        } catch (IOException none) {
            return root;
        }
    }

    /** Remembers who works now. */
    public void current(Path folder) {
        String name = folder.equals(root) ? "" : folder.getFileName().toString();
        try {
            Files.createDirectories(root);
            Path aside = root.resolve(CURRENT + ".part");
            Files.writeString(aside, name + "\n", StandardCharsets.UTF_8);
            Files.move(aside, root.resolve(CURRENT), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw unusable(root, e);
        }
    }

    /** A folder for one learner more. */
    public Path another() {
        return folder(LearnerRecord.randomId());
    }

    private Path folder(String id) {
        Path folder = root.resolve(BELOW).resolve(id);
        try {
            return Files.createDirectories(folder);
        } catch (IOException e) {
            throw unusable(folder, e);
        }
    }

    /** What a file brought. */
    public record Imported(Path folder, int answers, boolean newLearner) {}

    /**
     * Takes in a whole record: answers that are not here yet are added to the learner whose they
     * are; a learner who is not here yet is made. Settings are taken over for a new learner only.
     *
     * @throws RecordException if the file cannot be read; nothing is changed then
     */
    public Imported take(RecordJson.Content content) {
        Optional<Seat> seat =
                all().stream().filter(s -> s.id().equals(content.learner())).findFirst();
        Path folder = seat.map(Seat::folder).orElseGet(() -> folder(content.learner()));
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            if (seat.isEmpty()) {
                record.becomes(content.learner());
                content.settings().entrySet().stream()
                        .filter(setting -> TAKEN_OVER.contains(setting.getKey()))
                        .forEach(setting -> record.set(setting.getKey(), setting.getValue()));
            }
            return new Imported(folder, record.addMissing(content.attempts()), seat.isEmpty());
        }
    }

    /**
     * Deletes a learner: the record, its log, every copy and what was set aside. The record is
     * emptied first, so that a window that still has it open keeps nothing and can add nothing.
     *
     * @throws RecordException if a file could not be deleted; the message names it
     */
    public void delete(Path folder) {
        if (Files.exists(folder.resolve(RecordFile.NAME))) {
            try (LearnerRecord record = LearnerRecord.open(folder)) {
                record.erase();
            }
        }
        try (Stream<Path> inside = Files.list(folder)) {
            for (Path file : inside.filter(Learners::isOurs).toList()) {
                Files.deleteIfExists(file);
            }
            if (!folder.equals(root)) {
                deleteWhatIsLeft(folder);
            }
        } catch (IOException e) {
            throw new RecordException(LearnerWords.of("folder.left", e, folder), e);
        }
    }

    private static boolean isOurs(Path file) {
        String name = file.getFileName().toString();
        return Files.isRegularFile(file) && name.startsWith("record");
    }

    /** What the page's engine kept for itself. */
    private static void deleteWhatIsLeft(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static RecordException unusable(Path folder, IOException e) {
        return new RecordException(LearnerWords.of("folder.unusable", folder, e), e);
    }
}
