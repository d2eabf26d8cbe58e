// SPDX-License-Identifier: Apache-2.0
package hotside.page;

/** Refuses TeX that no lesson needs, before any work is spent on it. */
final class TexGuard {
    /** The longest formula, in characters. */
    static final int LONGEST = 4_000;

    /** How deep braces may nest. */
    static final int DEEPEST = 40;

    private TexGuard() {}

    /**
     * @throws MathsException if the TeX is too long, nests too deep or holds a character that XML
     *     forbids
     */
    static void check(String tex) {
        if (tex.length() > LONGEST) {
            throw new MathsException(
                    "the formula has %,d characters; at most %,d can be set, so write it as several"
                            .formatted(tex.length(), LONGEST),
                    LONGEST + 1);
        }
        int depth = 0;
        for (int i = 0; i < tex.length(); i++) {
            char c = tex.charAt(i);
            if (c == '\\') {
                i = skipEscaped(tex, i);
            } else if (c == '{' && ++depth > DEEPEST) {
                throw new MathsException(
                        "braces nest deeper than " + DEEPEST + "; take parts out of them", i + 1);
            } else if (c == '}') {
                depth--;
            }
            requireWritable(tex, i);
        }
    }

    /** A brace after a backslash is a character, not a group. */
    private static int skipEscaped(String tex, int backslash) {
        int next = backslash + 1;
        return next < tex.length() && "{}\\".indexOf(tex.charAt(next)) >= 0 ? next : backslash;
    }

    private static void requireWritable(String tex, int i) {
        if (!Xml.writable(tex, i)) {
            throw new MathsException(
                    "character U+%04X cannot be printed; remove it".formatted((int) tex.charAt(i)),
                    i + 1);
        }
    }
}
