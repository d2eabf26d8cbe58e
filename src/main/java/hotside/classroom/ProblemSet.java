// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.unit.UnitSystem;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Problems that a class is given.
 *
 * @param id of the set, letters and digits joined by hyphens
 * @param edition goes up when the set is changed and handed out anew; other numbers follow
 * @param title for people
 * @param generator version of the number generator that its variants are drawn with
 * @param rules how it is to be worked
 * @param items in order
 */
public record ProblemSet(
        String id, int edition, String title, int generator, Rules rules, List<Item> items) {
    /** More would not fit into a learner's week. */
    public static final int MOST_ITEMS = 100;

    static final int LONGEST_TITLE = 120;

    public ProblemSet {
        items = List.copyOf(items);
        if (items.isEmpty() || items.size() > MOST_ITEMS) {
            throw new IllegalArgumentException(
                    ClassWords.of("set.items", MOST_ITEMS, items.size()));
        }
        if (edition < 1) {
            throw new IllegalArgumentException(ClassWords.of("set.edition", edition));
        }
        if (title.isBlank() || title.length() > LONGEST_TITLE) {
            throw new IllegalArgumentException(ClassWords.of("set.title", LONGEST_TITLE));
        }
        Ids.require(ClassWords.of("id.set"), id);
    }

    /** Whose numbers a learner gets. */
    public enum Numbers {
        /** Everybody the same. */
        SAME,
        /** Everybody their own. */
        OWN
    }

    /** When a learner is told how an answer was. */
    public enum Feedback {
        /** With every answer. */
        NOW,
        /** Once the date has passed. */
        AFTER_DUE
    }

    /**
     * How a set is to be worked.
     *
     * @param units the shop that the numbers are of
     * @param numbers whose numbers a learner gets
     * @param tries how many counted tries a problem has while feedback comes at once; 0 for any
     * @param hints true if hints may be read
     * @param feedback when a learner is told how an answer was
     * @param due when it has to be finished, if ever
     */
    public record Rules(
            UnitSystem units,
            Numbers numbers,
            int tries,
            boolean hints,
            Feedback feedback,
            Optional<Instant> due) {
        static final int MOST_TRIES = 100;

        public Rules {
            if (tries < 0 || tries > MOST_TRIES) {
                throw new IllegalArgumentException(ClassWords.of("set.tries", MOST_TRIES, tries));
            }
            if (feedback == Feedback.AFTER_DUE && due.isEmpty()) {
                throw new IllegalArgumentException(ClassWords.of("set.due"));
            }
        }
    }

    /**
     * One problem of a set.
     *
     * @param problem id of its template
     * @param fingerprint of the template as it was when the set was made
     * @param points what it is worth, 1 to 100
     */
    public record Item(String problem, String fingerprint, int points) {
        static final int MOST_POINTS = 100;

        public Item {
            if (points < 1 || points > MOST_POINTS) {
                throw new IllegalArgumentException(
                        ClassWords.of("set.points", MOST_POINTS, points));
            }
        }
    }

    /** All points together. */
    public int points() {
        return items.stream().mapToInt(Item::points).sum();
    }

    /**
     * The seed of a learner's variant: the first eight bytes, big end first, of the SHA-256 of set,
     * edition, learner and slot, each closed by a line end.
     *
     * @param learner the learner's id; without effect if all have the same numbers
     * @param slot the item's index, from 0
     */
    public long seed(String learner, int slot) {
        String whose = rules.numbers() == Numbers.SAME ? "" : learner;
        byte[] hash = Hashes.of(id, String.valueOf(edition), whose, String.valueOf(slot + 1));
        return java.nio.ByteBuffer.wrap(hash).getLong();
    }

    /** The code on a learner's paper, which tells whose numbers it has. */
    public String paperCode(String learner) {
        byte[] hash = Hashes.of("paper", id, String.valueOf(edition), learner);
        String letters = Hashes.letters(hash, 8);
        return letters.substring(0, 4) + "-" + letters.substring(4);
    }
}
