// SPDX-License-Identifier: Apache-2.0
package hotside.statistics.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SweepInertiaTest {
    private static Values sweep(double torque, double inertia, double rate) {
        return Values.of(
                "measuredTorque", torque, "inertia", inertia, "sweepRate", rate, "speed", 80.0);
    }

    @Test
    void addsInertiaTimesAngularAcceleration() {
        // by hand: 0.6 kg m2, 300 rev/min in a second = 31.41593 rad/s2: 18.84956 N m; at
        // 4800 rev/min = 502.6548 rad/s: 9474.82 W
        Values out = SweepInertia.RELATION.solve(sweep(450, 0.6, 5));
        assertEquals(18.84956, out.number("inertiaTorque"), 5e-6);
        assertEquals(468.84956, out.number("torque"), 5e-6);
        assertEquals(0.0418879, out.number("share"), 5e-8);
        assertEquals(9474.82, out.number("powerTaken"), 5e-3);
    }

    @Test
    void agreesWithTheEnergyThatGoesIntoTheMasses() {
        // J (w2^2 - w1^2) / 2 from 2000 to 6000 rev/min in eight seconds, against mean power
        double w1 = 2 * Math.PI * 2000 / 60;
        double w2 = 2 * Math.PI * 6000 / 60;
        double energy = 0.6 * (w2 * w2 - w1 * w1) / 2;
        double torque = SweepInertia.torque(0.6, (6000 - 2000) / 60.0 / 8);
        assertEquals(energy, torque * (w1 + w2) / 2 * 8, 1e-9 * energy);
    }

    @Test
    void takesNothingAtSteadySpeed() {
        assertEquals(450, SweepInertia.RELATION.value("torque", sweep(450, 0.6, 0)), 0.0);
    }

    @Property(seed = "20261125")
    void readsLowerByTwiceAsMuchForARampTwiceAsFast(
            @ForAll @DoubleRange(min = 0, max = 10) double rate) {
        double slow = SweepInertia.torque(0.6, rate);
        assertEquals(2 * slow, SweepInertia.torque(0.6, 2 * rate), 1e-12 * (1 + slow));
    }
}
