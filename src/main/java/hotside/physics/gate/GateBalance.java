// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.relation.RelationException;
import hotside.unit.Numbers;

/**
 * The balance of forces on a wastegate: diaphragm and exhaust open it, the spring closes it. Pure
 * parts that the relations share.
 */
final class GateBalance {
    private GateBalance() {}

    /**
     * Area on which boost seems to work, m² (newtons of opening force for each pascal of boost):
     * the signal's share of the diaphragm, and the seat as far as turbine inlet pressure follows
     * boost.
     *
     * @param turbineInletSlope pascals of turbine inlet pressure for each pascal of boost
     */
    static double boostArea(
            double signalShare,
            double diaphragmDiameter,
            double turbineInletSlope,
            double seatDiameter) {
        return signalShare * Disc.area(diaphragmDiameter)
                + turbineInletSlope * Disc.area(seatDiameter);
    }

    /**
     * Boost at which the opening forces equal the spring's, Pa gauge, above 0.
     *
     * @param relation whose name a message begins with
     * @param spring closing force, N
     * @throws RelationException if the exhaust alone opens the valve, or if no boost does
     */
    static double boost(
            String relation,
            double spring,
            double diaphragmDiameter,
            double seatDiameter,
            double turbineInletAtZeroBoost,
            double turbineInletSlope,
            double downstream,
            double signalShare) {
        double exhaust = ValveForce.of(seatDiameter, turbineInletAtZeroBoost, downstream);
        if (spring <= exhaust) {
            throw openAtOnce(relation, exhaust, spring);
        }
        double area = boostArea(signalShare, diaphragmDiameter, turbineInletSlope, seatDiameter);
        if (!(area > 0)) {
            throw new RelationException(
                    "signalShare",
                    relation
                            + ": the forces never balance: neither the signal nor turbine inlet pressure grows"
                            + " with boost; expected signalShare or turbineInletSlope above 0");
        }
        return (spring - exhaust) / area;
    }

    private static RelationException openAtOnce(String relation, double exhaust, double spring) {
        return new RelationException(
                "preload",
                relation
                        + ": the valve is open before there is any boost: the exhaust pushes with "
                        + Numbers.significant(exhaust, 4)
                        + " N at zero boost, the spring holds "
                        + Numbers.significant(spring, 4)
                        + " N; expected a preload above that push (or a smaller seat)");
    }
}
