// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Working;
import hotside.unit.Quantity;

/** What the losses of bends, steps and cones have in common: velocity heads of one bore. */
final class Fitting {
    private Fitting() {}

    /** Adds the slots of the flow and the two results to the geometry. */
    static Relation.Draft withFlow(Relation.Draft draft, String head) {
        return draft.input(DuctSlots.massFlow())
                .input(DuctSlots.pressure())
                .input(DuctSlots.temperature())
                .input(DuctSlots.lambda())
                .output(
                        "lossCoefficient",
                        "K",
                        Quantity.RATIO,
                        "total pressure lost over the velocity head " + head)
                .output("drop", "\\Delta p_0", Quantity.PRESSURE_DIFFERENCE, "total pressure lost");
    }

    /**
     * Writes the velocity head in the bore of this slot.
     *
     * @return the head, Pa
     */
    static double writeHead(Working w, String bore) {
        return PipeVelocity.writeHead(w, w.in(bore), bore, false).dynamicPressure();
    }

    /** Writes the loss as coefficient times head; steps of both must come before. */
    static void writeDrop(Working w, double coefficient, double head) {
        w.out(
                "drop",
                "@lossCoefficient\\,@dynamicPressure",
                coefficient * head,
                "So many velocity heads are lost.");
    }

    /** Refuses a step whose small side is the larger. */
    static void requireOrder(String id, double small, double large) {
        if (small > large) {
            throw new RelationException(
                    "smallDiameter",
                    "%s: smallDiameter = %s m is larger than largeDiameter = %s m; exchange them"
                            .formatted(id, small, large));
        }
    }

    /** Area of the small bore over that of the large one. */
    static double areaRatio(double small, double large) {
        return small * small / (large * large);
    }

    /** Writes the area ratio of a step or cone. */
    static void writeAreaRatio(Working w, double small, double large) {
        w.step(
                "areaRatio",
                "\\sigma",
                Quantity.RATIO,
                "\\left(\\frac{@smallDiameter}{@largeDiameter}\\right)^2",
                areaRatio(small, large),
                "Small area over large area.");
    }
}
