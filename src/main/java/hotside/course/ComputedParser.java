// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Position;
import org.commonmark.parser.beta.Scanner;

/** Reads computed values between double braces: on one line, without braces inside. */
final class ComputedParser implements InlineContentParser {
    /** No expression is longer. */
    private static final int LONGEST = 200;

    @Override
    public ParsedInline tryParse(InlineParserState state) {
        Scanner scanner = state.scanner();
        if (!scanner.next("{{")) {
            return ParsedInline.none();
        }
        Position start = scanner.position();
        for (int i = 0; i < LONGEST && isInside(scanner.peek()); i++) {
            scanner.next();
        }
        Position end = scanner.position();
        if (!scanner.next("}}")) {
            return ParsedInline.none();
        }
        String expression = scanner.getSource(start, end).getContent().strip();
        return ParsedInline.of(new ComputedValue(expression), scanner.position());
    }

    private static boolean isInside(char c) {
        return c != '{' && c != '}' && c != '\n' && c != Scanner.END;
    }
}
