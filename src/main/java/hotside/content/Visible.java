// SPDX-License-Identifier: Apache-2.0
package hotside.content;

/**
 * Text from strangers made fit for a terminal or a window: one code point stays one code point, so
 * that columns keep their place.
 */
public final class Visible {
    private static final int CONTROL_PICTURES = 0x2400;
    private static final int PICTURE_OF_DELETE = 0x2421;
    private static final int TAB_ARROW = '→';
    private static final int REPLACEMENT = 0xFFFD;

    private Visible() {}

    /** The text with every control, direction mark and broken character made visible. */
    public static String of(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().map(Visible::of).forEach(out::appendCodePoint);
        return out.toString();
    }

    /** The text made visible and cut to so many code points, the last of them an ellipsis. */
    public static String cut(String text, int most) {
        if (text.codePointCount(0, text.length()) <= most) {
            return of(text);
        }
        return of(text.substring(0, text.offsetByCodePoints(0, most - 1))) + "…";
    }

    private static int of(int c) {
        if (c == '\t') {
            return TAB_ARROW;
        }
        if (c < ' ') {
            return CONTROL_PICTURES + c;
        }
        if (c == 0x7F) {
            return PICTURE_OF_DELETE;
        }
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR ->
                    REPLACEMENT;
            default -> c;
        };
    }
}
