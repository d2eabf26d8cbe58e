// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Values;
import hotside.unit.DecimalHabit;
import hotside.unit.Dimension;
import hotside.unit.Expected;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.Shown;
import hotside.unit.Typed;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Marks answers. A wrong answer is an ordinary result: it is held against the right one, then
 * against what the learner's own earlier answers lead to, then against every recognised mistake;
 * what matches none is called wrong and no more, for a guess would mislead.
 */
public final class Marker {
    /** So many digits are enough for most answers. */
    /** Where so much is right or more, nobody means a bare number below one as percent. */
    private static final double FEW_PERCENT = 0.02;

    private static final int USUAL_DIGITS = 3;

    /** More digits than this are more than the givens have. */
    private static final int TOO_MANY_DIGITS = 6;

    /** Slack for answers that went through a unit conversion on their way, relative. */
    private static final double ROUNDING = 1e-9;

    private final Variant variant;
    private final List<Double> understood = new ArrayList<>();

    private Marker(Variant variant) {
        this.variant = variant;
    }

    /**
     * Marks all answers of a variant.
     *
     * @param answers as typed, one for each ask; blank for one not yet given
     * @param habit the decimal mark that the learner uses
     * @return a verdict for each answer that was given
     */
    public static List<Optional<Verdict>> mark(
            Variant variant, List<String> answers, DecimalHabit habit) {
        if (!variant.lettered().isEmpty()) {
            return LetterMarker.mark(variant, answers);
        }
        if (variant.template().task() instanceof Task.Devise) {
            return PlanMarker.mark(variant, answers);
        }
        Marker marker = new Marker(variant);
        List<Optional<Verdict>> verdicts = new ArrayList<>();
        for (int i = 0; i < variant.answers().size(); i++) {
            String text = i < answers.size() ? answers.get(i) : "";
            Optional<Verdict> verdict =
                    text.isBlank() ? Optional.empty() : Optional.of(marker.one(i, text, habit));
            verdicts.add(verdict);
            marker.understood.add(
                    verdict.filter(v -> v.kind().counts() || v.kind() == Verdict.Kind.COARSE)
                            .map(Verdict::value)
                            .orElse(Double.NaN));
        }
        return verdicts;
    }

    private Verdict one(int index, String text, DecimalHabit habit) {
        Ask ask = variant.template().asks().get(index);
        Scale scale = ask.scale(variant.system());
        Typed typed =
                Typed.read(text, new Expected(ask.quantity(), scale, variant.ambient(), habit));
        if (typed instanceof Typed.NotUnderstood not) {
            return new Verdict(
                    Verdict.Kind.UNREADABLE, Optional.empty(), Double.NaN, not.message());
        }
        if (typed instanceof Typed.Ambiguous ambiguous) {
            return new Verdict(
                    Verdict.Kind.ASK, Optional.empty(), Double.NaN, ambiguous.question());
        }
        Typed.Understood answer = (Typed.Understood) typed;
        if (!answer.unitTyped() && needsUnit(ask.quantity())) {
            return question(answer, ProblemWords.of("which-unit", text.strip(), scale.told()));
        }
        if (isNumberForPercent(index, answer)) {
            return question(
                    answer,
                    ProblemWords.of(
                            "percent-asked",
                            told(index, answer.si()),
                            told(index, answer.asTyped())));
        }
        return judge(index, answer, digits(text, answer));
    }

    private static Verdict question(Typed.Understood answer, String question) {
        return new Verdict(Verdict.Kind.ASK, Optional.empty(), answer.si(), question);
    }

    /**
     * A bare 0.85 where percent are asked for: not a mistake before it is known what was meant.
     * Wrong shares are asked about as well, or the question would give the right one away.
     */
    private boolean isNumberForPercent(int index, Typed.Understood answer) {
        Variant.Answer right = variant.answers().get(index);
        return !needsUnit(variant.template().asks().get(index).quantity())
                && !answer.unitTyped()
                && answer.si() != answer.asTyped()
                && (within(answer.asTyped(), right.value(), right.band())
                        || isShare(answer.asTyped()) && Math.abs(right.value()) >= FEW_PERCENT)
                && !within(answer.si(), right.value(), right.band());
    }

    private static boolean isShare(double number) {
        return number != 0 && Math.abs(number) <= 1;
    }

    private static boolean needsUnit(Quantity quantity) {
        return quantity.dimension() != Dimension.RATIO && quantity.dimension() != Dimension.NONE;
    }

    private Verdict judge(int index, Typed.Understood answer, int digits) {
        double value = answer.si();
        Variant.Answer right = variant.answers().get(index);
        if (within(value, right.value(), right.band())) {
            return new Verdict(
                    Verdict.Kind.RIGHT, Optional.empty(), value, rightFeedback(index, digits));
        }
        Optional<Verdict> carried = carried(index, value);
        if (carried.isPresent()) {
            return carried.get();
        }
        if (!isRead() && coarse(answer, digits, index, right.value())) {
            return new Verdict(
                    Verdict.Kind.COARSE,
                    Optional.empty(),
                    value,
                    ProblemWords.of(
                            digits < USUAL_DIGITS ? "begins-right.three" : "begins-right.more"));
        }
        List<Variant.Slipped> matches = matches(index, answer, digits);
        if (!matches.isEmpty()) {
            return mistake(index, value, matches);
        }
        return new Verdict(
                Verdict.Kind.WRONG,
                Optional.empty(),
                value,
                ProblemWords.of(
                        unexplained(index, answer),
                        told(index, value),
                        ProblemWords.of("direction." + direction(value, right.value()))));
    }

    /** What is said of a number that no mistake gives. */
    private String unexplained(int index, Typed.Understood answer) {
        Ask ask = variant.template().asks().get(index);
        Variant.Answer right = variant.answers().get(index);
        double asAsked =
                ask.scale(variant.system())
                        .toSi(answer.asTyped(), ask.quantity(), variant.ambient());
        if (answer.unitTyped() && within(asAsked, right.value(), right.band())) {
            return switch (ask.quantity()) {
                case PRESSURE, GAUGE_PRESSURE -> "wrong.zero";
                default -> "wrong.unit";
            };
        }
        return isRead() ? "wrong.read" : "wrong.worked";
    }

    /** True if the number is read off a chart, so that its figures say nothing. */
    private boolean isRead() {
        return variant.template().task() instanceof Task.Read;
    }

    private static String direction(double value, double right) {
        if (value * right < 0) {
            return "sign";
        }
        double ratio = Math.abs(value) / Math.abs(right);
        if (ratio > 8 || ratio < 0.125) {
            return ratio > 1 ? "far-much" : "far-little";
        }
        return ratio > 1 ? "much" : "little";
    }

    private String rightFeedback(int index, int digits) {
        String full = Answers.told(variant, index);
        if (isRead()) {
            return ProblemWords.of("right.read", full);
        }
        return ProblemWords.of(digits > TOO_MANY_DIGITS ? "right.many-digits" : "right", full);
    }

    /** Significant digits as typed: a fraction counts as exact, but boasts of no digits. */
    private static int digits(String text, Typed.Understood answer) {
        long typed = text.chars().filter(Character::isDigit).count();
        return (int) Math.min(typed, answer.significantDigits());
    }

    /** What the learner's own wrong earlier answers lead to, by the right method. */
    private Optional<Verdict> carried(int index, double value) {
        List<Double> own = own(index);
        if (own.stream().allMatch(d -> Double.isNaN(d))) {
            return Optional.empty();
        }
        double expected = replayed(index, own, Optional.empty());
        double band = variant.tolerance(index, expected);
        if (!within(value, expected, band)) {
            return Optional.empty();
        }
        boolean off = anyOff(index);
        return Optional.of(
                new Verdict(
                        off ? Verdict.Kind.CARRIED : Verdict.Kind.RIGHT,
                        Optional.empty(),
                        value,
                        ProblemWords.of(
                                off ? "carried" : "carried.rounded",
                                Answers.told(variant, index))));
    }

    /** True if an earlier answer was more than rounded. */
    private boolean anyOff(int index) {
        for (int i = 0; i < index; i++) {
            double given = understood.get(i);
            Variant.Answer right = variant.answers().get(i);
            if (!Double.isNaN(given) && !within(given, right.value(), right.band())) {
                return true;
            }
        }
        return false;
    }

    /** The learner's earlier answers that differ from the right ones; NaN for the others. */
    private List<Double> own(int index) {
        List<Double> own = new ArrayList<>();
        for (int i = 0; i < index; i++) {
            double given = isRead() ? Double.NaN : understood.get(i);
            double right = variant.answers().get(i).value();
            own.add(Math.abs(given - right) <= ROUNDING * Math.abs(right) ? Double.NaN : given);
        }
        return own;
    }

    private double replayed(int index, List<Double> own, Optional<Mistake> mistake) {
        try {
            Values values = Replay.of(variant, own, mistake);
            return values.number(variant.template().asks().get(index).place());
        } catch (RelationException e) {
            return Double.NaN;
        }
    }

    private List<Variant.Slipped> matches(int index, Typed.Understood answer, int digits) {
        List<Variant.Slipped> fresh =
                nearest(
                        variant.slips().stream().filter(s -> s.ask() == index).toList(),
                        answer,
                        digits);
        if (!fresh.isEmpty()) {
            return fresh;
        }
        List<Double> own = own(index);
        if (own.stream().anyMatch(d -> !Double.isNaN(d))) {
            List<Variant.Slipped> carried =
                    variant.template().mistakes().stream()
                            .map(m -> slipped(m, index, replayed(index, own, Optional.of(m))))
                            .toList();
            List<Variant.Slipped> found = nearest(carried, answer, digits);
            if (!found.isEmpty()) {
                return found;
            }
        }
        return nearest(wrongZero(index), answer, digits);
    }

    private static Variant.Slipped slipped(Mistake mistake, int index, double value) {
        return new Variant.Slipped(mistake, index, value);
    }

    /** The right pressure counted from the wrong zero, which no template has to list. */
    private List<Variant.Slipped> wrongZero(int index) {
        Ask ask = variant.template().asks().get(index);
        Slips slip =
                switch (ask.quantity()) {
                    case PRESSURE -> Slips.GAUGE_AS_ABSOLUTE;
                    case GAUGE_PRESSURE -> Slips.ABSOLUTE_AS_GAUGE;
                    default -> null;
                };
        if (slip == null) {
            return List.of();
        }
        Mistake mistake =
                new Mistake(
                        slip,
                        ask.place(),
                        Optional.empty(),
                        1,
                        Optional.of(slip.answerIfText()),
                        Optional.of(slip.answerCheckText()),
                        Optional.empty());
        double right = variant.answers().get(index).value();
        double wrong = slip.spoil(right, new Slips.Surroundings(variant.ambient(), right, 1));
        return List.of(slipped(mistake, index, wrong));
    }

    /** The mistakes whose number this is; several only if they give one and the same number. */
    private List<Variant.Slipped> nearest(
            List<Variant.Slipped> slips, Typed.Understood answer, int digits) {
        double value = answer.si();
        Optional<Variant.Slipped> best =
                slips.stream()
                        .filter(s -> isMeant(s, answer, digits))
                        .min(
                                (a, b) ->
                                        Double.compare(
                                                Math.abs(a.value() - value),
                                                Math.abs(b.value() - value)));
        return best.map(
                        b ->
                                slips.stream()
                                        .filter(
                                                s ->
                                                        Math.abs(s.value() - b.value())
                                                                <= 1e-6 * Math.abs(b.value()))
                                        .toList())
                .orElse(List.of());
    }

    /** The verdict on an option that is the number of these mistakes. */
    static Verdict onMistakes(Variant variant, List<Variant.Slipped> matches) {
        return new Marker(variant).mistake(0, matches.get(0).value(), matches);
    }

    private Verdict mistake(int index, double value, List<Variant.Slipped> matches) {
        Set<String> ifs = new LinkedHashSet<>();
        Set<String> checks = new LinkedHashSet<>();
        for (Variant.Slipped match : matches) {
            if (match.mistake() instanceof Mistake slip) {
                ifs.add(filled(slip.ifText().orElseGet(slip.slip()::ifText), slip));
                checks.add(filled(slip.checkText().orElseGet(slip.slip()::checkText), slip));
            } else if (match.mistake() instanceof Misreading misread) {
                ifs.add(filled(misread.clause(), misread));
                checks.add(filled(misread.advice(), misread));
            }
        }
        StringBuilder text =
                new StringBuilder(
                        ProblemWords.of(
                                "mistake",
                                String.join(ProblemWords.of("mistake.or"), ifs),
                                String.join(ProblemWords.of("mistake.and"), checks)));
        matches.get(0)
                .mistake()
                .world()
                .ifPresent(
                        world ->
                                text.append(' ')
                                        .append(
                                                world.strip()
                                                        .replace("{value}", told(index, value))));
        return new Verdict(
                Verdict.Kind.MISTAKE,
                Optional.of(matches.get(0).mistake().id()),
                value,
                text.toString());
    }

    private String filled(String text, Mistake mistake) {
        return text.replace("{what}", what(mistake.at()))
                .replace(
                        "{other}",
                        mistake.with()
                                .map(this::what)
                                .orElseGet(() -> ProblemWords.of("another-value")))
                .replace(
                        "{ambient}",
                        Shown.of(variant.ambient(), Quantity.PRESSURE, variant.system(), 4).text());
    }

    private String filled(String text, Misreading misreading) {
        Reading reading = ((Task.Read) variant.template().task()).reading();
        return text.replace("{of}", curve(reading.of()))
                .replace(
                        "{with}",
                        misreading
                                .with()
                                .map(this::curve)
                                .orElseGet(() -> ProblemWords.of("another-curve")));
    }

    private String curve(String id) {
        return variant.figures().stream()
                .flatMap(figure -> figure.curve(id).stream())
                .map(curve -> ProblemWords.of("quoted", curve.name()))
                .findFirst()
                .orElse(id);
    }

    /** What stands at a place, as a noun phrase. */
    private String what(String place) {
        Optional<Slot> slot =
                variant.template()
                        .chain()
                        .slotAt(place)
                        .or(() -> ChainReader.fedBy(variant.template().chain(), place));
        return NounPhrase.of(slot.map(Slot::meaning).orElse(place));
    }

    /** Within the tolerance of the slip's number, or that number to the figures typed. */
    private boolean isMeant(Variant.Slipped slip, Typed.Understood answer, int digits) {
        return within(answer.si(), slip.value(), variant.tolerance(slip.ask(), slip.value()))
                || digits >= USUAL_DIGITS && isRounded(answer, digits, slip.ask(), slip.value());
    }

    private boolean coarse(Typed.Understood answer, int digits, int index, double right) {
        return digits >= 1 && isRounded(answer, digits, index, right);
    }

    /** True if the answer is this value, SI, rounded to so many figures. */
    private boolean isRounded(Typed.Understood answer, int digits, int index, double value) {
        Quantity quantity = variant.template().asks().get(index).quantity();
        double shown = answer.scale().fromSi(value, quantity, variant.ambient());
        return Math.abs(Numbers.rounded(shown, digits) - answer.asTyped())
                <= ROUNDING * Math.abs(shown);
    }

    private static boolean within(double value, double target, double band) {
        return Math.abs(value - target) <= band + ROUNDING * Math.abs(target);
    }

    private String told(int index, double value) {
        return Answers.told(variant, index, value);
    }
}
