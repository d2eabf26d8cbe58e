// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.physics.gas.ExhaustGas;
import hotside.physics.gas.NozzleFlow;
import hotside.relation.Solver;
import hotside.relation.Values;
import hotside.relation.Worked;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DuctFlowTest {
    private static final ExhaustGas GAS = ExhaustGas.STOICHIOMETRIC;
    private static final double AMBIENT = 101_325;
    private static final Pipe PIPE = new Pipe(0.073, 2.5, 45e-6, 0.6);

    @Test
    void agreesWithDarcyAndWeisbachAtLowSpeed() {
        // Mach 0.02 and less: the limit is the pipe of constant density
        DuctFlow.State s = DuctFlow.of(0.018, 950, AMBIENT, PIPE, GAS);
        assertTrue(s.inletMach() < 0.02);
        double darcy = PipeFrictionDrop.of(0.018, AMBIENT, 950, PIPE, GAS).drop();
        assertEquals(darcy, s.drop(), 1e-3 * darcy);
    }

    @Test
    void carriesThePublishedDuctBackwards() {
        // the textbook duct turned round: gamma 1.4, D 30 mm, f L/D = 0.3, from Mach 0.709257 and
        // 125.2332 kPa back to Mach 0.6 and 150 kPa
        double inlet = FannoFlow.upstreamMach(0.709257, 0.3, 1.4);
        assertEquals(0.6, inlet, 2e-6);
        double pressure =
                125.2332 * DuctFlow.fluxFunction(0.709257, 1.4) / DuctFlow.fluxFunction(inlet, 1.4);
        assertEquals(150, pressure, 1e-3);
    }

    @Test
    void bothEndsPassTheFlowThatWasAskedFor() {
        DuctFlow.State s = DuctFlow.of(0.3, 950, AMBIENT, PIPE, GAS);
        assertEquals(0.3, flowOf(s.exitStatic(), s.exitMach()), 1e-12);
        assertEquals(0.3, flowOf(s.inletStatic(), s.inletMach()), 1e-12);
    }

    @Test
    void anOpenEndWithoutWallKeepsThePressure() {
        DuctFlow.State s = DuctFlow.of(0.3, 950, AMBIENT, new Pipe(0.073, 0, 45e-6, 0), GAS);
        assertEquals(0, s.drop(), 1e-9);
        assertEquals(s.exitMach(), s.inletMach(), 1e-15);
    }

    @Test
    void aStillPipeHasThePressureOutside() {
        DuctFlow.State s = DuctFlow.of(0, 950, AMBIENT, PIPE, GAS);
        assertEquals(AMBIENT, s.inletStatic(), 0.0);
        assertEquals(AMBIENT, s.inletTotal(), 0.0);
        assertEquals(0, s.drop(), 0.0);
        assertFalse(s.choked());
    }

    @Test
    void theTapMissesWhatTheGasWasSpedUpWith() {
        DuctFlow.State s = DuctFlow.of(0.25, 1000, AMBIENT, PIPE, GAS);
        assertTrue(s.inletTotal() - AMBIENT > 1.4 * s.drop());
    }

    @Test
    void chokesWhereANozzleOfItsBoreWould() {
        // at the exit p/p0 is the critical ratio; the nozzle's own total pressure is ambient over
        // it
        double gamma = GAS.gamma(950);
        double total = AMBIENT / NozzleFlow.criticalRatio(gamma);
        double limit = NozzleFlow.massFlow(PIPE.area(), total, 950, 0, gamma, GAS.gasConstant());
        assertFalse(DuctFlow.of(limit * (1 - 1e-9), 950, AMBIENT, PIPE, GAS).choked());
        DuctFlow.State choked = DuctFlow.of(limit * (1 + 1e-9), 950, AMBIENT, PIPE, GAS);
        assertTrue(choked.choked());
        assertEquals(1, choked.exitMach(), 0.0);
        assertEquals(AMBIENT, choked.exitStatic(), 1e-3);
    }

    @Test
    void aChokedExitLiftsItsOwnPressureInProportionToTheFlow() {
        DuctFlow.State one = DuctFlow.of(1.2, 950, AMBIENT, PIPE, GAS);
        DuctFlow.State two = DuctFlow.of(2.4, 950, AMBIENT, PIPE, GAS);
        assertTrue(one.choked());
        assertTrue(one.exitStatic() > AMBIENT);
        assertEquals(2 * one.exitStatic(), two.exitStatic(), 1e-6);
        // and the pressure outside no longer matters
        DuctFlow.State thinAir = DuctFlow.of(1.2, 950, 60e3, PIPE, GAS);
        assertEquals(one.inletStatic(), thinAir.inletStatic(), 1e-6);
    }

    @ParameterizedTest(name = "{0} kg/s at {1} K, lambda {2}")
    @CsvSource({
        "0.02, 700, 1.0",
        "0.15, 950, 1.0",
        "0.30, 1000, 0.8",
        "0.45, 1150, 0.85",
        "0.60, 1150, 1.2",
        "1.00, 1150, 1.0"
    })
    void agreesWithAMarchWhoseHeatCapacityFollowsTheGas(double flow, double t0, double lambda) {
        ExhaustGas gas = ExhaustGas.at(lambda);
        DuctFlow.State s = DuctFlow.of(flow, t0, AMBIENT, PIPE, gas);
        double marched = RealGasMarch.inletStatic(flow, t0, AMBIENT, PIPE, s.frictionFactor(), gas);
        assertEquals(marched, s.inletStatic(), 1e-3 * marched);
    }

    /**
     * The pipe of the tutor's own story: 73 mm, 2.5 m, bends of 0.6. A prototype with gamma 1.33 at
     * 1000 K had 7.0 kPa at the tap with 11 to 13 kPa of total pressure behind it.
     */
    @Test
    void aTapOfSevenKilopascalsHidesElevenToThirteen() {
        double flow = DuctCapacity.of(1000, AMBIENT, PIPE, GAS, 7000).massFlow();
        DuctFlow.State s = DuctFlow.of(flow, 1000, AMBIENT, PIPE, GAS);
        assertEquals(12_000, s.inletTotal() - AMBIENT, 1000);
    }

    @Property(seed = "20261125")
    void moreFlowOrASmallerBoreRaisesTheInlet(
            @ForAll @Scale(7) @DoubleRange(min = 0.01, max = 1.2) double flow,
            @ForAll @Scale(7) @DoubleRange(min = 0.04, max = 0.12) double bore) {
        double here = inlet(flow, bore, 2.5, 0.6);
        assertTrue(inlet(1.02 * flow, bore, 2.5, 0.6) > here);
        assertTrue(inlet(flow, 0.98 * bore, 2.5, 0.6) > here);
        assertTrue(inlet(flow, bore, 2.6, 0.6) > here);
        assertTrue(inlet(flow, bore, 2.5, 0.7) > here);
    }

    @Property(seed = "20261125")
    void totalIsNeverBelowStaticNorTheExitSlowerThanTheInlet(
            @ForAll @Scale(7) @DoubleRange(min = 0.001, max = 2) double flow,
            @ForAll @Scale(7) @DoubleRange(min = 300, max = 1400) double temperature) {
        DuctFlow.State s = DuctFlow.of(flow, temperature, AMBIENT, PIPE, GAS);
        assertTrue(s.inletTotal() >= s.inletStatic());
        assertTrue(s.exitMach() >= s.inletMach());
        assertTrue(s.exitMach() <= 1);
        assertTrue(s.exitStatic() >= AMBIENT);
    }

    /** Pressure and flow together k times, with a fully rough wall: all Mach numbers stay. */
    @Property(seed = "20261125")
    void scalesWithPressureWhereFrictionDoesNotKnowReynolds(
            @ForAll @Scale(7) @DoubleRange(min = 0.5, max = 3) double k) {
        Pipe fittingsOnly = new Pipe(0.073, 0, 45e-6, 2);
        DuctFlow.State one = DuctFlow.of(0.2, 950, AMBIENT, fittingsOnly, GAS);
        DuctFlow.State more = DuctFlow.of(k * 0.2, 950, k * AMBIENT, fittingsOnly, GAS);
        assertEquals(one.inletMach(), more.inletMach(), 1e-13);
        assertEquals(k * one.inletStatic(), more.inletStatic(), 1e-9 * k * one.inletStatic());
    }

    @Test
    void findsTheFlowOfAReading() {
        Values others =
                Values.of(
                        "totalTemperature", 950.0,
                        "exitPressure", AMBIENT,
                        "diameter", 0.073,
                        "length", 2.5,
                        "lossSum", 0.6);
        double flow =
                Solver.solveFor(DuctFlow.RELATION, "massFlow", "inletStatic", 108_000, others);
        assertEquals(108_000, DuctFlow.of(flow, 950, AMBIENT, PIPE, GAS).inletStatic(), 1e-4);
    }

    @Test
    void showsEquivalentLengthAndSaysWhenItIsChoked() {
        Worked worked =
                DuctFlow.RELATION.work(
                        Values.of(
                                "massFlow", 1.2,
                                "totalTemperature", 950.0,
                                "exitPressure", AMBIENT,
                                "diameter", 0.073,
                                "length", 2.5,
                                "lossSum", 0.6));
        assertEquals(1, worked.out().number("choked"), 0.0);
        double f = step(worked, "frictionFactor");
        assertEquals(0.6 * 0.073 / f, step(worked, "equivalentLength"), 1e-12);
        assertEquals(f * 2.5 / 0.073 + 0.6, step(worked, "resistance"), 1e-12);
        assertTrue(
                worked.cautions().stream()
                        .anyMatch(c -> c.text().startsWith("the exit is choked")));
    }

    private static double step(Worked worked, String name) {
        return worked.steps().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static double inlet(double flow, double bore, double length, double losses) {
        Pipe pipe = new Pipe(bore, length, 45e-6, losses);
        return DuctFlow.of(flow, 950, AMBIENT, pipe, GAS).inletStatic();
    }

    /** density · velocity · area from pressure, Mach number and total temperature 950 K. */
    private static double flowOf(double pressure, double mach) {
        double gamma = GAS.gamma(950);
        double t = 950 / (1 + (gamma - 1) / 2 * mach * mach);
        double density = pressure / (GAS.gasConstant() * t);
        return density * mach * Math.sqrt(gamma * GAS.gasConstant() * t) * PIPE.area();
    }
}
