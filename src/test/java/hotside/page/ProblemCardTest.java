// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFolder;
import hotside.problem.Answers;
import hotside.problem.Marker;
import hotside.problem.ProblemBank;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.unit.DecimalHabit;
import hotside.unit.UnitSystem;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ProblemCardTest {
    private static final ProblemCard CARD = new ProblemCard(new Maths());
    private static final Variant SPEED =
            Variants.draw(
                    ProblemBank.of(ContentFolder.ofResources("samples/problems"))
                            .find("sample-pipe-speed")
                            .orElseThrow(),
                    1,
                    UnitSystem.SI_SHOP);

    private static ProblemState state() {
        return ProblemState.fresh("p1", SPEED);
    }

    @Test
    void theTextTellsTheNumbersOfTheVariant() {
        String html = CARD.html(state());
        SPEED.shown().values().forEach(shown -> assertTrue(html.contains(shown), shown));
        assertFalse(html.contains("{{"), html);
    }

    @Test
    void everyAnswerHasALabelledFieldThatNamesItsUnit() {
        String html = CARD.html(state());
        for (int i = 0; i < 2; i++) {
            assertTrue(html.contains("<label for=\"p1-answer-" + i + "\">"));
            assertTrue(html.contains("id=\"p1-answer-" + i + "\""));
            assertTrue(html.contains("id=\"p1-verdict-" + i + "\""));
        }
        assertTrue(html.contains("placeholder=\"number and unit, for instance g/s\""));
        assertTrue(html.contains("placeholder=\"number and unit, for instance m/s\""));
    }

    @Test
    void idsAreUnique() {
        Matcher ids = Pattern.compile(" id=\"([^\"]*)\"").matcher(CARD.html(state()));
        List<String> all = ids.results().map(m -> m.group(1)).toList();
        assertEquals(all.size(), all.stream().distinct().count(), all.toString());
    }

    @Test
    void whatWasTypedStaysAndIsEscaped() {
        String html = CARD.html(state().typed(0, "\"><script>"));
        assertTrue(html.contains("value=\"&quot;&gt;&lt;script&gt;\""), html);
    }

    @Test
    void nothingIsGivenAwayBeforeItIsAskedFor() {
        String html = CARD.html(state());
        for (int i = 0; i < 2; i++) {
            assertFalse(html.contains(Answers.told(SPEED, i)), Answers.told(SPEED, i));
        }
        assertEquals("", CARD.hints(state()));
        assertEquals("", CARD.solution(state()));
    }

    /** Three rungs of words, then the whole working with this variant's numbers. */
    @Test
    void theLadderHasFourRungsAndTheLastIsTheWorking() {
        List<Integer> items =
                IntStream.rangeClosed(1, 6)
                        .mapToObj(rung -> CARD.hints(state().rung(rung)))
                        .map(html -> html.split("<li><p>|<li><h4>", -1).length - 1)
                        .toList();
        assertEquals(1, items.get(0));
        assertEquals(3, items.get(2));
        assertEquals(items.get(3), items.get(5), "there is no fifth rung");
        String third = CARD.hints(state().rung(3));
        String fourth = CARD.hints(state().rung(4));
        assertFalse(third.contains(Answers.told(SPEED, 1)));
        for (int i = 0; i < 2; i++) {
            assertTrue(fourth.contains(Answers.told(SPEED, i)), Answers.told(SPEED, i));
        }
    }

    @Test
    void theWorkedAnswerUsesTheNumbersAndSaysWhyItMatters() {
        String html = CARD.solution(state().working(true));
        assertTrue(html.contains("150 kW") || html.contains("150.0 kW"), html);
        assertTrue(html.contains(": " + Answers.told(SPEED, 1) + "</p>"));
        assertTrue(html.contains("<h4>Why it matters</h4>"));
        Xml.parse("<div>" + html + "</div>");
    }

    @Test
    void verdictsAreToldInWordsBesideTheirColour() {
        String right = Answers.told(SPEED, 0);
        var verdicts =
                Marker.mark(SPEED, List.of(right, "1 m/s"), DecimalHabit.POINT);
        ProblemState judged = state().judged(verdicts, 2);
        assertEquals(
                "<p class=\"verdict right\"><strong>Right.</strong> To four figures it is "
                        + right
                        + ".</p>",
                CARD.verdict(judged, 0));
        assertTrue(
                CARD.verdict(judged, 1)
                        .startsWith("<p class=\"verdict wrong\"><strong>Not yet.</strong> 1.000 m/s is far too little"));
        assertFalse(judged.solved());
        assertEquals(2, judged.tries());
        assertEquals("", CARD.verdict(state(), 0));
    }
}
