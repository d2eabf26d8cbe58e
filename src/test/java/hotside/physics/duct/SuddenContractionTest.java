// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SuddenContractionTest {
    // 0.5 (1 - beta²), Idelchik; and Rennels and Hudson computed with fluids 1.0.22, which is more
    @ParameterizedTest(name = "d/D {0}")
    @CsvSource({"0.3, 0.455, 0.5503090", "0.5, 0.375, 0.4955805", "0.8, 0.180, 0.2303406"})
    void agreesWithIdelchikAndLiesBelowRennels(double beta, double k, double rennels) {
        double here = SuddenContraction.coefficient(beta * 0.1, 0.1);
        assertEquals(k, here, 1e-9);
        assertTrue(here < rennels && here > rennels / 1.35);
    }

    @Test
    void aFlushEntranceFromAVesselTakesHalfAHead() {
        // 0.5 in Crane and most handbooks, 0.5093 in Miller's
        assertEquals(0.5, SuddenContraction.coefficient(1, 1e6), 1e-9);
    }

    @Test
    void noStepNoLoss() {
        assertEquals(0, SuddenContraction.coefficient(0.07, 0.07), 0.0);
    }

    @Property(seed = "20261125")
    void aTapBehindFallsByTheLossAndByTheSpeedGained(
            @ForAll @Scale(7) @DoubleRange(min = 0.3, max = 1) double beta) {
        Values in =
                SuddenContraction.RELATION
                        .typical()
                        .with("smallDiameter", beta * 0.1)
                        .with("largeDiameter", 0.1)
                        .with("massFlow", 0.03);
        Values out = SuddenContraction.RELATION.solve(in);
        double fast = head(in, beta * 0.1);
        double slow = head(in, 0.1);
        assertEquals(fast - slow + out.number("drop"), out.number("staticFall"), 1e-9 * (1 + fast));
    }

    @Test
    void refusesAStepTheWrongWayRound() {
        assertThrows(
                RelationException.class,
                () ->
                        SuddenContraction.RELATION.work(
                                SuddenContraction.RELATION.typical().with("smallDiameter", 0.08)));
    }

    private static double head(Values in, double bore) {
        return PipeVelocity.RELATION.value(
                "dynamicPressure",
                Values.of(
                        "massFlow",
                        0.03,
                        "pressure",
                        in.number("pressure"),
                        "temperature",
                        in.number("temperature"),
                        "diameter",
                        bore));
    }
}
