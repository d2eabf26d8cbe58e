// SPDX-License-Identifier: Apache-2.0
package hotside.physics;

import hotside.physics.compressor.ChargeCooler;
import hotside.physics.compressor.CompressorEfficiency;
import hotside.physics.compressor.CompressorOutlet;
import hotside.physics.compressor.CoolerEffectiveness;
import hotside.physics.compressor.CorrectedFlow;
import hotside.physics.compressor.CorrectedSpeed;
import hotside.physics.compressor.PressureRatio;
import hotside.physics.compressor.WheelPower;
import hotside.physics.duct.BendLoss;
import hotside.physics.duct.DiameterScaling;
import hotside.physics.duct.DiffuserLoss;
import hotside.physics.duct.DuctCapacity;
import hotside.physics.duct.DuctFlow;
import hotside.physics.duct.EquivalentDiameter;
import hotside.physics.duct.ExitLoss;
import hotside.physics.duct.FannoFlow;
import hotside.physics.duct.FrictionFactor;
import hotside.physics.duct.MitreLoss;
import hotside.physics.duct.PipeFrictionDrop;
import hotside.physics.duct.PipeHeatLoss;
import hotside.physics.duct.PipeVelocity;
import hotside.physics.duct.ReynoldsNumber;
import hotside.physics.duct.StaticTotal;
import hotside.physics.duct.SuddenContraction;
import hotside.physics.duct.SuddenExpansion;
import hotside.physics.engine.BoostWorth;
import hotside.physics.engine.Din70020;
import hotside.physics.engine.HeldBoostCorrection;
import hotside.physics.engine.Iso1585;
import hotside.physics.engine.MeanEffectivePressure;
import hotside.physics.engine.MixtureRatio;
import hotside.physics.engine.PowerToFlow;
import hotside.physics.engine.PumpingLoss;
import hotside.physics.engine.ResidualEffect;
import hotside.physics.engine.SaeJ1349;
import hotside.physics.engine.SaeJ607;
import hotside.physics.engine.SpeedDensity;
import hotside.physics.engine.TorquePower;
import hotside.physics.gas.ExhaustGas;
import hotside.physics.gas.HumidAir;
import hotside.physics.gas.IsentropicFlow;
import hotside.physics.gas.StandardAtmosphere;
import hotside.physics.gate.BleedSignal;
import hotside.physics.gate.BoostShift;
import hotside.physics.gate.CrackPressure;
import hotside.physics.gate.CreepMargin;
import hotside.physics.gate.DiaphragmForce;
import hotside.physics.gate.FlapMoment;
import hotside.physics.gate.GateFlow;
import hotside.physics.gate.GateLift;
import hotside.physics.gate.GateShare;
import hotside.physics.gate.HeldBoost;
import hotside.physics.gate.RegulatedShare;
import hotside.physics.gate.SpringForce;
import hotside.physics.gate.ValveForce;
import hotside.physics.turbine.BoostThreshold;
import hotside.physics.turbine.RotorSpinUp;
import hotside.physics.turbine.TurbineExpansion;
import hotside.physics.turbine.TurbineSwallow;
import hotside.physics.turbine.TurboBalance;
import hotside.relation.Relation;
import java.util.List;

/**
 * The one list of physical relations, in teaching order. A relation that is not here does not
 * exist.
 */
public final class PhysicsRelations {
    public static final List<Relation> ALL =
            List.of(
                    // Air and gas
                    StandardAtmosphere.RELATION,
                    HumidAir.RELATION,
                    ExhaustGas.RELATION,
                    IsentropicFlow.RELATION,
                    // Engine and power
                    TorquePower.RELATION,
                    MeanEffectivePressure.RELATION,
                    MixtureRatio.RELATION,
                    PowerToFlow.RELATION,
                    SpeedDensity.RELATION,
                    BoostWorth.RELATION,
                    PumpingLoss.RELATION,
                    ResidualEffect.RELATION,
                    SaeJ1349.RELATION,
                    Iso1585.RELATION,
                    Din70020.RELATION,
                    SaeJ607.RELATION,
                    HeldBoostCorrection.RELATION,
                    // Compressor and cooler
                    PressureRatio.RELATION,
                    CompressorOutlet.RELATION,
                    CompressorEfficiency.RELATION,
                    WheelPower.RELATION,
                    CorrectedFlow.RELATION,
                    CorrectedSpeed.RELATION,
                    ChargeCooler.RELATION,
                    CoolerEffectiveness.RELATION,
                    // Turbine and turbo
                    TurbineExpansion.RELATION,
                    TurbineSwallow.RELATION,
                    TurboBalance.RELATION,
                    RotorSpinUp.RELATION,
                    BoostThreshold.RELATION,
                    // Exhaust flow
                    PipeVelocity.RELATION,
                    StaticTotal.RELATION,
                    ReynoldsNumber.RELATION,
                    FrictionFactor.RELATION,
                    PipeFrictionDrop.RELATION,
                    BendLoss.RELATION,
                    MitreLoss.RELATION,
                    SuddenExpansion.RELATION,
                    SuddenContraction.RELATION,
                    DiffuserLoss.RELATION,
                    ExitLoss.RELATION,
                    EquivalentDiameter.RELATION,
                    DiameterScaling.RELATION,
                    FannoFlow.RELATION,
                    DuctFlow.RELATION,
                    DuctCapacity.RELATION,
                    PipeHeatLoss.RELATION,
                    // Gate
                    DiaphragmForce.RELATION,
                    SpringForce.RELATION,
                    ValveForce.RELATION,
                    FlapMoment.RELATION,
                    CrackPressure.RELATION,
                    GateLift.RELATION,
                    HeldBoost.RELATION,
                    BleedSignal.RELATION,
                    RegulatedShare.RELATION,
                    GateShare.RELATION,
                    GateFlow.RELATION,
                    CreepMargin.RELATION,
                    BoostShift.RELATION);

    private PhysicsRelations() {}
}
