// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CrackPressureTest {
    /** Diameter of 40 cm². */
    private static final double FORTY = Math.sqrt(4 * 40e-4 / Math.PI);

    private static final Values GATE =
            Values.of(
                    "preload",
                    260,
                    "diaphragmDiameter",
                    FORTY,
                    "seatDiameter",
                    0.046,
                    "turbineInletAtZeroBoost",
                    111_325,
                    "turbineInletSlope",
                    1.0,
                    "downstream",
                    101_325,
                    "signalShare",
                    0.70);

    @Test
    void agreesWithAForceBalanceByHand() {
        // seat: pi/4 * 0.046^2 = 1.661903e-3 m2; exhaust at zero boost 10 kPa * that = 16.61903 N
        // left for boost: 260 - 16.61903 = 243.38097 N
        // per Pa: 0.70 * 40e-4 + 1.0 * 1.661903e-3 = 4.461903e-3 m2; 243.38097 / that = 54546.4 Pa
        var out = CrackPressure.RELATION.solve(GATE);
        assertEquals(54_546.4, out.number("boost"), 0.1);
        assertEquals(111_325 + 54_546.4, out.number("upstream"), 0.1);
        // diaphragm alone: 260 / (0.70 * 40e-4) = 92857.1 Pa
        assertEquals(92_857.1, out.number("boostIgnoringExhaust"), 0.1);
    }

    @Test
    void leavingTheExhaustOutIsWrongByMoreThanHalf() {
        var out = CrackPressure.RELATION.solve(GATE);
        assertTrue(out.number("boostIgnoringExhaust") > 1.5 * out.number("boost"));
    }

    @Test
    void theForcesBalanceAtTheAnswer() {
        var out = CrackPressure.RELATION.solve(GATE);
        double opening =
                DiaphragmForce.of(0.70 * out.number("boost"), FORTY)
                        + ValveForce.of(0.046, out.number("upstream"), 101_325);
        assertEquals(260, opening, 1e-9);
    }

    @Test
    void withoutAnExhaustPushTheDiaphragmDoesItAlone() {
        Values still =
                GATE.with("turbineInletAtZeroBoost", 101_325.0).with("turbineInletSlope", 0.0);
        var out = CrackPressure.RELATION.solve(still);
        assertEquals(out.number("boostIgnoringExhaust"), out.number("boost"), 1e-9 * 92_857);
    }

    @Test
    void tendsToTheDiaphragmAloneAsTheSeatVanishes() {
        var out = CrackPressure.RELATION.solve(GATE.with("seatDiameter", 1e-6));
        assertEquals(out.number("boostIgnoringExhaust"), out.number("boost"), 1e-3);
    }

    @Test
    void exhaustAloneOpensItWhenTheSignalHoseIsOff() {
        // by hand: 243.38097 N / 1.661903e-3 m2 = 146447 Pa, far above what was meant
        assertEquals(146_447, CrackPressure.of(260, FORTY, 0.046, 111_325, 1.0, 101_325, 0), 0.5);
    }

    @Test
    void saysSoWhenNothingOpensTheValve() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> CrackPressure.of(260, FORTY, 0.046, 111_325, 0, 101_325, 0));
        assertTrue(
                e.getMessage().startsWith("crack-pressure: the forces never balance"),
                e.getMessage());
    }

    @Test
    void saysSoWhenTheExhaustOpensItBeforeThereIsBoost() {
        // 60 mm seat, 100 kPa gauge: pi/4 * 0.06^2 * 1e5 = 282.7 N against 260 N
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                CrackPressure.RELATION.solve(
                                        GATE.with("seatDiameter", 0.06)
                                                .with("turbineInletAtZeroBoost", 201_325.0)));
        assertEquals("preload", e.slot());
        assertEquals(
                "crack-pressure: the valve is open before there is any boost: the exhaust pushes with"
                        + " 282.7 N at zero boost, the spring holds 260.0 N; expected a preload above that"
                        + " push (or a smaller seat)",
                e.getMessage());
    }

    @Test
    void findsTheShareThatCracksAtAWantedBoost() {
        double share = Solver.solveFor(CrackPressure.RELATION, "signalShare", "boost", 66e3, GATE);
        // by hand: (243.38097 / 66000 - 1.661903e-3) / 40e-4 = (3.687590e-3 - 1.661903e-3) / 40e-4
        // = 0.506422
        assertEquals(0.506422, share, 1e-6);
        assertEquals(
                66e3, CrackPressure.RELATION.value("boost", GATE.with("signalShare", share)), 1e-5);
    }

    @Property(seed = "20261125")
    void aBiggerSeatCracksEarlier(@ForAll @DoubleRange(min = 10, max = 60) double mm) {
        assertTrue(boost("seatDiameter", (mm + 1) / 1e3) < boost("seatDiameter", mm / 1e3));
    }

    @Property(seed = "20261125")
    void aHarderSpringCracksLater(@ForAll @DoubleRange(min = 50, max = 900) double preload) {
        assertTrue(boost("preload", preload + 1) > boost("preload", preload));
    }

    @Property(seed = "20261125")
    void lessSignalCracksLater(@ForAll @DoubleRange(min = 0.2, max = 0.95) double share) {
        assertTrue(boost("signalShare", share) > boost("signalShare", share + 0.05));
    }

    @Property(seed = "20261125")
    void aReturnedGateCracksLaterThanAVentedOne(
            @ForAll @DoubleRange(min = 500, max = 30e3) double behind) {
        assertTrue(boost("downstream", 101_325 + behind) > boost("downstream", 101_325));
    }

    /** Forces and areas both scale with the square of length: boost does not notice. */
    @Property(seed = "20261125")
    void aGateBuiltToAnotherScaleCracksAtTheSameBoost(
            @ForAll @DoubleRange(min = 0.5, max = 2) double scale) {
        double same =
                CrackPressure.of(
                        260 * scale * scale,
                        FORTY * scale,
                        0.046 * scale,
                        111_325,
                        1.0,
                        101_325,
                        0.7);
        assertEquals(CrackPressure.RELATION.value("boost", GATE), same, 1e-6);
    }

    private static double boost(String slot, double value) {
        return CrackPressure.RELATION.value("boost", GATE.with(slot, value));
    }
}
