// SPDX-License-Identifier: Apache-2.0
package hotside.physics;

import hotside.physics.duct.DuctFlow;
import hotside.physics.duct.FannoFlow;
import hotside.physics.duct.FrictionFactor;
import hotside.physics.duct.PipeFrictionDrop;
import hotside.physics.duct.PipeVelocity;
import hotside.physics.duct.ReynoldsNumber;
import hotside.physics.duct.StaticTotal;
import hotside.physics.engine.BoostWorth;
import hotside.physics.engine.PowerToFlow;
import hotside.physics.engine.TorquePower;
import hotside.physics.gas.ExhaustGas;
import hotside.physics.gas.HumidAir;
import hotside.physics.gas.IsentropicFlow;
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
                    HumidAir.RELATION,
                    ExhaustGas.RELATION,
                    IsentropicFlow.RELATION,
                    // Engine and power
                    TorquePower.RELATION,
                    PowerToFlow.RELATION,
                    BoostWorth.RELATION,
                    // Exhaust flow
                    PipeVelocity.RELATION,
                    StaticTotal.RELATION,
                    ReynoldsNumber.RELATION,
                    FrictionFactor.RELATION,
                    PipeFrictionDrop.RELATION,
                    FannoFlow.RELATION,
                    DuctFlow.RELATION,
                    // Gate
                    ValveForce.RELATION);

    private PhysicsRelations() {}
}
