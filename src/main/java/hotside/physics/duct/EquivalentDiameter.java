// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * One round pipe instead of two, or instead of a flattened one.
 *
 * <p>Source: definitions; the same drop from Darcy and Weisbach with one friction factor for both,
 * which differs in truth by some percent, and the bore by a fifth of that. The twin pipes are of
 * one length and share inlet and outlet, so each takes the flow that gives it the same drop. The
 * perimeter of an ellipse by Gauss's arithmetic-geometric mean, exact to rounding. A flat oval, as
 * pressed from round tube, is two half circles joined by straight sides.
 */
public final class EquivalentDiameter {
    /** What takes the place of the round pipe. */
    public enum Shape {
        TWIN,
        ELLIPSE,
        FLAT_OVAL
    }

    public static final Relation RELATION =
            Relation.named("equivalent-diameter", "One round pipe instead", "Exhaust flow")
                    .says(
                            "Two pipes, or a flattened one, can have the area of a round pipe and still cost more pressure, because"
                                    + " more wall rubs. Three answers to how large a round pipe it is; the last one counts.")
                    .tex(
                            "D_A = \\sqrt{\\frac{4A}{\\pi}},\\qquad D_h = \\frac{4A}{P},\\qquad D_{\\Delta p}^5 = \\frac{16}{\\pi^2}\\,D_h A^2 \\;\\text{or}\\; D_{\\Delta p}^{5/2} = d_1^{5/2} + d_2^{5/2}")
                    .input(
                            Slot.choice(
                                    "shape",
                                    "two round pipes, an ellipse, or an oval with straight sides",
                                    "twin",
                                    "ellipse",
                                    "flat-oval"))
                    .input(
                            DuctSlots.bore(
                                            "sizeA",
                                            "d_1",
                                            "bore of the first pipe, or one axis of the oval")
                                    .typical(0.060))
                    .input(
                            DuctSlots.bore(
                                            "sizeB",
                                            "d_2",
                                            "bore of the second pipe, or the other axis of the oval")
                                    .typical(0.050))
                    .output(
                            "areaDiameter",
                            "D_A",
                            Quantity.LENGTH,
                            "bore of the round pipe of the same area")
                    .output(
                            "hydraulicDiameter",
                            "D_h",
                            Quantity.LENGTH,
                            "four times the area over the wetted perimeter")
                    .output(
                            "sameDropDiameter",
                            "D_{\\Delta p}",
                            Quantity.LENGTH,
                            "bore of the round pipe with the same drop at the same flow")
                    .assumes(
                            "the same length and the same friction factor",
                            "no fittings: those follow the area alone",
                            "twin pipes share inlet and outlet")
                    .source("definitions; Darcy and Weisbach for the same drop")
                    .by(EquivalentDiameter::work);

    /**
     * @param area all flow area, m²
     * @param perimeter all wetted perimeter, m
     * @param areaDiameter m
     * @param hydraulicDiameter m
     * @param sameDropDiameter m
     */
    public record State(
            double area,
            double perimeter,
            double areaDiameter,
            double hydraulicDiameter,
            double sameDropDiameter) {}

    private static final int MOST_ROUNDS = 40;

    private EquivalentDiameter() {}

    /**
     * @param a bore of one pipe or one whole axis, m, above 0
     * @param b the other, m, above 0
     */
    public static State of(Shape shape, double a, double b) {
        double area =
                switch (shape) {
                    case TWIN -> Math.PI / 4 * (a * a + b * b);
                    case ELLIPSE -> Math.PI / 4 * a * b;
                    case FLAT_OVAL -> flatOvalArea(Math.max(a, b), Math.min(a, b));
                };
        double perimeter =
                switch (shape) {
                    case TWIN -> Math.PI * (a + b);
                    case ELLIPSE -> ellipsePerimeter(Math.max(a, b) / 2, Math.min(a, b) / 2);
                    case FLAT_OVAL -> Math.PI * Math.min(a, b) + 2 * Math.abs(a - b);
                };
        double hydraulic = 4 * area / perimeter;
        double sameDrop =
                shape == Shape.TWIN
                        ? Math.pow(Math.pow(a, 2.5) + Math.pow(b, 2.5), 0.4)
                        : Math.pow(16 / (Math.PI * Math.PI) * hydraulic * area * area, 0.2);
        return new State(area, perimeter, Math.sqrt(4 * area / Math.PI), hydraulic, sameDrop);
    }

    private static double flatOvalArea(double wide, double narrow) {
        return Math.PI / 4 * narrow * narrow + narrow * (wide - narrow);
    }

    /**
     * By the arithmetic-geometric mean of the half axes. Each round squares what is missing, so six
     * settle any ellipse that can be drawn, and thirteen one of a width of nothing.
     */
    private static double ellipsePerimeter(double longHalf, double shortHalf) {
        double a = longHalf;
        double b = shortHalf;
        double sum = a * a - (a * a - b * b) / 2;
        double weight = 1;
        for (int i = 0; i < MOST_ROUNDS && a - b > 1e-9 * a; i++) {
            double c = (a - b) / 2;
            double mean = (a + b) / 2;
            b = Math.sqrt(a * b);
            a = mean;
            sum -= weight * c * c;
            weight *= 2;
        }
        return 4 * Math.PI * sum / (a + b);
    }

    private static void work(Working w) {
        Shape shape =
                switch (w.word("shape")) {
                    case "twin" -> Shape.TWIN;
                    case "ellipse" -> Shape.ELLIPSE;
                    default -> Shape.FLAT_OVAL;
                };
        State s = of(shape, w.in("sizeA"), w.in("sizeB"));
        w.step("area", "A", Quantity.AREA, areaFormula(shape), s.area, "All the flow area.");
        w.step(
                "perimeter",
                "P",
                Quantity.LENGTH,
                perimeterFormula(shape),
                s.perimeter,
                "All the wall that the gas rubs along.");
        w.out(
                "areaDiameter",
                "\\sqrt{\\frac{4\\,@area}{\\pi}}",
                s.areaDiameter,
                "The round pipe of the same area, and so of the same velocity.");
        w.out(
                "hydraulicDiameter",
                "\\frac{4\\,@area}{@perimeter}",
                s.hydraulicDiameter,
                "Area over wall: it sets the friction of the shape itself.");
        w.out(
                "sameDropDiameter",
                shape == Shape.TWIN
                        ? "\\left(@sizeA^{5/2} + @sizeB^{5/2}\\right)^{2/5}"
                        : "\\left(\\frac{16}{\\pi^2}\\,@hydraulicDiameter\\,@area^2\\right)^{1/5}",
                s.sameDropDiameter,
                "The round pipe that would cost the same pressure at the same flow.");
    }

    private static String areaFormula(Shape shape) {
        return switch (shape) {
            case TWIN -> "\\frac{\\pi}{4}\\left(@sizeA^2 + @sizeB^2\\right)";
            case ELLIPSE -> "\\frac{\\pi}{4}\\,@sizeA\\,@sizeB";
            case FLAT_OVAL -> "";
        };
    }

    private static String perimeterFormula(Shape shape) {
        return shape == Shape.TWIN ? "\\pi\\,(@sizeA + @sizeB)" : "";
    }
}
