// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MitreLossTest {
    // Crane TP-410 p. A-29 for a bore of 50 mm, 8, 15, 25 and 60 f_T: computed with the open-source
    // library fluids 1.0.22; f_T taken from the tight smooth bend, 0.381306 = 20 f_T
    @ParameterizedTest(name = "{0} degrees")
    @CsvSource({"30, 0.152522", "45, 0.285980", "60, 0.476633", "90, 1.143918"})
    void agreesWithCrane(double degrees, double k) {
        assertEquals(k, MitreLoss.coefficient(Math.toRadians(degrees), 1, 0.381306 / 20), 2e-6);
    }

    @Property(seed = "20261125")
    void moreCornersOfTheSameTurnCostLess(
            @ForAll @Scale(7) @DoubleRange(min = 0.6, max = 1.5) double angle) {
        double one = MitreLoss.coefficient(angle, 1, 0.018);
        double two = MitreLoss.coefficient(angle, 2, 0.018);
        assertTrue(two < one);
    }

    @Test
    void sixCornersComeCloseToASmoothBend() {
        double pieces = MitreLoss.coefficient(Math.PI / 2, 6, 0.018);
        double smooth = BendLoss.coefficient(1, Math.PI / 2, 0.018);
        assertEquals(24.0 / 20, pieces / smooth, 1e-9); // 6 · 4 f against 20 f by the same page
    }

    @Test
    void refusesHalfACornerAndACornerBeyondTheTable() {
        var half =
                assertThrows(
                        RelationException.class,
                        () ->
                                MitreLoss.RELATION.work(
                                        MitreLoss.RELATION.typical().with("joints", 2.5)));
        assertEquals("mitre-loss: joints = 2.5 is not a whole number", half.getMessage());
        var sharp =
                assertThrows(
                        RelationException.class,
                        () ->
                                MitreLoss.RELATION.work(
                                        MitreLoss.RELATION
                                                .typical()
                                                .with("angle", Math.PI)
                                                .with("joints", 1.0)));
        assertEquals(
                "mitre-loss: joints = 1 makes corners of 180 degrees; 90 is the most that the table has",
                sharp.getMessage());
    }
}
