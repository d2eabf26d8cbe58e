// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Reading and writing rows of a record. */
final class Rows {
    private static final String INSERT =
            "INSERT INTO attempt (learner, problem, seed, generator, fingerprint, unit_system, ask,"
                    + " answer, verdict, mistake, correct, hints, seconds, time, lesson, way)"
                    + " SELECT ?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?";

    private static final String UNLESS_THERE =
            " WHERE NOT EXISTS (SELECT 1 FROM attempt WHERE problem = ? AND correct = ?"
                    + " AND time = ? AND seed = ? AND ask = ? AND answer = ?)";

    private final Connection connection;

    Rows(Connection connection) {
        this.connection = connection;
    }

    /** Turns a row into a value. */
    interface Reader<T> {
        T read(ResultSet row) throws SQLException;
    }

    <T> List<T> query(String sql, Reader<T> reader, Object... values) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(sql)) {
            bind(select, values);
            try (ResultSet rows = select.executeQuery()) {
                List<T> all = new ArrayList<>();
                while (rows.next()) {
                    all.add(reader.read(rows));
                }
                return all;
            }
        }
    }

    /** The number of rows that were changed. */
    int update(String sql, Object... values) throws SQLException {
        try (PreparedStatement change = connection.prepareStatement(sql)) {
            bind(change, values);
            return change.executeUpdate();
        }
    }

    long add(String learner, Attempt attempt) throws SQLException {
        update(INSERT, values(learner, attempt));
        return query("SELECT last_insert_rowid()", row -> row.getLong(1)).get(0);
    }

    /** How many of the attempts were not there yet and are now. */
    int addMissing(String learner, List<Attempt> attempts) throws SQLException {
        int added = 0;
        try (PreparedStatement insert = connection.prepareStatement(INSERT + UNLESS_THERE)) {
            for (Attempt a : attempts) {
                List<Object> values = new ArrayList<>(java.util.Arrays.asList(values(learner, a)));
                values.add(a.problem());
                values.add(a.correct() ? 1 : 0);
                values.add(a.time().toEpochMilli());
                values.add(a.seed());
                values.add(a.ask());
                values.add(a.answer());
                bind(insert, values.toArray());
                added += insert.executeUpdate();
            }
        }
        return added;
    }

    private static Object[] values(String learner, Attempt a) {
        return new Object[] {
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
            a.lesson(),
            a.way().id()
        };
    }

    static Stored stored(ResultSet row) throws SQLException {
        return new Stored(row.getLong("id"), attempt(row));
    }

    static Attempt attempt(ResultSet row) throws SQLException {
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
                row.getString("lesson"),
                way(row.getString("way")));
    }

    /** A way that is not known is as good as one that proves nothing. */
    static Attempt.Way way(String id) {
        try {
            return Attempt.Way.valueOf(id.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            return Attempt.Way.AGAIN;
        }
    }

    private static void bind(PreparedStatement statement, Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
    }
}
