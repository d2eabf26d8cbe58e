// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.physics.gas.ExhaustGas;
import hotside.physics.gas.NozzleFlow;
import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class DuctCapacityTest {
    private static final ExhaustGas GAS = ExhaustGas.STOICHIOMETRIC;
    private static final double AMBIENT = 101_325;
    private static final Pipe PIPE = new Pipe(0.073, 2.5, 45e-6, 0.6);

    @Property(seed = "20261125", tries = 300)
    void theFlowItNamesHasTheDropThatWasAllowed(
            @ForAll @Scale(3) @DoubleRange(min = 50, max = 300_000) double drop,
            @ForAll @Scale(7) @DoubleRange(min = 0.04, max = 0.15) double bore) {
        Pipe pipe = new Pipe(bore, 2.5, 45e-6, 0.6);
        double flow = DuctCapacity.of(950, AMBIENT, pipe, GAS, drop).massFlow();
        assertEquals(drop, DuctFlow.of(flow, 950, AMBIENT, pipe, GAS).drop(), 1e-6 * drop);
    }

    @Property(seed = "20261125", tries = 200)
    void aLargerDropOrBoreCarriesMore(
            @ForAll @Scale(3) @DoubleRange(min = 100, max = 50_000) double drop,
            @ForAll @Scale(7) @DoubleRange(min = 0.04, max = 0.15) double bore) {
        double here = carried(bore, drop);
        assertTrue(carried(bore, 1.01 * drop) > here);
        assertTrue(carried(1.01 * bore, drop) > here);
    }

    @Test
    void chokesWhereANozzleOfItsBoreWould() {
        double gamma = GAS.gamma(950);
        double total = AMBIENT / NozzleFlow.criticalRatio(gamma);
        assertEquals(
                NozzleFlow.massFlow(PIPE.area(), total, 950, 0, gamma, GAS.gasConstant()),
                DuctCapacity.chokingFlow(950, AMBIENT, PIPE, GAS),
                1e-12);
    }

    @Test
    void aSmallDropFollowsTheSquareRootOfDarcyAndWeisbach() {
        // fittings only, so that the friction factor is out of it: m = A sqrt(2 rho dp / K)
        Pipe fittings = new Pipe(0.073, 0, 45e-6, 1.5);
        double density = AMBIENT / (GAS.gasConstant() * 950);
        double expected = fittings.area() * Math.sqrt(2 * density * 10 / 1.5);
        assertEquals(
                expected,
                DuctCapacity.of(950, AMBIENT, fittings, GAS, 10).massFlow(),
                1e-3 * expected);
    }

    @Test
    void findsTheBoreForAFlow() {
        Values in =
                Values.of(
                        "totalTemperature", 950.0,
                        "exitPressure", AMBIENT,
                        "length", 2.5,
                        "lossSum", 0.6,
                        "dropAllowed", 7000.0);
        double bore = Solver.solveFor(DuctCapacity.RELATION, "diameter", "massFlow", 0.3, in);
        assertEquals(0.3, carried(bore, 7000), 1e-9);
    }

    @Test
    void warnsBeyondChoking() {
        Values in = DuctCapacity.RELATION.typical().with("dropAllowed", 200e3);
        assertTrue(
                DuctCapacity.RELATION.work(in).cautions().stream()
                        .anyMatch(c -> c.text().startsWith("this flow is beyond choking")));
    }

    @Test
    void refusesAPipeThatCostsNothing() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> DuctCapacity.of(950, AMBIENT, new Pipe(0.073, 0, 0, 0), GAS, 1000));
        assertEquals("length", e.slot());
    }

    @Test
    void refusesADropInTheJumpFromLaminarToTurbulent() {
        Pipe thin = new Pipe(0.01, 5, 0, 0);
        double viscosity = GAS.viscosity(700);
        double flow = 2040 * Math.PI * 0.01 * viscosity / 4;
        double below = DuctFlow.of(flow * (1 - 1e-9), 700, AMBIENT, thin, GAS).drop();
        double above = DuctFlow.of(flow * (1 + 1e-9), 700, AMBIENT, thin, GAS).drop();
        assertTrue(above > 1.3 * below);
        var e =
                assertThrows(
                        RelationException.class,
                        () -> DuctCapacity.of(700, AMBIENT, thin, GAS, (below + above) / 2));
        assertTrue(e.getMessage().contains("from laminar to turbulent"), e.getMessage());
    }

    private static double carried(double bore, double drop) {
        return DuctCapacity.of(950, AMBIENT, new Pipe(bore, 2.5, 45e-6, 0.6), GAS, drop).massFlow();
    }
}
