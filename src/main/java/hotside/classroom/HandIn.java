// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.unit.DecimalHabit;
import java.time.Instant;
import java.util.List;

/**
 * Finished work, as far as the file can vouch for it: nothing in it was changed since it was sealed
 * with this key. It holds no marks.
 *
 * @param set id of the set
 * @param edition of the set
 * @param of hash of the set file that it was worked from
 * @param learner the id that the learner goes by
 * @param habit the learner's decimal mark
 * @param started when work began, by the learner's clock
 * @param entries what was done, in order
 * @param finished when it was handed in, by the learner's clock
 * @param key whose seal it bears
 * @param receipt letters that learner and instructor can compare
 */
public record HandIn(
        String set,
        int edition,
        String of,
        String learner,
        DecimalHabit habit,
        Instant started,
        List<Entry> entries,
        Instant finished,
        PublicKeyText key,
        String receipt) {
    /** How the names of such files end. */
    public static final String ENDING = ".handin";

    private static final int RECEIPT_LETTERS = 8;

    public HandIn {
        entries = List.copyOf(entries);
    }

    /**
     * @throws RefusedException with the reason
     */
    public static HandIn read(byte[] bytes) {
        SealedLines sealed = SealedLines.open(bytes, WorkLines.FORMAT, WorkLines.VERSION);
        WorkLines.Work work = WorkLines.read(sealed.lines());
        WorkLines.Head head = work.head();
        if (work.entries().stream().anyMatch(Entry.Typed.class::isInstance)) {
            throw new RefusedException(Reason.ALTERED, ClassWords.of("hand-in.typed"));
        }
        return new HandIn(
                head.set(),
                head.edition(),
                head.of(),
                head.learner(),
                head.habit(),
                head.started(),
                work.entries(),
                work.finished()
                        .orElseThrow(
                                () ->
                                        new RefusedException(
                                                Reason.TRUNCATED,
                                                ClassWords.of("hand-in.unfinished"))),
                sealed.key(),
                Hashes.letters(Hashes.of(sealed.hash()), RECEIPT_LETTERS));
    }
}
