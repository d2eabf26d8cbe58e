// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Spelling suggestions: the candidate that takes the fewest single-letter edits (insert, delete,
 * replace, swap two neighbours; Damerau 1964 in the optimal string alignment form). Capitals don't
 * count.
 */
public final class Nearest {
    private static final int LONGEST_WORD = 60;
    private static final int LETTERS_PER_SLIP = 3;

    private Nearest() {}

    /**
     * The candidate probably meant: at most one slip for every three letters, one at least, and
     * never all letters wrong; else one that the word begins, if it has three letters. The first of
     * equals.
     */
    public static Optional<String> to(String word, Collection<String> candidates) {
        if (word.isEmpty() || word.length() > LONGEST_WORD) {
            return Optional.empty();
        }
        int allowed = Math.min(word.length() - 1, Math.max(1, word.length() / LETTERS_PER_SLIP));
        Optional<String> misspelt =
                candidates.stream()
                        .filter(c -> Math.abs(c.length() - word.length()) <= allowed)
                        .min(Comparator.comparingInt(c -> distance(word, c)))
                        .filter(c -> distance(word, c) <= allowed);
        return misspelt.or(() -> begunBy(word, candidates));
    }

    private static Optional<String> begunBy(String word, Collection<String> candidates) {
        return candidates.stream()
                .filter(c -> word.length() >= LETTERS_PER_SLIP && start(c).startsWith(start(word)))
                .findFirst();
    }

    /** All candidates, the nearest spelling first, equals in the order given. */
    public static List<String> sorted(String word, Collection<String> candidates) {
        if (word.length() > LONGEST_WORD) {
            return List.copyOf(candidates);
        }
        return candidates.stream()
                .sorted(Comparator.comparingInt(candidate -> distance(word, candidate)))
                .toList();
    }

    /**
     * How many edits turn one word into the other; words are compared by their first 60 letters.
     */
    static int distance(String one, String other) {
        String a = start(one);
        String b = start(other);
        int[][] edits = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                edits[i][j] = i == 0 || j == 0 ? i + j : fewest(edits, a, b, i, j);
            }
        }
        return edits[a.length()][b.length()];
    }

    private static int fewest(int[][] edits, String a, String b, int i, int j) {
        int replaced = edits[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int fewest = Math.min(replaced, 1 + Math.min(edits[i - 1][j], edits[i][j - 1]));
        boolean swapped =
                i > 1
                        && j > 1
                        && a.charAt(i - 1) == b.charAt(j - 2)
                        && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(fewest, 1 + edits[i - 2][j - 2]) : fewest;
    }

    private static String start(String word) {
        return word.substring(0, Math.min(word.length(), LONGEST_WORD)).toLowerCase(Locale.ROOT);
    }
}
