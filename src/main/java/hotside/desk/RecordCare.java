// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.learner.Learners;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/**
 * Who works at the desk, and whole records. Nothing here runs on the screen's thread but what comes
 * after; that is not run if the record failed, which the person is told.
 */
interface RecordCare {
    /** Everybody with a record here. */
    void learners(Consumer<List<Learners.Seat>> then);

    /** Another learner sits down. */
    void turnTo(Path folder, Runnable then);

    /** A new learner sits down. */
    void another(Runnable then);

    /** Takes a record file in; its learner sits down. */
    void take(Path file, Consumer<Learners.Imported> then);

    /** Deletes the record of whoever sits here; the next one sits down, or a new one. */
    void delete(Runnable then);
}
