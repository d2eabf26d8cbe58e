// SPDX-License-Identifier: Apache-2.0
package hotside.physics;

import hotside.physics.gate.BleedSignal;
import hotside.physics.gate.BoostShift;
import hotside.physics.gate.CrackPressure;
import hotside.physics.gate.CreepMargin;
import hotside.physics.gate.DiaphragmForce;
import hotside.physics.gate.FlapMoment;
import hotside.physics.gate.GateFlow;
import hotside.physics.gate.GateLift;
import hotside.physics.gate.HeldBoost;
import hotside.physics.gate.RegulatedShare;
import hotside.physics.gate.SpringForce;
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
                    GateFlow.RELATION,
                    CreepMargin.RELATION,
                    BoostShift.RELATION);

    private PhysicsRelations() {}
}
