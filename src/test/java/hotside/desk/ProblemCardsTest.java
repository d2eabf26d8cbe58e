// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.page.Maths;
import hotside.page.ProblemState;
import hotside.page.Words;
import hotside.problem.Answers;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Verdict;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ProblemCardsTest {
    private static final ProblemBank BANK = ProblemBank.shipped();
    private static final Maths MATHS = new Maths();
    private static final Pattern CHART = Pattern.compile("<svg [^>]*class=.chart[\"' ]");

    private final PageNotes page = new PageNotes();
    private final List<Try> kept = new ArrayList<>();
    private final List<String> solved = new ArrayList<>();
    private final Hand clock = new Hand();
    private ProblemCards cards;

    /** A clock that is turned by hand. */
    private static final class Hand extends Clock {
        private Instant now = Instant.parse("2026-01-05T08:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    @BeforeEach
    void drawTheProblem() {
        Tries tries =
                new Tries() {
                    @Override
                    public void keep(List<Try> tries, Runnable then) {
                        kept.addAll(tries);
                        then.run();
                    }

                    @Override
                    public void solved(String problem) {
                        solved.add(problem);
                    }
                };
        cards = new ProblemCards(MATHS, page, tries, () -> 6, clock);
        cards.clear("gate/what-opens-a-wastegate");
        cards.draw("p1", BANK.find("push-on-the-valve").orElseThrow());
    }

    /**
     * Every chart of every problem takes the keyboard, tells what it reads, says in words what it
     * shows and has its numbers in a table (WCAG 2.2: 1.1.1, 2.1.1).
     */
    @Test
    void everyChartHasACursorASummaryAndATable() {
        int charts = 0;
        for (Template template : BANK.all()) {
            cards.draw("p9", template);
            String html = cards.html("p9");
            int drawn = (int) CHART.matcher(html).results().count();
            charts += drawn;
            String id = template.id();
            assertEquals(drawn, count(html, "class=\"chart-frame\" tabindex=\"0\""), id);
            assertEquals(drawn, count(html, "class=\"reading\" role=\"status\""), id);
            assertEquals(drawn, count(html, Words.of("chart.data-table") + "</summary>"), id);
            Matcher frame =
                    Pattern.compile(
                                    "class=\"chart-frame\"[^>]* data-part=\"([^\"]+)\""
                                            + "[^>]*aria-label=\"([^\"]{40,})\"")
                            .matcher(html);
            for (int i = 0; i < drawn; i++) {
                assertTrue(frame.find(), id);
                String part = frame.group(1);
                assertTrue(cards.draws(part), id + " " + part);
                cards.nudge(part, 1);
                String first = page.element(part + "-reading");
                assertFalse(first.isBlank(), id);
                cards.nudge(part, 3);
                assertFalse(first.equals(page.element(part + "-reading")), id + ": " + first);
                assertFalse(page.element(part + "-svg cursor").isEmpty(), id);
            }
        }
        assertTrue(charts > 10, "charts: " + charts);
    }

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }

    private ProblemState state() {
        return cards.state("p1").orElseThrow();
    }

    private void answer(String text) {
        cards.edit("p1", "0", text);
        cards.act("check", "p1");
    }

    @Test
    void aMistakeIsNamedKeptAndTheRightAnswerSolvesIt() {
        Variant variant = state().variant();
        Variant.Slipped slip = variant.slips().get(0);
        answer(Answers.told(variant, slip.ask(), slip.value()));
        assertEquals(Verdict.Kind.MISTAKE, kept.get(0).verdict().kind());
        assertTrue(page.element("p1-verdict-0").contains("what you would get if"));
        assertEquals(List.of(), solved);
        clock.now = clock.now.plusSeconds(40);
        answer(Answers.told(variant, 0));
        assertEquals(Verdict.Kind.RIGHT, kept.get(1).verdict().kind());
        assertEquals(40, kept.get(1).seconds());
        assertEquals("gate/what-opens-a-wastegate", kept.get(1).where());
        assertEquals(List.of("push-on-the-valve"), solved);
    }

    @Test
    void theSameAnswerTwiceIsOneTryAndAnUnreadableOneIsNone() {
        answer("12 N");
        answer("12 N");
        assertEquals(1, kept.size());
        answer("about twelve");
        assertEquals(1, kept.size());
        assertTrue(page.element("p1-verdict-0").contains("Not understood"));
    }

    @Test
    void theNextHintComesOnlyAfterAWhile() {
        cards.act("hint", "p1");
        assertEquals(1, state().rung());
        cards.act("hint", "p1");
        assertEquals(1, state().rung(), "too soon");
        assertTrue(page.element("p1-hints").contains("Try with this one first"));
        clock.now = clock.now.plus(Duration.ofSeconds(8));
        cards.act("hint", "p1");
        assertEquals(2, state().rung());
        assertFalse(page.element("p1-hints").contains("Try with this one first"));
    }

    @Test
    void helpIsCountedWithTheTry() {
        cards.act("hint", "p1");
        answer("12 N");
        assertEquals(1, kept.get(0).hints());
        cards.act("solution", "p1");
        answer("13 N");
        assertEquals(state().variant().template().hints().size() + 1, kept.get(1).hints());
    }

    @Test
    void otherNumbersAreAFreshCard() {
        answer("12 N");
        cards.act("another", "p1");
        assertTrue(state().verdicts().get(0).isEmpty());
        assertEquals("", state().typed().get(0));
    }
}
