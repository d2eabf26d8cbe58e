// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MixtureRatioTest {
    /** Heywood 1988, table D.4, printed stoichiometric ratios, from memory. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"isooctane, 2.25, 15.13", "methane, 4, 17.23", "benzene, 1, 13.27"})
    void agreesWithPrintedRatios(String fuel, double hydrogenCarbonRatio, double printed) {
        assertEquals(printed, MixtureRatio.stoichiometric(hydrogenCarbonRatio), 0.005);
    }

    @Test
    void givesJustEnoughAtLambdaOne() {
        Values out = MixtureRatio.RELATION.solve(Values.of("lambda", 1.0));
        assertEquals(out.number("stoichiometricRatio"), out.number("airFuelRatio"), 0.0);
    }

    @Test
    void findsTheLambdaOfARatio() {
        double lambda =
                Solver.solveFor(MixtureRatio.RELATION, "lambda", "airFuelRatio", 12.5, Values.NONE);
        assertEquals(12.5, MixtureRatio.of(lambda, 1.87), 1e-10);
    }

    @Test
    void refusesAnAirFuelRatioForLambda() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> MixtureRatio.RELATION.solve(Values.of("lambda", 12.5)));
        assertEquals("mixture-ratio: lambda = 12.5 is outside (0.0, 12.0]", e.getMessage());
    }

    @Property(seed = "20261125")
    void takesMoreAirTheMoreHydrogen(@ForAll @DoubleRange(min = 0, max = 3.9) double y) {
        assertTrue(MixtureRatio.stoichiometric(y + 0.05) > MixtureRatio.stoichiometric(y));
    }
}
