// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.Finding;
import hotside.speech.Language;
import hotside.unit.DecimalHabit;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plan is marked by what the cell would do with it, line by line. */
class PlanMarkerTest {
    private static final String ALL =
            "boost, turbine inlet pressure, turbine outlet pressure, ambient temperature";

    private static Variant draw(String id) {
        return Variants.draw(ProblemBank.shipped().find(id).orElseThrow(), 3, UnitSystem.SI_SHOP);
    }

    private static List<Optional<Verdict>> mark(Variant variant, String... lines) {
        return Marker.mark(variant, List.of(lines), DecimalHabit.POINT);
    }

    private static List<String> mistakes(List<Optional<Verdict>> verdicts) {
        return verdicts.stream().map(v -> v.flatMap(Verdict::mistake).orElse("")).toList();
    }

    /** What must be wrong follows from how a cell drifts: worked out beforehand, line by line. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            # a plan that is right, in another form
            abba abba        | 2 | 10 min | 60 kPa | all  | ;;;;
            # all of B later than all of A, in a cell that warms
            AAAABBBB         | 2 | 10 min | 60 kPa | all  | order-lets-drift-in;;;;
            # two pulls have no scatter that could be known
            AB               | 2 | 10 min | 60 kPa | all  | too-few-pulls;;;;
            AAAA             | 2 | 10 min | 60 kPa | all  | nothing-compared;;;;
            # boost moves with the pipe
            ABBAABBA         | 2 | 10 min | free   | all  | ;;;boost-left-free;
            # a spring of 260 N on 71.4 mm cannot let boost fall to 30 kPa
            ABBAABBA         | 2 | 10 min | 30 kPa | all  | ;;;boost-out-of-reach;
            # ten pulls every quarter of an hour take 150 minutes
            ABBAABBA         | 2 | 15 min | 60 kPa | all  | ;;takes-too-long;;
            ABBAABBA         | 2 | 10 min | 60 kPa | none | ;;;;not-logged
            """)
    void namesWhatIsWrongWithAPlan(
            String order, String warmUp, String interval, String hold, String log, String wrong) {
        Variant variant = draw("plan-for-a-wider-pipe");
        List<Optional<Verdict>> verdicts = mark(variant, order, warmUp, interval, hold, log);
        assertEquals(List.of(wrong.split(";", -1)), mistakes(verdicts));
        for (Optional<Verdict> verdict : verdicts) {
            boolean right = verdict.orElseThrow().mistake().isEmpty();
            boolean nothing = wrong.contains("nothing-compared");
            assertEquals(
                    !right
                            ? Verdict.Kind.MISTAKE
                            : nothing && verdict != verdicts.get(2)
                                    ? Verdict.Kind.ASK
                                    : Verdict.Kind.RIGHT,
                    verdict.get().kind(),
                    verdict.get().feedback());
        }
    }

    @Test
    void twoThingsAtOnceAreNoTestOfOne() {
        Variant variant = draw("pipe-after-the-cooler");
        List<Optional<Verdict>> two = mark(variant, "ACCAACCA", "2", "12 min", "62 kPa", ALL);
        assertEquals("two-changes", mistakes(two).get(0));
        assertTrue(two.get(0).get().feedback().contains("cooler and exhaust"), two.toString());
        assertEquals(
                "wrong-parts",
                mistakes(mark(variant, "ABBAABBA", "2", "12 min", "62 kPa", ALL)).get(0));
    }

    /** What may be logged in place of being held need not be held. */
    @Test
    void boostThatMayMoveMustBeLogged() {
        Variant variant = draw("when-boost-may-move");
        assertEquals(
                List.of("", "", "", "boost-left-free", "not-logged"),
                mistakes(
                        mark(
                                variant,
                                "ABBAAB",
                                "2",
                                "11 min",
                                "free",
                                "turbineInletPressure, ambientTemperature")));
    }

    @Test
    void onlyAWholePlanIsJudged() {
        Variant variant = draw("plan-for-a-wider-pipe");
        List<Optional<Verdict>> verdicts = mark(variant, "ABBX", "two", "10 min", " ", "moon");
        assertEquals(
                List.of(
                        Optional.of(Verdict.Kind.UNREADABLE),
                        Optional.of(Verdict.Kind.UNREADABLE),
                        Optional.of(Verdict.Kind.ASK),
                        Optional.empty(),
                        Optional.of(Verdict.Kind.UNREADABLE)),
                verdicts.stream().map(v -> v.map(Verdict::kind)).toList());
        assertTrue(
                verdicts.get(0).get().feedback().startsWith("The order has a \"X\""),
                verdicts.get(0).get().feedback());
        assertEquals(5, mark(variant).size());
    }

    @Test
    void theUnitsOfTheShopAreUnderstood() {
        Variant variant =
                Variants.draw(
                        ProblemBank.shipped().find("plan-for-a-wider-pipe").orElseThrow(),
                        3,
                        UnitSystem.US_SHOP);
        List<Optional<Verdict>> verdicts =
                mark(variant, "ABBAABBA", "2 pulls", "0.16 h", "8.8 psi", ALL);
        assertEquals(List.of("", "", "", "", ""), mistakes(verdicts));
    }

    /** A plan may be marked at another desk than the one that it was written at. */
    @Test
    void germanLinesAreUnderstoodAtAnyDesk() {
        Variant variant = draw("plan-for-a-wider-pipe");
        String log =
                "Ladedruck, Druck vor der Turbine, Druck hinter der Turbine und Lufttemperatur";
        assertEquals(
                List.of("", "", "", "", ""),
                mistakes(mark(variant, "ABBAABBA", "2 Messungen", "10 min", "60 kPa", log)));
        assertEquals(
                List.of("", "", "", "boost-left-free", "not-logged"),
                mistakes(mark(variant, "ABBAABBA", "2", "10 min", "frei", "nichts")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            ABBAABBA | 2   | 10 min | 60 kPa | alle
            AAAABBBB | 0   | 15 min | frei   | nichts
            ABBAABBA | 2   | 10 min | 30 kPa | Ladedruck
            AAAA     | 2   | 10 min | 60 kPa | alle
            AB       | 2   | 10 min | 60 kPa | alle
            ABBX     | two | 1 kg   | 900 psi | Mond
            """)
    void aGermanDeskIsToldInGerman(
            String order, String warmUp, String interval, String hold, String log) {
        Language.speak(Language.GERMAN);
        try {
            for (String id : List.of("plan-for-a-wider-pipe", "pipe-after-the-cooler")) {
                for (Optional<Verdict> verdict :
                        mark(draw(id), order, warmUp, interval, hold, log)) {
                    String said = verdict.orElseThrow().feedback();
                    assertFalse(said.matches("(?s).*\\b(the|of|and|is|with|to)\\b.*"), said);
                }
            }
            assertEquals("Ladedruck", PlanDraft.spoken("boost"));
            assertEquals("Ladedruck, Lufttemperatur", PlanDraft.spoken(PlanLine.LOG.example()));
        } finally {
            Language.speak(Language.ENGLISH);
        }
        assertEquals("boost, ambient temperature", PlanDraft.spoken(PlanLine.LOG.example()));
    }

    /** A line for each thing that an author may get wrong. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            rig: eight-vented-bleed   | rig: eight-vented-blead  | there is no rig "eight-vented-blead"
            B: {say: wide             | C: {say: wide            | a part is called "C"
            order: ABBA               | order: ABXA              | The order has a "X"
            warm-up: 1                | warm-up: few             | The number of warm-up pulls is "few"
            boost: held               | boost: gone              | gone
            sees: 5 kW                | sees: 5 kPa              | "5 kPa" is not a power
            compare: [A, B]           | compare: [A, Q]          | "A Q" is no pair of parts
            band: 4000..6000          | band: wide               | the band is "wide"
            """)
    void saysWhatAnAuthorGotWrong(String right, String wrong, String said) {
        assertTrue(FILE.contains(right), right);
        assertEquals(List.of(), SampleProblems.findings(FILE));
        List<String> findings = new ArrayList<>();
        for (Finding finding : SampleProblems.findings(FILE.replace(right, wrong))) {
            findings.add(finding.toString());
        }
        assertTrue(findings.stream().anyMatch(f -> f.contains(said)), findings.toString());
    }

    private static final String FILE =
            """
            ---
            id: a-plan
            title: A plan
            skill: fair-test.plan
            level: 2
            kind: plan
            trial:
              rig: eight-vented-bleed
              parts:
                A: {say: old}
                B: {say: wide, set: {exhaust.bore: 100 mm}}
              band: 4000..6000
            plan: {order: ABBA, warm-up: 1, interval: 10 min, hold: 60 kPa, log: boost}
            right: {compare: [A, B], boost: held, sees: 5 kW, time: 2 h, log: [boost]}
            ---
            """
                    + SampleProblems.body();
}
