// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

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

class ChargeCoolerTest {
    private static final Values HOT =
            Values.of("inletTemperature", 400.0, "coolantTemperature", 300.0);

    @Test
    void goesItsShareOfTheWay() {
        // definition of effectiveness, by hand: 400 − 0.7 × 100 K; 1005 × 70 J/kg
        Values out = ChargeCooler.RELATION.solve(HOT.with("effectiveness", 0.7));
        assertEquals(330, out.number("outletTemperature"), 1e-12);
        assertEquals(70_350, out.number("heatPerAir"), 1e-8);
    }

    @Test
    void leavesTheChargeAsItIsOrBringsItToTheCoolant() {
        assertEquals(400, ChargeCooler.temperature(400, 300, 0), 0.0);
        assertEquals(300, ChargeCooler.temperature(400, 300, 1), 0.0);
    }

    @Test
    void findsTheEffectivenessThatWasMeasured() {
        double effectiveness =
                Solver.solveFor(
                        ChargeCooler.RELATION, "effectiveness", "outletTemperature", 325.0, HOT);
        assertEquals(0.75, effectiveness, 1e-10);
    }

    @Test
    void saysWhenTheCoolerIsAHeater() {
        var worked =
                ChargeCooler.RELATION.work(
                        Values.of(
                                "inletTemperature", 300.0,
                                "coolantTemperature", 320.0,
                                "effectiveness", 0.5));
        assertTrue(worked.cautions().get(0).text().contains("heater"));
        assertEquals(-10_050, worked.out().number("heatPerAir"), 1e-8);
    }

    @Test
    void refusesMoreThanAll() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> ChargeCooler.RELATION.solve(HOT.with("effectiveness", 1.05)));
        assertEquals("charge-cooler: effectiveness = 1.05 is outside [0.0, 1.0]", e.getMessage());
    }

    @Property(seed = "20261125")
    void coolsMoreTheBetterItIs(@ForAll @DoubleRange(min = 0, max = 0.99) double effectiveness) {
        assertTrue(
                ChargeCooler.temperature(400, 300, effectiveness + 0.01)
                        < ChargeCooler.temperature(400, 300, effectiveness));
    }
}
