// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Opens a record file, and sets a damaged one aside. */
final class RecordFile {
    static final String NAME = "record.sqlite";

    private static final List<String> COMPANIONS = List.of("-wal", "-shm", "-journal");
    private static final int BUSY_MILLIS = 10_000;

    // Places in the head of a SQLite file: "Database File Format", section 1.3.
    private static final int HEAD_LENGTH = 100;
    private static final int USER_VERSION_AT = 60;
    private static final int APPLICATION_ID_AT = 68;

    // Result codes: "Result and Error Codes" of SQLite.
    private static final int ERROR = 1;
    private static final int CORRUPT = 11;
    private static final int NOT_A_DATABASE = 26;

    private final Path folder;
    private final Path file;
    private final Schema schema;
    private final Backups backups;

    RecordFile(Path folder, Schema schema) {
        this.backups = new Backups(folder.toAbsolutePath());
        this.folder = folder;
        this.file = folder.resolve(NAME).toAbsolutePath();
        this.schema = schema;
    }

    static LearnerRecord inMemory() {
        try {
            Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:");
            Schema.NOW.bring(connection);
            return new LearnerRecord(connection, null, Optional.empty());
        } catch (SQLException e) {
            throw new RecordException(LearnerWords.of("record.no-memory", e.getMessage()), e);
        }
    }

    /**
     * Opens under a lock, so that of two programs that find a damaged file only one sets it aside.
     */
    LearnerRecord open() {
        synchronized (RecordFile.class) {
            try {
                Files.createDirectories(folder);
                try (FileChannel lock =
                        FileChannel.open(
                                folder.resolve("record.lock"),
                                StandardOpenOption.CREATE,
                                StandardOpenOption.WRITE)) {
                    lock.lock();
                    return openOrSetAside();
                }
            } catch (IOException | SQLException e) {
                throw unusable(e);
            }
        }
    }

    private LearnerRecord openOrSetAside() throws IOException, SQLException {
        refuseNewer(versionInHead());
        if (isEmptyBesideALog()) {
            Path kept = setAside();
            return openOnce(notice(LearnerWords.of("damaged.empty"), kept));
        }
        try {
            return openOnce(null);
        } catch (SetAside e) {
            return openOnce(notice(e.getMessage(), e.kept));
        }
    }

    private LearnerRecord openOnce(String notice) throws IOException, SQLException {
        // A URI, because a plain path may hold characters that end it.
        Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file.toUri());
        try {
            prepare(connection);
            return new LearnerRecord(connection, notice, Optional.of(backups));
        } catch (Damaged e) {
            throw new SetAside(e.getMessage(), setAside(connection));
        } catch (SQLException e) {
            if (isDamage(e)) {
                throw new SetAside(e.getMessage(), setAside(connection));
            }
            connection.close();
            throw e;
        } catch (RecordException e) {
            connection.close();
            throw e;
        }
    }

    private void prepare(Connection connection) throws SQLException, Damaged {
        try (Statement sql = connection.createStatement()) {
            sql.execute("PRAGMA busy_timeout = " + BUSY_MILLIS);
            refuseNewer(Schema.number(sql, "user_version"));
            requireSound(sql);
            sql.execute("PRAGMA journal_mode = WAL");
            sql.execute("PRAGMA synchronous = FULL");
            sql.execute("PRAGMA foreign_keys = ON");
            sql.execute("PRAGMA secure_delete = ON");
            int version = Schema.number(sql, "user_version");
            if (version > 0 && version < schema.version()) {
                backups.beforeUpdate(connection, version, Instant.now());
            }
            schema.bring(connection);
            requireTables(sql);
        }
    }

    private static void requireSound(Statement sql) throws SQLException, Damaged {
        try (ResultSet row = sql.executeQuery("PRAGMA quick_check(1)")) {
            if (row.next() && !row.getString(1).equals("ok")) {
                throw new Damaged(row.getString(1));
            }
        }
        boolean empty = Schema.number(sql, "schema_version") == 0;
        if (!empty && Schema.number(sql, "application_id") != Schema.APPLICATION_ID) {
            throw new Damaged(LearnerWords.of("damaged.other"));
        }
    }

    private static void requireTables(Statement sql) throws SQLException, Damaged {
        for (String table : List.of("learner", "attempt", "setting")) {
            try {
                sql.executeQuery("SELECT 1 FROM " + table + " LIMIT 1").close();
            } catch (SQLException e) {
                if (e.getErrorCode() == ERROR) {
                    throw new Damaged(e.getMessage());
                }
                throw e;
            }
        }
    }

    private static boolean isDamage(SQLException e) {
        int code = e.getErrorCode() & 0xFF;
        return code == CORRUPT || code == NOT_A_DATABASE;
    }

    /** The version that the file's head tells; 0 if there is no head to read. Touches nothing. */
    private int versionInHead() throws IOException {
        if (!Files.isRegularFile(file) || Files.size(file) < HEAD_LENGTH) {
            return 0;
        }
        try (RandomAccessFile head = new RandomAccessFile(file.toFile(), "r")) {
            head.seek(APPLICATION_ID_AT);
            boolean ours = head.readInt() == Schema.APPLICATION_ID;
            head.seek(USER_VERSION_AT);
            return ours ? head.readInt() : 0;
        }
    }

    private void refuseNewer(int version) {
        if (version > schema.version()) {
            throw new RecordException(
                    LearnerWords.of(
                            "record.newer", version, schema.version(), RecordFolder.PROPERTY, file),
                    null);
        }
    }

    /** SQLite would throw such a log away, and the answers in it. */
    private boolean isEmptyBesideALog() throws IOException {
        Path log = companion("-wal");
        boolean empty = !Files.exists(file) || Files.size(file) == 0;
        return empty && Files.exists(log) && Files.size(log) > 0;
    }

    /**
     * Renames before closing where the platform lets it: SQLite then sees that the file has moved,
     * and leaves the log beside it as it is.
     */
    private Path setAside(Connection connection) throws IOException, SQLException {
        try {
            return setAside();
        } catch (FileSystemException heldOpen) {
            connection.close();
            return setAside();
        } finally {
            connection.close();
        }
    }

    /** Renames the file and its companions, the file last: without it the others mean nothing. */
    private Path setAside() throws IOException {
        Path kept = freeName();
        for (String ending : COMPANIONS) {
            if (Files.exists(companion(ending))) {
                Files.move(companion(ending), kept.resolveSibling(kept.getFileName() + ending));
            }
        }
        if (Files.exists(file)) {
            Files.move(file, kept);
        }
        return kept;
    }

    private Path freeName() {
        String stem = "record-set-aside-" + Backups.STAMP.format(Instant.now());
        Path name = folder.resolve(stem + ".sqlite");
        for (int i = 2; isTaken(name); i++) {
            name = folder.resolve(stem + "-" + i + ".sqlite");
        }
        return name;
    }

    private static boolean isTaken(Path name) {
        return Files.exists(name)
                || COMPANIONS.stream()
                        .anyMatch(
                                end -> Files.exists(name.resolveSibling(name.getFileName() + end)));
    }

    private Path companion(String ending) {
        return file.resolveSibling(NAME + ending);
    }

    private String notice(String reason, Path kept) {
        String back =
                backups.lastGood()
                        .map(
                                copy ->
                                        LearnerWords.of(
                                                "record.copy-there",
                                                copy.made(),
                                                copy.answers(),
                                                copy.file()))
                        .orElse("");
        return LearnerWords.of("record.damaged", reason, kept, back);
    }

    private RecordException unusable(Exception e) {
        return new RecordException(
                LearnerWords.of("record.unopened", file, e, RecordFolder.PROPERTY), e);
    }

    /** The file is no record any more. */
    private static final class Damaged extends Exception {
        private static final long serialVersionUID = 1;

        Damaged(String reason) {
            super(reason);
        }
    }

    /** The file was damaged, and is out of the way now. */
    private static final class SetAside extends IOException {
        private static final long serialVersionUID = 1;
        private final transient Path kept;

        SetAside(String reason, Path kept) {
            super(reason);
            this.kept = kept;
        }
    }
}
