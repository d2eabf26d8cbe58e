// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.Finding;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a choice, an order, a graph or a fault that is written wrongly. */
class TaskReaderTest {
    static final String GRAPH =
            """
            ---
            id: test
            title: Test
            skill: gate.lever
            level: 1
            kind: graph
            givens:
              bore: 50 to 60 by 1 mm
              speed: 2500 to 6000 by 100 rev/min
            chart:
              pulls:
                old: {rig: four-return-spring, say: old, set: {exhaust.bore: bore}}
                new: {rig: four-return-spring, say: new}
              show: torque
            ask:
              - {read: value, of: old.torque, at: speed, say: the torque}
            mistakes:
              - {slip: other-curve, with: new.torque}
            ---
            """
                    + SampleProblems.body("speed");

    static final String FAULT =
            """
            ---
            id: test
            title: Test
            skill: gate.lever
            level: 1
            kind: fault
            chart:
              pulls:
                old: {rig: four-return-spring, say: old}
                new: {rig: four-return-spring, say: new}
              show: [boost, torque]
            pull: new
            faults:
              - {disturbance: factor-wrong, trace: Torque alone is higher.}
              - {disturbance: boost-zero-shifted, trace: Boost alone is higher.}
              - {id: spring-soft, say: The spring is soft., set: {gate.preload: 90 N}, trace: Both fall.}
            ask:
              - {say: What is it?}
            ---
            """
                    + SampleProblems.body();

    private static List<String> said(String text) {
        return SampleProblems.findings(text).stream().map(Finding::what).toList();
    }

    private static String changed(String text, String from, String to) {
        assertTrue(text.contains(from), from);
        return text.replace(from, to);
    }

    @Test
    void soundProblemsHaveNoFindings() {
        assertEquals(List.of(), said(GRAPH));
        assertEquals(List.of(), said(FAULT));
        assertEquals(List.of(), said(LetterMarkerTest.CHOICE));
        assertEquals(List.of(), said(LetterMarkerTest.SEVERAL));
        assertEquals(List.of(), said(LetterMarkerTest.ORDER));
        assertEquals(List.of(), said(LetterMarkerTest.RANK));
    }

    @ParameterizedTest(name = "{1} -> {2}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    first: least | first: smallest | "first" is "smallest"
                    value: b} | value: bb} | there is no value "bb"
                    value: b} | value: one.sizeQ} | there is no value "one.sizeQ"
                    c: 22 to 60 by 1 mm | c: 22 to 60 by 1 kW | c is a power, the others are not: a length
                    values: [a, b, c] | values: [a, b] | 2 values for 3 items
                    the one of {{b}} | the one of {{e}} | the item y tells a value "e" that is not there
                    """)
    void ordersByValueThatAreWrittenWronglyAreSaid(String from, String to, String what) {
        List<String> said = said(changed(LetterMarkerTest.RANK, from, to));
        assertTrue(said.stream().anyMatch(s -> s.startsWith(what)), said.toString());
    }

    @ParameterizedTest(name = "{1} -> {2}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    four-return-spring, say: old | four-return-sprong, say: old | there is no rig "four-return-sprong"
                    exhaust.bore: bore | exhaust.bor: bore | a rig has no value "exhaust.bor"
                    exhaust.bore: bore | exhaust.bore: speed | speed is a rotation, but exhaust.bore wants a length
                    exhaust.bore: bore | exhaust.bore: 2 m | exhaust.bore is 2 m
                    show: torque | show: torqe | there is no channel "torqe"
                    show: torque | show: turboSpeed | a rig of this chart has no sensor for turboSpeed
                    of: old.torque | of: old.power | there is no curve "old.power"
                    at: speed | at: 12 mm | "12 mm" is no place on this axis
                    read: value | read: vale | "read" in "ask" is "vale"
                    slip: other-curve, with: new.torque | slip: by-height | "slip" in "mistakes" is "by-height"
                    """)
    void graphsThatAreWrittenWronglyAreSaid(String from, String to, String what) {
        List<String> said = said(changed(GRAPH, from, to));
        assertTrue(said.stream().anyMatch(s -> s.startsWith(what)), said.toString());
    }

    @ParameterizedTest(name = "{1} -> {2}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    pull: new | pull: newer | no pull is called "newer"
                    factor-wrong | factor-wrongs | there is no disturbance "factor-wrongs"
                    factor-wrong | bleed-mis-set | four-return-spring cannot have this
                    id: spring-soft | id: factor-wrong | "factor-wrong" a second time
                    gate.preload: 90 N | gate.preload: 90 mm | gate.preload
                    """)
    void faultsThatAreWrittenWronglyAreSaid(String from, String to, String what) {
        List<String> said = said(changed(FAULT, from, to));
        assertTrue(said.stream().anyMatch(s -> s.contains(what)), said.toString());
    }

    @ParameterizedTest(name = "{1} -> {2}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    when: a > b | when: c > d | neither "c" nor "d" is a value of this problem
                    when: a > b | when: a > 3 kg | "3 kg" is no value
                    when: a > b, | when: a > b, holds: yes, | an option with both holds and when
                    when: a > b, | | an option that says neither whether nor when it holds
                    {{a}} against {{b}} | {{c}} | because of "The first, {{a}}." tells a value "c" that is not there
                    """)
    void choicesThatAreWrittenWronglyAreSaid(String from, String to, String what) {
        String text = changed(LetterMarkerTest.CHOICE, from, to == null ? "" : to);
        assertEquals(List.of(what), said(text));
    }

    @Test
    void ordersThatAreRightByLuckOrContradictTheirListAreSaid() {
        assertEquals(
                List.of("one of 2 orders is right"),
                said(
                        changed(
                                LetterMarkerTest.ORDER,
                                "  - {before: [two, three], mistake: three-too-early, because: two is needed.}\n",
                                "")));
        assertEquals(
                List.of("in the list of items two does not stand before one"),
                said(changed(LetterMarkerTest.ORDER, "[one, two]", "[two, one]")));
        assertEquals(
                List.of("no item is called \"on\""),
                said(changed(LetterMarkerTest.ORDER, "[one, two]", "[on, two]")));
    }

    @Test
    void oneStatementOnlyMayHoldInAChoice() {
        String both = LetterMarkerTest.CHOICE.replace("when: a > b", "holds: yes");
        assertEquals(
                List.of("2 of the 3 options hold"),
                said(both.replace("holds: no, because: No.", "holds: yes, because: No.")));
    }

    @Test
    void numbersCanBeOptionsWithTwoMistakesAtLeast() {
        String text =
                """
                ---
                id: test
                title: Test
                skill: gate.lever
                level: 1
                kind: choice
                givens:
                  seat: 30 to 50 by 1 mm
                work:
                  push: {relation: valve-force, seatDiameter: seat, upstream: 180 kPa, downstream: 100 kPa}
                ask:
                  - {of: push.force, say: the push}
                mistakes:
                  - {slip: radius-as-diameter, at: push.seatDiameter}
                ---
                """
                        + SampleProblems.body("seat");
        assertEquals(List.of("1 mistakes make 2 options"), said(text));
    }

    @Test
    void theTemplatesToCopyAreSound() throws IOException {
        String readme = Files.readString(Path.of("problems", "README.md"));
        List<String> templates =
                Pattern.compile("```markdown\n(.*?)```", Pattern.DOTALL)
                        .matcher(readme)
                        .results()
                        .map(match -> match.group(1))
                        // A translation holds words alone and is no problem by itself.
                        .filter(template -> template.contains("\nkind:"))
                        .toList();
        assertTrue(templates.size() >= 2, "templates in problems/README.md");
        for (String template : templates) {
            assertEquals(List.of(), said(template));
            Variants.draw(SampleProblems.template(template), 1, UnitSystem.US_SHOP);
        }
    }
}
