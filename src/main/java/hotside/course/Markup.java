// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import java.util.List;
import java.util.Set;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Position;
import org.commonmark.parser.beta.Scanner;

/**
 * The Markdown of lessons and problems: CommonMark with tables, formulas between dollar signs and
 * computed values in double braces. Raw HTML stays what it is, text; nesting is bounded, so that no
 * file can exhaust the stack.
 */
public final class Markup {
    /** The extensions that a renderer of these trees must know too. */
    public static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());

    /** Nobody quotes a quotation this often in earnest. */
    private static final int DEEPEST = 40;

    private static final Parser PARSER =
            Parser.builder()
                    .extensions(EXTENSIONS)
                    .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
                    .maxOpenBlockParsers(DEEPEST)
                    .maxInlineNesting(DEEPEST)
                    .customInlineContentParserFactory(factory('$', Markup::formula))
                    .customInlineContentParserFactory(factory('{', Markup::computed))
                    .build();

    private Markup() {}

    /** The tree of a text; safe for any text. */
    public static Node parse(String markdown) {
        return PARSER.parse(markdown);
    }

    private static InlineContentParserFactory factory(char trigger, InlineContentParser parser) {
        return new InlineContentParserFactory() {
            @Override
            public Set<Character> getTriggerCharacters() {
                return Set.of(trigger);
            }

            @Override
            public InlineContentParser create() {
                return parser;
            }
        };
    }

    /**
     * A single dollar opens a formula only before a non-space and closes it only after one: prices
     * stay prices.
     */
    private static ParsedInline formula(org.commonmark.parser.beta.InlineParserState state) {
        Scanner scanner = state.scanner();
        int dollars = scanner.matchMultiple('$');
        if (dollars > 2
                || !scanner.hasNext()
                || dollars == 1 && Character.isWhitespace(scanner.peek())) {
            return ParsedInline.none();
        }
        Position start = scanner.position();
        while (scanner.find('$') >= 0) {
            Position end = scanner.position();
            char before = (char) scanner.peekPreviousCodePoint();
            int closing = scanner.matchMultiple('$');
            boolean fits = closing == dollars && (dollars == 2 || !Character.isWhitespace(before));
            if (fits && before != '\\') {
                String source = scanner.getSource(start, end).getContent().strip();
                return source.isEmpty()
                        ? ParsedInline.none()
                        : ParsedInline.of(new Tex(source, dollars == 2), scanner.position());
            }
        }
        return ParsedInline.none();
    }

    private static ParsedInline computed(org.commonmark.parser.beta.InlineParserState state) {
        Scanner scanner = state.scanner();
        if (!scanner.next('{') || !scanner.next('{')) {
            return ParsedInline.none();
        }
        Position start = scanner.position();
        if (scanner.find('}') < 0) {
            return ParsedInline.none();
        }
        Position end = scanner.position();
        if (!scanner.next("}}")) {
            return ParsedInline.none();
        }
        String expression = scanner.getSource(start, end).getContent().strip();
        return ParsedInline.of(new ComputedValue(expression), scanner.position());
    }
}
