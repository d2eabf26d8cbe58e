// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * Something that goes wrong in a cell without anybody meaning it: with the rig, with a sensor, or
 * with what the cell makes of the readings. Each is the same rig with a few values changed, by a
 * size that can be seen in a pull.
 */
public enum Disturbance {
    LEAK_BEFORE_TURBINE(rig -> rig.with("turbo.inletLeak", 20e-3)),
    GATE_STUCK_OPEN(
            rig ->
                    rig.with("gate.stuck", "yes")
                            .with("gate.stuckLift", 0.8 * rig.gate().maxLift())),
    SEAT_LEAKS(rig -> rig.with("gate.seatLeak", 16e-3)),
    BLEED_MIS_SET(
            rig -> rig.with("control.signalShare", Math.min(1, share(rig) + 0.1)),
            rig -> rig.control().kind() == Control.Kind.BLEED),
    HOSE_OFF(rig -> rig.with("control.kind", "bleed").with("control.signalShare", 0)),
    PIPE_RESTRICTED(
            rig ->
                    rig.with("exhaust.mufflerBore", 0.8 * rig.exhaust().pipe().diameter())
                            .with("exhaust.mufflerLoss", 1.5)),
    COOLER_SOAKED(
            rig ->
                    rig.with(
                            "cooler.coolantTemperature",
                            Math.min(399, rig.cooler().coolantTemperature() + 25))),
    BOOST_ZERO_SHIFTED(rig -> rig.with("sensors.boost.offset", 4e3), has(Channel.BOOST)),
    TAP_CLOGGED(
            rig -> rig.with("sensors.turbineOutletPressure.lag", 60),
            has(Channel.TURBINE_OUTLET_PRESSURE)),
    FACTOR_WRONG(rig -> rig.with("cell.powerFactor", rig.bench().powerFactor() * 1.04)),
    GEAR_RATIO_WRONG(
            rig ->
                    rig.with("sensors.engineSpeed.gainError", 1.08 - 1)
                            .with("sensors.torque.gainError", 1 / 1.08 - 1),
            has(Channel.ENGINE_SPEED).and(has(Channel.TORQUE))),
    INERTIA_SETTING_WRONG(
            rig -> rig.with("cell.inertiaSetting", rig.bench().inertia() * 1.6),
            rig -> rig.bench().rampRate() > 0 && rig.bench().inertia() > 0);

    private final UnaryOperator<Rig> change;
    private final Predicate<Rig> possible;

    Disturbance(UnaryOperator<Rig> change) {
        this(change, rig -> true);
    }

    Disturbance(UnaryOperator<Rig> change, Predicate<Rig> possible) {
        this.change = change;
        this.possible = possible;
    }

    /** As files and commands write it: {@code leak-before-turbine}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Disturbance> find(String id) {
        return Arrays.stream(values()).filter(d -> d.id().equals(id)).findFirst();
    }

    /** What is wrong, a clause in the language spoken. */
    public String words() {
        return CellWords.of("disturbance." + id());
    }

    /** What to look at in the shop before believing it, after "check". */
    public String check() {
        return CellWords.of("disturbance." + id() + ".check");
    }

    /**
     * False where the rig has nothing that could go wrong so: no bleed, no such sensor, no ramp.
     */
    public boolean possible(Rig rig) {
        return possible.test(rig);
    }

    /**
     * The rig with this wrong in it.
     *
     * @throws RigException if {@link #possible} is false
     */
    public Rig on(Rig rig) {
        if (!possible(rig)) {
            throw new RigException(
                    rig.id() + " cannot have \"" + id() + "\"",
                    "a rig in which " + words() + " can be");
        }
        return change.apply(rig);
    }

    /**
     * What it does to the settled readings at one speed, noise apart: after less before, SI, for
     * each channel that is read.
     *
     * @param speed of the crankshaft, turns per second
     * @throws RigException if it cannot be, or boost runs away
     */
    public Map<Channel, Double> traces(Rig rig, double speed) {
        Map<Channel, Double> before = Pull.settled(rig, speed);
        Map<Channel, Double> traces = new EnumMap<>(Channel.class);
        Pull.settled(on(rig), speed)
                .forEach((channel, after) -> traces.put(channel, after - before.get(channel)));
        return traces;
    }

    private static double share(Rig rig) {
        return rig.control().signalShare();
    }

    private static Predicate<Rig> has(Channel channel) {
        return rig -> rig.sensors().stream().anyMatch(sensor -> sensor.channel() == channel);
    }
}
