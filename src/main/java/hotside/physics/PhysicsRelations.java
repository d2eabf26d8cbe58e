// SPDX-License-Identifier: Apache-2.0
package hotside.physics;

import hotside.physics.engine.BoostWorth;
import hotside.physics.engine.PowerToFlow;
import hotside.physics.engine.TorquePower;
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
                    // Engine and power
                    TorquePower.RELATION,
                    PowerToFlow.RELATION,
                    BoostWorth.RELATION,
                    // Gate
                    ValveForce.RELATION);

    private PhysicsRelations() {}
}
