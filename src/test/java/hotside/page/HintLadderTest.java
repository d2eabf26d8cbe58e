// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.problem.Answers;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.unit.UnitSystem;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Four rungs: the last one is the working, with this learner's numbers and the answer in it. */
class HintLadderTest {
    private static final Maths MATHS = new Maths();
    private static final int RUNGS = 4;

    private static Variant draw(Template template) {
        return Variants.draw(template, 2, UnitSystem.SI_SHOP);
    }

    @Test
    void theLastRungOfEveryLadderIsTheWorkingWithTheAnswer() {
        ProblemText text = new ProblemText(MATHS);
        for (Template template : ProblemBank.shipped().all()) {
            Variant variant = draw(template);
            List<String> hints = text.hints(variant);
            assertEquals(RUNGS, hints.size(), template.id());
            assertEquals(RUNGS, Set.copyOf(hints).size(), template.id());
            String working = text.working(variant);
            assertEquals(working, hints.get(RUNGS - 1), template.id());
            for (int i = 0; i < template.asks().size(); i++) {
                String key = Answers.key(variant, i);
                assertTrue(working.contains(key), template.id() + ": " + key + " in " + working);
            }
        }
    }

    @Test
    void theLastRungOfACardIsItsWorkedAnswer() {
        ProblemCard card = new ProblemCard(MATHS);
        for (Template.Kind kind : Template.Kind.values()) {
            Template template =
                    ProblemBank.shipped().all().stream()
                            .filter(t -> t.kind() == kind)
                            .findFirst()
                            .orElseThrow();
            ProblemState state = ProblemState.fresh("p", draw(template));
            String hints = card.hints(state.rung(RUNGS));
            String solution = card.solution(state.working(true));
            String working =
                    solution.substring(0, solution.indexOf("<h4>" + Words.of("problem.why")));
            assertFalse(working.isBlank(), template.id());
            assertTrue(hints.contains(working), template.id());
            assertFalse(card.hints(state.rung(RUNGS - 1)).contains(working), template.id());
        }
    }

    @Test
    void aPlanHasAFieldForEachLineAndSaysWhatIsWellAboutTheRightOne() {
        Template template = ProblemBank.shipped().find("plan-for-a-wider-pipe").orElseThrow();
        ProblemCard card = new ProblemCard(MATHS);
        ProblemState state = ProblemState.fresh("p", draw(template));
        String html = card.html(state);
        for (int i = 0; i < 5; i++) {
            assertTrue(html.contains("id=\"p-answer-" + i + "\""), html);
        }
        assertTrue(html.contains("placeholder=\"such as ABBA\""), html);
        assertTrue(card.solution(state.working(true)).contains("Boost is held"), html);
    }

    @Test
    void aSplitShowsWhatEachPullGave() {
        Template template = ProblemBank.shipped().find("split-from-six-pulls").orElseThrow();
        Variant variant = draw(template);
        String html = new ProblemCard(MATHS).html(ProblemState.fresh("p", variant));
        String first = variant.shown().get("powerA").split(";")[0];
        assertTrue(html.contains("<td>" + first + "</td>"), html);
        assertTrue(html.contains("boost, kPa"), html);
        assertTrue(html.contains("<figure class=\"chart\">"), html);
        assertTrue(PaperSheet.task(variant).contains("<td>" + first + "</td>"));
    }
}
