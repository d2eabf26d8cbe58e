// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * The tables of a record file, as the steps that lead to them. The file's {@code user_version} is
 * the number of steps it has taken; a published step is never edited, only followed by another.
 *
 * @param steps SQL statements of each step, oldest first
 */
record Schema(List<List<String>> steps) {
    /** Marks the file as a record: {@code HOTS} in ASCII. */
    static final int APPLICATION_ID = 0x484F5453;

    static final Schema NOW =
            new Schema(
                    List.of(
                            List.of(
                                    """
                                    CREATE TABLE learner (
                                      id TEXT PRIMARY KEY,
                                      created INTEGER NOT NULL
                                    ) STRICT
                                    """,
                                    """
                                    CREATE TABLE attempt (
                                      id INTEGER PRIMARY KEY AUTOINCREMENT,
                                      learner TEXT NOT NULL REFERENCES learner(id),
                                      problem TEXT NOT NULL,
                                      seed TEXT NOT NULL,
                                      generator TEXT NOT NULL,
                                      fingerprint TEXT NOT NULL,
                                      unit_system TEXT NOT NULL,
                                      ask INTEGER NOT NULL,
                                      answer TEXT NOT NULL,
                                      verdict TEXT NOT NULL,
                                      mistake TEXT,
                                      correct INTEGER NOT NULL,
                                      hints INTEGER NOT NULL,
                                      seconds REAL NOT NULL,
                                      time INTEGER NOT NULL,
                                      lesson TEXT
                                    ) STRICT
                                    """,
                                    "CREATE INDEX attempt_by_problem ON attempt(problem)",
                                    """
                                    CREATE TABLE setting (
                                      key TEXT PRIMARY KEY,
                                      value TEXT NOT NULL
                                    ) STRICT
                                    """),
                            List.of(
                                    """
                                    ALTER TABLE attempt
                                      ADD COLUMN way TEXT NOT NULL DEFAULT 'full'
                                    """,
                                    "DROP INDEX attempt_by_problem",
                                    """
                                    CREATE INDEX attempt_by_problem
                                      ON attempt(problem, correct, time)
                                    """,
                                    "CREATE INDEX attempt_by_time ON attempt(time)",
                                    """
                                    CREATE INDEX attempt_by_mistake ON attempt(mistake)
                                      WHERE mistake IS NOT NULL
                                    """,
                                    """
                                    CREATE TABLE snapshot (
                                      one INTEGER PRIMARY KEY CHECK (one = 1),
                                      rules TEXT NOT NULL,
                                      up_to INTEGER NOT NULL,
                                      state TEXT NOT NULL
                                    ) STRICT
                                    """)));

    /** These steps and one more. */
    Schema then(String... statements) {
        List<List<String>> more = new ArrayList<>(steps);
        more.add(List.of(statements));
        return new Schema(List.copyOf(more));
    }

    /** The first steps only: the schema of an earlier version. */
    Schema upTo(int version) {
        return new Schema(List.copyOf(steps.subList(0, version)));
    }

    int version() {
        return steps.size();
    }

    /** Takes the steps that the file has not taken; all of them or none. */
    void bring(Connection connection) throws SQLException {
        try (Statement sql = connection.createStatement()) {
            sql.execute("BEGIN IMMEDIATE");
            try {
                for (int step = number(sql, "user_version"); step < version(); step++) {
                    for (String statement : steps.get(step)) {
                        sql.execute(statement);
                    }
                }
                sql.execute("PRAGMA application_id = " + APPLICATION_ID);
                sql.execute("PRAGMA user_version = " + version());
                sql.execute("COMMIT");
            } catch (SQLException e) {
                rollBack(sql, e);
                throw e;
            }
        }
    }

    private static void rollBack(Statement sql, SQLException cause) {
        try {
            sql.execute("ROLLBACK");
        } catch (SQLException alreadyRolledBack) {
            cause.addSuppressed(alreadyRolledBack);
        }
    }

    /** A number that the file keeps in its head. */
    static int number(Statement sql, String pragma) throws SQLException {
        try (ResultSet row = sql.executeQuery("PRAGMA " + pragma)) {
            row.next();
            return row.getInt(1);
        }
    }
}
