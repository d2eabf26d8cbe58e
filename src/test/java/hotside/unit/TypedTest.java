// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedTest {
    private static final double AMBIENT = 98_000;

    /** 1 psi, worked out from exact definitions (NIST SP 811). */
    private static final double PSI = 6894.757293168;

    private static Expected si(Quantity quantity) {
        return Expected.of(quantity, UnitSystem.SI_SHOP).withAmbient(AMBIENT);
    }

    private static Typed.Understood understood(String text, Expected expected) {
        return assertInstanceOf(Typed.Understood.class, Typed.read(text, expected), text);
    }

    private static String message(String text, Expected expected) {
        return assertInstanceOf(Typed.NotUnderstood.class, Typed.read(text, expected), text)
                .message();
    }

    private static void assertReads(double si, String text, Expected expected) {
        assertEquals(si, understood(text, expected).si(), 1e-12 * Math.max(1, Math.abs(si)), text);
    }

    @Nested
    class Numbers {
        @ParameterizedTest
        @CsvSource(
                delimiter = '|',
                quoteCharacter = '\f',
                value = {
                    "12.5 | 12.5 | 3",
                    "12,5 | 12.5 | 3",
                    "+12,5 | 12.5 | 3",
                    "−12.5 | -12.5 | 3",
                    "–12.5 | -12.5 | 3",
                    "- 12.5 | -12.5 | 3",
                    ".5 | 0.5 | 1",
                    ",25 | 0.25 | 2",
                    "12. | 12 | 2",
                    "007 | 7 | 1",
                    "0 | 0 | 1",
                    "0.050 | 0.05 | 2",
                    "1.2e3 | 1200 | 2",
                    "1,2E+3 | 1200 | 2",
                    "1.2e-3 | 0.0012 | 2",
                    "1,2x10^3 | 1200 | 2",
                    "1.2×10⁵ | 120000 | 2",
                    "1.2 × 10⁻² | 0.012 | 2",
                    "1.2*10**3 | 1200 | 2",
                    "1.2·10^-3 | 0.0012 | 2",
                    "10^5 | 100000 | 1",
                    "1.234e2 | 123.4 | 4",
                    "1 234,5 | 1234.5 | 5",
                    "1\u00a0234\u00a0567 | 1234567 | 7",
                    "1\u2009234.5 | 1234.5 | 5",
                    "1\u202f234,5 | 1234.5 | 5",
                    "1'234.5 | 1234.5 | 5",
                    "1’234’567,5 | 1234567.5 | 8",
                    "1,234.5 | 1234.5 | 5",
                    "1.234,5 | 1234.5 | 5",
                    "1,234,567 | 1234567 | 7",
                    "1.234.567 | 1234567 | 7",
                    "1,234,567.25 | 1234567.25 | 9",
                    "0,234 | 0.234 | 3",
                    "0.234 | 0.234 | 3",
                    "1234,567 | 1234.567 | 7",
                    "1,2345 | 1.2345 | 5",
                    "3 1/2 | 3.5 | 15",
                    "3-1/2 | 3.5 | 15",
                    "-3 1/2 | -3.5 | 15",
                    "3½ | 3.5 | 15",
                    "3 ½ | 3.5 | 15",
                    "½ | 0.5 | 15",
                    "1/2 | 0.5 | 15",
                    "2⅜ | 2.375 | 15",
                    "\ufeff12.5\u200b | 12.5 | 3",
                })
        void areReadAsTheyAreWritten(String text, double value, int digits) {
            for (DecimalHabit habit : DecimalHabit.values()) {
                var read = understood(text, si(Quantity.AS_MEASURED).withHabit(habit));
                assertEquals(value, read.si(), 1e-12 * Math.abs(value));
                assertEquals(digits, read.significantDigits());
                assertFalse(read.unitTyped());
            }
        }

        @ParameterizedTest
        @ValueSource(strings = {"1,234", "1.234", "12,345", "123.456", "-1,234"})
        void areAskedAboutWhereTheMarkCouldBeEither(String text) {
            var asked =
                    assertInstanceOf(
                            Typed.Ambiguous.class,
                            Typed.read(
                                    text,
                                    si(Quantity.AS_MEASURED).withHabit(DecimalHabit.UNKNOWN)));
            assertEquals(asked.asDecimal().si() * 1000, asked.asGrouped().si(), 1e-9);
            // Reading again with the habit that the answer shows gives the answer.
            assertReads(
                    asked.asDecimal().si(),
                    text,
                    si(Quantity.AS_MEASURED).withHabit(asked.ifDecimal()));
            assertReads(
                    asked.asGrouped().si(),
                    text,
                    si(Quantity.AS_MEASURED).withHabit(asked.ifGrouped()));
        }

        @Test
        void areAskedAboutInAQuestionThatShowsBoth() {
            var asked =
                    assertInstanceOf(
                            Typed.Ambiguous.class,
                            Typed.read(
                                    "1,234 bar",
                                    si(Quantity.GAUGE_PRESSURE).withHabit(DecimalHabit.UNKNOWN)));
            assertEquals(
                    "“1,234” can be read in two ways: with a decimal mark it is 1.234 bar gauge,"
                            + " with a mark between thousands it is 1234 bar gauge. Which did you"
                            + " mean? Type 1,2340 for the first, 1234 for the second.",
                    asked.question());
            assertEquals(123_400, asked.asDecimal().si(), 1e-9);
            assertEquals(123_400_000, asked.asGrouped().si(), 1e-6);
            assertEquals(DecimalHabit.COMMA, asked.ifDecimal());
            assertEquals(DecimalHabit.POINT, asked.ifGrouped());
        }

        @ParameterizedTest
        @CsvSource({
            "POINT, 1.234, 1.234",
            "POINT, '1,234', 1234",
            "COMMA, '1,234', 1.234",
            "COMMA, 1.234, 1234"
        })
        void areNotAskedAboutWhenTheHabitIsKnown(DecimalHabit habit, String text, double value) {
            assertReads(value, text, si(Quantity.AS_MEASURED).withHabit(habit));
        }

        @ParameterizedTest
        @CsvSource({
            "'12,5 psi', COMMA",
            "12.5, POINT",
            "'1,234', UNKNOWN",
            "1.234, UNKNOWN",
            "'1,234.5', POINT",
            "1.234.567, COMMA",
            "12, UNKNOWN",
            "abc, UNKNOWN"
        })
        void giveTheHabitAway(String text, DecimalHabit habit) {
            assertEquals(habit, DecimalHabit.shownIn(text));
        }

        @Test
        void withMarksInOddPlacesAreNotGuessed() {
            assertEquals(
                    "The marks in “1,23,4” stand in odd places. Type a number like 1234.5 or"
                            + " 1234,5.",
                    message("1,23,4 psi", si(Quantity.GAUGE_PRESSURE)));
            for (String odd : List.of("1.2.3", "1,23.456,7", "0,234,567", "1 234,567.8")) {
                message(odd, si(Quantity.AS_MEASURED));
            }
        }
    }

    @Nested
    class Pressures {
        @ParameterizedTest
        @ValueSource(
                strings = {
                    "86 kPa gauge",
                    "86 kPag",
                    "86 kPa g",
                    "86kPa(g)",
                    "86 kPa GAUGE",
                    "86 kpa Gage",
                    "0.86 barg",
                    "0,86 bar gauge",
                    "86 gauge"
                })
        void markedGaugeAreCountedFromAmbient(String text) {
            assertReads(86e3, text, si(Quantity.GAUGE_PRESSURE));
            assertReads(86e3 + AMBIENT, text, si(Quantity.PRESSURE));
            assertReads(86e3, text, si(Quantity.PRESSURE_DIFFERENCE));
        }

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "186 kPa abs",
                    "186 kPa abs.",
                    "186 kPa absolute",
                    "186 kPa Absolute",
                    "186 kPaa",
                    "186 kPa (abs)",
                    "1.86 bara",
                    "186 abs"
                })
        void markedAbsoluteAreCountedFromVacuum(String text) {
            assertReads(186e3, text, si(Quantity.PRESSURE));
            assertReads(186e3 - AMBIENT, text, si(Quantity.GAUGE_PRESSURE));
            assertReads(186e3, text, si(Quantity.PRESSURE_DIFFERENCE));
        }

        @ParameterizedTest
        @ValueSource(strings = {"12.5 psi", "12,5 psi", "12.5psi", "12.5 PSI", "12.5 lbf/in^2"})
        void unmarkedAreOfTheQuantitysOwnKind(String text) {
            assertReads(12.5 * PSI, text, si(Quantity.PRESSURE));
            assertReads(12.5 * PSI, text, si(Quantity.GAUGE_PRESSURE));
            assertReads(12.5 * PSI, text, si(Quantity.PRESSURE_DIFFERENCE));
        }

        @Test
        void inPsiCarryTheirMarkInTheUnit() {
            assertReads(12.5 * PSI + AMBIENT, "12.5 psig", si(Quantity.PRESSURE));
            assertReads(12.5 * PSI - AMBIENT, "12.5 psia", si(Quantity.GAUGE_PRESSURE));
            assertReads(12.5 * PSI, "12.5 psid", si(Quantity.PRESSURE_DIFFERENCE));
            assertEquals(
                    "psi gauge", understood("12.5 psig", si(Quantity.PRESSURE)).scale().label());
        }

        @Test
        void withoutUnitAreInTheFields() {
            var read = understood("86", si(Quantity.GAUGE_PRESSURE));
            assertEquals(86e3, read.si());
            assertEquals(86, read.asTyped());
            assertEquals("kPa gauge", read.scale().label());
            assertFalse(read.unitTyped());
        }

        @Test
        void unmarkedOnAGaugeFieldAreGauge() {
            Expected onGauge =
                    si(Quantity.PRESSURE).withScale(Scale.of(Quantity.PRESSURE, "kPa gauge"));
            assertReads(86e3 + AMBIENT, "86", onGauge);
            assertReads(86e3 + AMBIENT, "0.86 bar", onGauge);
        }

        @ParameterizedTest
        @CsvSource(
                delimiter = '|',
                quoteCharacter = '\f',
                value = {
                    "1.2e3 kPa | 1.2e6",
                    "1.2×10⁵ Pa | 1.2e5",
                    "5 in Hg | 16931.943201705",
                    "5 \"Hg | 16931.943201705",
                    "20 inH2O | 4981.7782",
                    "20 in. H2O | 4981.7782",
                    "0.5 kg/cm2 | 49033.25",
                    "750 torr | 99991.79056125"
                })
        void areReadInTheUnitsOfTheTrade(String text, double pascal) {
            assertReads(pascal, text, si(Quantity.PRESSURE));
        }
    }

    @Nested
    class OtherQuantities {
        @ParameterizedTest
        @CsvSource(
                delimiter = '|',
                quoteCharacter = '\f',
                value = {
                    "LENGTH | 3 1/2 in | 0.0889",
                    "LENGTH | 3½ in | 0.0889",
                    "LENGTH | 3½\" | 0.0889",
                    "LENGTH | 1/2 in | 0.0127",
                    "LENGTH | 5' 6\" | 1.6764",
                    "LENGTH | 5’ 6½” | 1.6891",
                    "LENGTH | 5 ft 6 in | 1.6764",
                    "LENGTH | 5 ft | 1.524",
                    "LENGTH | 46 | 0.046",
                    "PERCENTAGE | 85 % | 0.85",
                    "PERCENTAGE | 85% | 0.85",
                    "PERCENTAGE | 0.85 | 0.0085",
                    "PERCENTAGE | 85 percent | 0.85",
                    "RATIO | 85 % | 0.85",
                    "RATIO | 1.8 | 1.8",
                    "TEMPERATURE | 20 | 293.15",
                    "TEMPERATURE | 68 °F | 293.15",
                    "TEMPERATURE | 68 F | 293.15",
                    "TEMPERATURE | 1100 K | 1100",
                    "TEMPERATURE | -40 deg C | 233.15",
                    "TEMPERATURE_DIFFERENCE | 18 °F | 10",
                    "TEMPERATURE_DIFFERENCE | 10 °C | 10",
                    "ROTATION | 6000 rpm | 100",
                    "ROTATION | 6000 1/min | 100",
                    "ROTATION | 100 1/s | 100",
                    "TORQUE | 400 N m | 400",
                    "TORQUE | 400 nm | 400",
                    "MASS_FLOW | 9 kg/min | 0.15",
                    "ANGLE | 180 deg | 3.141592653589793",
                    "COUNT | 12 | 12",
                    "FLAG | yes | 1",
                    "FLAG | No | 0",
                    "FLAG | TRUE | 1",
                    "FLAG | 0 | 0"
                })
        void areReadInTheirUnits(Quantity quantity, String text, double value) {
            assertReads(value, text, si(quantity));
        }

        @Test
        void withoutAUnitBesideTheFieldNeedOneUnlessTheyArePureNumbers() {
            Expected bare = Expected.of(Quantity.FORCE, (Scale) null);
            assertReads(132.9, "132.9 N", bare);
            assertTrue(understood("132.9 N", bare).unitTyped());
            assertEquals(
                    "“132.9” has no unit. Type the unit after the number, such as 12.5 N.",
                    message("132.9", bare));
            assertReads(1.8, "1.8", Expected.of(Quantity.RATIO, (Scale) null));
        }
    }

    @Nested
    class Messages {
        private final Expected gauge = si(Quantity.GAUGE_PRESSURE);

        @Test
        void kilogramsForAForceAreTakenForKilogramForceNotForKilonewtons() {
            String said = message("24.6 kg", si(Quantity.FORCE));
            assertTrue(said.startsWith("The unit “kg” is not known; did you mean kgf?"), said);
        }

        @ParameterizedTest
        @CsvSource(
                delimiter = '|',
                quoteCharacter = '\f',
                value = {
                    "'' | Nothing was typed. A gauge pressure was expected, such as 12.5 kPa gauge.",
                    "about 5 | “about 5” does not begin with a number. A gauge pressure was expected,"
                            + " such as 12.5 kPa gauge.",
                    "12 mm | “mm” is a unit of length. A gauge pressure was expected, in Pa, kPa, MPa,"
                            + " bar, mbar, psi, inHg, mmHg, inH₂O, mmH₂O, kgf/cm² or atm.",
                    "12 kpq | The unit “kpq” is not known; did you mean kPa? A gauge pressure was"
                            + " expected, in Pa, kPa, MPa, bar, mbar, psi, inHg, mmHg, inH₂O, mmH₂O,"
                            + " kgf/cm² or atm.",
                    "12 wombats | The unit “wombats” is not known. A gauge pressure was expected, in Pa,"
                            + " kPa, MPa, bar, mbar, psi, inHg, mmHg, inH₂O, mmH₂O, kgf/cm² or atm.",
                    "12 mpa | The unit “mpa” is not known; did you mean MPa? A gauge pressure was"
                            + " expected, in Pa, kPa, MPa, bar, mbar, psi, inHg, mmHg, inH₂O, mmH₂O,"
                            + " kgf/cm² or atm.",
                    "12 psi please | “12 psi” was understood, but not “please” after it. Leave that"
                            + " out.",
                    "12 13 psi | “12 13 psi” holds more than one number. A gauge pressure was"
                            + " expected, such as 12.5 kPa gauge.",
                    "5 inHg vac | Type a vacuum as a negative gauge pressure, such as −12.5 inHg"
                            + " gauge.",
                    "1e400 | “1e400” is too large to work with, or divides by zero. A gauge pressure"
                            + " was expected, such as 12.5 kPa gauge.",
                    "1/0 psi | “1/0 psi” is too large to work with, or divides by zero. A gauge"
                            + " pressure was expected, such as 12.5 kPa gauge."
                })
        void sayWhatIsWrongWhatWasExpectedAndHowToMendIt(String text, String message) {
            assertEquals(message, message(text.equals("''") ? "" : text, gauge));
        }

        @Test
        void fitTheQuantity() {
            assertEquals(
                    "“maybe” is neither yes nor no. Type yes or no.",
                    message("maybe", si(Quantity.FLAG)));
            assertEquals(
                    "“2.5” is not a whole number. A whole number was expected, such as 4.",
                    message("2.5", si(Quantity.COUNT)));
            assertEquals(
                    "“psi” is a unit of pressure. A reading was expected, without a unit.",
                    message("12 psi", si(Quantity.AS_MEASURED)));
            assertEquals(
                    "“kPa” is a unit of pressure. A pure number was expected, without a unit; 0.12 may also be"
                            + " written as 12 %.",
                    message("70 kPa", si(Quantity.RATIO)));
            assertEquals(
                    "“kPa” is a unit of pressure. A percentage was expected, such as 12.5 %.",
                    message("70 kPa", si(Quantity.PERCENTAGE)));
            assertEquals(
                    "Nothing was typed. An area was expected, such as 12,5 mm².",
                    message(" \t", si(Quantity.AREA).withHabit(DecimalHabit.COMMA)));
            assertEquals(
                    "The inches in “5' 6x\"” are not a number. Type feet and inches like 5' 6.5\".",
                    message("5' 6x\"", si(Quantity.LENGTH)));
        }

        @Test
        void doNotRepeatAPastedPage() {
            assertEquals(
                    "That is 201 characters long. A gauge pressure was expected, such as 12.5 kPa"
                            + " gauge.",
                    message("9".repeat(201), gauge));
            assertTrue(message("x".repeat(200), gauge).length() < 150);
        }
    }

    @Nested
    class Rows {
        private final Expected length = si(Quantity.LENGTH).withHabit(DecimalHabit.UNKNOWN);
        private final Expected power = si(Quantity.POWER).withHabit(DecimalHabit.UNKNOWN);

        private List<Double> row(String text, Expected expected) {
            return assertInstanceOf(Typed.Readings.class, Typed.list(text, expected), text).si();
        }

        private String rowMessage(String text, Expected expected) {
            return assertInstanceOf(Typed.NotUnderstood.class, Typed.list(text, expected), text)
                    .message();
        }

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "101 102.5 103",
                    "101, 102.5, 103",
                    "101\n102.5\r\n103\n",
                    "101\t102,5\t103",
                    " 101; 102,5 ;103; ",
                    "101 102.5 103 kW",
                    "101 kW 102.5 kW 103 kW",
                    "101000 W; 102.5 kW; 103 kW"
                })
        void areSeparatedInManyWays(String text) {
            assertEquals(List.of(101e3, 102.5e3, 103e3), row(text, power));
        }

        @Test
        void takeASpaceAsGroupMarkOnlyWhereSemicolonsSeparate() {
            Expected plain = si(Quantity.AS_MEASURED);
            assertEquals(List.of(1.0, 234.0, 5.0, 678.0), row("1 234 5 678", plain));
            assertEquals(List.of(1234.0, 5678.0), row("1 234; 5 678", plain));
        }

        @Test
        void mayHoldFractionsAndUnitsThatBeginWithADigit() {
            List<Double> metres = row("3 1/2 1/2 in", length);
            assertEquals(2, metres.size());
            assertEquals(0.0889, metres.get(0), 1e-15);
            assertEquals(0.0127, metres.get(1), 1e-15);
            assertEquals(List.of(20.0, 30.0), row("20 1/s 30 1/s", si(Quantity.ROTATION)));
        }

        @Test
        void settleADoubtfulMarkByTheOthers() {
            assertEquals(
                    List.of(1.234, 12.5),
                    row(
                            "1,234 12,5",
                            Expected.of(Quantity.RATIO, (Scale) null)
                                    .withHabit(DecimalHabit.UNKNOWN)));
            assertInstanceOf(Typed.Ambiguous.class, Typed.list("1,234 5,678", power));
        }

        @Test
        void nameTheReadingThatIsWrong() {
            assertEquals(
                    "Reading 2: The unit “kq” is not known; did you mean kW? A power was expected, in"
                            + " W, kW, hp or PS.",
                    rowMessage("101 kW; 102 kq", power));
            assertEquals(
                    "Reading 2 has no unit, but others have. Type a unit after every reading, or one"
                            + " after the last for all.",
                    rowMessage("101 kW 102 103 kW", power));
            assertEquals(
                    "Nothing was typed. Type the readings with a space between them, such as 12.5"
                            + " 12.7.",
                    rowMessage(" \n", power));
        }
    }
}
