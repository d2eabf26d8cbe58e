// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Position;
import org.commonmark.parser.beta.Scanner;

/**
 * Reads formulas between dollar signs. A single dollar opens a formula only before a non-space and
 * closes it only after one: prices stay prices.
 *
 * <p>One is made for each paragraph and remembers where it looked in vain, so that a text of
 * nothing but dollars is read once and not once for each of them.
 */
final class FormulaParser implements InlineContentParser {
    private static final int DISPLAY = 2;

    /** By number of dollars: true if no such run follows that could close anything. */
    private final boolean[] hopeless = new boolean[DISPLAY + 1];

    @Override
    public ParsedInline tryParse(InlineParserState state) {
        Scanner scanner = state.scanner();
        if (scanner.peekPreviousCodePoint() == '$') {
            // Inside a run that was turned down as a whole.
            return ParsedInline.none();
        }
        int dollars = scanner.matchMultiple('$');
        boolean opens =
                dollars <= DISPLAY
                        && !hopeless[dollars]
                        && scanner.hasNext()
                        && (dollars == DISPLAY || !Character.isWhitespace(scanner.peek()));
        return opens ? upToTheClose(scanner, dollars) : ParsedInline.none();
    }

    private ParsedInline upToTheClose(Scanner scanner, int dollars) {
        Position start = scanner.position();
        while (scanner.find('$') >= 0) {
            Position end = scanner.position();
            int before = scanner.peekPreviousCodePoint();
            boolean fits = dollars == DISPLAY || !Character.isWhitespace(before);
            if (scanner.matchMultiple('$') == dollars && fits && before != '\\') {
                String source = scanner.getSource(start, end).getContent().strip();
                return source.isEmpty()
                        ? ParsedInline.none()
                        : ParsedInline.of(new Tex(source, dollars == DISPLAY), scanner.position());
            }
        }
        hopeless[dollars] = true;
        return ParsedInline.none();
    }
}
