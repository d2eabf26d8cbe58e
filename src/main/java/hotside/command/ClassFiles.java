// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.KnownKeys;
import hotside.classroom.Roster;
import hotside.classroom.SigningKey;
import hotside.learner.OwnContent;
import hotside.learner.RecordFolder;
import hotside.problem.ProblemBank;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;

/** Where the class's files lie, and how their options are read. */
final class ClassFiles {
    private ClassFiles() {}

    /** The problems that sets are made of: the shipped ones and the teacher's own. */
    static ProblemBank bank() {
        return OwnContent.bank(OwnContent.folder());
    }

    static Path keys() {
        return RecordFolder.usual().resolve("keys");
    }

    /** The person's own key, for the instructor's sets or the learner's hand-ins. */
    static SigningKey key(Path named, String usual) throws IOException {
        return SigningKey.kept(named == null ? keys().resolve(usual + ".key") : named);
    }

    static KnownKeys knownKeys() throws IOException {
        return KnownKeys.of(keys().resolve("known.txt"));
    }

    /** The roster, its findings told; nothing if none was named. */
    static Optional<Roster> roster(Path file, PrintWriter err) throws IOException {
        if (file == null) {
            return Optional.empty();
        }
        Roster roster = Roster.read(file);
        roster.findings().forEach(f -> err.println(f.text()));
        return Optional.of(roster);
    }

    /** A date is meant to its last second; without a zone it is that of this machine. */
    static Instant date(String written) {
        // A paper and the desk write a due date with a blank, and people copy what they see.
        String text = written.strip().replace(' ', 'T');
        try {
            return text.endsWith("Z")
                    ? Instant.parse(text)
                    : (text.contains("T")
                                    ? LocalDateTime.parse(text)
                                    : LocalDate.parse(text).atTime(LocalTime.of(23, 59, 59)))
                            .atZone(ZoneId.systemDefault())
                            .toInstant();
        } catch (DateTimeException e) {
            throw new UsageException(
                    "\""
                            + written
                            + "\" is no date. Write 2026-12-01, 2026-12-01T18:00 or 2026-12-01T17:00:00Z.");
        }
    }
}
