// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class MeanEffectivePressureTest {
    @Test
    void agreesWithTheRuleInShopUnits() {
        // bmep in psi = 75.4 × 2 × T/V with T in lbf·ft and V in in³ (Heywood 1988, section 2.7,
        // from memory; 75.4 is 24π rounded), so 300 over 300 gives 48π
        double torque = 300 * 1.3558179483314004;
        double displacement = 300 * Math.pow(0.0254, 3);
        assertEquals(
                150.796447, MeanEffectivePressure.of(torque, displacement) / 6894.757293168, 1e-6);
    }

    @Test
    void doesTheWorkThatTheShaftDoes() {
        double power = MeanEffectivePressure.of(350, 2e-3) * 2e-3 * 80 / 2;
        assertEquals(TorquePower.of(350, 80), power, 1e-8);
    }

    @Test
    void findsTheTorqueOfAPressure() {
        double torque =
                Solver.solveFor(
                        MeanEffectivePressure.RELATION,
                        "torque",
                        "meanEffectivePressure",
                        20e5,
                        Values.of("displacement", 2e-3));
        assertEquals(20e5, MeanEffectivePressure.of(torque, 2e-3), 1e-3);
    }

    @Test
    void warnsOfMoreThanFourStrokesGive() {
        var worked =
                MeanEffectivePressure.RELATION.work(
                        Values.of("torque", 400.0, "displacement", 0.5e-3));
        assertEquals("meanEffectivePressure", worked.cautions().get(0).about());
    }

    @Property(seed = "20261125")
    void fallsWithSizeAndGrowsWithTorque(@ForAll @DoubleRange(min = 10, max = 1500) double torque) {
        double one = MeanEffectivePressure.of(torque, 3e-3);
        assertEquals(one / 2, MeanEffectivePressure.of(torque, 6e-3), 1e-12 * one);
        assertTrue(MeanEffectivePressure.of(torque + 1, 3e-3) > one);
    }
}
