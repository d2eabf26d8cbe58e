// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.unit.Quantity;
import hotside.unit.Scale;
import java.util.List;
import java.util.Optional;

/**
 * A chart that belongs to a variant: its curves in the units shown, and the marks of its axes.
 *
 * @param x the horizontal axis
 * @param y the upright axis
 * @param curves at least one
 */
public record Figure(Axis x, Axis y, List<Curve> curves) {
    public Figure {
        curves = List.copyOf(curves);
    }

    /**
     * @param label what is counted along it
     * @param quantity what it measures; on an axis for several, that of the first curve
     * @param scale the unit shown
     * @param marks its marks
     */
    public record Axis(String label, Quantity quantity, Scale scale, AxisMarks marks) {}

    /**
     * A curve.
     *
     * @param id as a reading names it, such as {@code old.torque}
     * @param name for people
     * @param quantity what it measures
     * @param scale the unit shown
     * @param xs rising
     * @param ys as many
     */
    public record Curve(
            String id,
            String name,
            Quantity quantity,
            Scale scale,
            List<Double> xs,
            List<Double> ys) {
        public Curve {
            xs = List.copyOf(xs);
            ys = List.copyOf(ys);
        }

        /** The curve's height at a place, along straight lines between its points. */
        public double at(double x) {
            int right = 1;
            while (right < xs.size() - 1 && xs.get(right) < x) {
                right++;
            }
            double share = (x - xs.get(right - 1)) / (xs.get(right) - xs.get(right - 1));
            return ys.get(right - 1) + share * (ys.get(right) - ys.get(right - 1));
        }

        /** Where it begins. */
        public double begin() {
            return xs.get(0);
        }

        /** Where it ends. */
        public double end() {
            return xs.get(xs.size() - 1);
        }
    }

    /** The curve of this id. */
    public Optional<Curve> curve(String id) {
        return curves.stream().filter(curve -> curve.id().equals(id)).findFirst();
    }
}
