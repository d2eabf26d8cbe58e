// SPDX-License-Identifier: Apache-2.0
package hotside.content;

/**
 * A line of a file as shown under a finding, cut to about a hundred characters round the column,
 * with control characters made visible.
 *
 * @param text empty where there is no line to show
 * @param caret how many characters stand before the one meant
 */
public record Excerpt(String text, int caret) {
    /** Nothing to show. */
    public static final Excerpt NONE = new Excerpt("", 0);

    private static final int WIDEST = 100;

    /** The part of the line round the column (from 1, in code points). */
    public static Excerpt of(String line, int column) {
        int length = line.codePointCount(0, line.length());
        int at = Math.min(column - 1, length);
        if (length <= WIDEST) {
            return new Excerpt(Visible.of(line), at);
        }
        int from = Math.max(0, Math.min(at - WIDEST / 2, length - WIDEST));
        int first = line.offsetByCodePoints(0, from);
        int last = line.offsetByCodePoints(first, WIDEST);
        String before = from > 0 ? "…" : "";
        String after = from + WIDEST < length ? "…" : "";
        String part = Visible.of(line.substring(first, last));
        return new Excerpt(before + part + after, at - from + before.length());
    }
}
