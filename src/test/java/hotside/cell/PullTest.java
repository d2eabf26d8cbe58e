// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class PullTest {
    private static final Rig RIG =
            SomeRigs.named("eight-vented-bleed").with("cell.step", "600 rev/min");

    private static final Rig RAMP =
            RIG.with("cell.rampRate", "600 rev/min/s").with("cell.sampling", "0.2 s");

    private static double mean(List<Row> rows, Channel channel) {
        return rows.stream().mapToDouble(r -> r.readings().get(channel)).average().orElseThrow();
    }

    @Test
    void theSameSeedGivesTheSamePull() {
        assertEquals(Pull.run(RIG, 7).rows(), Pull.run(RIG, 7).rows());
        assertEquals(Pull.run(RAMP, 7, 3).rows(), Pull.run(RAMP, 7, 3).rows());
        assertNotEquals(Pull.run(RIG, 7).rows(), Pull.run(RIG, 8).rows());
    }

    @Test
    void aHeldSpeedMakesARow() {
        List<Row> rows = Pull.run(RIG, 1).rows();
        assertEquals(7, rows.size());
        assertEquals(8.0, rows.get(0).time());
        assertEquals(2500 / 60.0, rows.get(0).truth().get(Channel.ENGINE_SPEED), 1e-9);
        assertEquals(6100 / 60.0, rows.get(6).truth().get(Channel.ENGINE_SPEED), 1e-9);
    }

    @Test
    void theTruthIsThatOfTheOperatingPointAndKnowsNothingOfSensors() {
        Rig still = RIG.with("cell.repeatability", 0);
        Row row = Pull.run(still, 3).rows().get(4);
        OperatingPoint point = OperatingPoint.solve(still, row.truth().get(Channel.ENGINE_SPEED));
        assertEquals(point.torque(), row.truth().get(Channel.TORQUE));
        assertEquals(point.boost(), row.truth().get(Channel.BOOST));
        Rig deaf =
                still.with("sensors.boost.offset", "5 kPa").with("sensors.torque.gainError", 0.02);
        assertEquals(row.truth(), Pull.run(deaf, 3).rows().get(4).truth());
    }

    @Test
    void aSensorsFaultsStayItsOwn() {
        Row before = Pull.run(RIG, 3).rows().get(4);
        Row after = Pull.run(RIG.with("sensors.boost.noise", "9 kPa"), 3).rows().get(4);
        assertNotEquals(before.readings().get(Channel.BOOST), after.readings().get(Channel.BOOST));
        assertEquals(before.readings().get(Channel.TORQUE), after.readings().get(Channel.TORQUE));
    }

    @Test
    void offsetAndGainErrorShowAndRangeCutsOff() {
        Rig quiet = RIG.with("sensors.boost.noise", 0).with("sensors.boost.resolution", 0);
        Row plain = Pull.run(quiet, 1).rows().get(6);
        double boost = plain.truth().get(Channel.BOOST);
        assertEquals(boost, plain.readings().get(Channel.BOOST), 1e-6 * boost);
        Row off =
                Pull.run(
                                quiet.with("sensors.boost.offset", 500)
                                        .with("sensors.boost.gainError", 0.01),
                                1)
                        .rows()
                        .get(6);
        assertEquals(1.01 * boost + 500, off.readings().get(Channel.BOOST), 1e-6 * boost);
        Row cut = Pull.run(quiet.with("sensors.boost.highest", 50e3), 1).rows().get(6);
        assertEquals(50e3, cut.readings().get(Channel.BOOST), 1e-9);
    }

    /** The spread of a mean of n is σ/√n; ISO/IEC Guide 98-3 (GUM), 4.2.3. */
    @Test
    void noiseAveragesOutAsTheSquareRootSays() {
        Rig rig =
                RIG.with("cell.fromSpeed", 70)
                        .with("cell.toSpeed", 80)
                        .with("cell.step", 0.5)
                        .with("cell.hold", 60)
                        .with("cell.averaging", 40)
                        .with("sensors.boost.noise", 1000)
                        .with("sensors.boost.resolution", 0)
                        .with("sensors.boost.lag", 0);
        double squares = 0;
        int count = 0;
        for (long seed = 1; seed <= 20; seed++) {
            for (Row row : Pull.run(rig, seed).rows()) {
                double error = row.readings().get(Channel.BOOST) - row.truth().get(Channel.BOOST);
                squares += error * error;
                count++;
            }
        }
        // 400 samples each: 50 Pa; 420 such errors know their spread to 3.5 %, four times that
        // here.
        assertEquals(50, Math.sqrt(squares / count), 7);
    }

    /** First-order lag behind an even rise: late by the time constant; any control text. */
    @Test
    void aSlowSensorTrailsARampByItsTimeConstant() {
        Rig rig =
                RAMP.with("cell.fromSpeed", "3600 rev/min")
                        .with("sensors.engineSpeed.noise", 0)
                        .with("sensors.engineSpeed.resolution", 0)
                        .with("sensors.engineSpeed.lag", "0.1 s")
                        .with("cell.sampling", "0.02 s");
        List<Row> rows = Pull.run(rig, 1).rows();
        Row late = rows.get(rows.size() - 1);
        double behind =
                late.truth().get(Channel.ENGINE_SPEED) - late.readings().get(Channel.ENGINE_SPEED);
        // Sampling adds up to half its step: 10 turns/s² × (0.1 s ± 0.01 s).
        assertEquals(1.0, behind, 0.1);
    }

    /** T = J α: 1.1 kg·m² sped up by 10 turns/s² keeps 2π · 11 N·m from the brake. */
    @Test
    void aRampStealsTorque() {
        Row slow = Pull.run(RAMP.with("cell.inertia", 0), 1).rows().get(20);
        Row fast = Pull.run(RAMP, 1).rows().get(20);
        double stolen = slow.truth().get(Channel.TORQUE) - fast.truth().get(Channel.TORQUE);
        assertEquals(2 * Math.PI * 11, stolen, 1e-6);
    }

    @Test
    void onARampBoostComesLaterThanAtHeldSpeeds() {
        Row ramp =
                Pull.run(RAMP.with("cell.fromSpeed", "1800 rev/min"), 1).rows().stream()
                        .filter(r -> r.truth().get(Channel.ENGINE_SPEED) > 41)
                        .findFirst()
                        .orElseThrow();
        double held = OperatingPoint.solve(RIG, ramp.truth().get(Channel.ENGINE_SPEED)).boost();
        assertTrue(ramp.truth().get(Channel.BOOST) < held - 10e3);
    }

    @Test
    void theDayWarmsAirAndCooler() {
        Rig first = Pull.run(RIG, 1, 1).rig();
        Rig fourth = Pull.run(RIG, 1, 4).rig();
        // 1.5 K in an hour, three intervals of 8 min.
        assertEquals(0.6, fourth.ambient().temperature() - first.ambient().temperature(), 1e-9);
        // 4 K from each of three pulls, 8, 16 and 24 min ago, fading with 10 min.
        double soak = 4 * (Math.exp(-0.8) + Math.exp(-1.6) + Math.exp(-2.4));
        assertEquals(
                0.6 + soak,
                fourth.cooler().coolantTemperature() - first.cooler().coolantTemperature(),
                1e-9);
        assertEquals(RIG.cooler(), first.cooler());
    }

    @Test
    void warmthCostsPower() {
        Rig still = RIG.with("cell.repeatability", 0);
        double cold = mean(Pull.run(still, 1, 1).rows(), Channel.POWER);
        double hot = mean(Pull.run(still, 1, 6).rows(), Channel.POWER);
        assertTrue(hot < cold);
    }

    @Test
    void powerIsWorkedFromTheReadingsOfTorqueAndSpeed() {
        Row row = Pull.run(RIG, 5).rows().get(3);
        double torque = row.readings().get(Channel.TORQUE);
        double speed = row.readings().get(Channel.ENGINE_SPEED);
        assertEquals(2 * Math.PI * torque * speed, row.readings().get(Channel.POWER), 1e-6);
    }

    @Test
    void notesSayWhenSomethingElseDecidesTheBoost() {
        List<Note> notes = Pull.run(RIG.with("cell.fromSpeed", "1900 rev/min"), 1).notes();
        assertTrue(notes.get(0).statements().get(0).contains("gate is shut"));
        assertTrue(notes.get(1).statements().get(0).contains("spring, signal and exhaust"));
    }

    @Test
    void aPullWithoutEndIsRefused() {
        Rig endless = RAMP.with("cell.rampRate", 1e-6);
        var e = assertThrows(RigException.class, () -> Pull.run(endless, 1));
        assertTrue(e.getMessage().contains("a faster ramp"), e.getMessage());
        assertThrows(RigException.class, () -> Pull.run(RIG, 1, 0));
    }
}
