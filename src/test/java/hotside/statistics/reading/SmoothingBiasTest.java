// SPDX-License-Identifier: Apache-2.0
package hotside.statistics.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SmoothingBiasTest {
    private static Values smoothing(double points) {
        return Values.of(
                "drop",
                10.0,
                "distance",
                500 / 60.0,
                "spacing",
                50 / 60.0,
                "points",
                points,
                "noise",
                1.5);
    }

    @Property(seed = "20261125")
    void agreesWithAveragingAParabola(
            @ForAll @IntRange(min = 1, max = 200) int points,
            @ForAll @DoubleRange(min = 0.1, max = 50) double drop,
            @ForAll @DoubleRange(min = 0.1, max = 3) double spacing) {
        double distance = 8;
        double sum = 0;
        for (int i = 0; i < points; i++) {
            double x = (i - (points - 1) / 2.0) * spacing;
            sum -= drop * (x / distance) * (x / distance);
        }
        double bias = SmoothingBias.of(drop, distance, spacing, points);
        assertEquals(sum / points, bias, 1e-9 * (1 + Math.abs(bias)));
    }

    @Test
    void takesTwoStepsOfCurvatureForFivePoints() {
        // by hand: (4 + 1 + 0 + 1 + 4)/5 = 2; a fall of 10 in 500 rev/min at steps of 50
        Values out = SmoothingBias.RELATION.solve(smoothing(5));
        assertEquals(-10 * 0.01 * 2, out.number("bias"), 1e-12);
        assertEquals(200 / 60.0, out.number("width"), 1e-12);
        assertEquals(1.5 / Math.sqrt(5), out.number("noiseLeft"), 1e-12);
    }

    @Test
    void tendsToAThirdOfTheHalfWidthSquaredForManyPoints() {
        // mean of c x^2 over -a to a is c a^2 / 3
        double a = 2;
        double many = SmoothingBias.of(10, 8, 2 * a / 10_000, 10_001);
        assertEquals(-10.0 / 64 * a * a / 3, many, 1e-3);
    }

    @Test
    void leavesASingleReadingAlone() {
        Values out = SmoothingBias.RELATION.solve(smoothing(1));
        assertEquals(0, out.number("bias"), 0.0);
        assertEquals(1.5, out.number("noiseLeft"), 0.0);
    }

    @Test
    void refusesHalfAReading() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> SmoothingBias.RELATION.solve(smoothing(4.5)));
        assertEquals(
                "smoothing-bias: points = 4.5 is not a whole number of readings", e.getMessage());
    }

    @Test
    void cautionsWhenTheWindowReachesBeyondTheKnownPeak() {
        var worked = SmoothingBias.RELATION.work(smoothing(31));
        assertTrue(worked.cautions().stream().anyMatch(c -> c.about().equals("points")));
    }
}
