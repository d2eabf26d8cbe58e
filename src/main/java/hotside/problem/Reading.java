// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.unit.Quantity;
import hotside.unit.Scale;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * What is read off a chart.
 *
 * @param sort what is looked for
 * @param of the curve
 * @param and the other curve, where two are compared
 * @param at the place on the horizontal axis, or for {@link Sort#REACHES} the height: a given or a
 *     text such as {@code 4000 rev/min}
 * @param from where a band begins, as {@code at}
 * @param to where it ends
 */
public record Reading(
        Sort sort,
        String of,
        Optional<String> and,
        Optional<String> at,
        Optional<String> from,
        Optional<String> to) {

    /** What is looked for. */
    public enum Sort {
        /** How high a curve stands at a place. */
        VALUE,
        /** How high its top is. */
        PEAK,
        /** Where its top is. */
        PEAK_PLACE,
        /** Its mean over a band. */
        MEAN,
        /** Where it first reaches a height. */
        REACHES,
        /** Where two curves cross. */
        CROSSING,
        /** How far one stands over another, at a place or on the mean of a band. */
        DIFFERENCE,
        /** The same as a share of the other. */
        CHANGE;

        /** As problem files write it. */
        String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        static Optional<Sort> find(String id) {
            return Arrays.stream(values()).filter(s -> s.id().equals(id)).findFirst();
        }

        /** True if two curves are needed. */
        boolean comparesTwo() {
            return this == CROSSING || this == DIFFERENCE || this == CHANGE;
        }

        /** True if the answer lies along the horizontal axis. */
        public boolean alongX() {
            return this == PEAK_PLACE || this == REACHES || this == CROSSING;
        }
    }

    /** A chart from which this cannot be read for certain; the message says why. */
    static final class Unclear extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Unclear(String message) {
            super(message, null, false, false);
        }
    }

    /** A flat top is somewhere within this share of the axis below its highest point. */
    private static final double FLAT = 0.01;

    /** A top that is flatter than this share of the horizontal axis is nowhere. */
    private static final double WIDEST_TOP = 0.08;

    private static final int STEPS = 200;

    /**
     * Where a reading looks, in the units shown.
     *
     * @param at NaN if it has no place
     * @param from NaN if it has no band
     */
    record Place(double at, double from, double to) {
        boolean isBand() {
            return !Double.isNaN(from);
        }
    }

    /**
     * What is read, in the unit shown.
     *
     * @throws Unclear if it is not there, or not certain
     */
    double value(Figure figure, Place place) {
        Figure.Curve a = curve(figure, of);
        return switch (sort) {
            case VALUE -> height(a, place.at());
            case PEAK -> top(a, a.begin(), a.end());
            case PEAK_PLACE -> topPlace(a);
            case MEAN -> mean(a, place.from(), place.to());
            case REACHES -> first(a, place.at());
            case CROSSING -> crossing(a, curve(figure, and.orElseThrow()));
            case DIFFERENCE -> difference(figure, place);
            case CHANGE -> 100 * difference(figure, place) / base(figure, place);
        };
    }

    private double difference(Figure figure, Place place) {
        return level(curve(figure, of), place) - base(figure, place);
    }

    private double base(Figure figure, Place place) {
        return level(curve(figure, and.orElseThrow()), place);
    }

    private static double level(Figure.Curve curve, Place place) {
        return place.isBand() ? mean(curve, place.from(), place.to()) : height(curve, place.at());
    }

    /** What can be told apart by eye, as half a width about the answer, in the unit shown. */
    double band(Figure figure, Place place) {
        AxisMarks marks = sort.alongX() ? figure.x().marks() : figure.y().marks();
        double half = marks.minor() / 2;
        return switch (sort) {
            case PEAK_PLACE -> half + topWidth(figure, curve(figure, of));
            case DIFFERENCE -> 2 * half;
            case CHANGE -> 100 * 2 * half / Math.abs(base(figure, place));
            default -> half;
        };
    }

    /** What the answer measures. */
    Quantity quantity(Figure figure) {
        if (sort.alongX()) {
            return figure.x().quantity();
        }
        Quantity quantity = curve(figure, of).quantity();
        return switch (sort) {
            case CHANGE -> Quantity.PERCENTAGE;
            case DIFFERENCE -> differenceOf(quantity);
            default -> quantity;
        };
    }

    static Quantity differenceOf(Quantity quantity) {
        return switch (quantity) {
            case PRESSURE, GAUGE_PRESSURE -> Quantity.PRESSURE_DIFFERENCE;
            case TEMPERATURE -> Quantity.TEMPERATURE_DIFFERENCE;
            default -> quantity;
        };
    }

    /** The core's number for one in the unit shown. */
    double toSi(Figure figure, double shown, double ambient) {
        Scale curve = curve(figure, of).scale();
        return switch (sort) {
            case CHANGE -> shown / 100;
            case DIFFERENCE -> shown * curve.unit().factor();
            default ->
                    (sort.alongX() ? figure.x().scale() : curve)
                            .toSi(shown, quantity(figure), ambient);
        };
    }

    static Figure.Curve curve(Figure figure, String id) {
        return figure.curve(id).orElseThrow(() -> new Unclear("there is no curve " + id));
    }

    static double height(Figure.Curve curve, double x) {
        if (!(x >= curve.begin() && x <= curve.end())) {
            throw new Unclear("the curve does not go there");
        }
        return curve.at(x);
    }

    static double top(Figure.Curve curve, double from, double to) {
        return DoubleStream.concat(
                        DoubleStream.of(height(curve, from), height(curve, to)),
                        inside(curve, from, to).stream().mapToDouble(i -> curve.ys().get(i)))
                .max()
                .orElseThrow();
    }

    private static List<Integer> inside(Figure.Curve curve, double from, double to) {
        return java.util.stream.IntStream.range(0, curve.xs().size())
                .filter(i -> curve.xs().get(i) >= from && curve.xs().get(i) <= to)
                .boxed()
                .toList();
    }

    static double topPlace(Figure.Curve curve) {
        double top = top(curve, curve.begin(), curve.end());
        return curve.xs().get(curve.ys().indexOf(top));
    }

    /** How far a place may lie from the top and still look like it. */
    private static double topWidth(Figure figure, Figure.Curve curve) {
        double place = topPlace(curve);
        double high = top(curve, curve.begin(), curve.end()) - FLAT * figure.y().marks().span();
        double width =
                inside(curve, curve.begin(), curve.end()).stream()
                        .filter(i -> curve.ys().get(i) >= high)
                        .mapToDouble(i -> Math.abs(curve.xs().get(i) - place))
                        .max()
                        .orElse(0);
        if (width > WIDEST_TOP * figure.x().marks().span()) {
            throw new Unclear("the top is too flat to say where it is");
        }
        return width;
    }

    /** Over the horizontal axis, by trapezia. */
    static double mean(Figure.Curve curve, double from, double to) {
        double area = 0;
        double before = from;
        double high = height(curve, from);
        for (int i : inside(curve, from, to)) {
            double x = curve.xs().get(i);
            area += (x - before) * (high + curve.ys().get(i)) / 2;
            before = x;
            high = curve.ys().get(i);
        }
        area += (to - before) * (high + height(curve, to)) / 2;
        return area / (to - from);
    }

    private static double first(Figure.Curve curve, double height) {
        if (curve.ys().get(0) >= height) {
            throw new Unclear("the curve begins above that height");
        }
        for (int i = 1; i < curve.ys().size(); i++) {
            double low = curve.ys().get(i - 1);
            double high = curve.ys().get(i);
            if (high >= height) {
                double share = (height - low) / (high - low);
                return curve.xs().get(i - 1) + share * (curve.xs().get(i) - curve.xs().get(i - 1));
            }
        }
        throw new Unclear("the curve never reaches that height");
    }

    private static double crossing(Figure.Curve a, Figure.Curve b) {
        double from = Math.max(a.begin(), b.begin());
        double to = Math.min(a.end(), b.end());
        double found = Double.NaN;
        double left = from;
        double before = a.at(from) - b.at(from);
        for (int i = 1; i <= STEPS; i++) {
            double x = from + (to - from) * i / STEPS;
            double now = a.at(x) - b.at(x);
            if (now == 0) {
                // On the crossing itself: the next step tells whether they cross or only touch.
                continue;
            }
            if (before * now < 0) {
                if (!Double.isNaN(found)) {
                    throw new Unclear("the curves cross more than once");
                }
                found = left + (x - left) * before / (before - now);
            }
            left = x;
            before = now;
        }
        if (Double.isNaN(found)) {
            throw new Unclear("the curves do not cross");
        }
        return found;
    }
}
