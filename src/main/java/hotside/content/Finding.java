// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import hotside.speech.Phrases;

/**
 * Something wrong in a file: what, where, what was expected, how to mend it.
 *
 * @param path the file as the reader was told it
 * @param line from 1
 * @param column from 1, in code points
 * @param what a phrase without a full stop
 * @param excerpt the line with the place of the caret
 * @param expected what would have been right; empty if it goes without saying
 * @param mend how to put it right; empty if it goes without saying
 */
public record Finding(
        String path,
        int line,
        int column,
        String what,
        Excerpt excerpt,
        String expected,
        String mend) {
    private static final Phrases WORDS = Phrases.of("hotside.content.words");

    private static final int LONGEST_PHRASE = 400;
    private static final int LINE_NUMBER_WIDTH = 6;

    /** Texts quoted from a file are made visible here, so that a finding is safe to show. */
    public Finding {
        what = Visible.cut(what, LONGEST_PHRASE);
        expected = Visible.cut(expected, LONGEST_PHRASE);
        mend = Visible.cut(mend, LONGEST_PHRASE);
    }

    /** A finding about a file as a whole, which has no line to show. */
    public static Finding about(String path, String what, String expected, String mend) {
        return new Finding(path, 1, 1, what, Excerpt.NONE, expected, mend);
    }

    public Place place() {
        return new Place(line, column);
    }

    /** {@code path:line:col: what}. */
    public String oneLine() {
        return Visible.of(path) + ":" + line + ":" + column + ": " + what;
    }

    /** The whole finding on several lines, without a line end after the last. */
    public String text() {
        StringBuilder out = new StringBuilder(oneLine());
        if (!excerpt.text().isEmpty()) {
            String number = Integer.toString(line);
            String margin = " ".repeat(Math.max(0, LINE_NUMBER_WIDTH - number.length()));
            String shown = margin + number + " | ";
            out.append('\n').append(shown).append(excerpt.text());
            out.append('\n').append(" ".repeat(shown.length() + excerpt.caret())).append('^');
        }
        if (!expected.isEmpty()) {
            out.append("\n  ").append(WORDS.get("finding.expected", expected));
        }
        if (!mend.isEmpty()) {
            out.append("\n  ").append(WORDS.get("finding.mend", mend));
        }
        return out.toString();
    }

    @Override
    public String toString() {
        return text();
    }
}
