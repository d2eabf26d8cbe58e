// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.unit.DecimalHabit;
import hotside.unit.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Verdicts as a learner reads them. The push: a seat of 50 mm, 125 kPa gauge under the valve, the
 * air behind it; π/4 · (0.05 m)² · 125 kPa is 245.4 N.
 */
class MarkerTest {
    private static final Variant PUSH =
            Variants.draw(
                    SampleProblems.template(
                            """
                            ---
                            id: push
                            title: The push
                            skill: gate.push
                            level: 1
                            kind: number
                            givens:
                              seat: 50 mm
                              p3: 125 kPa gauge
                              ambient: 100.5 kPa
                            work:
                              push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: ambient}
                            ask:
                              - {of: push.force, say: the push}
                            mistakes:
                              - {slip: gauge-as-absolute, at: push.upstream, world: '{value} would leave the valve loose.'}
                              - {slip: radius-as-diameter, at: push.seatDiameter}
                              - {slip: factor, at: push.force, factor: 0.25, if: the area had been quartered, check: the area}
                              - {slip: left-out, at: push.upstream}
                              - {slip: thousand-too-big, at: push.force}
                              - {slip: taken-instead, at: push.upstream, with: push.seatDiameter}
                            ---
                            """
                                    + SampleProblems.body("seat", "p3", "ambient")),
                    1,
                    UnitSystem.SI_SHOP);

    private static final Variant OUTLET =
            Variants.draw(
                    SampleProblems.template(
                            """
                            ---
                            id: outlet
                            title: Behind a compressor
                            skill: turbo.outlet
                            level: 1
                            kind: steps
                            givens:
                              boost: 80 kPa gauge
                              ambient: 100 kPa
                            work:
                              c: {relation: compressor-pressure-ratio, boost: boost, ambientPressure: ambient}
                              b: {relation: bleed-signal, boost: boost, restrictorDiameter: 1 mm, bleedDiameter: 1 mm}
                            ask:
                              - {of: c.outletPressure, say: the pressure at the outlet}
                              - {of: b.signalPressure, say: the pressure in the signal hose}
                              - {of: b.share, say: the share that is left}
                            mistakes:
                              - {slip: thousand-too-small, at: c.outletPressure}
                            ---
                            """
                                    + SampleProblems.body("boost", "ambient")),
                    1,
                    UnitSystem.SI_SHOP);

    private static Verdict verdict(Variant variant, String... answers) {
        return Marker.mark(variant, List.of(answers), DecimalHabit.POINT)
                .get(answers.length - 1)
                .orElseThrow();
    }

    private static void assertVerdict(Verdict.Kind kind, String feedback, Verdict verdict) {
        assertEquals(feedback, verdict.feedback());
        assertEquals(kind, verdict.kind());
    }

    @ParameterizedTest
    @CsvSource({"245 N", "245.4 N", "0.2454 kN", "55.2 lbf", "241 N", "250 N", "2.45e2 N"})
    void withinTheToleranceIsRightInAnyUnit(String typed) {
        assertVerdict(Verdict.Kind.RIGHT, "To four figures it is 245.4 N.", verdict(PUSH, typed));
    }

    @Test
    void moreDigitsThanTheGivensHaveAreRightAndSpokenOf() {
        assertVerdict(
                Verdict.Kind.RIGHT,
                "To four figures it is 245.4 N; more digits than the givens have say nothing.",
                verdict(PUSH, "245.43692606 N"));
    }

    @Test
    void aFractionIsNoBoastOfDigits() {
        assertVerdict(
                Verdict.Kind.RIGHT, "To four figures it is 245.4 N.", verdict(PUSH, "491/2 N"));
    }

    @Test
    void aMissingUnitIsAskedFor() {
        assertVerdict(
                Verdict.Kind.ASK,
                "In which unit? Type it behind the number, for instance 245 N.",
                verdict(PUSH, " 245 "));
    }

    @Test
    void anotherKindOfUnitIsNotGuessedAt() {
        assertVerdict(
                Verdict.Kind.UNREADABLE,
                "“kPa” is a unit of pressure. A force was expected, in N, kN, kgf or lbf.",
                verdict(PUSH, "245 kPa"));
    }

    @Test
    void aMarkThatCouldBeEitherIsAskedAbout() {
        Verdict verdict =
                Marker.mark(PUSH, List.of("1,234 N"), DecimalHabit.UNKNOWN).get(0).orElseThrow();
        assertVerdict(
                Verdict.Kind.ASK,
                "“1,234” can be read in two ways: with a decimal mark it is 1.234 N, with a mark between"
                        + " thousands it is 1234 N. Which did you mean? Type 1,2340 for the first, 1234"
                        + " for the second.",
                verdict);
    }

    @Test
    void tooFewDigitsAreAskedFor() {
        assertVerdict(
                Verdict.Kind.COARSE,
                "It begins as it should, but more digits are needed to tell. Give three figures.",
                verdict(PUSH, "2e2 N"));
    }

    @Test
    void threeFiguresAreTooFewForAFineTolerance() {
        Variant mean =
                Variants.draw(
                        SampleProblems.template(
                                """
                                ---
                                id: mean
                                title: A mean
                                skill: test.mean
                                level: 1
                                kind: number
                                givens:
                                  pulls: 152.6 153.0 152.8 kW
                                work:
                                  s: {relation: mean-spread, sample: pulls}
                                ask:
                                  - {of: s.mean, say: the mean, tolerance: 0.1 kW}
                                mistakes:
                                  - {slip: factor, at: s.mean, factor: 3, if: the sum were not shared out, check: the divisor}
                                ---
                                """
                                        + SampleProblems.body("pulls")),
                        1,
                        UnitSystem.SI_SHOP);
        assertVerdict(
                Verdict.Kind.COARSE,
                "It begins as it should, but more digits are needed to tell. Give one or two figures more.",
                verdict(mean, "153 kW"));
        assertEquals(Verdict.Kind.RIGHT, verdict(mean, "152.8 kW").kind());
        assertEquals(Verdict.Kind.WRONG, verdict(mean, "152.5 kW").kind());
    }

    /** 125 kPa − 100.5 kPa leave 24.5 kPa on the seat: 48.1 N. */
    @Test
    void aGaugeReadingTakenAsAbsoluteIsRecognised() {
        Verdict verdict = verdict(PUSH, "48.1 N");
        assertVerdict(
                Verdict.Kind.MISTAKE,
                "Your number is what you would get if the pressure under the valve had gone in as a gauge"
                        + " reading where an absolute pressure belongs. Check whether the pressure of the air around"
                        + " (100.5 kPa abs) was added to the gauge reading. 48.10 N would leave the valve loose.",
                verdict);
        assertEquals(Optional.of("gauge-as-absolute@push.upstream"), verdict.mistake());
    }

    @Test
    void mistakesThatGiveOneNumberAreToldTogether() {
        assertVerdict(
                Verdict.Kind.MISTAKE,
                "Your number is what you would get if half of the bore of the valve seat had gone in where the"
                        + " whole belongs, or if the area had been quartered. Check radius and diameter: this formula is"
                        + " written with the diameter; and the area.",
                verdict(PUSH, "61.4 N"));
    }

    @Test
    void aSlipWithAnotherValueNamesBoth() {
        assertVerdict(
                Verdict.Kind.MISTAKE,
                "Your number is what you would get if the bore of the valve seat had been taken in place of the"
                        + " pressure under the valve. Check which of the two belongs there.",
                // Nothing but the air behind the valve: π/4 · (0.05 m)² · (0.05 − 100500) Pa.
                verdict(
                        Variants.draw(
                                without(PUSH.template(), "left-out@push.upstream"),
                                1,
                                UnitSystem.SI_SHOP),
                        "-197.3 N"));
    }

    private static Template without(Template t, String mistake) {
        return new Template(
                t.id(),
                t.title(),
                t.skill(),
                t.level(),
                t.kind(),
                t.givens(),
                t.chain(),
                t.asks(),
                t.mistakes().stream().filter(m -> !m.id().equals(mistake)).toList(),
                t.strict(),
                t.prompt(),
                t.hints(),
                t.why(),
                t.fingerprint());
    }

    @ParameterizedTest
    @CsvSource({
        "300 N, 300.0 N is too much",
        "220 N, 220.0 N is too little",
        "24540 N, 24540 N is far too much",
        "2.454 N, 2.454 N is far too little",
        "-245.4 N, −245.4 N is of the wrong sign",
    })
    void whatMatchesNoMistakeIsWrongAndNotGuessedAt(String typed, String begins) {
        assertVerdict(
                Verdict.Kind.WRONG,
                begins
                        + ", and no slip that is known here gives this number. Go through it step by step; a hint may"
                        + " help.",
                verdict(PUSH, typed));
    }

    /** 245.4 lbf are 1091.6 N: the number was found, the unit was not. */
    @Test
    void theRightNumberWithAnotherUnitIsToldApart() {
        assertVerdict(
                Verdict.Kind.WRONG,
                "1092 N is too much. The number itself fits, but not with this unit behind it. Check the unit.",
                verdict(PUSH, "245.4 lbf"));
    }

    @Test
    void wordsAreNotUnderstood() {
        assertVerdict(
                Verdict.Kind.UNREADABLE,
                "“about right” does not begin with a number. A force was expected, such as 12.5 N.",
                verdict(PUSH, "about right"));
    }

    /** 80 kPa gauge on 100 kPa of air are 180 kPa. */
    @Test
    void theRightPressureFromTheWrongZeroIsRecognised() {
        Verdict gauge = verdict(OUTLET, "80 kPa");
        assertVerdict(
                Verdict.Kind.MISTAKE,
                "Your number is what you would get if the pressure at the outlet were asked as a gauge shows it,"
                        + " counted from the air around. Check from which zero it is asked: an absolute pressure holds"
                        + " the air around (100.0 kPa abs) as well.",
                gauge);
        assertEquals(Optional.of("gauge-as-absolute@c.outletPressure"), gauge.mistake());
        assertEquals(Verdict.Kind.RIGHT, verdict(OUTLET, "80 kPa gauge").kind());
        assertEquals(Verdict.Kind.RIGHT, verdict(OUTLET, "180 kPa").kind());
    }

    @Test
    void anAbsolutePressureWhereGaugeIsAskedIsRecognised() {
        double signal = OUTLET.answers().get(1).value();
        String absolute = Math.round(signal / 1000 + 100) + ".0 kPa";
        Verdict verdict = verdict(OUTLET, "180 kPa", absolute);
        assertEquals(Optional.of("absolute-as-gauge@b.signalPressure"), verdict.mistake());
        assertTrue(
                verdict.feedback()
                        .startsWith(
                                "Your number is what you would get if the pressure at the diaphragm were asked as an"
                                        + " absolute pressure, with the air around in it."),
                verdict.feedback());
    }

    @Test
    void aBareNumberForAPercentageIsAskedAbout() {
        double share = OUTLET.answers().get(2).value();
        String pure = String.valueOf(Math.round(share * 1000) / 1000.0);
        Verdict verdict = verdict(OUTLET, "", "", pure);
        String percent = String.valueOf(Math.round(share * 1000) / 10.0);
        assertEquals(Verdict.Kind.ASK, verdict.kind());
        assertTrue(
                verdict.feedback()
                        .startsWith("The answer is asked in percent, and as typed it is 0."),
                verdict.feedback());
        assertTrue(
                verdict.feedback().endsWith(percent + "0 % if that is what you mean."),
                verdict.feedback());
        assertEquals(Verdict.Kind.RIGHT, verdict(OUTLET, "", "", percent).kind());
        assertEquals(Verdict.Kind.RIGHT, verdict(OUTLET, "", "", percent + " %").kind());
    }

    /** Asked about whether it is right or not, or the question would tell. */
    @Test
    void aWrongShareForAPercentageIsAskedAboutAsWell() {
        for (String wrong : List.of("0.01", "0.999")) {
            assertEquals(Verdict.Kind.ASK, verdict(OUTLET, "", "", wrong).kind(), wrong);
        }
        for (String plain : List.of("0", "0.5 %", "12")) {
            assertTrue(verdict(OUTLET, "", "", plain).kind() != Verdict.Kind.ASK, plain);
        }
    }

    @Test
    void whatIsNotAnsweredHasNoVerdict() {
        assertEquals(
                List.of(true, false, false),
                Marker.mark(OUTLET, List.of("180 kPa", " "), DecimalHabit.POINT).stream()
                        .map(Optional::isPresent)
                        .toList());
    }

    /** Steps: a wrong first answer carried on rightly is right in method. */
    @Nested
    class CarriedTest {
        private static final Variant SPEED =
                Variants.draw(SampleProblems.sample("sample-pipe-speed"), 1, UnitSystem.SI_SHOP);

        private static final double FLOW = SPEED.answers().get(0).value() * 1000;
        private static final double SPEED_RIGHT = SPEED.answers().get(1).value();

        private static String flow(double times) {
            return FLOW * times + " g/s";
        }

        private static String speed(double times) {
            return SPEED_RIGHT * times + " m/s";
        }

        @Test
        void aWrongStepCarriedOnIsRightInMethod() {
            Verdict second = verdict(SPEED, flow(1.3), speed(1.3));
            assertEquals(Verdict.Kind.WRONG, verdict(SPEED, flow(1.3)).kind());
            assertVerdict(
                    Verdict.Kind.CARRIED,
                    "It follows rightly from your earlier answer, which is off: put that right and "
                            + Answers.told(SPEED, 1)
                            + " comes out here.",
                    second);
            assertTrue(second.kind().good() && second.kind().counts());
        }

        @Test
        void aMistakeOfTheFirstStepIsNotHeldAgainstTheSecond() {
            List<Optional<Verdict>> verdicts =
                    Marker.mark(SPEED, List.of(flow(60), speed(60)), DecimalHabit.POINT);
            assertEquals(
                    Optional.of("minutes-as-seconds@flow.exhaustFlow"),
                    verdicts.get(0).orElseThrow().mistake());
            assertEquals(Verdict.Kind.CARRIED, verdicts.get(1).orElseThrow().kind());
        }

        @Test
        void theRightSecondAnswerStaysRightAfterAWrongFirst() {
            assertEquals(Verdict.Kind.RIGHT, verdict(SPEED, flow(1.3), speed(1)).kind());
        }

        @Test
        void aMistakeMadeOnTopOfAWrongStepIsRecognised() {
            Verdict second = verdict(SPEED, flow(1.3), speed(1.3 * 4));
            assertEquals(Optional.of("radius-as-diameter@pipe.diameter"), second.mistake());
        }

        @Test
        void whatFollowsFromNothingIsWrong() {
            assertEquals(Verdict.Kind.WRONG, verdict(SPEED, flow(1.3), speed(1.7)).kind());
        }

        @Test
        void anAnswerThatWasNotUnderstoodIsNotCarried() {
            assertEquals(Verdict.Kind.WRONG, verdict(SPEED, "lots", speed(1.3)).kind());
        }

        @Test
        void aFirstStepThatWasOnlyRoundedIsNotCalledOff() {
            Template fine = SPEED.template();
            Ask strict = fine.asks().get(1);
            List<Ask> asks =
                    Arrays.asList(
                            fine.asks().get(0),
                            new Ask(
                                    strict.place(),
                                    strict.phrase(),
                                    strict.quantity(),
                                    strict.siScale(),
                                    strict.usScale(),
                                    new Ask.Tolerance(0.001, 0)));
            Template template =
                    new Template(
                            fine.id(),
                            fine.title(),
                            fine.skill(),
                            fine.level(),
                            fine.kind(),
                            fine.givens(),
                            fine.chain(),
                            asks,
                            fine.mistakes(),
                            true,
                            fine.prompt(),
                            fine.hints(),
                            fine.why(),
                            fine.fingerprint());
            Variant variant = Variants.draw(template, 1, UnitSystem.SI_SHOP);
            assertVerdict(
                    Verdict.Kind.RIGHT,
                    "It follows from your earlier answers as you rounded them; with all their figures "
                            + Answers.told(variant, 1)
                            + " comes out.",
                    verdict(variant, flow(1.005), speed(1.005)));
        }
    }
}
