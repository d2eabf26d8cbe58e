// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whole copies of a record, kept beside it. Those made before an update have its version in their
 * name.
 */
public final class Backups {
    static final String PREFIX = "record-backup-";
    static final String ENDING = ".sqlite";
    static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    /** So many daily copies are kept. */
    private static final int KEPT = 3;

    private static final Duration OFTEN = Duration.ofDays(1);

    private final Path folder;

    Backups(Path folder) {
        this.folder = folder;
    }

    /**
     * A copy that can be read.
     *
     * @param file where it lies
     * @param made when
     * @param answers how many answers are in it
     */
    public record Copy(Path file, Instant made, long answers) {}

    /** Keeps a copy for the day, unless there is one or nothing is new. */
    boolean daily(Connection connection, Instant now) throws SQLException {
        List<Path> made = daily();
        Optional<Instant> last = made.stream().findFirst().map(Backups::modified);
        // A copy from the future was made by a clock that was wrong; it does not stop the next.
        if (last.isPresent() && Duration.between(last.get(), now).abs().compareTo(OFTEN) < 0) {
            return false;
        }
        if (count(connection) == 0) {
            return false;
        }
        copy(connection, PREFIX + STAMP.format(now));
        daily().stream().skip(KEPT).forEach(Backups::remove);
        return true;
    }

    /** Keeps a copy of a record that is about to be brought up to date. */
    void beforeUpdate(Connection connection, int version, Instant now) throws SQLException {
        copy(connection, PREFIX + "v" + version + "-" + STAMP.format(now));
    }

    /** Written aside, then moved: a copy is whole or not there. */
    private void copy(Connection connection, String stem) throws SQLException {
        Path part = folder.resolve(stem + ".part");
        try {
            Files.deleteIfExists(part);
            try (Statement sql = connection.createStatement()) {
                sql.execute("VACUUM INTO '" + part.toString().replace("'", "''") + "'");
            }
            Files.move(part, folder.resolve(stem + ENDING), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new SQLException(LearnerWords.of("copy.none", folder, e), e);
        } finally {
            part.toFile().delete();
        }
    }

    /** The latest copy that is sound and holds answers. */
    Optional<Copy> lastGood() {
        return all().stream()
                .map(Backups::read)
                .flatMap(Optional::stream)
                .filter(copy -> copy.answers() > 0)
                .findFirst();
    }

    private static Optional<Copy> read(Path file) {
        try (Connection c = readOnly(file);
                Statement sql = c.createStatement()) {
            boolean sound;
            try (ResultSet row = sql.executeQuery("PRAGMA quick_check(1)")) {
                sound = row.next() && row.getString(1).equals("ok");
            }
            boolean ours = Schema.number(sql, "application_id") == Schema.APPLICATION_ID;
            boolean readable = Schema.number(sql, "user_version") <= Schema.NOW.version();
            return sound && ours && readable
                    ? Optional.of(new Copy(file, modified(file), count(c)))
                    : Optional.empty();
        } catch (SQLException e) {
            return Optional.empty();
        }
    }

    /** The answers in a copy, oldest first. */
    List<Attempt> attempts(Copy copy) {
        // Brought up to date in a place of its own, so that the copy stays what it is.
        try {
            Path aside = Files.createTempDirectory(folder, "record-copy-");
            try {
                Files.copy(copy.file(), aside.resolve(RecordFile.NAME));
                try (LearnerRecord record = LearnerRecord.open(aside)) {
                    return record.attempts();
                }
            } finally {
                deleteFolder(aside);
            }
        } catch (IOException e) {
            throw new RecordException(LearnerWords.of("copy.unread", copy.file(), e), e);
        }
    }

    private static void deleteFolder(Path aside) throws IOException {
        try (Stream<Path> files = Files.walk(aside)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    static Connection readOnly(Path file) throws SQLException {
        return DriverManager.getConnection(
                "jdbc:sqlite:" + file.toAbsolutePath().toUri() + "?mode=ro&immutable=1");
    }

    private static long count(Connection connection) throws SQLException {
        return new Rows(connection)
                .query("SELECT count(*) FROM attempt", row -> row.getLong(1))
                .get(0);
    }

    /** Deletes every copy. */
    void delete() {
        all().forEach(Backups::remove);
    }

    private List<Path> daily() {
        return all().stream()
                .filter(f -> !f.getFileName().toString().startsWith(PREFIX + "v"))
                .toList();
    }

    /** The latest first. */
    private List<Path> all() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.getFileName().toString().startsWith(PREFIX))
                    .filter(f -> f.getFileName().toString().endsWith(ENDING))
                    .sorted(Comparator.comparing(Backups::modified).reversed())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Instant modified(Path file) {
        return Instant.ofEpochMilli(file.toFile().lastModified());
    }

    private static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new RecordException(LearnerWords.of("copy.undeleted", file, e), e);
        }
    }
}
