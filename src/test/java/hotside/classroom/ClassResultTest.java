// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.classroom.ProblemSet.Numbers;
import hotside.classroom.Roster.Learner;
import hotside.problem.Variant;
import hotside.unit.DecimalHabit;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class ClassResultTest {
    private static final int LEARNERS = 12;
    private final Regrader regrader = new Regrader(Classes.set(Numbers.OWN), Classes.BANK);

    private final Roster roster =
            Roster.of(
                    IntStream.range(0, LEARNERS + 1)
                            .mapToObj(i -> new Learner("K" + (10 + i), "=name " + i, "a"))
                            .toList());

    /** All answer everything rightly, but a third take the gauge for absolute in problem 1. */
    private ClassResult result() {
        List<MarkedHandIn> marked = new ArrayList<>();
        for (int i = 0; i < LEARNERS; i++) {
            String learner = "K" + (10 + i);
            Variant first = regrader.variant(learner, 0);
            Map<Integer, List<String>> answers =
                    Map.of(
                            0,
                            i % 3 == 0 ? Classes.slipped(first, 0) : Classes.right(first),
                            1,
                            Classes.right(regrader.variant(learner, 1)),
                            2,
                            Classes.right(regrader.variant(learner, 2)));
            marked.add(regrader.mark("paper", learner, answers, DecimalHabit.POINT, Classes.END));
        }
        Marking.SetAside aside = new Marking.SetAside("a", "K22", Reason.LATE, "finished later");
        return new ClassResult(
                regrader, Optional.of(roster), new Marking.Result(marked, List.of(aside)));
    }

    private static List<CSVRecord> parsed(StringWriter csv) throws java.io.IOException {
        return CSVFormat.RFC4180.parse(new StringReader(csv.toString())).getRecords();
    }

    @Test
    void aMistakeThatAThirdMakesIsToBeTaughtAgain() {
        ClassResult result = result();
        MistakeCount count = result.mistakes().get(0);
        assertEquals("gauge-as-absolute", count.mistake().replaceAll("@.*", ""));
        assertEquals(4, count.count());
        assertEquals(4.0 / 12, count.share(), 1e-12);
        assertEquals(3, count.examples().size());
        assertEquals(
                List.of("gate.valve-force"),
                result.again().stream().map(TeachAgain::skill).toList());
    }

    @Test
    void theDrillBringsOtherProblemsOfTheSkillFirst() {
        ClassResult result = result();
        ProblemSet drill =
                TeachAgain.drill(result.again(), regrader.set(), Classes.BANK).orElseThrow();
        List<String> skills =
                drill.items().stream()
                        .map(i -> Classes.BANK.find(i.problem()).orElseThrow().skill())
                        .distinct()
                        .toList();
        assertEquals(List.of("gate.valve-force"), skills);
        assertTrue(
                drill.items().size() == 1
                        || !drill.items().get(0).problem().equals("push-on-the-valve"));
        assertEquals(Optional.empty(), TeachAgain.drill(List.of(), regrader.set(), Classes.BANK));
    }

    @Test
    void theTableOfMarksHasARowForEverybodyAndNoFormula() throws java.io.IOException {
        StringWriter out = new StringWriter();
        result().marksCsv(out);
        List<CSVRecord> rows = parsed(out);
        assertEquals(LEARNERS + 2, rows.size());
        assertEquals("p1 push-on-the-valve", rows.get(0).get(3));
        assertEquals(
                List.of(
                        "K10",
                        "'=name 0",
                        "a",
                        "0",
                        "2",
                        "2",
                        "4",
                        "6",
                        "66.667",
                        "marked from paper"),
                rows.get(1).toList().subList(0, 10));
        assertEquals("set aside: late", rows.get(LEARNERS + 1).get(9));
        assertTrue(out.toString().contains("\r\n"));
    }

    @Test
    void theTableOfAnswersTellsSeedAnswerAndMistake() throws java.io.IOException {
        StringWriter out = new StringWriter();
        result().answersCsv(out);
        List<CSVRecord> rows = parsed(out);
        assertEquals(LEARNERS * 4 + 1, rows.size());
        assertEquals("mistake", rows.get(1).get(7));
        assertEquals(
                "s" + Long.toUnsignedString(regrader.set().seed("K10", 0)), rows.get(1).get(3));
    }

    @Test
    void tablesNeverSayNotANumber() {
        StringWriter out = new StringWriter();
        new ClassResult(regrader, Optional.empty(), new Marking.Result(List.of(), List.of()))
                .itemsCsv(out);
        assertTrue(!out.toString().contains("NaN"), out.toString());
    }

    @Test
    void halvesOfAClassAreOnlyTestedIfTheyAreLargeEnough() {
        Fairness small = Fairness.of(result().marked(), 0);
        assertEquals(12, small.low().of() + small.high().of());
        assertTrue(small.chance().isEmpty());
    }

    @Test
    void anAnswerCopiedFromAnotherIsRemarkedInASmallClass() {
        List<MarkedHandIn> marked = new ArrayList<>();
        List<String> copied = Classes.right(regrader.variant("K10", 0));
        for (String learner : List.of("K10", "K11", "K13")) {
            marked.add(
                    regrader.mark(
                            "paper", learner, Map.of(0, copied), DecimalHabit.POINT, Classes.END));
        }
        ClassResult result =
                new ClassResult(regrader, Optional.empty(), new Marking.Result(marked, List.of()));
        long remarked =
                result.marked().stream()
                        .filter(m -> m.items().get(0).credit() == 0)
                        .filter(
                                m ->
                                        result.remarks(m)
                                                .contains(
                                                        "problem 1: the wrong answer is right for another learner's numbers"))
                        .count();
        long wrong =
                result.marked().stream()
                        .filter(
                                m ->
                                        m.items().get(0).verdicts().get(0).orElseThrow().kind()
                                                == hotside.problem.Verdict.Kind.WRONG)
                        .count();
        assertTrue(wrong > 0);
        assertEquals(wrong, remarked);
    }
}
