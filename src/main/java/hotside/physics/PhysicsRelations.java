// SPDX-License-Identifier: Apache-2.0
package hotside.physics;

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
import hotside.physics.gas.ExhaustGas;
import hotside.physics.gas.HumidAir;
import hotside.physics.gas.IsentropicFlow;
import hotside.physics.gas.StandardAtmosphere;
import hotside.physics.gate.ValveForce;
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
                    ValveForce.RELATION);

    private PhysicsRelations() {}
}
