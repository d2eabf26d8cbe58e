// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The problems that come with the program, marked as learners would have them marked. */
class ShippedProblemsTest {
    private static final int SEEDS = 8;

    static Stream<String> problems() {
        return ProblemBank.shipped().all().stream().map(Template::id);
    }

    @Test
    void areFreeOfFindings() {
        assertEquals(List.of(), ProblemBank.shipped().findings());
        assertFalse(ProblemBank.shipped().all().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("problems")
    void takeTheirOwnAnswersForRight(String id) {
        variants(id)
                .forEach(
                        variant -> {
                            List<String> answers = typedAnswers(variant);
                            Marker.mark(variant, answers, DecimalHabit.POINT)
                                    .forEach(
                                            verdict ->
                                                    assertEquals(
                                                            Verdict.Kind.RIGHT,
                                                            verdict.orElseThrow().kind(),
                                                            variant.shown() + " " + answers));
                        });
    }

    @ParameterizedTest
    @MethodSource("problems")
    void tellEachListedMistakeInWords(String id) {
        variants(id)
                .forEach(variant -> variant.slips().forEach(slip -> tellsInWords(variant, slip)));
    }

    private static void tellsInWords(Variant variant, Variant.Slipped slip) {
        List<String> answers = new ArrayList<>(typedAnswers(variant).subList(0, slip.ask()));
        answers.add(typed(variant, slip.ask(), slip.value()));
        Verdict verdict =
                Marker.mark(variant, answers, DecimalHabit.POINT).get(slip.ask()).orElseThrow();
        // A round number such as 2 may have too few digits to be told from the beginning of the
        // right one.
        Set<Verdict.Kind> fitting = EnumSet.of(Verdict.Kind.MISTAKE, Verdict.Kind.COARSE);
        String where = slip.mistake().id() + " " + answers + ": " + verdict.feedback();
        assertTrue(fitting.contains(verdict.kind()), where);
        assertFalse(verdict.feedback().contains("{"), where);
    }

    private static Stream<Variant> variants(String id) {
        Template template = ProblemBank.shipped().find(id).orElseThrow();
        return Stream.of(UnitSystem.values())
                .flatMap(
                        system ->
                                IntStream.rangeClosed(1, SEEDS)
                                        .mapToObj(seed -> Variants.draw(template, seed, system)));
    }

    private static List<String> typedAnswers(Variant variant) {
        return IntStream.range(0, variant.answers().size())
                .mapToObj(i -> typed(variant, i, variant.answers().get(i).value()))
                .toList();
    }

    /** A value as a learner types it, with six digits and its unit. */
    private static String typed(Variant variant, int index, double si) {
        Ask ask = variant.template().asks().get(index);
        Scale scale = ask.scale(variant.system());
        double number = scale.fromSi(si, ask.quantity(), variant.ambient());
        return Numbers.plain(Numbers.rounded(number, 6)) + " " + scale.label();
    }
}
