// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.cell.OperatingPoint;
import hotside.course.Part;
import java.util.List;

/**
 * What the cell says to a prediction.
 *
 * @param before each watched quantity before the change, SI
 * @param after each after it, SI
 * @param whoBefore who decided the boost, a phrase
 * @param whoAfter who decides it now, a phrase
 */
public record CellAnswer(
        List<Double> before, List<Double> after, String whoBefore, String whoAfter) {
    /** A smaller change than this share of the value before is called none. */
    public static final double STAYS = 0.01;

    public CellAnswer {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    /**
     * Runs both rigs at the prediction's speed: about a thousandth of a second, and longer for an
     * awkward rig, so never on the screen's thread.
     *
     * @throws hotside.cell.RigException if a rig cannot run so
     */
    public static CellAnswer of(Part.Prediction part) {
        OperatingPoint before = OperatingPoint.solve(part.before(), part.speed());
        OperatingPoint after = OperatingPoint.solve(part.after(), part.speed());
        return new CellAnswer(
                part.watched().stream().map(w -> w.of(before)).toList(),
                part.watched().stream().map(w -> w.of(after)).toList(),
                before.statements().get(0),
                after.statements().get(0));
    }

    /** The change as a share of the value before. */
    double change(int index) {
        double was = before.get(index);
        double step = after.get(index) - was;
        return step == 0 ? 0 : step / Math.max(Math.abs(was), 1e-9);
    }

    /** Which way it went. */
    Way way(int index) {
        double change = change(index);
        return Math.abs(change) <= STAYS ? Way.STAYS : change > 0 ? Way.RISES : Way.FALLS;
    }

    /** About how far it went. */
    Extent extent(int index) {
        double change = Math.abs(change(index));
        return change <= Extent.LITTLE.most()
                ? Extent.LITTLE
                : change <= Extent.CLEARLY.most() ? Extent.CLEARLY : Extent.LOT;
    }

    /** Which way a quantity goes. */
    public enum Way {
        FALLS,
        STAYS,
        RISES
    }

    /** About how far a quantity goes. */
    public enum Extent {
        LITTLE(0.05),
        CLEARLY(0.2),
        LOT(Double.POSITIVE_INFINITY);

        private final double most;

        Extent(double most) {
            this.most = most;
        }

        /** The largest change that is still called so, as a share. */
        double most() {
            return most;
        }

        /** The smallest change that is called so, as a share. */
        double least() {
            return this == LITTLE ? STAYS : this == CLEARLY ? LITTLE.most : CLEARLY.most;
        }
    }
}
