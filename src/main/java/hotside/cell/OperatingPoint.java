// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.physics.compressor.WheelPower;
import hotside.physics.duct.DuctFlow;
import hotside.physics.engine.MeanEffectivePressure;
import hotside.physics.engine.MixtureRatio;
import hotside.physics.engine.PumpingLoss;
import hotside.physics.engine.TorquePower;
import hotside.physics.gate.GateLift;
import java.util.ArrayList;
import java.util.List;

/**
 * What a rig does at one engine speed and full load: every pressure, flow, force and power of it,
 * in SI, pressures absolute unless named boost.
 *
 * <pre>{@code
 * OperatingPoint point = OperatingPoint.solve(rig, 105);
 * point.boost();
 * }</pre>
 *
 * <p>Model: speed–density with the effect of residual gas, one efficiency for each wheel, Stodola's
 * ellipse, adiabatic pipe with friction, balance of forces on the gate; each from {@link
 * hotside.physics}. A brake's power is gross indicated work (a fixed share of the heat of the fuel
 * that finds air) less friction and the work of moving gas. Left out: pulses, knock and spark (a
 * hotter charge costs more in truth), maps of the wheels, heat through walls.
 */
public final class OperatingPoint {
    private final Breathing breathing;
    private final Flow flow;
    private final Regime regime;

    private OperatingPoint(Breathing breathing, Flow flow) {
        this.breathing = breathing;
        this.flow = flow;
        regime = Regime.of(breathing.rig(), flow);
    }

    /**
     * The steady state. Where the turbine cannot make the boost that the control asks for, it is
     * the boost that it can; {@link #statements} says so.
     *
     * @param speed of the crankshaft, turns per second, above 0
     * @throws RigException if boost would run away beyond a pressure ratio of 8
     */
    public static OperatingPoint solve(Rig rig, double speed) {
        requireTurning(speed);
        Breathing breathing = new Breathing(rig, speed);
        return new OperatingPoint(breathing, new PointSearch(breathing).flow());
    }

    /**
     * The state while the rotor turns at a speed of its own, balanced or not; gas and gate follow
     * at once.
     *
     * @param speed of the crankshaft, turns per second, above 0
     * @param turboSpeed turns per second, at least 0
     */
    public static OperatingPoint spinning(Rig rig, double speed, double turboSpeed) {
        requireTurning(speed);
        Breathing breathing = new Breathing(rig, speed);
        double manifold = Spool.manifoldPressure(rig, turboSpeed);
        double share = Spool.share(rig, manifold - rig.ambient().pressure());
        return new OperatingPoint(breathing, breathing.at(manifold, share, 1.1, Breathing.FINE));
    }

    private static void requireTurning(double speed) {
        if (!(speed > 0 && speed < 1000)) {
            throw new IllegalArgumentException(
                    "speed = " + speed + " turns per second; expected above 0 and below 1000");
        }
    }

    public Rig rig() {
        return breathing.rig();
    }

    /** Of the crankshaft, turns per second. */
    public double speed() {
        return breathing.speed();
    }

    /** Who decides the boost. */
    public Regime regime() {
        return regime;
    }

    /** Manifold pressure above ambient, Pa; below 0 where the charge's way loses more. */
    public double boost() {
        return flow.manifoldPressure() - rig().ambient().pressure();
    }

    /** Pa. */
    public double manifoldPressure() {
        return flow.manifoldPressure();
    }

    /** K. */
    public double manifoldTemperature() {
        return flow.manifoldTemperature();
    }

    /** Pa. */
    public double turbineInletPressure() {
        return flow.turbineInletPressure();
    }

    /** K. */
    public double turbineInletTemperature() {
        return breathing.engine().exhaustTemperature();
    }

    /** What the turbine works against: the total pressure at the pipe's inlet, Pa. */
    public double turbineOutletPressure() {
        return flow.turbineOutletPressure();
    }

    /** What a wall tap at the pipe's inlet reads, Pa. */
    public double tapPressure() {
        return flow.duct().inletStatic();
    }

    /** Total pressure behind the turbine less ambient, Pa. */
    public double backPressure() {
        return turbineOutletPressure() - rig().ambient().pressure();
    }

    /** K. */
    public double turbineOutletTemperature() {
        return flow.turbineOutletTemperature();
    }

    /** Total temperature of the gas in the pipe, the gate's mixed in where it returns, K. */
    public double pipeTemperature() {
        return flow.pipeTemperature();
    }

    /** kg/s. */
    public double pipeFlow() {
        return flow.pipeFlow();
    }

    /** The pipe's state. */
    public DuctFlow.State pipe() {
        return flow.duct();
    }

    /** Turbine inlet over outlet pressure. */
    public double expansionRatio() {
        return turbineInletPressure() / turbineOutletPressure();
    }

    /** Of the gate, m. */
    public double lift() {
        return flow.lift();
    }

    /** Of the boost, at the gate's diaphragm. */
    public double signalShare() {
        return flow.signalShare();
    }

    /** kg/s. */
    public double gateFlow() {
        return flow.gateFlow();
    }

    /** Lost through a hole before the turbine, kg/s. */
    public double leakFlow() {
        return flow.leakFlow();
    }

    /** kg/s. */
    public double turbineFlow() {
        return flow.turbineFlow();
    }

    /** Share of the exhaust that goes round the turbine. */
    public double bypassFraction() {
        return flow.gateFlow() / flow.exhaustFlow();
    }

    /** kg/s. */
    public double airFlow() {
        return flow.airFlow();
    }

    /** kg/s. */
    public double fuelFlow() {
        return airFlow() / breathing.airFuelRatio();
    }

    /** kg/s. */
    public double exhaustFlow() {
        return flow.exhaustFlow();
    }

    /** W. */
    public double compressorPower() {
        return WheelPower.of(airFlow(), flow.compressorWork());
    }

    /** From the gas, before the bearings, W. */
    public double turbinePower() {
        return WheelPower.of(turbineFlow(), flow.turbineWork());
    }

    /** What the turbine gives the rotor beyond what the compressor takes, W; 0 when steady. */
    public double shaftSurplus() {
        return breathing.surplus(flow);
    }

    /** Of the rotor, turns per second. */
    public double turboSpeed() {
        return rig().turbo().speed(flow.compressorWork());
    }

    /** Gross work of the cylinders, W: a rich mixture burns no more fuel than finds air. */
    public double indicatedPower() {
        Engine engine = rig().engine();
        double burned =
                airFlow()
                        / MixtureRatio.of(
                                Math.max(1, engine.lambda()), engine.hydrogenCarbonRatio());
        return engine.indicatedEfficiency() * burned * engine.fuelEnergy();
    }

    /** Spent on moving gas, W; negative where the charge drives the pistons. */
    public double pumpingPower() {
        return PumpingLoss.power(
                turbineInletPressure(), manifoldPressure(), rig().engine().displacement(), speed());
    }

    /** Spent on friction and auxiliaries, W. */
    public double frictionPower() {
        double pressurePerTorque = MeanEffectivePressure.of(1, rig().engine().displacement());
        return TorquePower.of(breathing.engine().friction() / pressurePerTorque, speed());
    }

    /** At the crankshaft, W. */
    public double power() {
        return indicatedPower() - frictionPower() - pumpingPower();
    }

    /** At the crankshaft, N·m. */
    public double torque() {
        return TorquePower.torque(power(), speed());
    }

    /** What a person should know of this point, one sentence each; the first says who decides. */
    public List<String> statements() {
        List<String> all = new ArrayList<>();
        all.add(regime.words());
        if (flow.duct().choked()) {
            all.add(CellWords.of("point.choked"));
        }
        if (boost() < 0) {
            all.add(CellWords.of("point.vacuum"));
        }
        return List.copyOf(all);
    }

    /** By how much the balances fail, worked afresh from pressures and temperatures. */
    public Residuals residuals() {
        double inlet = turbineInletPressure();
        double outlet = turbineOutletPressure();
        double ambient = rig().ambient().pressure();
        double behind = rig().gate().toPipe() ? outlet : ambient;
        double passed =
                breathing.turbineFlow(inlet, outlet)
                        + breathing.gateFlow(lift(), inlet, behind)
                        + breathing.leakFlow(inlet);
        double lost = pipeFlow() * breathing.cp() * (turbineInletTemperature() - pipeTemperature());
        double asked =
                rig().exhaust()
                        .carrying(pipeFlow(), pipeTemperature(), ambient, breathing.gas())
                        .inletTotal();
        return new Residuals(
                passed / exhaustFlow() - 1,
                lost / turbinePower() - 1,
                shaftSurplus() / turbinePower(),
                asked / outlet - 1,
                forceResidual(behind));
    }

    private double forceResidual(double behind) {
        Gate gate = rig().gate();
        boolean between = !gate.stuck() && lift() > 0 && lift() < gate.maxLift();
        double surplus =
                GateLift.surplus(
                        signalShare() * boost(),
                        gate.diaphragmDiameter(),
                        turbineInletPressure(),
                        behind,
                        gate.seatDiameter(),
                        gate.preload());
        return between ? (surplus - gate.rate() * lift()) / Math.max(1, gate.preload()) : 0;
    }
}
