// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import hotside.relation.Worked;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GateLiftTest {
    /** Diameter of 40 cm². */
    private static final double FORTY = Math.sqrt(4 * 40e-4 / Math.PI);

    private static final double AMBIENT = 98_500;

    private static final Values GATE =
            Values.of(
                    "preload",
                    260,
                    "rate",
                    7000,
                    "maxLift",
                    0.0115,
                    "diaphragmDiameter",
                    FORTY,
                    "seatDiameter",
                    0.046,
                    "boost",
                    68.4e3,
                    "signalShare",
                    0.70,
                    "upstream",
                    AMBIENT + 79.9e3,
                    "downstream",
                    AMBIENT);

    @Test
    void agreesWithAForceBalanceByHand() {
        // diaphragm: 0.70 * 68.4 kPa * 40e-4 m2 = 191.520 N
        // exhaust: 79.9 kPa * pi/4 * 0.046^2 (1.661903e-3 m2) = 132.786 N
        // 191.520 + 132.786 - 260 = 64.306 N; over 7 N/mm = 9.18657 mm
        Values out = GateLift.RELATION.solve(GATE);
        assertEquals(9.18657e-3, out.number("lift"), 1e-7);
        assertEquals(0, out.number("stopForce"), 0.0);
        assertEquals(0, out.number("onStop"), 0.0);
    }

    /** Pipes of rising bore behind one engine: boost and p3 gauge, kPa; lifts by hand as above. */
    @ParameterizedTest(name = "boost {0} kPa, p3 {1} kPa gauge -> {2} mm")
    @CsvSource({"63.1, 85.0, 8.277", "66.6, 81.6, 8.870", "67.9, 80.4, 9.105", "68.4, 79.9, 9.187"})
    void aSmallerPipeSettlesAtLessBoostThoughTheExhaustPushesHarder(
            double boost, double turbineInlet, double lift) {
        Values out =
                GateLift.RELATION.solve(
                        GATE.with("boost", boost * 1e3)
                                .with("upstream", AMBIENT + turbineInlet * 1e3));
        assertEquals(lift * 1e-3, out.number("lift"), 1e-6);
    }

    @Test
    void theForcesBalanceBetweenTheStops() {
        double lift = GateLift.RELATION.value("lift", GATE);
        double opening =
                DiaphragmForce.of(0.70 * 68.4e3, FORTY)
                        + ValveForce.of(0.046, AMBIENT + 79.9e3, AMBIENT);
        assertEquals(SpringForce.of(260, 7000, lift), opening, 1e-9);
    }

    @Test
    void staysShutBelowTheCrackingBoostAndSaysWithWhatForce() {
        // no exhaust push: 0.70 * 50 kPa * 40e-4 = 140 N against 260 N
        Worked worked = GateLift.RELATION.work(GATE.with("boost", 50e3).with("upstream", AMBIENT));
        assertEquals(0, worked.out().number("lift"), 0.0);
        assertEquals(-120, worked.out().number("stopForce"), 1e-9);
        assertEquals(1, worked.out().number("onStop"), 0.0);
    }

    @Test
    void stopsAtTheFarStopAndWarnsOfCreep() {
        // spring can take 7 * 11.5 = 80.5 N; surplus 0.70 * 100 kPa * 40e-4 + 132.786 - 260 =
        // 152.786 N
        Worked worked = GateLift.RELATION.work(GATE.with("boost", 100e3));
        assertEquals(0.0115, worked.out().number("lift"), 0.0);
        assertEquals(152.786 - 80.5, worked.out().number("stopForce"), 1e-3);
        assertEquals(1, worked.out().number("onStop"), 0.0);
        assertTrue(worked.cautions().stream().anyMatch(c -> c.about().equals("lift")));
    }

    @Test
    void beginsToLiftAtTheCrackingBoost() {
        double boost = CrackPressure.of(260, FORTY, 0.046, AMBIENT + 10e3, 1.0, AMBIENT, 0.70);
        double upstream = AMBIENT + 10e3 + boost;
        assertEquals(0, lift(boost, upstream), 1e-12);
        assertEquals(0, lift(boost - 1, upstream), 0.0);
        assertTrue(lift(boost + 1, upstream) > 0);
    }

    @Test
    void aVentedGateIsPushedOpenFurtherThanAReturnedOne() {
        assertTrue(
                GateLift.RELATION.value("lift", GATE)
                        > GateLift.RELATION.value("lift", GATE.with("downstream", AMBIENT + 10e3)));
    }

    @Test
    void findsThePreloadThatHoldsALift() {
        double preload = Solver.solveFor(GateLift.RELATION, "preload", "lift", 0.006, GATE);
        // by hand: 191.520 + 132.786 - 7 * 6 = 282.306 N
        assertEquals(282.306, preload, 1e-3);
    }

    @Test
    void oneLiftOnTheStopBelongsToManyPreloadsAndItSaysSo() {
        assertThrows(
                RelationException.class,
                () -> Solver.solveFor(GateLift.RELATION, "preload", "lift", 0, GATE));
    }

    @Test
    void refusesASpringWithoutRate() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> GateLift.RELATION.solve(GATE.with("rate", 0.0)));
        assertEquals("gate-lift: rate = 0.0 is outside (0.0, 1000000.0] N/m", e.getMessage());
    }

    @Property(seed = "20261125")
    void moreBoostNeverShutsTheValve(@ForAll @DoubleRange(min = 0, max = 150e3) double boost) {
        assertTrue(lift(boost + 100, 178_400) >= lift(boost, 178_400));
    }

    @Property(seed = "20261125")
    void staysBetweenTheStops(@ForAll @DoubleRange(min = -1000, max = 1000) double surplus) {
        double lift = GateLift.of(surplus, 7000, 0.0115);
        assertTrue(lift >= 0 && lift <= 0.0115);
        assertEquals(surplus, 7000 * lift + GateLift.stopForce(surplus, 7000, 0.0115), 1e-10);
    }

    private static double lift(double boost, double upstream) {
        return GateLift.of(
                GateLift.surplus(0.70 * boost, FORTY, upstream, AMBIENT, 0.046, 260), 7000, 0.0115);
    }
}
