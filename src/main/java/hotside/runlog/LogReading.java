// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.content.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What came of reading a file.
 *
 * @param log empty if nothing in the file could be used
 * @param findings what is odd about the file, in its order
 * @param notes how it was understood where it left a choice; whole sentences
 */
public record LogReading(Optional<RunLog> log, List<Finding> findings, List<String> notes) {
    public LogReading {
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
    }
}
