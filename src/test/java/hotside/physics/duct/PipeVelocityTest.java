// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.physics.gas.ExhaustGas;
import hotside.relation.Solver;
import hotside.relation.Values;
import hotside.relation.Worked;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class PipeVelocityTest {
    private static final ExhaustGas GAS = ExhaustGas.STOICHIOMETRIC;

    @Test
    void agreesWithContinuityWorkedByHand() {
        // R = 8.314462618 / 0.0289031 = 287.667 (burned CH1.87, lambda 1, worked independently);
        // 0.15 kg/s, 101 325 Pa, 950 K, 73 mm: rho 0.370768, A 4.185387e-3, v 96.6616, q 1732.13
        PipeVelocity.State s = PipeVelocity.of(0.15, 101_325, 950, 0.073, GAS);
        assertEquals(0.370768, s.density(), 2e-6);
        assertEquals(96.6616, s.velocity(), 2e-3);
        assertEquals(1732.13, s.dynamicPressure(), 0.05);
    }

    @Test
    void machIsVelocityOverSound() {
        // gamma 1.28608 at 1100 K, R 287.667 as above: a = sqrt(1.28608 · 287.667 · 1100) = 637.93
        PipeVelocity.State s = PipeVelocity.of(0.2, 120e3, 1100, 0.06, GAS);
        assertEquals(637.93, s.velocity() / s.mach(), 0.1);
    }

    @Test
    void richGasIsFivePercentFaster() {
        double rich = PipeVelocity.of(0.1, 1e5, 950, 0.07, ExhaustGas.at(0.8)).velocity();
        double neutral = PipeVelocity.of(0.1, 1e5, 950, 0.07, GAS).velocity();
        assertEquals(28.9031 / 27.5823, rich / neutral, 1e-4); // molar masses, as above
    }

    @Property(seed = "20261125")
    void halfTheBoreMeansFourTimesTheVelocityAndSixteenTimesTheHead(
            @ForAll @Scale(7) @DoubleRange(min = 0.02, max = 0.2) double bore,
            @ForAll @Scale(7) @DoubleRange(min = 300, max = 1300) double temperature) {
        PipeVelocity.State wide = PipeVelocity.of(0.01, 1e5, temperature, bore, GAS);
        PipeVelocity.State narrow = PipeVelocity.of(0.01, 1e5, temperature, bore / 2, GAS);
        assertEquals(4, narrow.velocity() / wide.velocity(), 1e-12);
        assertEquals(16, narrow.dynamicPressure() / wide.dynamicPressure(), 1e-11);
    }

    @Property(seed = "20261125")
    void machSquaredTiesTheHeadToThePressure(
            @ForAll @Scale(7) @DoubleRange(min = 0.01, max = 0.5) double flow) {
        // q = gamma p M² / 2, any gas dynamics text
        PipeVelocity.State s = PipeVelocity.of(flow, 1.1e5, 900, 0.08, GAS);
        double head = GAS.gamma(900) * 1.1e5 * s.mach() * s.mach() / 2;
        assertEquals(head, s.dynamicPressure(), 1e-11 * head);
    }

    @Test
    void findsTheBoreOfAVelocity() {
        Values others = Values.of("massFlow", 0.2, "pressure", 1e5, "temperature", 900.0);
        double bore = Solver.solveFor(PipeVelocity.RELATION, "diameter", "velocity", 100, others);
        assertEquals(100, PipeVelocity.of(0.2, 1e5, 900, bore, GAS).velocity(), 1e-7);
    }

    @Test
    void warnsAboveMachPointThreeAndMoreSharplyAboveSound() {
        assertTrue(caution(0.2).isEmpty());
        assertTrue(caution(0.4).startsWith("above Mach 0.3"), caution(0.4));
        assertTrue(caution(1.2).startsWith("faster than sound"), caution(1.2));
    }

    private static String caution(double mach) {
        double one = PipeVelocity.of(1, 101_325, 950, 0.073, GAS).mach();
        Worked worked =
                PipeVelocity.RELATION.work(
                        Values.of(
                                "massFlow", mach / one,
                                "pressure", 101_325.0,
                                "temperature", 950.0,
                                "diameter", 0.073));
        return worked.cautions().isEmpty() ? "" : worked.cautions().get(0).text();
    }
}
