// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

import hotside.cell.OperatingPoint;
import hotside.cell.Rig;
import hotside.cell.RigException;
import java.util.OptionalDouble;

/**
 * What a part is truly worth over the band of a plan: no noise, no scatter, one and the same day
 * for both. In SI, means over the band, the part less A.
 *
 * @param gain of power with the plan's control, boost moving as it will, W
 * @param atEqualBoost of power with both at the lower of their two boosts, W; empty where the gate
 *     cannot hold both there
 * @param boost change of it, Pa
 * @param turbineInlet change of the pressure before the turbine, Pa
 * @param turbineOutlet change of the total pressure behind it, Pa
 * @param power mean power with A, W
 */
public record Truth(
        double gain,
        OptionalDouble atEqualBoost,
        double boost,
        double turbineInlet,
        double turbineOutlet,
        double power) {

    /** How far a gate that should hold a boost may miss it, Pa. */
    private static final double HELD = 20;

    /** What of the gain belongs to boost that moved, W; empty where it cannot be told apart. */
    public OptionalDouble boostPart() {
        return atEqualBoost.isPresent()
                ? OptionalDouble.of(gain - atEqualBoost.getAsDouble())
                : OptionalDouble.empty();
    }

    /**
     * @throws RigException if a rig finds no balance
     */
    static Truth of(Plan plan, int part) {
        return of(plan.rig(0), plan.rig(part), plan.speeds());
    }

    static Truth of(Rig before, Rig after, double[] speeds) {
        double gain = 0;
        double equal = 0;
        double boost = 0;
        double inlet = 0;
        double outlet = 0;
        double power = 0;
        boolean held = true;
        for (double speed : speeds) {
            OperatingPoint a = OperatingPoint.solve(before, speed);
            OperatingPoint b = OperatingPoint.solve(after, speed);
            double share = 1.0 / speeds.length;
            gain += share * (b.power() - a.power());
            boost += share * (b.boost() - a.boost());
            inlet += share * (b.turbineInletPressure() - a.turbineInletPressure());
            outlet += share * (b.turbineOutletPressure() - a.turbineOutletPressure());
            power += share * a.power();
            double common = Math.min(a.boost(), b.boost());
            OptionalDouble heldA = powerAt(before, a, common);
            OptionalDouble heldB = powerAt(after, b, common);
            held &= heldA.isPresent() && heldB.isPresent();
            equal += held ? share * (heldB.getAsDouble() - heldA.getAsDouble()) : 0;
        }
        return new Truth(
                gain,
                held ? OptionalDouble.of(equal) : OptionalDouble.empty(),
                boost,
                inlet,
                outlet,
                power);
    }

    /** Power at a boost not above that of the point; empty if the gate cannot come down to it. */
    private static OptionalDouble powerAt(Rig rig, OperatingPoint point, double boost) {
        if (point.boost() - boost < HELD) {
            return OptionalDouble.of(point.power());
        }
        if (boost < 1e3) {
            return OptionalDouble.empty();
        }
        OperatingPoint lower = OperatingPoint.solve(Plan.holding(rig, boost), point.speed());
        return Math.abs(lower.boost() - boost) < HELD
                ? OptionalDouble.of(lower.power())
                : OptionalDouble.empty();
    }
}
