// SPDX-License-Identifier: Apache-2.0
package hotside.physics.turbine;

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

class BoostThresholdTest {
    private static final Values RIG = BoostThreshold.RELATION.typical();

    @Test
    void isTheSpeedAtWhichTheTwoPowersMeet() {
        // written out here from the first law, Stodola's ellipse and the ideal gas law, and found
        // by
        // halving: below, the exhaust gives the compressor less than it takes
        double low = 1;
        double high = 300;
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (surplus(middle) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertEquals(low, BoostThreshold.RELATION.value("speed", RIG), 1e-6 * low);
    }

    /** Turbine less compressor power of the typical rig, for each kilogram of air, at a speed. */
    private static double surplus(double speed) {
        double ambient = 101_325;
        double ratio = (ambient + 70e3) / ambient;
        double hot = 298.15 * (1 + (Math.pow(ratio, 1 / 3.5) - 1) / 0.68);
        double charge = hot - 0.7 * (hot - 298.15);
        double air = 0.92 * (ambient + 70e3) / (287.05287 * charge) * 2.5e-3 * speed / 2;
        double gasConstant = 1150 * 0.33 / 1.33;
        // 0.6726284: choked flow function at γ 1.33, NACA Report 1135
        double choked = air * 1.08 * Math.sqrt(gasConstant * 1050) / (0.6e-3 * 0.6726284);
        double p3 = Math.sqrt(choked * choked + 103e3 * 103e3);
        double given = 1.08 * 1150 * 1050 * 0.62 * (1 - Math.pow(103e3 / p3, 0.33 / 1.33));
        return 0.96 * given - 1005 * (hot - 298.15);
    }

    @Test
    void goesStraightWithThePressureBehindTheTurbine() {
        double near = BoostThreshold.RELATION.value("speed", RIG.with("outletPressure", 102e3));
        double far = BoostThreshold.RELATION.value("speed", RIG.with("outletPressure", 115e3));
        assertEquals(115.0 / 102, far / near, 1e-12);
    }

    @Test
    void comesAtOnceForABoostOfNearlyNothing() {
        double speed = BoostThreshold.RELATION.value("speed", RIG.with("targetBoost", 1.0));
        assertTrue(speed < 0.5, "speed " + speed);
    }

    @Test
    void findsTheTurbineThatBringsBoostInTime() {
        double area =
                Solver.solveFor(
                        BoostThreshold.RELATION,
                        "effectiveArea",
                        "speed",
                        2400 / 60.0,
                        RIG.without("effectiveArea"));
        assertEquals(
                40, BoostThreshold.RELATION.value("speed", RIG.with("effectiveArea", area)), 1e-8);
    }

    @Test
    void saysWhereNoSpeedIsEnough() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                BoostThreshold.RELATION.solve(
                                        RIG.with("turbineInletTemperature", 250.0)
                                                .with("targetBoost", 300e3)));
        assertTrue(e.getMessage().startsWith("boost-threshold: the compressor takes"));
        assertTrue(e.getMessage().contains("expected less boost, hotter exhaust"));
    }

    @Test
    void warnsOfAPipeBelowAmbient() {
        var worked = BoostThreshold.RELATION.work(RIG.with("outletPressure", 99e3));
        assertEquals("outletPressure", worked.cautions().get(0).about());
    }

    @Property(seed = "20261125")
    void comesLaterWithMoreAreaMoreBoostAndColderExhaust(
            @ForAll @DoubleRange(min = 300, max = 2000) double squareMillimetres,
            @ForAll @DoubleRange(min = 20e3, max = 120e3) double boost) {
        double area = squareMillimetres * 1e-6;
        Values rig = RIG.with("effectiveArea", area).with("targetBoost", boost);
        double one = speed(rig);
        assertEquals(2 * one, speed(rig.with("effectiveArea", 2 * area)), 1e-9 * one);
        assertEquals(one / 2, speed(rig.with("displacement", 5e-3)), 1e-9 * one);
        assertTrue(speed(rig.with("targetBoost", boost + 1e3)) > one);
        assertTrue(speed(rig.with("turbineInletTemperature", 950.0)) > one);
    }

    private static double speed(Values rig) {
        return BoostThreshold.RELATION.value("speed", rig);
    }
}
