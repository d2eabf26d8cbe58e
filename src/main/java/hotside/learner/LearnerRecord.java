// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A learner's stored work: every answer given, and the settings.
 *
 * <p>When {@link #add} or {@link #set} has returned, what was given is on the disk: the file is a
 * SQLite database with a write-ahead log and full synchronisation. Several programs may have the
 * same record open; each waits for the other. Methods may be called from any thread, one at a time,
 * but they wait for the disk: keep them off the thread that draws the screen. All of them throw
 * {@link RecordException} if the disk fails.
 */
public final class LearnerRecord implements AutoCloseable {
    /** Crockford's base 32 leaves out letters that are mistaken for others when read aloud. */
    private static final String BASE_32 = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static final int ID_LENGTH = 10;

    private final Connection connection;
    private final String notice;
    private final String learner;

    LearnerRecord(Connection connection, String notice) throws SQLException {
        this.connection = connection;
        this.notice = notice;
        this.learner = learnerOf(connection);
    }

    /**
     * Opens the record in a folder, or begins one. A file that is damaged is set aside under a name
     * with the time, never overwritten, and a new record begun; {@link #notice} then says so.
     *
     * @throws RecordException if the folder or file cannot be used, or the record was written by a
     *     newer version of the program; it is left as it is
     */
    public static LearnerRecord open(Path folder) {
        return new RecordFile(folder, Schema.NOW).open();
    }

    /** A record in memory, for when none can be opened: it works, and is gone at the end. */
    public static LearnerRecord unsaved() {
        return RecordFile.inMemory();
    }

    /** What a person should be told about the opening; empty if all went well. */
    public Optional<String> notice() {
        return Optional.ofNullable(notice);
    }

    /** Random id of the learner, ten characters; says nothing about the person. */
    public String learner() {
        return learner;
    }

    /**
     * Stores an answer; returns when it is on the disk.
     *
     * @return its number in the record; later answers have higher ones
     */
    public synchronized long add(Attempt a) {
        String sql =
                "INSERT INTO attempt (learner, problem, seed, generator, fingerprint, unit_system, ask,"
                        + " answer, verdict, mistake, correct, hints, seconds, time, lesson)"
                        + " VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)";
        try (PreparedStatement insert = connection.prepareStatement(sql)) {
            bind(
                    insert,
                    learner,
                    a.problem(),
                    a.seed(),
                    a.generator(),
                    a.fingerprint(),
                    a.unitSystem(),
                    a.ask(),
                    a.answer(),
                    a.verdict(),
                    a.mistake(),
                    a.correct() ? 1 : 0,
                    a.hints(),
                    a.seconds(),
                    a.time().toEpochMilli(),
                    a.lesson());
            insert.executeUpdate();
        } catch (SQLException e) {
            throw failed("Your answer could not be stored", e);
        }
        return query("SELECT last_insert_rowid()", row -> row.getLong(1)).get(0);
    }

    /** All answers, oldest first. */
    public synchronized List<Attempt> attempts() {
        return query("SELECT * FROM attempt ORDER BY id", LearnerRecord::attempt);
    }

    /** The answers to one problem, oldest first. */
    public synchronized List<Attempt> attempts(String problem) {
        return query(
                "SELECT * FROM attempt WHERE problem = ? ORDER BY id",
                LearnerRecord::attempt,
                problem);
    }

    /** How the learner stands with each problem tried, by problem id in order. */
    public synchronized Map<String, Progress> progress() {
        Map<String, Progress> byProblem = new LinkedHashMap<>();
        query(
                        "SELECT problem, count(*), sum(correct), max(time) FROM attempt"
                                + " GROUP BY problem ORDER BY problem",
                        row ->
                                new Progress(
                                        row.getString(1),
                                        row.getInt(2),
                                        row.getInt(3),
                                        Instant.ofEpochMilli(row.getLong(4))))
                .forEach(p -> byProblem.put(p.problem(), p));
        return byProblem;
    }

    /** The setting of this name, if it was ever set. */
    public synchronized Optional<String> setting(String key) {
        return query("SELECT value FROM setting WHERE key = ?", row -> row.getString(1), key)
                .stream()
                .findFirst();
    }

    /** Stores a setting over an earlier one; returns when it is on the disk. */
    public synchronized void set(String key, String value) {
        String sql =
                "INSERT INTO setting (key, value) VALUES (?, ?)"
                        + " ON CONFLICT (key) DO UPDATE SET value = excluded.value";
        try (PreparedStatement upsert = connection.prepareStatement(sql)) {
            bind(upsert, key, value);
            upsert.executeUpdate();
        } catch (SQLException e) {
            throw failed("The setting " + key + " could not be stored", e);
        }
    }

    @Override
    public synchronized void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            throw failed("Your record could not be closed", e);
        }
    }

    private interface Reader<T> {
        T read(ResultSet row) throws SQLException;
    }

    private <T> List<T> query(String sql, Reader<T> reader, Object... values) {
        try (PreparedStatement select = connection.prepareStatement(sql)) {
            bind(select, values);
            try (ResultSet rows = select.executeQuery()) {
                List<T> all = new ArrayList<>();
                while (rows.next()) {
                    all.add(reader.read(rows));
                }
                return all;
            }
        } catch (SQLException e) {
            throw failed("Your record could not be read", e);
        }
    }

    private static void bind(PreparedStatement statement, Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
    }

    private static Attempt attempt(ResultSet row) throws SQLException {
        return new Attempt(
                row.getString("problem"),
                row.getString("seed"),
                row.getString("generator"),
                row.getString("fingerprint"),
                row.getString("unit_system"),
                row.getInt("ask"),
                row.getString("answer"),
                row.getString("verdict"),
                row.getString("mistake"),
                row.getInt("correct") != 0,
                row.getInt("hints"),
                row.getDouble("seconds"),
                Instant.ofEpochMilli(row.getLong("time")),
                row.getString("lesson"));
    }

    /** The one learner of this file; of two programs that begin a record together, one decides. */
    private static String learnerOf(Connection connection) throws SQLException {
        String sql =
                "INSERT INTO learner (id, created) SELECT ?, ?"
                        + " WHERE NOT EXISTS (SELECT 1 FROM learner)";
        try (PreparedStatement insert = connection.prepareStatement(sql);
                PreparedStatement select =
                        connection.prepareStatement(
                                "SELECT id FROM learner ORDER BY created LIMIT 1")) {
            bind(insert, randomId(), Instant.now().toEpochMilli());
            insert.executeUpdate();
            try (ResultSet row = select.executeQuery()) {
                row.next();
                return row.getString(1);
            }
        }
    }

    private static String randomId() {
        SecureRandom random = new SecureRandom();
        StringBuilder id = new StringBuilder();
        for (int i = 0; i < ID_LENGTH; i++) {
            id.append(BASE_32.charAt(random.nextInt(BASE_32.length())));
        }
        return id.toString();
    }

    private static RecordException failed(String what, SQLException e) {
        return new RecordException(
                what
                        + ": "
                        + e.getMessage()
                        + ". Look for free space on the disk, and for another"
                        + " program that holds the file, then try again.",
                e);
    }
}
