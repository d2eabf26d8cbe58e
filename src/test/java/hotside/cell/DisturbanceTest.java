// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DisturbanceTest {
    private static final double SPEED = 5500 / 60.0;
    private static final Stock STOCK = Stock.shipped();
    private static final Rig BLED = rig("eight-vented-bleed");
    private static final Rig HELD = rig("eight-vented-held");

    private static Rig rig(String id) {
        return STOCK.rig(id).orElseThrow();
    }

    @ParameterizedTest
    @EnumSource
    void everyBalanceStillClosesOnEveryRig(Disturbance disturbance) {
        for (Rig rig : STOCK.rigs()) {
            if (disturbance.possible(rig)) {
                for (double speed : new double[] {45, 75, 100}) {
                    OperatingPoint point = OperatingPoint.solve(disturbance.on(rig), speed);
                    assertTrue(point.residuals().greatest() < 1e-6, rig.id() + " at " + speed);
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void eachHasAnIdByWhichItIsFoundAndWordsOfItsOwn(Disturbance disturbance) {
        assertEquals(disturbance, Disturbance.find(disturbance.id()).orElseThrow());
        assertFalse(disturbance.words().isBlank() || disturbance.check().isBlank());
    }

    /** What leaves by the hole need not leave by the gate: a gate to the air hides the leak. */
    @Test
    void aLeakBeforeTheTurbineIsHiddenByAGateThatHoldsBoostAndOpensToTheAir() {
        Map<Channel, Double> traces = Disturbance.LEAK_BEFORE_TURBINE.traces(HELD, SPEED);
        assertEquals(0, traces.get(Channel.POWER), 50);
        assertEquals(0, traces.get(Channel.BOOST), 10);
        OperatingPoint sound = OperatingPoint.solve(HELD, SPEED);
        OperatingPoint leaking =
                OperatingPoint.solve(Disturbance.LEAK_BEFORE_TURBINE.on(HELD), SPEED);
        assertTrue(leaking.leakFlow() > 0.01 * leaking.exhaustFlow(), "it does leak");
        assertEquals(
                sound.gateFlow(),
                leaking.gateFlow() + leaking.leakFlow(),
                1e-6 * sound.exhaustFlow());
    }

    @Test
    void aLeakWithTheGateShutCostsBoost() {
        double slow = 1500 / 60.0;
        assertEquals(Regime.SHUT, OperatingPoint.solve(BLED, slow).regime());
        Map<Channel, Double> traces = Disturbance.LEAK_BEFORE_TURBINE.traces(BLED, slow);
        assertTrue(traces.get(Channel.BOOST) < -500, traces.toString());
        assertTrue(traces.get(Channel.TURBINE_INLET_PRESSURE) < 0);
    }

    @Test
    void aRestrictedPipeRaisesPressureOnBothSidesOfTheTurbineAndLowersBledBoost() {
        Map<Channel, Double> traces = Disturbance.PIPE_RESTRICTED.traces(BLED, SPEED);
        assertTrue(traces.get(Channel.TURBINE_OUTLET_PRESSURE) > 1000, traces.toString());
        assertTrue(traces.get(Channel.BOOST) < -500, traces.toString());
        assertTrue(traces.get(Channel.POWER) < 0, traces.toString());
    }

    @Test
    void aHoseOffLetsBoostRise() {
        Map<Channel, Double> traces = Disturbance.HOSE_OFF.traces(BLED, SPEED);
        assertTrue(traces.get(Channel.BOOST) > 50e3, traces.toString());
    }

    @Test
    void whatIsWrongWithASensorOrTheCellIsNotWrongWithTheEngine() {
        double truth = OperatingPoint.solve(BLED, SPEED).power();
        for (Disturbance d :
                List.of(
                        Disturbance.BOOST_ZERO_SHIFTED,
                        Disturbance.TAP_CLOGGED,
                        Disturbance.FACTOR_WRONG,
                        Disturbance.GEAR_RATIO_WRONG)) {
            assertEquals(truth, OperatingPoint.solve(d.on(BLED), SPEED).power(), d.id());
        }
        assertEquals(
                4e3, Disturbance.BOOST_ZERO_SHIFTED.traces(BLED, SPEED).get(Channel.BOOST), 101);
        assertEquals(
                0.04 * truth, Disturbance.FACTOR_WRONG.traces(BLED, SPEED).get(Channel.POWER), 200);
    }

    @Test
    void aWrongGearRatioMovesTheCurveAlongSpeedAndLeavesPowerAlone() {
        Map<Channel, Double> traces = Disturbance.GEAR_RATIO_WRONG.traces(BLED, SPEED);
        assertEquals(0.08 * SPEED, traces.get(Channel.ENGINE_SPEED), 0.02);
        double power = OperatingPoint.solve(BLED, SPEED).power();
        assertEquals(0, traces.get(Channel.POWER), 1e-3 * power);
    }

    @Test
    void aCloggedTapTrailsInAPull() {
        Pull sound = Pull.run(BLED, 7);
        Pull clogged = Pull.run(Disturbance.TAP_CLOGGED.on(BLED), 7);
        Row last = clogged.rows().get(clogged.rows().size() - 1);
        double truth = last.truth().get(Channel.TURBINE_OUTLET_PRESSURE);
        assertTrue(last.readings().get(Channel.TURBINE_OUTLET_PRESSURE) < truth - 100);
        assertEquals(sound.rows().size(), clogged.rows().size());
    }

    @Test
    void withTheRightInertiaSettingARampShowsTheEnginesTorqueAndWithTheWrongOneMore() {
        Rig ramp =
                BLED.with("cell.rampRate", "400 rev/min/s")
                        .with("cell.inertiaSetting", BLED.bench().inertia());
        assertTrue(Disturbance.INERTIA_SETTING_WRONG.possible(ramp));
        assertFalse(Disturbance.INERTIA_SETTING_WRONG.possible(BLED));
        double held = Pull.settled(BLED, SPEED).get(Channel.TORQUE);
        assertEquals(held, Pull.settled(ramp, SPEED).get(Channel.TORQUE), 0.2);
        double more = Disturbance.INERTIA_SETTING_WRONG.traces(ramp, SPEED).get(Channel.TORQUE);
        // Torque of speeding up: 0.6 of 1.1 kg·m² at 400 rev/min a second, 2 pi 400/60 rad/s².
        assertEquals(0.6 * 1.1 * 2 * Math.PI * 400 / 60, more, 0.2);
    }

    @Test
    void thePullStopsWhereBoostGoesBeyondTheCellsLimit() {
        Rig off = Disturbance.HOSE_OFF.on(BLED).with("cell.boostLimit", "90 kPa gauge");
        Pull pull = Pull.run(off, 1);
        assertTrue(pull.rows().size() < Pull.run(BLED, 1).rows().size());
        assertTrue(pull.rows().stream().allMatch(row -> row.truth().get(Channel.BOOST) <= 90e3));
        String last = pull.notes().get(pull.notes().size() - 1).statements().get(0);
        assertTrue(last.contains("limit of 90.0 kPa gauge"), last);
    }

    @Test
    void aRigWithoutTheThingCannotHaveItWrong() {
        RigException e = assertThrows(RigException.class, () -> Disturbance.BLEED_MIS_SET.on(HELD));
        assertTrue(e.getMessage().contains("bleed-mis-set"), e.getMessage());
    }
}
