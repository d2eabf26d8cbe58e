// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFile;
import hotside.relation.Worked;
import hotside.unit.DecimalHabit;
import hotside.unit.Expected;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Typed;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * A thousand seeds of every problem file on the class path, every other one in the US shop, which
 * halves the walk without sparing a seed: what is printed is what is worked with, the right answer
 * is marked right and every listed mistake is recognised.
 */
class SoundProblemsTest {
    private static final int SEEDS = Integer.getInteger("hotside.seeds", 1_000);

    @TestFactory
    Stream<DynamicTest> everyProblemIsSoundForAThousandSeeds() {
        return SampleProblems.files().stream()
                .flatMap(
                        file ->
                                Arrays.stream(UnitSystem.values())
                                        .map(
                                                system ->
                                                        DynamicTest.dynamicTest(
                                                                file.path() + ", " + system,
                                                                () -> check(file, system))));
    }

    private static void check(ContentFile file, UnitSystem system) {
        Template template =
                TemplateReader.read(file)
                        .orElseThrow(() -> new AssertionError(file.findings().list().toString()));
        int shops = UnitSystem.values().length;
        for (long seed = 1 + system.ordinal(); seed <= seeds(template); seed += shops) {
            Variant variant = Variants.draw(template, seed, system);
            String where = template.id() + ", seed " + seed + ", " + system;
            isInRangeWithoutCaution(variant, where);
            tellsTheGivensItWorksWith(variant, where);
            if (template.kind().isLettered()) {
                isMarkedRightByItsKey(variant, where);
                tellsItsOptionsApart(variant, where);
                recognisesEveryWrongLetter(variant, where);
            } else if (template.task() instanceof Task.Devise) {
                isMarkedRightByItsModel(variant, where);
            } else {
                isNoGiven(variant, where);
                isMarkedRightByItsOwnWorking(variant, where);
                recognisesEveryMistake(variant, where);
            }
            if (seed <= 4) {
                assertEquals(variant.lettered(), again(variant).lettered(), where);
                assertEquals(variant.figures(), again(variant).figures(), where);
                assertEquals(variant.answers(), again(variant).answers(), where);
            }
            if (seed <= 20 && seeds(template) == SEEDS) {
                assertEquals(variant.shown(), Variants.draw(template, seed, system).shown(), where);
            }
        }
    }

    private static Variant again(Variant variant) {
        return Variants.draw(variant.template(), variant.seed(), variant.system());
    }

    /** A pull takes a thousand times as long as a relation. */
    private static int seeds(Template template) {
        boolean pulls =
                template.task() instanceof Task.Diagnose
                        || template.task() instanceof Task.Devise
                        || template.task() instanceof Task.Split
                        || template.task() instanceof Task.Read read
                                && read.chart() instanceof ChartPlan.Pulls;
        return pulls ? Math.max(2, SEEDS / 50) : SEEDS;
    }

    private static Verdict marked(Variant variant, String answer) {
        return Marker.mark(variant, List.of(answer), DecimalHabit.POINT).get(0).orElseThrow();
    }

    private static void isMarkedRightByItsKey(Variant variant, String where) {
        Verdict verdict = marked(variant, Answers.key(variant, 0));
        assertEquals(Verdict.Kind.RIGHT, verdict.kind(), where);
        assertFalse(verdict.feedback().contains("{"), verdict.feedback());
    }

    private static void isMarkedRightByItsModel(Variant variant, String where) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < variant.answers().size(); i++) {
            lines.add(Answers.key(variant, i));
        }
        for (var verdict : Marker.mark(variant, lines, DecimalHabit.POINT)) {
            assertEquals(Verdict.Kind.RIGHT, verdict.orElseThrow().kind(), where);
            assertTrue(verdict.get().feedback().length() > 20, where);
        }
        lines.set(PlanLine.ORDER.ordinal(), lines.get(PlanLine.ORDER.ordinal()).substring(0, 2));
        Verdict few = Marker.mark(variant, lines, DecimalHabit.POINT).get(0).orElseThrow();
        assertEquals("too-few-pulls", few.mistake().orElse(""), where);
    }

    private static void tellsItsOptionsApart(Variant variant, String where) {
        List<String> texts = variant.lettered().stream().map(Lettered::text).toList();
        assertEquals(texts.size(), Set.copyOf(texts).size(), where + ": " + texts);
        texts.forEach(text -> assertFalse(text.contains("{"), where + ": " + text));
        assertTrue(texts.size() >= 3, where);
        if (variant.template().kind() == Template.Kind.CHOICE
                || variant.template().kind() == Template.Kind.FAULT) {
            long right = variant.lettered().stream().filter(Lettered::right).count();
            assertEquals(1, right, where);
        }
    }

    private static void recognisesEveryWrongLetter(Variant variant, String where) {
        List<String> answers =
                variant.template().kind() == Template.Kind.ORDER
                        ? swapped(variant)
                        : variant.lettered().stream()
                                .filter(option -> !option.right())
                                .map(Lettered::letter)
                                .toList();
        for (String answer : answers) {
            Verdict verdict = marked(variant, answer);
            assertEquals(Verdict.Kind.MISTAKE, verdict.kind(), where + ": " + answer);
            assertTrue(verdict.mistake().isPresent(), where);
            assertTrue(verdict.feedback().length() > 20, where + ": " + verdict.feedback());
            assertFalse(verdict.feedback().contains("{"), verdict.feedback());
            if (variant.template().kind() != Template.Kind.ORDER) {
                String id =
                        variant.lettered().stream()
                                .filter(option -> option.letter().equals(answer))
                                .map(Lettered::id)
                                .findFirst()
                                .orElseThrow();
                assertEquals(id, verdict.mistake().get(), where);
            }
        }
    }

    /** The order shown at first, and the right one backwards: both break a rule. */
    private static List<String> swapped(Variant variant) {
        List<String> shown = variant.lettered().stream().map(Lettered::letter).toList();
        List<String> back =
                new ArrayList<>(Answers.right(variant).stream().map(Lettered::letter).toList());
        java.util.Collections.reverse(back);
        return List.of(String.join(" ", shown), String.join("", back));
    }

    private static void isInRangeWithoutCaution(Variant variant, String where) {
        for (Worked worked : variant.run().workings()) {
            // Guarded: an input out of range would throw.
            assertEquals(List.of(), worked.relation().work(worked.in()).cautions(), where);
        }
    }

    /** A person who reads the text and types the numbers into a calculator has the same values. */
    private static void tellsTheGivensItWorksWith(Variant variant, String where) {
        for (Given given : variant.template().givens()) {
            String shown = variant.shown().get(given.name());
            Expected expected =
                    new Expected(
                            given.quantity(),
                            given.si().scale(),
                            variant.ambient(),
                            DecimalHabit.POINT);
            if (given.quantity() == Quantity.AS_MEASURED || given.quantity() == Quantity.FLAG) {
                continue;
            }
            if (given.isRow()) {
                List<Double> read =
                        assertInstanceOf(Typed.Readings.class, Typed.list(shown, expected), where)
                                .si();
                assertEquals(variant.givens().numbers(given.name()), read, where);
            } else {
                Typed typed = Typed.read(shown, expected);
                double read = assertInstanceOf(Typed.Understood.class, typed, where).si();
                double worked = variant.givens().number(given.name());
                assertEquals(worked, read, 1e-9 * Math.abs(worked), where + ", " + given.name());
            }
        }
    }

    private static void isNoGiven(Variant variant, String where) {
        for (int i = 0; i < variant.answers().size(); i++) {
            Quantity asked = variant.template().asks().get(i).quantity();
            Variant.Answer answer = variant.answers().get(i);
            for (Given given : variant.template().givens()) {
                if (!given.isRow() && given.quantity() == asked) {
                    double told = variant.givens().number(given.name());
                    assertTrue(
                            told < answer.low() || told > answer.high(),
                            where + ": " + given.name() + " is the answer");
                }
            }
        }
    }

    private static void isMarkedRightByItsOwnWorking(Variant variant, String where) {
        int asks = variant.answers().size();
        List<String> told = new ArrayList<>();
        List<String> rounded = new ArrayList<>();
        for (int i = 0; i < asks; i++) {
            told.add(Answers.told(variant, i));
            rounded.add(threeFigures(variant, i));
            String place = variant.template().asks().get(i).place();
            double value = variant.answers().get(i).value();
            assertTrue(
                    variant.template().task() instanceof Task.Read
                            || variant.run().workings().stream().anyMatch(w -> holds(w, value)),
                    where + ": the working leads to " + place);
        }
        Marker.mark(variant, told, DecimalHabit.POINT)
                .forEach(v -> assertEquals(Verdict.Kind.RIGHT, v.orElseThrow().kind(), where));
        for (int i = 0; i < asks; i++) {
            Verdict verdict =
                    Marker.mark(variant, rounded, DecimalHabit.POINT).get(i).orElseThrow();
            double off = Math.abs(verdict.value() - variant.answers().get(i).value());
            // Where an ask is finer than three figures, more of them are asked for.
            assertEquals(
                    off <= variant.answers().get(i).band()
                            ? Verdict.Kind.RIGHT
                            : Verdict.Kind.COARSE,
                    verdict.kind(),
                    where + ": " + rounded.get(i) + " for " + told.get(i));
        }
    }

    private static boolean holds(Worked worked, double value) {
        return worked.out().asMap().containsValue(value)
                || worked.in().asMap().containsValue(value);
    }

    private static String threeFigures(Variant variant, int ask) {
        Ask asked = variant.template().asks().get(ask);
        var scale = asked.scale(variant.system());
        double shown =
                scale.fromSi(
                        variant.answers().get(ask).value(), asked.quantity(), variant.ambient());
        return Numbers.significant(shown, 3) + " " + scale.label();
    }

    private static void recognisesEveryMistake(Variant variant, String where) {
        Set<String> listed =
                variant.template().task() instanceof Task.Read read
                        ? read.misreadings().stream()
                                .map(Misreading::id)
                                .collect(Collectors.toSet())
                        : variant.template().mistakes().stream()
                                .map(Mistake::id)
                                .collect(Collectors.toSet());
        Set<String> drawn =
                variant.slips().stream().map(s -> s.mistake().id()).collect(Collectors.toSet());
        assertEquals(listed, drawn, where + ": every mistake changes an answer");
        for (Variant.Slipped slip : variant.slips()) {
            Variant.Answer right = variant.answers().get(slip.ask());
            assertTrue(
                    Math.abs(slip.value() - right.value()) > 2 * right.band(),
                    where + ": " + slip.mistake().id() + " lies beside the right answer");
            List<String> answers = new ArrayList<>();
            for (int i = 0; i < slip.ask(); i++) {
                answers.add(Answers.told(variant, i));
            }
            String typed = Answers.told(variant, slip.ask(), slip.value());
            answers.add(typed);
            Verdict verdict =
                    Marker.mark(variant, answers, DecimalHabit.POINT).get(slip.ask()).orElseThrow();
            String what = where + ": " + slip.mistake().id() + " gives " + typed;
            assertEquals(Verdict.Kind.MISTAKE, verdict.kind(), what);
            assertTrue(
                    family(variant, slip).contains(verdict.mistake().orElseThrow()),
                    () -> what + ", taken for " + verdict.mistake().get());
            assertFalse(verdict.feedback().contains("{"), verdict.feedback());
        }
    }

    /** The mistakes that give the same number by their nature, and are told together. */
    private static Set<String> family(Variant variant, Variant.Slipped slip) {
        return variant.slips().stream()
                .filter(s -> s.ask() == slip.ask())
                .filter(s -> Math.abs(s.value() - slip.value()) <= 1e-6 * Math.abs(slip.value()))
                .map(s -> s.mistake().id())
                .collect(Collectors.toSet());
    }
}
