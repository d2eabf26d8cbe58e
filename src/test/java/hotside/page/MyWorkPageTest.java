// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MyWorkPageTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String HOSTILE = "<script>\"&'</script>";

    private static SkillLine skill(int level, int answers, int problems, int days, boolean flag) {
        return new SkillLine(
                HOSTILE,
                HOSTILE,
                "Gate",
                level,
                2,
                5,
                answers,
                problems,
                days,
                true,
                flag,
                Optional.empty());
    }

    private static MyWorkPage.View view() {
        MyWorkPage.Try attempt =
                new MyWorkPage.Try(7, "2026-11-25 09:00", HOSTILE, 2, HOSTILE, HOSTILE, true);
        return new MyWorkPage.View(
                "0123456789",
                HOSTILE,
                TODAY,
                List.of(new PracticePage.Option(HOSTILE, HOSTILE, "")),
                Map.of(TODAY, 6, TODAY.minusDays(7), 40),
                List.of(skill(3, 1, 0, 1, true)),
                List.of(new MyWorkPage.Due(HOSTILE, HOSTILE, HOSTILE)),
                List.of(
                        new MyWorkPage.MistakeLine(
                                HOSTILE, HOSTILE, 3, 1, TODAY, List.of(attempt))),
                List.of(attempt),
                9,
                HOSTILE,
                400,
                Optional.of(HOSTILE));
    }

    @Test
    void nothingThatALearnerTypedBecomesMarkup() {
        for (String html : List.of(MyWorkPage.html(view()), MyWorkPage.report(view()))) {
            assertFalse(html.contains("<script"), html);
            assertFalse(html.contains("\"\"&'"), "no attribute is broken out of");
            assertTrue(html.contains("&lt;script&gt;"));
        }
    }

    @Test
    void theReportLoadsNothingAndRunsNothing() {
        // The name of a vocabulary, not an address to be loaded from.
        String report = MyWorkPage.report(view()).replace("http://www.w3.org/2000/svg", "");
        assertTrue(report.contains("default-src 'none'"));
        assertFalse(report.contains("http:") || report.contains("https:"), "no address outside");
        assertFalse(report.contains("<button"), "no buttons");
    }

    @Test
    void aDayTellsItsCountAndNotOnlyAShade() {
        String html = MyWorkPage.html(view());
        assertTrue(html.contains("<td data-shade=\"2\" title=\"2026-11-25\">6</td>"), html);
        assertTrue(html.contains("<td data-shade=\"4\" title=\"2026-11-18\">40</td>"));
    }

    @Test
    void thePlainTextTellsTheSame() {
        String text = MyWorkPage.text(view());
        assertTrue(text.contains("violet: nearly there"), text);
        assertTrue(text.contains("Made 3 times, last on 2026-11-25. Not yet gone."), text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3 | 1 | 0 | 1 | false | 2 right without help, of 5 tried. Mastery still wants one"
                        + " right answer without help, one more day.",
                "1 | 3 | 2 | 2 | true | 2 right without help, of 5 tried. Mastery still wants 3 right"
                        + " answers without help, 2 different problems, 2 days. Ten tries did not"
                        + " settle it: back to a full example, and ask your instructor.",
                "4 | 0 | 0 | 0 | false | 2 right without help, of 5 tried.",
            })
    void countsSayWhatMasteryStillWants(
            int level, int answers, int problems, int days, boolean flag, String told) {
        assertEquals(told, skill(level, answers, problems, days, flag).counts());
    }

    @Test
    void theColourAlwaysHasItsWord() {
        assertEquals(
                "blue: mastered, and still there after a week", skill(4, 0, 0, 0, false).word());
        assertTrue(skill(2, 0, 0, 0, false).temper().contains("bronze: on its way"));
    }
}
