// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import java.util.regex.Pattern;

/** Typed and pasted text made uniform before it is read. */
final class Spelling {
    private static final Pattern INVISIBLE = Pattern.compile("[\\p{Cf}\\x{FEFF}]");
    private static final Pattern MINUS = Pattern.compile("[\\u2010-\\u2015\\u2212\\uFE63\\uFF0D]");
    private static final Pattern NARROW_SPACE = Pattern.compile("[\\u2000-\\u200A\\u202F\\u205F]");
    private static final Pattern APOSTROPHE = Pattern.compile("[\\u2018\\u2019\\u02BC\\uFF07]");
    private static final Pattern BLANKS = Pattern.compile("[\\s\\x{85}]+");
    private static final int LONGEST_QUOTE = 40;

    /** A space that never separates two readings. */
    static final char FIXED_SPACE = '\u00A0';

    private Spelling() {}

    /** As {@link #marks}, with every run of blanks as one space and none at the ends. */
    static String tidy(String text) {
        String even = BLANKS.matcher(marks(text)).replaceAll(" ").strip();
        return stripFixed(even);
    }

    /** One kind of minus, apostrophe and fixed space; line breaks and spaces as they were. */
    static String marks(String text) {
        String visible = INVISIBLE.matcher(text).replaceAll("");
        String minus = MINUS.matcher(visible).replaceAll("-");
        String spaces = NARROW_SPACE.matcher(minus).replaceAll(String.valueOf(FIXED_SPACE));
        return APOSTROPHE
                .matcher(spaces)
                .replaceAll("'")
                .replace('μ', 'µ')
                .replaceAll("[″“”]", "\"");
    }

    /** The text between double quotes, cut if long. */
    static String quote(String text) {
        String shown = text.replace(FIXED_SPACE, ' ');
        int end = Math.min(shown.length(), LONGEST_QUOTE);
        if (end < shown.length() && Character.isHighSurrogate(shown.charAt(end - 1))) {
            end--;
        }
        String cut = shown.substring(0, end) + (end < shown.length() ? "…" : "");
        return UnitWords.of("quoted", cut);
    }

    private static String stripFixed(String text) {
        int from = 0;
        int to = text.length();
        while (from < to && isBlank(text.charAt(from))) {
            from++;
        }
        while (to > from && isBlank(text.charAt(to - 1))) {
            to--;
        }
        return text.substring(from, to);
    }

    private static boolean isBlank(char c) {
        return c == ' ' || c == FIXED_SPACE;
    }

    /** Letters to put in, take out or change to make one spelling of the other. */
    static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int above = row[j];
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(diagonal + change, 1 + Math.min(above, row[j - 1]));
                diagonal = above;
            }
        }
        return row[b.length()];
    }
}
