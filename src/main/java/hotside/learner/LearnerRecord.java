// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
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
 * {@link RecordException} if the disk fails or is full; nothing is half stored then.
 */
public final class LearnerRecord implements AutoCloseable {
    /** Crockford's base 32 leaves out letters that are mistaken for others when read aloud. */
    private static final String BASE_32 = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static final int ID_LENGTH = 10;
    private static final long DAY_MILLIS = Duration.ofDays(1).toMillis();

    /** A clock that was wrong on one or two days must not make the rest look old. */
    private static final int DAYS_TO_TRUST_THE_CLOCK = 3;

    private final Connection connection;
    private final Rows rows;
    private final String notice;
    private String learner;
    private final Optional<Backups> backups;

    LearnerRecord(Connection connection, String notice, Optional<Backups> backups)
            throws SQLException {
        this.connection = connection;
        this.rows = new Rows(connection);
        this.notice = notice;
        this.backups = backups;
        this.learner = learnerOf(connection);
    }

    /**
     * Opens the record in a folder, or begins one. A file that is damaged is set aside under a name
     * with the time, never overwritten, and a new record begun; {@link #notice} then says so, and
     * {@link #lastGoodBackup} what can be put back. Before an older record is brought up to date, a
     * copy of it is kept.
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

    /** Makes this new, empty record that of a learner from elsewhere. */
    synchronized void becomes(String id) {
        storing(
                LearnerWords.of("storing.learner"),
                () -> rows.update("UPDATE learner SET id = ?", id));
        learner = id;
    }

    /**
     * Stores an answer; returns when it is on the disk.
     *
     * @return its number in the record; later answers have higher ones
     */
    public synchronized long add(Attempt attempt) {
        return storing(LearnerWords.of("storing.answer"), () -> rows.add(learner, attempt));
    }

    /**
     * Stores the answers that are not there yet, all of them or none.
     *
     * @return how many there were
     */
    public synchronized int addMissing(List<Attempt> attempts) {
        return storing(
                LearnerWords.of("storing.answers"),
                () -> together(() -> rows.addMissing(learner, attempts)));
    }

    /** All of it or nothing. */
    private <T> T together(Task<T> task) throws SQLException {
        connection.setAutoCommit(false);
        try {
            T result = task.run();
            connection.commit();
            return result;
        } catch (SQLException e) {
            connection.rollback();
            throw e;
        } finally {
            connection.setAutoCommit(true);
        }
    }

    /** All answers, oldest first. */
    public synchronized List<Attempt> attempts() {
        return query("SELECT * FROM attempt ORDER BY id", Rows::attempt);
    }

    /** The answers to one problem, oldest first. */
    public synchronized List<Attempt> attempts(String problem) {
        return query("SELECT * FROM attempt WHERE problem = ? ORDER BY id", Rows::attempt, problem);
    }

    /** The answers with numbers above this one, oldest first, at most so many. */
    synchronized List<Stored> after(long number, int most) {
        return query(
                "SELECT * FROM attempt WHERE id > ? ORDER BY id LIMIT ?",
                Rows::stored,
                number,
                most);
    }

    /** The latest answers, the last one first. */
    public synchronized List<Stored> latest(int most) {
        return query("SELECT * FROM attempt ORDER BY id DESC LIMIT ?", Rows::stored, most);
    }

    /** The latest answers that match a sort of mistake, the last one first. */
    public synchronized List<Stored> withSlip(String slip, int most) {
        // A range, so that the index serves: the character after @ is A.
        return query(
                "SELECT * FROM attempt WHERE mistake = ? OR (mistake >= ? AND mistake < ?)"
                        + " ORDER BY id DESC LIMIT ?",
                Rows::stored,
                slip,
                slip + "@",
                slip + "A",
                most);
    }

    /** The answer of this number, if it is still there. */
    public synchronized Optional<Stored> find(long number) {
        return query("SELECT * FROM attempt WHERE id = ?", Rows::stored, number).stream()
                .findFirst();
    }

    /** How many answers there are. */
    public synchronized long count() {
        return query("SELECT count(*) FROM attempt", row -> row.getLong(1)).get(0);
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

    /** All settings by name. */
    public synchronized Map<String, String> settings() {
        Map<String, String> all = new LinkedHashMap<>();
        query(
                        "SELECT key, value FROM setting ORDER BY key",
                        row -> Map.entry(row.getString(1), row.getString(2)))
                .forEach(e -> all.put(e.getKey(), e.getValue()));
        return all;
    }

    /** Stores a setting over an earlier one; returns when it is on the disk. */
    public synchronized void set(String key, String value) {
        storing(
                LearnerWords.of("storing.setting", key),
                () ->
                        rows.update(
                                "INSERT INTO setting (key, value) VALUES (?, ?)"
                                        + " ON CONFLICT (key) DO UPDATE SET value = excluded.value",
                                key,
                                value));
    }

    synchronized Optional<Snapshot> snapshot() {
        return query(
                        "SELECT rules, up_to, state FROM snapshot",
                        row -> new Snapshot(row.getString(1), row.getLong(2), row.getString(3)))
                .stream()
                .findFirst();
    }

    /** Stores a snapshot over an older one; of two programs the one further on stays. */
    synchronized void keep(Snapshot snapshot) {
        storing(
                LearnerWords.of("storing.standing"),
                () ->
                        rows.update(
                                "INSERT INTO snapshot (one, rules, up_to, state) VALUES (1, ?, ?, ?)"
                                        + " ON CONFLICT (one) DO UPDATE SET rules = excluded.rules,"
                                        + " up_to = excluded.up_to, state = excluded.state"
                                        + " WHERE excluded.up_to >= up_to"
                                        + " OR excluded.rules <> rules",
                                snapshot.rules(),
                                snapshot.upTo(),
                                snapshot.text()));
    }

    /**
     * Deletes the answers that are older than so many days, from the file and from the copies of
     * it. Age is counted back from the third latest day of work or from now, whichever is earlier,
     * so that a clock that once went far ahead deletes nothing.
     *
     * @return how many answers went
     */
    public synchronized int forgetOlderThan(int days, Instant now) {
        Optional<Long> before = before(days, now);
        if (before.isEmpty()) {
            return 0;
        }
        return storing(
                LearnerWords.of("storing.old"),
                () -> {
                    int gone = rows.update("DELETE FROM attempt WHERE time < ?", before.get());
                    if (gone > 0) {
                        shrink();
                        backups.ifPresent(Backups::delete);
                    }
                    return gone;
                });
    }

    /** How many answers {@link #forgetOlderThan} would delete. */
    public synchronized int olderThan(int days, Instant now) {
        return before(days, now)
                .map(
                        before ->
                                (int)
                                        attempts().stream()
                                                .filter(a -> a.time().toEpochMilli() < before)
                                                .count())
                .orElse(0);
    }

    private Optional<Long> before(int days, Instant now) {
        return trustedMillis()
                .map(trusted -> Math.min(trusted, now.toEpochMilli()) - days * DAY_MILLIS);
    }

    private Optional<Long> trustedMillis() {
        long before = Long.MAX_VALUE;
        for (int day = 0; day < DAYS_TO_TRUST_THE_CLOCK; day++) {
            List<Long> latest =
                    query(
                            "SELECT max(time) FROM attempt WHERE time < ? HAVING max(time) IS NOT NULL",
                            row -> row.getLong(1),
                            before);
            if (latest.isEmpty()) {
                return Optional.empty();
            }
            before = Math.floorDiv(latest.get(0), DAY_MILLIS) * DAY_MILLIS;
        }
        return Optional.of(before);
    }

    /** Takes what was deleted out of the file and its log, not only out of sight. */
    private void shrink() throws SQLException {
        try (Statement sql = connection.createStatement()) {
            sql.execute("VACUUM");
            sql.execute("PRAGMA wal_checkpoint(TRUNCATE)");
        }
    }

    /**
     * Empties the record: every answer, setting and copy, and the learner's id. Another window on
     * the same record cannot store anything from then on. For use before its files are deleted.
     */
    synchronized void erase() {
        storing(
                LearnerWords.of("storing.deleted"),
                () -> {
                    int gone = together(this::deleteEverything);
                    shrink();
                    return gone;
                });
    }

    private int deleteEverything() throws SQLException {
        int gone = 0;
        for (String table : List.of("attempt", "setting", "snapshot", "learner")) {
            gone += rows.update("DELETE FROM " + table);
        }
        return gone;
    }

    /**
     * Keeps a copy of the record beside it, if the last one is a day old and there is something
     * new.
     */
    public synchronized void backUp(Instant now) {
        backups.ifPresent(
                b -> storing(LearnerWords.of("storing.copy"), () -> b.daily(connection, now)));
    }

    /** The latest copy of the record that can be read, if there is one. */
    public Optional<Backups.Copy> lastGoodBackup() {
        return backups.flatMap(Backups::lastGood);
    }

    /**
     * Puts the answers of a copy back that are not here.
     *
     * @return how many there were
     */
    public int putBack(Backups.Copy copy) {
        return addMissing(backups.orElseThrow().attempts(copy));
    }

    /** For tests that fill the disk. */
    Connection connection() {
        return connection;
    }

    @Override
    public synchronized void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            throw new RecordException(LearnerWords.of("record.unclosed", e.getMessage()), e);
        }
    }

    private interface Task<T> {
        T run() throws SQLException;
    }

    private static <T> T storing(String what, Task<T> task) {
        try {
            return task.run();
        } catch (SQLException e) {
            throw RecordException.storing(what, e);
        }
    }

    private <T> List<T> query(String sql, Rows.Reader<T> reader, Object... values) {
        try {
            return rows.query(sql, reader, values);
        } catch (SQLException e) {
            throw RecordException.reading(e);
        }
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
            insert.setString(1, randomId());
            insert.setLong(2, Instant.now().toEpochMilli());
            insert.executeUpdate();
            try (ResultSet row = select.executeQuery()) {
                row.next();
                return row.getString(1);
            }
        }
    }

    static String randomId() {
        SecureRandom random = new SecureRandom();
        StringBuilder id = new StringBuilder();
        for (int i = 0; i < ID_LENGTH; i++) {
            id.append(BASE_32.charAt(random.nextInt(BASE_32.length())));
        }
        return id.toString();
    }

    static boolean isId(String text) {
        return text.length() == ID_LENGTH && text.chars().allMatch(c -> BASE_32.indexOf(c) >= 0);
    }
}
