// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.statistics.Estimate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Straight lines and parabolas whose answers come by hand. */
class CurveTest {
    private static final Curve TENT =
            Curve.through(Logs.rpm(3000, 4000, 5000), new double[] {100, 200, 100});

    @ParameterizedTest(name = "{0} rev/min -> {1}")
    @CsvSource({
        "3000, 100",
        "3500, 150",
        "4000, 200",
        "4250, 175",
        "5000, 100",
        "2999, NaN",
        "5001, NaN"
    })
    void isStraightBetweenReadingsAndNothingBeyond(double rpm, double expected) {
        assertEquals(expected, TENT.at(rpm / 60), 1e-9);
    }

    @Test
    void takesReadingsInAnyOrderAndAveragesThoseAtOneSpeed() {
        Curve curve =
                Curve.through(
                        Logs.rpm(5000, 4000, 3000, 4000, 4500),
                        new double[] {100, 190, 100, 210, Double.NaN});
        assertEquals(3, curve.size());
        assertEquals(200, curve.at(4000 / 60.0), 1e-9);
    }

    @Test
    void leavesAGapWhereASteadyReadingIsMissing() {
        Curve curve =
                Curve.through(Logs.rpm(3000, 3500, 4000, 5000, 5500), new double[] {1, 2, 3, 4, 5});
        assertEquals(Double.NaN, curve.at(4500 / 60.0));
        assertEquals(Double.NaN, curve.mean(Band.rpm(3000, 5500)));
        assertEquals(2, curve.mean(Band.rpm(3000, 4000)), 1e-9);
    }

    @Test
    void staysAGapOnAGrid() {
        Curve curve =
                Curve.through(Logs.rpm(3000, 3500, 4000, 5000, 5500), new double[] {1, 2, 3, 4, 5});
        Curve laid = curve.on(Grid.inside(Band.rpm(3000, 5500), 500 / 60.0));
        double[] values = new double[laid.size()];
        java.util.Arrays.setAll(values, laid::value);
        assertArrayEquals(new double[] {1, 2, 3, Double.NaN, 4, 5}, values, 1e-9);
    }

    @Test
    void takesTheTrapeziumsOfABandThatCutsThem() {
        // by hand: 3500 to 4000 under 150…200, 4000 to 4500 under 200…150: 175 on average
        assertEquals(175, TENT.mean(Band.rpm(3500, 4500)), 1e-9);
        assertEquals(175 * 1000 / 60.0, TENT.area(Band.rpm(3500, 4500)), 1e-9);
        assertEquals(150, TENT.mean(Band.rpm(3000, 5000)), 1e-9);
        // 3250 to 3750 lies inside one straight piece: its middle, 150
        assertEquals(150, TENT.mean(Band.rpm(3250, 3750)), 1e-9);
    }

    @Test
    void knowsNoMeanOfABandThatReachesBeyond() {
        assertEquals(Double.NaN, TENT.mean(Band.rpm(2900, 4000)));
        assertEquals(Double.NaN, TENT.mean(Band.rpm(4000, 5100)));
    }

    @Test
    void findsThePeakAndTheFirstOfEquals() {
        assertEquals(4000 / 60.0, TENT.peak().speed(), 1e-12);
        Curve two = Curve.through(Logs.rpm(3000, 3100, 3200), new double[] {5, 1, 5});
        assertEquals(50, two.peak().speed(), 1e-12);
    }

    @Test
    void crossesWhereTwoLinesMeet() {
        Curve flat = Curve.through(Logs.rpm(3000, 5000), new double[] {150, 150});
        List<Double> crossings = TENT.crossings(flat);
        assertEquals(2, crossings.size());
        assertEquals(3500 / 60.0, crossings.get(0), 1e-9);
        assertEquals(4500 / 60.0, crossings.get(1), 1e-9);
    }

    @Test
    void crossesOnceWhereCurvesTouchInAReading() {
        Curve flat = Curve.through(Logs.rpm(3000, 5000), new double[] {200, 200});
        assertEquals(List.of(4000 / 60.0), TENT.crossings(flat));
    }

    /** Power in hp and torque in lbf·ft cross at 5252 rev/min: 33 000 / 2π, common knowledge. */
    @Test
    void findsHorsepowerAndPoundFeetCrossing() {
        double[] speed = Logs.rpm(5000, 5100, 5200, 5300, 5400);
        double[] torque = {300, 300, 300, 300, 300};
        double[] power = new double[5];
        java.util.Arrays.setAll(power, i -> 300 * speed[i] * 60 / 5252.113);
        List<Double> found = Curve.through(speed, power).crossings(Curve.through(speed, torque));
        assertEquals(5252.113, found.get(0) * 60, 0.1);
    }

    @Test
    void reachesALevelFromBelowOnly() {
        assertEquals(3500 / 60.0, TENT.reaches(150), 1e-9);
        assertEquals(Double.NaN, TENT.reaches(250));
        assertEquals(Double.NaN, TENT.reaches(50));
    }

    /** Mean of x² over −2…2 is 2, so five points take 2 bends off the top: by hand. */
    @Test
    void smoothingTakesOffAParabolaWhatTheRelationForesees() {
        Grid grid = new Grid(50, 1, 21);
        double[] values = new double[21];
        java.util.Arrays.setAll(values, i -> 400 - 3.0 * (i - 10) * (i - 10));
        Smoothing smooth = Smoothing.of(Curve.on(grid, values), grid, 5);
        assertEquals(400, smooth.rawPeak().value(), 1e-9);
        assertEquals(394, smooth.peak().value(), 1e-9);
        assertEquals(-6, smooth.foreseenBias(), 1e-6);
        assertTrue(Double.isNaN(smooth.curve().value(1)));
        assertEquals(388 - 3 * 64 + 6, smooth.curve().value(2), 1e-9);
    }

    @Test
    void refusesAWindowWithoutAMiddle() {
        Grid grid = new Grid(50, 1, 5);
        assertThrows(IllegalArgumentException.class, () -> Smoothing.of(TENT, grid, 4));
    }

    /** Three readings 1, 2, 3: mean 2, spread 1, and t(0.975; 2) = 4.303 by Student's table. */
    @Test
    void averagesRepeatsWithAStudentInterval() {
        Grid grid = new Grid(50, 1, 2);
        Repeats repeats =
                new Repeats(
                        grid,
                        List.of(
                                Curve.on(grid, new double[] {1, 5}),
                                Curve.on(grid, new double[] {2, Double.NaN}),
                                Curve.on(grid, new double[] {3, Double.NaN})));
        Estimate first = repeats.estimate(0).orElseThrow();
        assertEquals(2, first.value(), 1e-12);
        assertEquals(4.303 / Math.sqrt(3), first.halfWidth(0.95), 0.0005);
        assertTrue(repeats.estimate(1).isEmpty());
        assertEquals(5, repeats.mean().value(1), 1e-12);
    }

    /** P = 2π n T: 400 N·m at 50 turns a second is 125 664 W. */
    @Test
    void worksPowerFromTorqueAndBack() {
        Pull torque =
                RunLog.of(
                                "invented",
                                List.of(Column.of(Channel.SPEED), Column.of(Channel.TORQUE)),
                                new double[] {50},
                                new double[] {400})
                        .pulls()
                        .get(0);
        assertEquals(125_664, torque.values(Channel.POWER)[0], 0.5);
        Pull power =
                RunLog.of(
                                "invented",
                                List.of(Column.of(Channel.SPEED), Column.of(Channel.POWER)),
                                new double[] {50},
                                new double[] {125_664})
                        .pulls()
                        .get(0);
        assertEquals(400, power.values(Channel.TORQUE)[0], 0.002);
        assertTrue(!power.has(Channel.MANIFOLD_PRESSURE));
    }
}
