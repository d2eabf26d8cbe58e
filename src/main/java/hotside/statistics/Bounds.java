// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Working;
import hotside.unit.Quantity;

/** The last lines of every interval by Student's t, written in one way everywhere. */
final class Bounds {
    private Bounds() {}

    /**
     * Writes {@code halfWidth}, {@code low} and {@code high} about a result, from the slots {@code
     * confidence} and {@code standardError}.
     *
     * @param centre the output already written that the interval is about
     */
    static void write(Working w, Estimate estimate, String centre) {
        double t = factor(w, estimate.degreesOfFreedom());
        double half =
                w.out(
                        "halfWidth",
                        "@t \\cdot @standardError",
                        t * estimate.standardError(),
                        "So far to either side.");
        w.out("low", "@" + centre + " - @halfWidth", estimate.value() - half, "Lower end.");
        w.out("high", "@" + centre + " + @halfWidth", estimate.value() + half, "Upper end.");
    }

    /** Writes the step {@code t}: how many standard errors the interval reaches. */
    static double factor(Working w, double degreesOfFreedom) {
        String from =
                Double.isInfinite(degreesOfFreedom)
                        ? "From the table of the normal distribution: the spread is known."
                        : "From the table of Student's t for these degrees of freedom.";
        return w.step(
                "t",
                "t",
                Quantity.RATIO,
                "",
                Confidence.student(w.in("confidence"), degreesOfFreedom),
                from);
    }
}
