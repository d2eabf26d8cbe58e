// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;

/** Marks the first use of each term in a lesson's running text: not in headings, not in links. */
final class TermMarker {
    private final Map<String, Term> bySpelling = new HashMap<>();
    private final Pattern spellings;

    TermMarker(Glossary glossary) {
        List<String> all = new ArrayList<>();
        for (Term term : glossary.terms()) {
            for (String spelling : term.inTexts()) {
                bySpelling.put(key(spelling), term);
                all.add(Pattern.quote(spelling) + "(?:s|es)?");
            }
        }
        // English lessons on a desk that speaks otherwise are marked with the English terms.
        glossary.terms()
                .forEach(
                        term ->
                                term.original()
                                        .ifPresent(
                                                name -> bySpelling.putIfAbsent(key(name), term)));
        all.sort(Comparator.comparingInt(String::length).reversed());
        spellings =
                Pattern.compile(
                        "(?<![\\p{L}\\p{N}-])(?:" + String.join("|", all) + ")(?![\\p{L}\\p{N}-])",
                        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    private static String key(String spelling) {
        return spelling.toLowerCase(Locale.ROOT);
    }

    /** Marks in the lesson's own trees; tells which terms it uses. */
    Set<Term> mark(Lesson lesson) {
        Set<Term> used = new LinkedHashSet<>();
        if (!bySpelling.isEmpty()) {
            lesson.texts().forEach(text -> marked(text, used));
            lesson.texts().forEach(text -> mark(text, used));
        }
        return used;
    }

    /** A lesson that was marked before, in another course, keeps its marks. */
    private void marked(Node root, Set<Term> used) {
        root.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(CustomNode node) {
                        if (node instanceof TermUse use) {
                            used.add(bySpelling.getOrDefault(key(use.term().name()), use.term()));
                        }
                        visitChildren(node);
                    }
                });
    }

    private void mark(Node root, Set<Term> used) {
        List<Text> texts = new ArrayList<>();
        root.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(Heading heading) {}

                    @Override
                    public void visit(Link link) {}

                    @Override
                    public void visit(Image image) {}

                    @Override
                    public void visit(Text text) {
                        texts.add(text);
                    }
                });
        texts.forEach(text -> split(text, used));
    }

    private void split(Text text, Set<Term> used) {
        String literal = text.getLiteral();
        Matcher found = spellings.matcher(literal);
        int done = 0;
        while (found.find()) {
            Term term = term(found.group());
            if (term != null && used.add(term)) {
                before(text, literal.substring(done, found.start()));
                insert(text, new TermUse(term, found.group()));
                done = found.end();
            }
        }
        if (done > 0) {
            before(text, literal.substring(done));
            text.unlink();
        }
    }

    /** The term of a spelling in the text, which may stand in the plural. */
    private Term term(String spelling) {
        for (String ending : List.of("", "s", "es")) {
            String key = key(spelling);
            Term term =
                    key.endsWith(ending)
                            ? bySpelling.get(key.substring(0, key.length() - ending.length()))
                            : null;
            if (term != null) {
                return term;
            }
        }
        return null;
    }

    private static void before(Text text, String literal) {
        if (!literal.isEmpty()) {
            insert(text, new Text(literal));
        }
    }

    private static void insert(Text text, Node node) {
        node.setSourceSpans(text.getSourceSpans());
        text.insertBefore(node);
    }
}
