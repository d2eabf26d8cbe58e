// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.physics.gas.ExhaustGas;
import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class PipeFrictionDropTest {
    private static final ExhaustGas GAS = ExhaustGas.STOICHIOMETRIC;

    @Test
    void agreesWithTheHandCalculationWhenLaminar() {
        // Hagen and Poiseuille: dp = 128 mu L m / (pi rho D^4)
        double flow = 2e-4;
        double density = 1e5 / (GAS.gasConstant() * 600);
        double poiseuille =
                128 * GAS.viscosity(600) * 2 * flow / (Math.PI * density * Math.pow(0.01, 4));
        PipeFrictionDrop.State s =
                PipeFrictionDrop.of(flow, 1e5, 600, new Pipe(0.01, 2, 0, 0), GAS);
        assertTrue(s.reynolds() < 2040);
        assertEquals(poiseuille, s.drop(), 1e-12 * poiseuille);
    }

    @Test
    void agreesWithDarcyAndWeisbachAtAPublishedFactor() {
        // Re = 1e5, roughness 0.001: Colebrook 0.022174536 (open-source library fluids 1.0.22)
        double bore = 0.08;
        double flow = 1e5 * Math.PI * bore * GAS.viscosity(900) / 4;
        double density = 1e5 / (GAS.gasConstant() * 900);
        double velocity = flow / density / (Math.PI / 4 * bore * bore);
        double expected = (0.022174536 * 3 / bore + 0.5) * density * velocity * velocity / 2;
        PipeFrictionDrop.State s =
                PipeFrictionDrop.of(flow, 1e5, 900, new Pipe(bore, 3, 0.001 * bore, 0.5), GAS);
        assertEquals(expected, s.drop(), 2e-7 * expected);
    }

    @Test
    void aPipeWithoutWallOrFittingsCostsNothing() {
        assertEquals(
                0,
                PipeFrictionDrop.of(0.1, 1e5, 900, new Pipe(0.07, 0, 45e-6, 0), GAS).drop(),
                0.0);
    }

    @Property(seed = "20261125")
    void losesOneVelocityHeadForEachUnitOfLoss(
            @ForAll @Scale(7) @DoubleRange(min = 0.01, max = 0.3) double flow) {
        double none = PipeFrictionDrop.of(flow, 1e5, 900, new Pipe(0.07, 2, 45e-6, 0), GAS).drop();
        double one = PipeFrictionDrop.of(flow, 1e5, 900, new Pipe(0.07, 2, 45e-6, 1), GAS).drop();
        double head = PipeVelocity.of(flow, 1e5, 900, 0.07, GAS).dynamicPressure();
        assertEquals(head, one - none, 1e-9 * head);
    }

    @Property(seed = "20261125")
    void growsWithFlowAndShrinksWithBore(
            @ForAll @Scale(7) @DoubleRange(min = 0.02, max = 0.3) double flow,
            @ForAll @Scale(7) @DoubleRange(min = 0.04, max = 0.12) double bore) {
        double here = drop(flow, bore);
        assertTrue(drop(1.02 * flow, bore) > here);
        assertTrue(drop(flow, 1.02 * bore) < here);
    }

    /** Same Reynolds number, same relative roughness, all lengths k times: drop goes as 1/k². */
    @Property(seed = "20261125")
    void aScaledPipeOfTheSameReynoldsNumberObeysDimensions(
            @ForAll @Scale(7) @DoubleRange(min = 0.5, max = 3) double k) {
        double one = PipeFrictionDrop.of(0.05, 1e5, 900, new Pipe(0.06, 2, 5e-5, 1), GAS).drop();
        Pipe scaled = new Pipe(k * 0.06, k * 2, k * 5e-5, 1);
        double other = PipeFrictionDrop.of(k * 0.05, 1e5, 900, scaled, GAS).drop();
        assertEquals(one / (k * k), other, 1e-10 * other);
    }

    @Test
    void findsTheBoreForADrop() {
        Values others =
                Values.of("massFlow", 0.2, "pressure", 105e3, "temperature", 900.0, "length", 2.0);
        double bore = Solver.solveFor(PipeFrictionDrop.RELATION, "diameter", "drop", 4000, others);
        Pipe pipe = new Pipe(bore, 2, 45e-6, 0);
        assertEquals(4000, PipeFrictionDrop.of(0.2, 105e3, 900, pipe, GAS).drop(), 1e-5);
    }

    @Test
    void aRowGivesTheSameAsTheExplainedCase() {
        Object[] row = {0.15, 101_325.0, 950.0, 0.073, 2.5, 45e-6, 0.6, 1.0};
        PipeFrictionDrop.State s =
                PipeFrictionDrop.of(0.15, 101_325, 950, new Pipe(0.073, 2.5, 45e-6, 0.6), GAS);
        assertArrayEquals(
                new double[] {s.velocity(), s.reynolds(), s.frictionFactor(), s.drop()},
                PipeFrictionDrop.RELATION.solveRow(row),
                0.0);
    }

    @Test
    void warnsOfALargeDropAndOfAnImpossibleOne() {
        assertEquals("", dropCaution(2.5));
        assertTrue(dropCaution(25).contains("% of the pressure"), dropCaution(25));
        assertTrue(dropCaution(100).contains("exceeds the pressure"), dropCaution(100));
    }

    @Test
    void refusesAPipeWithoutBoreAndAFlowOfNothing() {
        Values good =
                Values.of(
                        "massFlow", 0.1,
                        "pressure", 1e5,
                        "temperature", 900.0,
                        "diameter", 0.07,
                        "length", 2.0);
        for (String slot : new String[] {"massFlow", "pressure", "diameter"}) {
            var e =
                    assertThrows(
                            RelationException.class,
                            () -> PipeFrictionDrop.RELATION.work(good.with(slot, 0.0)));
            assertEquals(slot, e.slot());
        }
        assertThrows(IllegalArgumentException.class, () -> new Pipe(0, 1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Pipe(0.1, -1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Pipe(0.1, 1, Double.NaN, 0));
    }

    private static double drop(double flow, double bore) {
        return PipeFrictionDrop.of(flow, 1e5, 900, new Pipe(bore, 2, 45e-6, 0.5), GAS).drop();
    }

    /** The caution about the drop for 0.35 kg/s in a pipe of 73 mm and this length. */
    private static String dropCaution(double length) {
        return PipeFrictionDrop.RELATION
                .work(
                        Values.of(
                                "massFlow", 0.35,
                                "pressure", 101_325.0,
                                "temperature", 950.0,
                                "diameter", 0.073,
                                "length", length))
                .cautions()
                .stream()
                .filter(c -> c.about().equals("drop"))
                .map(c -> c.text())
                .findFirst()
                .orElse("");
    }
}
