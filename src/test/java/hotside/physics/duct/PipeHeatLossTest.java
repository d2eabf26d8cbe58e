// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.physics.duct.PipeHeatLoss.State;
import hotside.physics.gas.ExhaustGas;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class PipeHeatLossTest {
    private static final ExhaustGas GAS = ExhaustGas.STOICHIOMETRIC;

    @Test
    void agreesWithTheLogMeanDifference() {
        // Q = U A (ΔT1 - ΔT2) / ln(ΔT1/ΔT2), any heat transfer text: the same law, the other way
        State s = PipeHeatLoss.of(0.1, 1000, 310, 0.073, 2.5, 40, GAS);
        double in = 1000 - 310;
        double out = s.outletTemperature() - 310;
        double logMean = (in - out) / Math.log(in / out);
        assertEquals(40 * Math.PI * 0.073 * 2.5 * logMean, s.heat(), 1e-8 * s.heat());
    }

    @Test
    void theHeatIsTheEnthalpyThatTheGasLost() {
        State s = PipeHeatLoss.of(0.05, 1200, 310, 0.06, 3, 60, GAS);
        double lost = 0.05 * (GAS.enthalpy(1200) - GAS.enthalpy(s.outletTemperature()));
        assertEquals(lost, s.heat(), 1e-8 * lost);
    }

    @Test
    void agreesWithTheHandCalculation() {
        // burned CH1.87 at lambda 1 has 1293.21 J/(kg K) at 1100 K (worked independently). A short
        // pipe, 1 W/K on 0.1 kg/s: N = 1 / 129.321, so 1100 K falls by 800 (1 - exp(-N)) = 6.16 K
        State s = PipeHeatLoss.of(0.1, 1100, 300, 1 / Math.PI, 1, 1, GAS);
        assertEquals(1100 - 6.16, s.outletTemperature(), 0.01);
    }

    @Test
    void aPipeWithoutWallOrWithPerfectLaggingKeepsTheHeat() {
        assertEquals(0, PipeHeatLoss.of(0.1, 1000, 310, 0.07, 0, 30, GAS).heat(), 0.0);
        assertEquals(0, PipeHeatLoss.of(0.1, 1000, 310, 0.07, 2, 0, GAS).heat(), 0.0);
    }

    @Test
    void aVeryLongPipeBringsTheGasToItsSurroundings() {
        State s = PipeHeatLoss.of(0.01, 1000, 310, 0.07, 100, 200, GAS);
        assertEquals(310, s.outletTemperature(), 1e-6);
    }

    @Test
    void twoHalvesCoolLikeTheWholeWhenTheHeatCapacityHolds() {
        // near the surroundings cp hardly changes
        State whole = PipeHeatLoss.of(0.1, 320, 300, 0.07, 2, 30, GAS);
        State first = PipeHeatLoss.of(0.1, 320, 300, 0.07, 1, 30, GAS);
        State second = PipeHeatLoss.of(0.1, first.outletTemperature(), 300, 0.07, 1, 30, GAS);
        assertEquals(whole.outletTemperature(), second.outletTemperature(), 1e-3);
    }

    @Property(seed = "20261125")
    void aLongerPipeOrAThinnerStreamCoolsMore(
            @ForAll @Scale(7) @DoubleRange(min = 0.02, max = 0.5) double flow,
            @ForAll @Scale(7) @DoubleRange(min = 0.1, max = 8) double length) {
        double here = outlet(flow, length);
        assertTrue(outlet(flow, length + 0.1) < here);
        assertTrue(outlet(0.99 * flow, length) < here);
        assertTrue(here < 1000 && here > 310);
    }

    @Test
    void findsTheCoefficientFromTwoThermometers() {
        Values in =
                Values.of(
                        "massFlow", 0.1,
                        "inletTemperature", 1000.0,
                        "surroundings", 310.0,
                        "diameter", 0.073,
                        "length", 2.5);
        double outlet = PipeHeatLoss.of(0.1, 1000, 310, 0.073, 2.5, 37, GAS).outletTemperature();
        double found =
                Solver.solveFor(
                        PipeHeatLoss.RELATION,
                        "heatTransferCoefficient",
                        "outletTemperature",
                        outlet,
                        in);
        assertEquals(37, found, 1e-6);
    }

    @Test
    void warnsWhereTheSurroundingsAreHotter() {
        Values in = PipeHeatLoss.RELATION.typical();
        Values cold = in.with("inletTemperature", 320.0).with("surroundings", 400.0);
        assertTrue(
                PipeHeatLoss.RELATION.work(cold).cautions().stream()
                        .anyMatch(c -> c.text().contains("heats it instead")));
        assertTrue(PipeHeatLoss.RELATION.value("heat", cold) < 0);
    }

    private static double outlet(double flow, double length) {
        return PipeHeatLoss.of(flow, 1000, 310, 0.073, length, 30, GAS).outletTemperature();
    }
}
