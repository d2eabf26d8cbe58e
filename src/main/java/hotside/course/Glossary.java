// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.content.ContentFile;
import hotside.content.ContentFolder;
import hotside.content.Fields;
import hotside.content.Findings;
import hotside.content.Place;
import hotside.speech.Language;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The words of the trade. Its file is {@code glossary.md} beside the strands: a heading of the
 * second level for each term, below it the meaning; a line {@code also:} may name other spellings,
 * a line {@code lesson:} the lesson that explains it. In a translation a line {@code of:} names the
 * term that it translates, a line {@code forms:} how the words are bent in a text.
 */
public final class Glossary {
    /** What there is where no file is. */
    public static final Glossary NONE = new Glossary(List.of());

    private static final String HEADING = "## ";
    private static final int LONGEST_NAME = 60;
    private static final int LONGEST_MEANING = 600;
    private static final int MOST_TERMS = 1_000;

    private final List<Term> terms;
    private final Map<String, Term> bySlug = new LinkedHashMap<>();

    private Glossary(List<Term> terms) {
        this.terms = List.copyOf(terms);
        terms.forEach(term -> bySlug.putIfAbsent(term.slug(), term));
        terms.forEach(
                term -> term.original().ifPresent(of -> bySlug.putIfAbsent(Term.slug(of), term)));
    }

    /** True if this file is a glossary and no lesson. */
    public static boolean isGlossary(ContentFile file) {
        return file.name().equals("glossary");
    }

    /** The glossary of a folder, if it has one. */
    static Glossary of(ContentFolder folder) {
        return folder.files().stream()
                .filter(Glossary::isGlossary)
                .findFirst()
                .map(Glossary::read)
                .orElse(NONE);
    }

    /** Reads a glossary; what is wrong goes to the file's findings. */
    public static Glossary read(ContentFile file) {
        Fields fields = file.fields();
        fields.text("title");
        fields.noOthers();
        List<Term> terms = new ArrayList<>();
        List<String> lines = file.body().lines().toList();
        int start = -1;
        for (int i = 0; i <= lines.size(); i++) {
            if (i == lines.size() || lines.get(i).startsWith(HEADING)) {
                if (start >= 0) {
                    term(file, lines, start, i).ifPresent(terms::add);
                }
                start = i;
            }
        }
        refuseTwins(file.findings(), terms);
        if (terms.isEmpty() && file.findings().isEmpty()) {
            file.findings()
                    .add(
                            Place.START,
                            "this glossary is empty",
                            "\"## term\", then its meaning",
                            "");
        }
        if (terms.size() > MOST_TERMS) {
            file.findings().add(Place.START, terms.size() + " terms", "at most " + MOST_TERMS, "");
        }
        return new Glossary(inOrder(terms));
    }

    private static List<Term> inOrder(List<Term> terms) {
        return terms.stream()
                .sorted(Comparator.comparing(Term::name, Language.spoken().alphabet()))
                .toList();
    }

    private static List<String> words(String line) {
        return Arrays.stream(line.substring(line.indexOf(':') + 1).split(","))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static Optional<Term> term(ContentFile file, List<String> lines, int from, int to) {
        Place place = file.inBody(from + 1, 1);
        String name = lines.get(from).substring(HEADING.length()).strip();
        List<String> also = new ArrayList<>();
        List<String> forms = new ArrayList<>();
        Optional<String> lesson = Optional.empty();
        Optional<String> original = Optional.empty();
        StringBuilder meaning = new StringBuilder();
        for (String line : lines.subList(from + 1, to)) {
            if (line.startsWith("also:")) {
                also.addAll(words(line));
            } else if (line.startsWith("forms:")) {
                forms.addAll(words(line));
            } else if (line.startsWith("of:")) {
                original = Optional.of(line.substring("of:".length()).strip());
            } else if (line.startsWith("lesson:")) {
                lesson = Optional.of(line.substring("lesson:".length()).strip());
            } else {
                meaning.append(line).append('\n');
            }
        }
        String text = meaning.toString().strip();
        boolean named = !name.isEmpty() && name.length() <= LONGEST_NAME;
        boolean told = !text.isEmpty() && text.length() <= LONGEST_MEANING;
        if (!named) {
            file.findings()
                    .add(
                            place,
                            "this term has no fit name",
                            "1 to " + LONGEST_NAME + " letters",
                            "");
        }
        if (!told) {
            file.findings()
                    .add(
                            place,
                            "\""
                                    + name
                                    + "\" has "
                                    + (text.isEmpty() ? "no" : "too long a")
                                    + " meaning",
                            "a sentence or two, at most " + LONGEST_MEANING + " letters",
                            "");
        }
        return named && told
                ? Optional.of(new Term(name, also, text, lesson, original, forms, place))
                : Optional.empty();
    }

    private static void refuseTwins(Findings findings, List<Term> terms) {
        Map<String, Term> first = new LinkedHashMap<>();
        for (Term term : terms) {
            for (String spelling : term.inTexts()) {
                Term other = first.putIfAbsent(spelling.toLowerCase(Locale.ROOT), term);
                if (other != null) {
                    findings.add(
                            term.place(),
                            "\"" + spelling + "\" is explained twice",
                            "each spelling once",
                            "the other stands in line " + other.place().line());
                }
            }
        }
    }

    /** This glossary and another one, whose terms take the place of those of their name. */
    public Glossary with(Glossary other) {
        List<Term> both = new ArrayList<>();
        other.terms.forEach(
                term ->
                        both.add(
                                term.explainedIn(
                                        term.original()
                                                .flatMap(of -> find(Term.slug(of)))
                                                .flatMap(Term::lesson))));
        terms.stream().filter(term -> !other.bySlug.containsKey(term.slug())).forEach(both::add);
        return new Glossary(inOrder(both));
    }

    /** Says which terms translate one that is not there. */
    public void checkOriginals(ContentFile file, Glossary originals) {
        for (Term term : terms) {
            term.original()
                    .filter(of -> originals.find(Term.slug(of)).isEmpty())
                    .ifPresent(
                            of ->
                                    file.findings()
                                            .add(
                                                    term.place(),
                                                    "there is no term \"" + of + "\" to translate",
                                                    "a term of the original glossary",
                                                    ""));
        }
    }

    /** Says which terms name a lesson that is not there. */
    public void checkLessons(ContentFile file, Collection<String> known) {
        for (Term term : terms) {
            term.lesson()
                    .filter(lesson -> !known.contains(lesson))
                    .ifPresent(
                            lesson ->
                                    file.findings()
                                            .add(
                                                    term.place(),
                                                    "\""
                                                            + term.name()
                                                            + "\" names the lesson \""
                                                            + lesson
                                                            + "\", which is not there",
                                                    "strand/name of a lesson",
                                                    "or leave the line out: the lesson of the first use"
                                                            + " is found by itself"));
        }
    }

    /** In the order of the alphabet. */
    public List<Term> terms() {
        return terms;
    }

    /** The term of a link, which may be that of its original. */
    public Optional<Term> find(String slug) {
        return Optional.ofNullable(bySlug.get(slug));
    }
}
