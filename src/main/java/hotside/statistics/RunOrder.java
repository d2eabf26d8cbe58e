// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import java.util.Locale;

/** Reads rows of runs written as letters, one a run: {@code ABBA}, {@code A-B-A}, {@code a b}. */
final class RunOrder {
    private RunOrder() {}

    /**
     * The letters, in capitals, without blanks, commas and hyphens.
     *
     * @param last the last letter that may stand there
     */
    static String letters(String relation, String slot, String text, char last) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.substring(i, i + 1).toUpperCase(Locale.ROOT).charAt(0);
            if (c >= 'A' && c <= last) {
                out.append(c);
            } else if (" ,-\t".indexOf(c) < 0) {
                throw Samples.refuse(
                        relation,
                        slot,
                        "\""
                                + text
                                + "\" has \""
                                + text.charAt(i)
                                + "\" in place "
                                + (i + 1)
                                + "; write one letter a run, A to "
                                + last
                                + ", such as ABBA");
            }
        }
        return out.toString();
    }

    /** Each letter once, in the order of the alphabet. */
    static String different(String letters) {
        StringBuilder out = new StringBuilder();
        letters.chars().sorted().distinct().forEach(out::appendCodePoint);
        return out.toString();
    }

    /** Refuses letters that are not one for each reading. */
    static void oneLetterEach(
            String relation, String slot, String letters, String of, double[] readings) {
        if (letters.length() != readings.length) {
            throw Samples.refuse(
                    relation,
                    slot,
                    "has "
                            + letters.length()
                            + " letters for "
                            + readings.length
                            + " "
                            + of
                            + "; write one letter each");
        }
    }
}
