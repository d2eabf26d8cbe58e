// SPDX-License-Identifier: Apache-2.0
package hotside.statistics.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.Values;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ResolutionLimitTest {
    @Test
    void agreesWithTheGuide() {
        // JCGM 100:2008 (GUM), F.2.2.1: u = 0.29 of the step (from memory)
        assertEquals(0.29, ResolutionLimit.of(1), 5e-3);
    }

    @Test
    void addsNoiseBySquaresAndCountsBothReadingsOfADifference() {
        // by hand: step 1.2, u = 0.3464102; with noise 0.5: 0.6082763; times sqrt 2: 0.8602325
        Values out = ResolutionLimit.RELATION.solve(Values.of("step", 1.2, "noise", 0.5));
        assertEquals(0.6, out.number("largestError"), 0.0);
        assertEquals(0.3464102, out.number("uncertainty"), 5e-8);
        assertEquals(0.6082763, out.number("combined"), 5e-8);
        assertEquals(0.8602325, out.number("differenceUncertainty"), 5e-8);
    }

    @Test
    void agreesWithRoundingManyNumbers() {
        SplittableRandom random = new SplittableRandom(20261125);
        double squares = 0;
        int n = 200_000;
        for (int i = 0; i < n; i++) {
            double truth = 500 * random.nextDouble();
            double error = 0.2 * Math.rint(truth / 0.2) - truth;
            squares += error * error;
        }
        // the estimate itself scatters by about 0.1 %
        assertEquals(ResolutionLimit.of(0.2), Math.sqrt(squares / n), 3e-4);
    }

    @Test
    void cautionsThatAveragingDoesNotHelpWithoutNoiseToStirTheSteps() {
        var worked = ResolutionLimit.RELATION.work(Values.of("step", 1.0, "noise", 0.1));
        assertTrue(worked.cautions().stream().anyMatch(c -> c.about().equals("noise")));
    }

    @Test
    void isNothingForADisplayWithoutSteps() {
        assertEquals(
                0.8,
                ResolutionLimit.RELATION.value("combined", Values.of("step", 0.0, "noise", 0.8)),
                0.0);
    }
}
