// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.physics.gas.ExhaustGas;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiameterScalingTest {
    @Test
    void halfTheBoreCostsThirtyTwoTimesAsMuch() {
        assertEquals(32, DiameterScaling.of(1, 0.1, 0.05, 1), 1e-12); // 2^5
    }

    @Test
    void theSameBoreAndFlowKeepTheDrop() {
        assertEquals(5000, DiameterScaling.of(5000, 0.073, 0.073, 1), 0.0);
    }

    @Property(seed = "20261125")
    void thereAndBackIsNothing(
            @ForAll @Scale(7) @DoubleRange(min = 0.03, max = 0.2) double a,
            @ForAll @Scale(7) @DoubleRange(min = 0.03, max = 0.2) double b,
            @ForAll @Scale(7) @DoubleRange(min = 0.2, max = 5) double flow) {
        double there = DiameterScaling.of(5000, a, b, flow);
        assertEquals(5000, DiameterScaling.of(there, b, a, 1 / flow), 1e-7);
    }

    @Test
    void isDarcyAndWeisbachForAPipeWithoutFittingsExceptForTheFactor() {
        double narrow = darcy(0.073, 0.15, 0);
        double scaled = DiameterScaling.of(narrow, 0.073, 0.086, 1);
        // the wider pipe has a relative roughness and Reynolds number of its own: 2 to 3 % here
        assertEquals(darcy(0.086, 0.15, 0), scaled, 0.04 * scaled);
    }

    // what the card and the caution say, against the compressible pipe: with and without bends
    @ParameterizedTest(name = "{0} kg/s, bends {1}")
    @CsvSource({"0.15, 0", "0.35, 0", "0.45, 0", "0.15, 0.6", "0.35, 0.6", "0.50, 0.6"})
    void swellingGasAddsTwoToEightPercentForEachTenKilopascals(double flow, double bends) {
        double compressible = compressible(0.073, flow, bends) / compressible(0.086, flow, bends);
        double constant = darcy(0.073, flow, bends) / darcy(0.086, flow, bends);
        double perTen = (compressible / constant - 1) / (compressible(0.073, flow, bends) / 10e3);
        assertEquals(0.05, perTen, 0.0345);
    }

    @Test
    void aDownpipeWithBendsFollowsAPowerBetweenFourAndFive() {
        double power =
                Math.log(darcy(0.073, 0.1, 0.6) / darcy(0.086, 0.1, 0.6)) / Math.log(86.0 / 73);
        assertEquals(4.5, power, 0.1);
    }

    @Test
    void findsTheBoreOfADrop() {
        Values in = Values.of("dropA", 5000.0, "diameterA", 0.1);
        double bore = Solver.solveFor(DiameterScaling.RELATION, "diameterB", "dropB", 160_000, in);
        assertEquals(0.05, bore, 1e-10); // 32 times the drop, half the bore
    }

    @Test
    void warnsOfADropOverATenthOfTheAtmosphere() {
        Values in = Values.of("dropA", 5000.0, "diameterA", 0.073, "diameterB", 0.06);
        assertTrue(
                DiameterScaling.RELATION.work(in).cautions().stream()
                        .anyMatch(c -> c.text().contains("more than a tenth")));
    }

    private static double darcy(double bore, double flow, double bends) {
        Pipe pipe = new Pipe(bore, 2.5, 45e-6, bends);
        return PipeFrictionDrop.of(flow, 101_325, 950, pipe, ExhaustGas.STOICHIOMETRIC).drop();
    }

    private static double compressible(double bore, double flow, double bends) {
        Pipe pipe = new Pipe(bore, 2.5, 45e-6, bends);
        return DuctFlow.of(flow, 950, 101_325, pipe, ExhaustGas.STOICHIOMETRIC).drop();
    }
}
