// SPDX-License-Identifier: Apache-2.0
package hotside.content;

/**
 * A single value of front matter. Its text is as written: {@code 12.5 kPa}, {@code yes} and {@code
 * 1e3} stay text until somebody asks for more. It holds no control characters but line ends.
 *
 * @param place where it starts, the quote or the {@code |} included
 * @param text without quotes; empty if nothing was written
 * @param style how it was written
 * @param start where the first character of the text stands, exact for every style but {@link
 *     Style#FOLDED}
 */
public record ScalarNode(Place place, String text, Style style, Place start) implements Node {
    /** How a value is written, which decides what its text says about places in the file. */
    public enum Style {
        /** On one line without quotes. */
        PLAIN,
        /** On one line in quotes. */
        QUOTED,
        /** After {@code |}: line for line. */
        LITERAL,
        /** Over several lines that were joined. */
        FOLDED,
        /** Not readable; a finding has been made, and readers pass over it in silence. */
        FAULTY
    }

    /** A value on one line without quotes. */
    public ScalarNode(Place place, String text) {
        this(place, text, Style.PLAIN, place);
    }

    static ScalarNode faulty(Place place) {
        return new ScalarNode(place, "", Style.FAULTY, place);
    }

    /** Whether a finding about it has been made already. */
    public boolean isFaulty() {
        return style == Style.FAULTY;
    }

    /** Whether nothing was written after the key, not even empty quotes. */
    public boolean isEmpty() {
        return style == Style.PLAIN && text.isEmpty();
    }

    /**
     * The place in the file of a character of the text. Exact for plain and literal text, and for
     * quoted text without escapes before that character; the start of the value where lines were
     * joined.
     *
     * @param offset 0 to the length of the text; beyond it, its end is meant
     */
    public Place at(int offset) {
        int end = Math.max(0, Math.min(offset, text.length()));
        return switch (style) {
            case PLAIN, QUOTED -> start.right(text.codePointCount(0, end));
            case LITERAL -> literal(end);
            case FOLDED, FAULTY -> place;
        };
    }

    private Place literal(int end) {
        int lineStart = text.lastIndexOf('\n', end - 1) + 1;
        int below = (int) text.substring(0, lineStart).chars().filter(c -> c == '\n').count();
        int across = text.codePointCount(lineStart, end);
        return new Place(start.line() + below, start.column() + across);
    }

    @Override
    public String kind() {
        return isEmpty() ? "empty" : "text";
    }
}
