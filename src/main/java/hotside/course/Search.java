// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.catalogue.Catalogue;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.relation.Relation;
import hotside.relation.Slot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Block;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/**
 * Finds words in lessons, glossary, relations and problems. Every word of a query must begin a word
 * of what is found; a word in a title weighs more than one in a text.
 */
public final class Search {
    private static final Pattern PLACEHOLDER =
            Pattern.compile("\\{\\{[^{}]{0,200}\\}\\}|\\$[^$]{0,400}\\$");
    private static final int MOST_HITS = 40;
    private static final int EXCERPT = 140;

    /** Sorts of things that are found, the first first among equals. */
    public enum Kind {
        LESSON,
        TERM,
        RELATION,
        PROBLEM;

        /** For people, in the language spoken. */
        public String words() {
            return CourseWords.of("search.kind." + name().toLowerCase(Locale.ROOT));
        }
    }

    /**
     * Something found.
     *
     * @param kind of what sort
     * @param title for people
     * @param link as pages link to it
     * @param excerpt the text around the first word found; empty if the title has it all
     * @param score how well it fits, more is better
     */
    public record Hit(Kind kind, String title, String link, String excerpt, int score) {}

    private record Entry(Kind kind, String title, String link, String text) {}

    private final List<Entry> entries = new ArrayList<>();

    public Search(Course course, ProblemBank bank) {
        for (Lesson lesson : course.lessons()) {
            entries.add(
                    new Entry(
                            Kind.LESSON,
                            lesson.title(),
                            "lesson:" + lesson.id(),
                            lesson.strand() + ". " + words(lesson)));
        }
        for (Term term : course.glossary().terms()) {
            entries.add(
                    new Entry(
                            Kind.TERM,
                            String.join(", ", term.spellings()),
                            "term:" + term.slug(),
                            term.meaning()));
        }
        for (Relation relation : Catalogue.all()) {
            entries.add(
                    new Entry(
                            Kind.RELATION,
                            relation.title(),
                            "relation:" + relation.id(),
                            relation.id() + ". " + relation.says() + slots(relation)));
        }
        for (Template problem : bank.all()) {
            entries.add(
                    new Entry(
                            Kind.PROBLEM,
                            problem.title(),
                            "problem:" + problem.id(),
                            PLACEHOLDER.matcher(problem.prompt()).replaceAll("…")));
        }
    }

    private static String slots(Relation relation) {
        StringBuilder out = new StringBuilder();
        for (Slot slot : relation.inputs()) {
            out.append(' ').append(slot.meaning()).append(';');
        }
        for (Slot slot : relation.outputs()) {
            out.append(' ').append(slot.meaning()).append(';');
        }
        return out.toString();
    }

    /** The words of a lesson's text, formulas and numbers left out. */
    static String words(Lesson lesson) {
        StringBuilder out = new StringBuilder();
        lesson.texts().forEach(text -> out.append(words(text)).append(' '));
        return out.toString();
    }

    static String words(Node node) {
        StringBuilder out = new StringBuilder();
        node.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(Text text) {
                        out.append(text.getLiteral());
                    }

                    @Override
                    public void visit(Code code) {
                        out.append(code.getLiteral());
                    }

                    @Override
                    public void visit(SoftLineBreak line) {
                        out.append(' ');
                    }

                    @Override
                    public void visit(CustomNode custom) {
                        if (custom instanceof TermUse use) {
                            out.append(use.literal());
                        } else if (custom instanceof ComputedValue || custom instanceof Tex) {
                            out.append('…');
                        }
                        visitChildren(custom);
                    }

                    @Override
                    protected void visitChildren(Node parent) {
                        super.visitChildren(parent);
                        if (parent instanceof Block || parent instanceof TableCell) {
                            out.append(' ');
                        }
                    }
                });
        return out.toString();
    }

    /** What fits a query, best first; nothing for a blank one. */
    public List<Hit> find(String query) {
        List<String> words =
                Arrays.stream(query.strip().toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
                        .filter(word -> !word.isEmpty())
                        .toList();
        if (words.isEmpty()) {
            return List.of();
        }
        return entries.stream()
                .map(entry -> hit(entry, words))
                .flatMap(Optional::stream)
                .sorted(
                        Comparator.comparingInt(Hit::score)
                                .reversed()
                                .thenComparing(Hit::kind)
                                .thenComparing(Hit::title))
                .limit(MOST_HITS)
                .toList();
    }

    private static Optional<Hit> hit(Entry entry, List<String> words) {
        String title = entry.title().toLowerCase(Locale.ROOT);
        String text = entry.text().toLowerCase(Locale.ROOT);
        int score = 0;
        int first = -1;
        for (String word : words) {
            int inTitle = begins(title, word);
            int inText = begins(text, word);
            if (inTitle < 0 && inText < 0) {
                return Optional.empty();
            }
            score += inTitle == 0 ? 30 : inTitle > 0 ? 20 : 0;
            score += inTitle >= 0 && isWhole(title, inTitle, word) ? 10 : 0;
            score += inText >= 0 ? 1 + Math.min(5, count(text, word)) : 0;
            if (inTitle < 0 && first < 0) {
                first = inText;
            }
        }
        score += title.equals(String.join(" ", words)) ? 50 : 0;
        String excerpt = first < 0 ? "" : excerpt(entry.text(), first);
        return Optional.of(new Hit(entry.kind(), entry.title(), entry.link(), excerpt, score));
    }

    /** Where a word that begins so stands; negative if there is none. */
    private static int begins(String text, String word) {
        int at = text.indexOf(word);
        while (at > 0 && Character.isLetterOrDigit(text.charAt(at - 1))) {
            at = text.indexOf(word, at + 1);
        }
        return at;
    }

    private static boolean isWhole(String text, int at, String word) {
        int end = at + word.length();
        return end == text.length() || !Character.isLetterOrDigit(text.charAt(end));
    }

    private static int count(String text, String word) {
        int count = 0;
        for (int at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + word.length())) {
            count++;
        }
        return count;
    }

    private static String excerpt(String text, int at) {
        int from = Math.max(0, at - EXCERPT / 3);
        int to = Math.min(text.length(), from + EXCERPT);
        while (from > 0 && !Character.isWhitespace(text.charAt(from - 1))) {
            from--;
        }
        while (to < text.length() && !Character.isWhitespace(text.charAt(to))) {
            to++;
        }
        String piece = text.substring(from, to).replaceAll("\\s+", " ").strip();
        return (from > 0 ? "… " : "") + piece + (to < text.length() ? " …" : "");
    }
}
