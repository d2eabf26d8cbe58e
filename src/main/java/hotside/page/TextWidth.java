// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.util.ArrayList;
import java.util.List;

/**
 * About how wide text is in a sans-serif face, on the wide side, so that what is laid out by it is
 * never cut. No font is at hand where charts are written: they go to a window, to paper or to a
 * file.
 */
final class TextWidth {
    private static final double NARROW = 0.31;
    private static final double USUAL = 0.58;
    private static final double WIDE = 0.90;
    private static final double FULL = 1.05;
    private static final int LAST_ALPHABET = 0x2E80;

    private TextWidth() {}

    /** Width in pixels at this font size. */
    static double of(String text, double size) {
        return size * text.codePoints().mapToDouble(TextWidth::ems).sum();
    }

    private static double ems(int c) {
        if ("iIjlt.,:;|!'()[] /-·".indexOf(c) >= 0) {
            return NARROW;
        }
        if (c >= LAST_ALPHABET) {
            return FULL;
        }
        return "mwMW%@—".indexOf(c) >= 0 ? WIDE : Character.isUpperCase(c) ? 0.7 : USUAL;
    }

    /** Lines no wider than this, broken at spaces, and inside a word only if it must be. */
    static List<String> wrap(String text, double width, double size) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            if (!line.isEmpty() && of(line + " " + word, size) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
            while (of(line.toString(), size) > width && line.length() > 1) {
                int fits = fitting(line, width, size);
                lines.add(line.substring(0, fits));
                line.delete(0, fits);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    /** How many characters fit, one at least; a character of two halves is not cut. */
    private static int fitting(CharSequence text, double width, double size) {
        int fits = Character.charCount(Character.codePointAt(text, 0));
        while (fits < text.length()) {
            int next = fits + Character.charCount(Character.codePointAt(text, fits));
            if (of(text.subSequence(0, next).toString(), size) > width) {
                break;
            }
            fits = next;
        }
        return fits;
    }
}
