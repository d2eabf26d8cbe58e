// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.statistics.draw.SplitMix64;
import hotside.unit.DecimalHabit;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class LetterMarkerTest {
    private static final String HEAD = "---\nid: test\ntitle: Test\nskill: gate.lever\nlevel: 1\n";

    static final String SEVERAL =
            HEAD
                    + """
                      kind: several
                      ask:
                        - {say: Which hold?}
                      options:
                        - {say: Iron is a metal., holds: yes, because: It shines and conducts.}
                        - {say: Wood is a metal., holds: no, mistake: wood-is-metal, because: It burns.}
                        - {say: Tin is a metal., holds: yes, mistake: tin, because: It melts and conducts.}
                      ---
                      """
                    + SampleProblems.body();

    static final String ORDER =
            HEAD
                    + """
                      kind: order
                      ask:
                        - {say: In order?}
                      items: {one: the first, two: the second, three: the third}
                      rules:
                        - {before: [one, two], because: one comes first.}
                        - {before: [two, three], mistake: three-too-early, because: two is needed.}
                      ---
                      """
                    + SampleProblems.body();

    static final String CHOICE =
            HEAD
                    + """
                      kind: choice
                      givens:
                        a: 10 to 60 by 1 mm
                        b: 10 to 60 by 1 mm
                      work:
                        pair: {relation: equivalent-diameter, shape: twin, sizeA: a, sizeB: b}
                      ask:
                        - {say: Which is wider?}
                      options:
                        - {say: "The first, {{a}}.", when: a > b, because: "{{a}} against {{b}}"}
                        - {say: "The second, {{b}}.", when: a < b, because: "{{b}} against {{a}}"}
                        - {say: "Both make {{pair.areaDiameter}}.", holds: no, because: No.}
                      ---
                      """
                    + SampleProblems.body("a", "b");

    private static Variant draw(String text, long seed) {
        return Variants.draw(SampleProblems.template(text), seed, UnitSystem.SI_SHOP);
    }

    private static Verdict mark(Variant variant, String answer) {
        return Marker.mark(variant, List.of(answer), DecimalHabit.POINT).get(0).orElseThrow();
    }

    private static String letter(Variant variant, String id) {
        return variant.lettered().stream()
                .filter(option -> option.id().equals(id))
                .findFirst()
                .orElseThrow()
                .letter();
    }

    @Test
    void allThatHoldMustBeTaken() {
        Variant variant = draw(SEVERAL, 1);
        String iron = letter(variant, "option-1");
        String wood = letter(variant, "wood-is-metal");
        String tin = letter(variant, "tin");

        assertEquals(Verdict.Kind.RIGHT, mark(variant, tin + ", " + iron).kind());
        assertEquals(Verdict.Kind.RIGHT, mark(variant, (iron + tin).toLowerCase()).kind());
        Verdict part = mark(variant, iron);
        assertEquals(Optional.of("missed-tin"), part.mistake());
        assertEquals("What you took holds, but it is not all that does.", part.feedback());
        Verdict wrong = mark(variant, iron + " " + wood);
        assertEquals(Optional.of("wood-is-metal"), wrong.mistake());
        assertEquals(wood + " does not hold: It burns.", wrong.feedback());
    }

    /** However people write letters: with words, signs or numbers between and around them. */
    @Test
    void lettersAreReadAsPeopleWriteThem() {
        Variant variant = draw(SEVERAL, 1);
        String iron = letter(variant, "option-1");
        String tin = letter(variant, "tin");
        int first = iron.charAt(0) - 'A' + 1;
        int then = tin.charAt(0) - 'A' + 1;
        for (String text :
                List.of(
                        iron + " and " + tin,
                        iron + " und " + tin,
                        iron.toLowerCase() + " " + tin.toLowerCase(),
                        iron + " & " + tin,
                        iron + "/" + tin,
                        "(" + iron + ") + [" + tin + "]",
                        "Options " + iron + ", " + tin + ".",
                        first + ", " + then,
                        then + " and " + first)) {
            assertEquals(Verdict.Kind.RIGHT, mark(variant, text).kind(), text);
        }
        for (String text : List.of("and", "4", "0, 1", iron + " or " + tin)) {
            assertEquals(Verdict.Kind.UNREADABLE, mark(variant, text).kind(), text);
        }
    }

    /** Where the options are numbers, a number is not taken for the place of one. */
    @Test
    void aNumberAmongNumbersIsNoLetter() {
        Variant variant = Variants.draw(pick(), 1, UnitSystem.SI_SHOP);
        assertTrue(variant.lettered().get(0).text().matches("\\d.*"));
        assertEquals(Verdict.Kind.UNREADABLE, mark(variant, "1").kind());
    }

    private static Template pick() {
        return ProblemBank.shipped().find("which-push-is-it").orElseThrow();
    }

    static final String RANK =
            HEAD
                    + """
                      kind: order
                      givens:
                        a: 22 to 60 by 1 mm
                        b: 22 to 60 by 1 mm
                        c: 22 to 60 by 1 mm
                        d: 25 mm
                      work:
                        one: {relation: equivalent-diameter, shape: twin, sizeA: a, sizeB: d}
                      ask:
                        - {say: In order?}
                      first: least
                      items:
                        x: {say: "the one of {{a}}", value: a}
                        y: {say: "the one of {{b}}", value: b}
                        z: {say: "the one of {{c}}", value: c}
                      mistakes:
                        - {mistake: largest-first, values: [a, b, c], first: most, because: "{{a}} is asked the other way."}
                      ---
                      """
                    + SampleProblems.body("d");

    /** The order follows from the numbers, which are held here against each other by hand. */
    @Test
    void anOrderByValueFollowsTheNumbersOfTheSeed() {
        for (long seed = 1; seed <= 40; seed++) {
            Variant variant = draw(RANK, seed);
            double last = 0;
            for (Lettered item : Answers.right(variant)) {
                double bore =
                        variant.givens()
                                .number(List.of("a", "b", "c").get("xyz".indexOf(item.id())));
                // Closer than two percent would be too close for anybody to tell.
                assertTrue(bore > 1.02 * last, variant.shown().toString());
                last = bore;
            }
            String key = Answers.key(variant, 0);
            Verdict right = mark(variant, key);
            assertEquals(Verdict.Kind.RIGHT, right.kind());
            assertTrue(
                    right.feedback().matches("That is the order: . \\d.*mm\\."), right.feedback());
            Verdict turned = mark(variant, new StringBuilder(key).reverse().toString());
            assertEquals(Optional.of("largest-first"), turned.mistake());
            assertEquals(variant.shown().get("a") + " is asked the other way.", turned.feedback());
            String swapped = "" + key.charAt(2) + key.charAt(0) + key.charAt(4);
            Verdict pair = mark(variant, swapped);
            assertEquals(Optional.of("misranked"), pair.mistake());
            assertTrue(
                    pair.feedback()
                            .startsWith(key.charAt(0) + " belongs before " + key.charAt(2) + ": "),
                    pair.feedback());
        }
    }

    @Test
    void aWrongPairOfAnOrderIsNamedWithItsReason() {
        Variant variant = draw(ORDER, 1);
        String one = letter(variant, "one");
        String two = letter(variant, "two");
        String three = letter(variant, "three");

        assertEquals(one + " " + two + " " + three, Answers.key(variant, 0));
        assertEquals(Verdict.Kind.RIGHT, mark(variant, one + two + three).kind());
        Verdict verdict = mark(variant, String.join(" ", one, three, two));
        assertEquals(Optional.of("three-too-early"), verdict.mistake());
        assertEquals(two + " belongs before " + three + ": two is needed.", verdict.feedback());
        assertEquals(Optional.of("two-before-one"), mark(variant, two + one + three).mistake());
    }

    @Test
    void halfAnOrderIsAskedAboutAndNotMarked() {
        Verdict verdict = mark(draw(ORDER, 1), "A B");
        assertEquals(Verdict.Kind.ASK, verdict.kind());
        assertEquals("Name each item once, the first first: A to C.", verdict.feedback());
    }

    @Test
    void whatNamesNoOptionIsNotUnderstood() {
        Variant variant = draw(CHOICE, 1);
        for (String text : List.of("D", "7", "12 mm", "A A", "ABBA", "é", "A?")) {
            assertEquals(Verdict.Kind.UNREADABLE, mark(variant, text).kind(), text);
        }
        assertEquals("“D” names no option. Name one of A to C.", mark(variant, "D").feedback());
        assertEquals(Verdict.Kind.ASK, mark(variant, "A B").kind());
        assertEquals(
                List.of(Optional.empty()), Marker.mark(variant, List.of(" "), DecimalHabit.POINT));
    }

    @Test
    void truthFollowsTheNumbersAndTextsTellThem() {
        for (long seed = 1; seed <= 50; seed++) {
            Variant variant = draw(CHOICE, seed);
            boolean first = variant.givens().number("a") > variant.givens().number("b");
            Lettered right = Answers.right(variant).get(0);
            assertEquals(first ? "option-1" : "option-2", right.id());
            String wide = variant.shown().get(first ? "a" : "b");
            assertTrue(right.text().contains(wide), right.text());
            String never =
                    variant.lettered().stream()
                            .filter(option -> option.id().equals("option-3"))
                            .findFirst()
                            .orElseThrow()
                            .text();
            assertTrue(never.matches("Both make \\d+\\.\\d\u00a0mm\\."), never);
        }
    }

    @Test
    void anOrderNeverBeginsRight() {
        for (long seed = 1; seed <= 100; seed++) {
            assertNotEquals("A B C", Answers.key(draw(ORDER, seed), 0));
        }
    }

    /** Whoever takes letters at random is right about as often as chance has it, and no more. */
    @TestFactory
    Stream<DynamicTest> guessingPaysNoMoreThanChance() {
        return ProblemBank.shipped().all().stream()
                .filter(template -> template.kind().isLettered())
                .filter(template -> !(template.task() instanceof Task.Diagnose))
                .map(
                        template ->
                                DynamicTest.dynamicTest(
                                        template.id(), () -> guessing(template, 400)));
    }

    private static void guessing(Template template, int tries) {
        SplitMix64 random = new SplitMix64(20261125);
        int right = 0;
        double chance = 0;
        for (int seed = 1; seed <= tries; seed++) {
            Variant variant = Variants.draw(template, seed, UnitSystem.SI_SHOP);
            right += mark(variant, guess(variant, random)).kind() == Verdict.Kind.RIGHT ? 1 : 0;
            chance += chance(variant);
        }
        // Four standard deviations of a binomial count, from any text on statistics.
        double share = chance / tries;
        double room = 4 * Math.sqrt(share * (1 - share) * tries);
        assertEquals(chance, right, room + 1, template.id());
        assertTrue(share <= 1.0 / 3 + 1e-9, template.id());
    }

    private static String guess(Variant variant, SplitMix64 random) {
        List<String> letters =
                new ArrayList<>(variant.lettered().stream().map(Lettered::letter).toList());
        return switch (variant.template().kind()) {
            case ORDER -> {
                List<String> mixed = new ArrayList<>();
                while (!letters.isEmpty()) {
                    mixed.add(letters.remove(random.below(letters.size())));
                }
                yield String.join(" ", mixed);
            }
            case SEVERAL -> {
                letters.removeIf(letter -> random.below(2) == 0);
                yield letters.isEmpty() ? "A" : String.join(" ", letters);
            }
            default -> letters.get(random.below(letters.size()));
        };
    }

    private static double chance(Variant variant) {
        int options = variant.lettered().size();
        return switch (variant.template().kind()) {
            case ORDER ->
                    variant.template().task() instanceof Task.Arrange arrange
                            ? Orders.share(arrange)
                            : Orders.shareOfOne(options);
            case SEVERAL -> Math.pow(0.5, options);
            default -> 1.0 / options;
        };
    }

    /** The right letter stands everywhere about as often. */
    @Test
    void theRightOptionHasNoFavouritePlace() {
        int[] counts = new int[3];
        for (long seed = 1; seed <= 600; seed++) {
            counts[Answers.key(draw(CHOICE, seed), 0).charAt(0) - 'A']++;
        }
        for (int count : counts) {
            // Four standard deviations of a binomial count of 600 at one third.
            assertEquals(200, count, 46);
        }
    }

    /** Recorded answers are letters, so a seed must shuffle alike for ever. */
    @Test
    void seedsKeepTheirLettersForEver() {
        assertEquals(
                List.of("A B A B C B", "CAB ACB ACB BAC CAB CAB", "AC AC AB BC BC BC"),
                List.of(keys(CHOICE), keys(ORDER), keys(SEVERAL)));
    }

    private static String keys(String text) {
        return LongStream.rangeClosed(1, 6)
                .mapToObj(seed -> Answers.key(draw(text, seed), 0).replace(" ", ""))
                .collect(Collectors.joining(" "));
    }
}
