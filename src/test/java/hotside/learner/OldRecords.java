// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.Statement;

/**
 * Records as earlier versions of the program wrote them. What is here is never changed: it stands
 * for the files that are out there.
 */
final class OldRecords {
    private OldRecords() {}

    /** Version 1: no way of setting, no snapshot. */
    private static final String[] VERSION_1 = {
        "CREATE TABLE learner (id TEXT PRIMARY KEY, created INTEGER NOT NULL) STRICT",
        """
        CREATE TABLE attempt (
          id INTEGER PRIMARY KEY AUTOINCREMENT, learner TEXT NOT NULL REFERENCES learner(id),
          problem TEXT NOT NULL, seed TEXT NOT NULL, generator TEXT NOT NULL,
          fingerprint TEXT NOT NULL, unit_system TEXT NOT NULL, ask INTEGER NOT NULL,
          answer TEXT NOT NULL, verdict TEXT NOT NULL, mistake TEXT, correct INTEGER NOT NULL,
          hints INTEGER NOT NULL, seconds REAL NOT NULL, time INTEGER NOT NULL, lesson TEXT
        ) STRICT
        """,
        "CREATE INDEX attempt_by_problem ON attempt(problem)",
        "CREATE TABLE setting (key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT",
        "PRAGMA application_id = 1213158483",
        "PRAGMA user_version = 1",
        "INSERT INTO learner VALUES ('0123456789', 1764000000000)",
        "INSERT INTO setting VALUES ('units', 'US_SHOP')",
    };

    /** Writes a record of that version with the sample attempts from 0. */
    static void write(Path folder, int version, int attempts) throws Exception {
        if (version != 1) {
            throw new IllegalArgumentException("no record of version " + version + " is kept");
        }
        Files.createDirectories(folder);
        String url = "jdbc:sqlite:" + folder.resolve(RecordFile.NAME);
        try (Connection connection = DriverManager.getConnection(url);
                Statement sql = connection.createStatement()) {
            sql.execute("PRAGMA journal_mode = WAL");
            for (String statement : VERSION_1) {
                sql.execute(statement);
            }
            for (int i = 0; i < attempts; i++) {
                add(connection, Samples.attempt(i));
            }
        }
    }

    private static void add(Connection connection, Attempt a) throws Exception {
        String sql =
                "INSERT INTO attempt (learner, problem, seed, generator, fingerprint, unit_system,"
                        + " ask, answer, verdict, mistake, correct, hints, seconds, time, lesson)"
                        + " VALUES ('0123456789',?,?,?,?,?,?,?,?,?,?,?,?,?,?)";
        try (PreparedStatement insert = connection.prepareStatement(sql)) {
            Object[] values = {
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
                a.lesson()
            };
            for (int i = 0; i < values.length; i++) {
                insert.setObject(i + 1, values[i]);
            }
            insert.executeUpdate();
        }
    }
}
