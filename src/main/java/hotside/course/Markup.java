// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.content.ContentFile;
import hotside.content.Place;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;

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
                    .customInlineContentParserFactory(factory('$', FormulaParser::new))
                    .customInlineContentParserFactory(factory('{', ComputedParser::new))
                    .build();

    private Markup() {}

    /** The tree of a text; safe for any text. */
    public static Node parse(String markdown) {
        return PARSER.parse(markdown);
    }

    /**
     * The tree of a text that stands somewhere in another: its places are those of the whole.
     *
     * @param line how many lines of the whole stand before it
     * @param column how many characters of each line stand before it
     */
    static Node parse(String markdown, int line, int column) {
        Node root = parse(markdown);
        move(root, line, column);
        return root;
    }

    private static void move(Node node, int line, int column) {
        node.setSourceSpans(
                node.getSourceSpans().stream().map(span -> moved(span, line, column)).toList());
        for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
            move(child, line, column);
        }
    }

    private static SourceSpan moved(SourceSpan span, int line, int column) {
        return SourceSpan.of(
                span.getLineIndex() + line,
                span.getColumnIndex() + column,
                span.getInputIndex(),
                span.getLength());
    }

    /** Where a piece of a file's body stands; where it is not known, the piece around it. */
    public static Place place(ContentFile file, Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            List<SourceSpan> spans = at.getSourceSpans();
            if (!spans.isEmpty()) {
                return place(file, spans.get(0).getLineIndex(), spans.get(0).getColumnIndex());
            }
        }
        return Place.START;
    }

    /** The place in the file of a place in its body, both counted from 0 in characters. */
    static Place place(ContentFile file, int line, int column) {
        if (file.findings().isFull()) {
            return Place.START;
        }
        String text = file.body().lines().skip(line).findFirst().orElse("");
        int end = Math.min(column, text.length());
        return file.inBody(line + 1, text.codePointCount(0, end) + 1);
    }

    private static InlineContentParserFactory factory(
            char trigger, Supplier<InlineContentParser> parser) {
        return new InlineContentParserFactory() {
            @Override
            public Set<Character> getTriggerCharacters() {
                return Set.of(trigger);
            }

            @Override
            public InlineContentParser create() {
                return parser.get();
            }
        };
    }
}
