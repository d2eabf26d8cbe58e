// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.physics.compressor.ChargeCooler;
import hotside.physics.compressor.CompressorOutlet;
import hotside.physics.compressor.PressureRatio;
import hotside.physics.compressor.WheelPower;
import hotside.physics.duct.DuctFlow;
import hotside.physics.engine.MixtureRatio;
import hotside.physics.engine.PowerToFlow;
import hotside.physics.engine.ResidualEffect;
import hotside.physics.engine.SpeedDensity;
import hotside.physics.gas.ExhaustGas;
import hotside.physics.gate.Disc;
import hotside.physics.gate.GateFlow;
import hotside.physics.gate.GateLift;
import hotside.physics.turbine.TurbineExpansion;
import hotside.physics.turbine.TurbineSwallow;

/**
 * A rig at one engine speed: what flows where once manifold pressure and the gate's signal are
 * given.
 *
 * <p>One unknown is left, the pressure before the turbine. It settles what the engine breathes,
 * what the gate takes and what remains for the turbine; so the pressure that the turbine leaves
 * behind it follows, and has to be what the pipe asks for. That difference grows steadily with the
 * unknown.
 *
 * <p>Assumed: the gas comes to rest behind the turbine (a total-to-static efficiency has written
 * its speed off), so the turbine works against the <em>total</em> pressure at the pipe's inlet; the
 * exhaust keeps the specific heats that it has at turbine inlet.
 */
final class Breathing {
    /** Relative; inner searches are closed tighter than the outer ones need. */
    static final double FINE = 1e-11;

    /** Relative, for a value of which only the sign is wanted. */
    static final double COARSE = 1e-7;

    private final Rig rig;
    private final double speed;
    private final SpeedPoint engine;
    private final ExhaustGas gas;
    private final double airFuelRatio;
    private final double gamma;
    private final double cp;

    Breathing(Rig rig, double speed) {
        this.rig = rig;
        this.speed = speed;
        engine = rig.engine().at(speed);
        gas = ExhaustGas.at(rig.engine().lambda(), rig.engine().hydrogenCarbonRatio());
        airFuelRatio = MixtureRatio.of(rig.engine().lambda(), rig.engine().hydrogenCarbonRatio());
        gamma = gas.gamma(engine.exhaustTemperature());
        cp = gas.cp(engine.exhaustTemperature());
    }

    /** The manifold pressure at which the compressor does nothing. */
    double idleWheel() {
        return rig.ambient().pressure() - rig.cooler().chargeLoss();
    }

    /**
     * @param manifoldPressure absolute, Pa
     * @param share of the boost at the diaphragm
     * @param guess of turbine inlet over manifold pressure
     * @param tolerance of turbine inlet pressure, relative
     */
    Flow at(double manifoldPressure, double share, double guess, double tolerance) {
        Charge charge = charge(manifoldPressure);
        double low = rig.ambient().pressure();
        double high = manifoldPressure * stalling();
        double start = Math.max(low, Math.min(high, guess * manifoldPressure));
        double inlet =
                Root.rising(
                        p3 -> flow(charge, share, p3).miss(),
                        start,
                        0.005 * start,
                        low,
                        high,
                        tolerance * start);
        return flow(charge, share, inlet);
    }

    /** What the turbine gives the shaft beyond what the compressor takes, W. */
    double surplus(Flow flow) {
        return rig.turbo().mechanicalEfficiency()
                        * WheelPower.of(flow.turbineFlow(), flow.turbineWork())
                - WheelPower.of(flow.airFlow(), flow.compressorWork());
    }

    /** Turbine inlet over manifold pressure at which the cylinder would take in nothing. */
    private double stalling() {
        return 1 + ResidualEffect.GAMMA * (rig.engine().compressionRatio() - 1);
    }

    private record Charge(double pressure, double temperature, double work) {}

    private Charge charge(double manifoldPressure) {
        Ambient air = rig.ambient();
        double ratio =
                PressureRatio.of(
                        manifoldPressure - air.pressure(),
                        0,
                        rig.cooler().chargeLoss(),
                        air.pressure());
        double efficiency = rig.turbo().compressorEfficiency();
        double hot = CompressorOutlet.temperature(air.temperature(), ratio, efficiency);
        return new Charge(
                manifoldPressure,
                ChargeCooler.temperature(
                        hot, rig.cooler().coolantTemperature(), rig.cooler().effectiveness()),
                CompressorOutlet.specificWork(air.temperature(), ratio, efficiency));
    }

    private double airFlow(Charge charge, double inlet) {
        double breathing =
                ResidualEffect.of(
                        inlet / charge.pressure,
                        rig.engine().compressionRatio(),
                        ResidualEffect.GAMMA);
        return SpeedDensity.airFlow(
                rig.engine().displacement(),
                speed,
                engine.volumetricEfficiency() * Math.max(0, breathing),
                charge.pressure,
                charge.temperature);
    }

    private Flow flow(Charge charge, double share, double inlet) {
        double air = airFlow(charge, inlet);
        double exhaust = PowerToFlow.exhaustFlow(air, airFuelRatio);
        double signal = share * (charge.pressure - rig.ambient().pressure());
        double ambient = rig.ambient().pressure();
        boolean toPipe = rig.gate().toPipe();
        double leak = Math.min(exhaust, leakFlow(inlet));
        double kept = exhaust - leak;
        double outlet = toPipe ? shared(kept, signal, inlet) : Double.NaN;
        double lift = lift(signal, inlet, toPipe ? outlet : ambient);
        double gateFlow = Math.min(kept, gateFlow(lift, inlet, toPipe ? outlet : ambient));
        double turbineFlow = kept - gateFlow;
        if (!toPipe) {
            outlet = outlet(turbineFlow, inlet);
        }
        double ratio = inlet / Math.max(outlet, ambient);
        Turbo turbo = rig.turbo();
        double hot = engine.exhaustTemperature();
        double spent = TurbineExpansion.temperature(hot, ratio, turbo.turbineEfficiency(), gamma);
        double pipeFlow = toPipe ? kept : turbineFlow;
        double pipeTemperature =
                toPipe && kept > 0 ? (turbineFlow * spent + gateFlow * hot) / kept : spent;
        DuctFlow.State duct = rig.exhaust().carrying(pipeFlow, pipeTemperature, ambient, gas);
        return new Flow(
                charge.pressure,
                charge.temperature,
                charge.work,
                air,
                exhaust,
                inlet,
                outlet,
                spent,
                turbineFlow,
                TurbineExpansion.specificWork(hot, ratio, turbo.turbineEfficiency(), gamma, cp),
                share,
                lift,
                gateFlow,
                leak,
                pipeFlow,
                pipeTemperature,
                duct);
    }

    double lift(double signal, double inlet, double behind) {
        Gate gate = rig.gate();
        if (gate.stuck()) {
            return Math.min(gate.stuckLift(), gate.maxLift());
        }
        double surplus =
                GateLift.surplus(
                        signal,
                        gate.diaphragmDiameter(),
                        inlet,
                        behind,
                        gate.seatDiameter(),
                        gate.preload());
        return GateLift.of(surplus, gate.rate(), gate.maxLift());
    }

    double gateFlow(double lift, double inlet, double behind) {
        Gate gate = rig.gate();
        double seat = Disc.area(gate.seatDiameter());
        double area = GateFlow.area(gate.seatDiameter(), lift) + Disc.area(gate.seatLeak());
        return through(Math.min(seat, area), inlet, behind);
    }

    /** What a hole before the turbine loses to the air around. */
    double leakFlow(double inlet) {
        double bore = rig.turbo().inletLeak();
        return bore > 0 ? through(Disc.area(bore), inlet, rig.ambient().pressure()) : 0;
    }

    private double through(double area, double inlet, double behind) {
        return GateFlow.massFlow(
                area,
                rig.gate().dischargeCoefficient(),
                inlet,
                engine.exhaustTemperature(),
                behind,
                gamma,
                gas.gasConstant());
    }

    double turbineFlow(double inlet, double outlet) {
        return TurbineSwallow.massFlow(
                rig.turbo().effectiveArea(),
                inlet,
                engine.exhaustTemperature(),
                outlet,
                gamma,
                gas.gasConstant());
    }

    /** The pressure behind the turbine; below zero by the pressure that lacks if it cannot be. */
    private double outlet(double turbineFlow, double inlet) {
        double area = rig.turbo().effectiveArea();
        double hot = engine.exhaustTemperature();
        double outlet =
                TurbineSwallow.outletPressure(
                        turbineFlow, area, inlet, hot, gamma, gas.gasConstant());
        return Double.isNaN(outlet)
                ? inlet
                        - TurbineSwallow.inletPressure(
                                turbineFlow, area, hot, 0, gamma, gas.gasConstant())
                : outlet;
    }

    /** The pressure behind turbine and gate at which both together pass the exhaust. */
    private double shared(double exhaust, double signal, double inlet) {
        if (exhaust <= 0) {
            return inlet;
        }
        double most = passes(signal, inlet, 0);
        return most < exhaust
                ? -inlet * (exhaust - most) / exhaust
                : Root.between(
                        p4 -> exhaust - passes(signal, inlet, p4),
                        0,
                        exhaust - most,
                        inlet,
                        exhaust,
                        FINE * inlet);
    }

    private double passes(double signal, double inlet, double behind) {
        return turbineFlow(inlet, behind) + gateFlow(lift(signal, inlet, behind), inlet, behind);
    }

    Rig rig() {
        return rig;
    }

    double speed() {
        return speed;
    }

    SpeedPoint engine() {
        return engine;
    }

    double airFuelRatio() {
        return airFuelRatio;
    }

    ExhaustGas gas() {
        return gas;
    }

    double cp() {
        return cp;
    }
}
