// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Marks answers that are letters: options that were taken, items in an order. */
final class LetterMarker {
    private static final Pattern BETWEEN = Pattern.compile("[\\s,;.:()\\[\\]>→–&+/-]+");
    private static final Pattern RUN = Pattern.compile("[A-Z]+|[1-9]+");

    /** An option that is a number, such as {@code 133 N}. */
    private static final Pattern A_NUMBER = Pattern.compile("\\W*\\d[\\d.,]*\\s?\\S{0,12}");

    /** What people write around letters, in the languages spoken. */
    private static final Set<String> FILLERS =
            Set.of("AND", "THEN", "UND", "DANN", "OPTION", "OPTIONS", "ANSWER", "ANTWORT");

    /** More than this at once is no help. */
    private static final int MOST_REASONS = 3;

    private final Variant variant;

    private LetterMarker(Variant variant) {
        this.variant = variant;
    }

    static List<Optional<Verdict>> mark(Variant variant, List<String> answers) {
        String text = answers.isEmpty() ? "" : answers.get(0);
        return List.of(
                text.isBlank()
                        ? Optional.empty()
                        : Optional.of(new LetterMarker(variant).one(text)));
    }

    /** The options that an answer names, in its order; nothing if it cannot be read. */
    static Optional<List<Lettered>> named(Variant variant, String text) {
        return new LetterMarker(variant).taken(text);
    }

    private Optional<List<Lettered>> taken(String text) {
        List<Lettered> taken = new ArrayList<>();
        for (String word : words(text)) {
            if (!RUN.matcher(word).matches()) {
                return Optional.empty();
            }
            for (int i = 0; i < word.length(); i++) {
                Optional<Lettered> named = named(word.substring(i, i + 1));
                if (named.isEmpty()) {
                    return Optional.empty();
                }
                taken.add(named.get());
            }
        }
        return Optional.of(taken);
    }

    private Verdict one(String text) {
        Optional<List<Lettered>> named = taken(text);
        if (named.isEmpty()) {
            return unreadable(text);
        }
        List<Lettered> taken = named.get();
        if (Set.copyOf(taken).size() < taken.size()) {
            return said(Verdict.Kind.UNREADABLE, ProblemWords.of("letter-twice", wanted()));
        }
        return switch (variant.template().kind()) {
            case ORDER -> order(taken);
            case SEVERAL -> several(taken);
            default -> taken.size() == 1 ? choice(taken.get(0)) : said(Verdict.Kind.ASK, wanted());
        };
    }

    /** The runs of letters in an answer, without what stands between them. */
    private static List<String> words(String text) {
        List<String> words =
                BETWEEN.splitAsStream(text.strip().toUpperCase(Locale.ROOT))
                        .filter(word -> !word.isEmpty() && !FILLERS.contains(word))
                        .toList();
        return words.isEmpty() ? List.of("") : words;
    }

    /** The option of a letter, or of its number where no option is itself a number. */
    private Optional<Lettered> named(String sign) {
        List<Lettered> options = variant.lettered();
        if (Character.isDigit(sign.charAt(0))) {
            int number = Integer.parseInt(sign);
            boolean counted =
                    number <= options.size()
                            && options.stream()
                                    .noneMatch(o -> A_NUMBER.matcher(o.text()).matches());
            return counted ? Optional.of(options.get(number - 1)) : Optional.empty();
        }
        return options.stream().filter(l -> l.letter().equals(sign)).findFirst();
    }

    private static Verdict said(Verdict.Kind kind, String feedback) {
        return new Verdict(kind, Optional.empty(), Double.NaN, feedback);
    }

    private Verdict unreadable(String text) {
        return said(Verdict.Kind.UNREADABLE, ProblemWords.of("no-option", text.strip(), wanted()));
    }

    private String wanted() {
        String last = variant.lettered().get(variant.lettered().size() - 1).letter();
        return switch (variant.template().kind()) {
            case ORDER -> ProblemWords.of("wanted.order", last);
            case SEVERAL -> ProblemWords.of("wanted.several", last);
            default -> ProblemWords.of("wanted.one", last);
        };
    }

    private static Verdict mistake(String id, String feedback) {
        return new Verdict(Verdict.Kind.MISTAKE, Optional.of(id), Double.NaN, feedback);
    }

    private Verdict choice(Lettered taken) {
        if (variant.template().task() instanceof Task.Pick) {
            return picked(taken);
        }
        if (taken.right()) {
            return said(Verdict.Kind.RIGHT, taken.because());
        }
        String why = taken.because();
        return mistake(
                taken.id(),
                variant.template().task() instanceof Task.Diagnose
                        ? ProblemWords.of("other-trace", why)
                        : why);
    }

    private Verdict picked(Lettered taken) {
        if (taken.right()) {
            return said(
                    Verdict.Kind.RIGHT,
                    ProblemWords.of(
                            "right", Answers.told(variant, 0, variant.answers().get(0).value())));
        }
        List<Variant.Slipped> its =
                variant.slips().stream()
                        .filter(
                                slip ->
                                        slip.mistake().id().equals(taken.id())
                                                || isSame(slip, taken))
                        .toList();
        Verdict told = Marker.onMistakes(variant, its);
        return mistake(taken.id(), told.feedback());
    }

    /** A mistake that gives the same number as the one that the option stands for. */
    private boolean isSame(Variant.Slipped slip, Lettered taken) {
        return variant.slips().stream()
                .filter(other -> other.mistake().id().equals(taken.id()))
                .anyMatch(
                        other ->
                                Math.abs(other.value() - slip.value())
                                        <= 1e-6 * Math.abs(slip.value()));
    }

    private Verdict several(List<Lettered> taken) {
        List<Lettered> wrong = taken.stream().filter(l -> !l.right()).toList();
        List<Lettered> missed =
                variant.lettered().stream().filter(l -> l.right() && !taken.contains(l)).toList();
        if (wrong.isEmpty() && missed.isEmpty()) {
            return said(
                    Verdict.Kind.RIGHT,
                    taken.stream()
                            .map(l -> ProblemWords.of("holds", l.letter(), l.because()))
                            .collect(Collectors.joining(" ")));
        }
        Set<String> reasons = new LinkedHashSet<>();
        wrong.forEach(l -> reasons.add(ProblemWords.of("does-not-hold", l.letter(), l.because())));
        if (wrong.isEmpty()) {
            // The missed ones are not named: the learner shall find them.
            reasons.add(ProblemWords.of(taken.size() == 1 ? "not-all.one" : "not-all.many"));
        }
        String id = wrong.isEmpty() ? "missed-" + missed.get(0).id() : wrong.get(0).id();
        return mistake(id, reasons.stream().limit(MOST_REASONS).collect(Collectors.joining(" ")));
    }

    private Verdict order(List<Lettered> taken) {
        if (taken.size() < variant.lettered().size()) {
            return said(Verdict.Kind.ASK, wanted());
        }
        if (variant.template().task() instanceof Task.Rank rank) {
            return rank(rank, taken);
        }
        Task.Arrange task = (Task.Arrange) variant.template().task();
        List<Task.Rule> broken = Orders.broken(task, taken.stream().map(Lettered::id).toList());
        if (broken.isEmpty()) {
            return said(Verdict.Kind.RIGHT, ProblemWords.of("order.right"));
        }
        String reasons =
                broken.stream()
                        .limit(MOST_REASONS)
                        .map(rule -> told(rule, taken))
                        .collect(Collectors.joining(" "));
        return mistake(broken.get(0).mistake(), reasons);
    }

    /**
     * A wrong order is laid to the idea that leads to it; else the first pair that is turned is
     * named.
     */
    private Verdict rank(Task.Rank task, List<Lettered> taken) {
        List<String> ids = taken.stream().map(Lettered::id).toList();
        if (ids.equals(Orders.right(task, variant.run().values()))) {
            return said(Verdict.Kind.RIGHT, ProblemWords.of("rank.right", values(taken)));
        }
        for (Task.Misrank misrank : task.misranks()) {
            if (ids.equals(Orders.wrong(task, misrank, variant.run().values()))) {
                return mistake(misrank.id(), variant.filled(misrank.because()));
            }
        }
        List<Lettered> right = Answers.right(variant);
        for (int i = 1; i < taken.size(); i++) {
            Lettered first = taken.get(i);
            Lettered then = taken.get(i - 1);
            if (right.indexOf(first) < right.indexOf(then)) {
                return mistake(
                        Orders.MISRANKED,
                        ProblemWords.of(
                                "rank.turned",
                                first.letter(),
                                then.letter(),
                                first.because(),
                                then.because()));
            }
        }
        throw new IllegalStateException("an order other than the right one has a turned pair");
    }

    private static String values(List<Lettered> items) {
        return items.stream()
                .map(item -> item.letter() + " " + item.because())
                .collect(Collectors.joining(", "));
    }

    private static String told(Task.Rule rule, List<Lettered> items) {
        return ProblemWords.of(
                "order.before",
                letter(rule.first(), items),
                letter(rule.then(), items),
                rule.because());
    }

    private static String letter(String id, List<Lettered> items) {
        return items.stream()
                .filter(item -> item.id().equals(id))
                .map(Lettered::letter)
                .findFirst()
                .orElse(id);
    }
}
