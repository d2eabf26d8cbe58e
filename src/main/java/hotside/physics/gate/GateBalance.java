// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

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
}
