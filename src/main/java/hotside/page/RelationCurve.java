// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Part;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.relation.Values;
import hotside.speech.Language;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The data of a chart that shows one output of a relation over one input. */
final class RelationCurve {
    /** Enough for a smooth curve at the width of a page. */
    private static final int POINTS = 81;

    /**
     * A curve that varies by less than this share of its value is shown enlarged, with a break in
     * the axis.
     */
    private static final double RIPPLE = 0.25;

    private RelationCurve() {}

    /** A calculator's curve over the usual range of one of its inputs, with the present point. */
    static ChartData chart(CalculatorState state, Slot over) {
        Axes axes = new Axes(over, state.curve(), state.system(), state.ambient());
        double now = state.values().number(over.name());
        double from = Math.min(now, over.usualMin());
        double to = Math.max(now, over.usualMax());
        ChartData.Series series =
                axes.series(state.relation(), state.values(), from, to, name(state.curve()));
        return axes.data(
                        state.relation().title(),
                        List.of(series),
                        axes.point(state.relation(), state.values(), now))
                .sized(state.chartWidth(), height(state.chartWidth()));
    }

    /** A lesson's figure. */
    static ChartData chart(Part.ChartFigure figure, UnitSystem system, double ambient, int width) {
        Axes axes = new Axes(figure.x(), figure.y(), system, ambient);
        List<ChartData.Series> series = new ArrayList<>();
        if (figure.by().isEmpty()) {
            series.add(
                    axes.series(
                            figure.relation(),
                            figure.fixed(),
                            figure.from(),
                            figure.to(),
                            name(figure.y())));
        } else {
            Slot by = figure.by().get();
            for (double value : figure.each()) {
                String label =
                        Told.text(value, by.quantity(), SlotScale.of(by, system), ambient, 3);
                series.add(
                        axes.series(
                                figure.relation(),
                                figure.fixed().with(by.name(), value),
                                figure.from(),
                                figure.to(),
                                label));
            }
        }
        return axes.data(figure.title(), series, Optional.empty()).sized(width, height(width));
    }

    private static int height(int width) {
        return Math.max(300, width * 10 / 17);
    }

    /**
     * A slot's name in words, short enough for the end of a curve: the axis has the full meaning.
     */
    private static String name(Slot slot) {
        if (Language.spoken() != Language.ENGLISH) {
            return slot.meaning().replaceFirst("[,;:].*", "");
        }
        return slot.name().replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
    }

    private record Axes(Slot x, Slot y, UnitSystem system, double ambient) {
        ChartData.Series series(
                Relation relation, Values fixed, double from, double to, String label) {
            double[] xs = new double[POINTS];
            double[] ys = new double[POINTS];
            for (int i = 0; i < POINTS; i++) {
                double at = from + (to - from) * i / (POINTS - 1);
                xs[i] = shown(x, at);
                ys[i] = shown(y, outputAt(relation, fixed, at));
            }
            return ChartData.Series.of(label, xs, ys);
        }

        Optional<ChartData.Present> point(Relation relation, Values values, double now) {
            double output = outputAt(relation, values, now);
            return Double.isNaN(output)
                    ? Optional.empty()
                    : Optional.of(
                            new ChartData.Present(
                                    shown(x, now),
                                    shown(y, output),
                                    told(x, now) + ": " + told(y, output)));
        }

        ChartData data(
                String title, List<ChartData.Series> series, Optional<ChartData.Present> point) {
            ChartData.Axis along = ChartData.Axis.aroundData(x.meaning(), scale(x).told());
            ChartData.Axis up = new ChartData.Axis(y.meaning(), scale(y).told(), spreads(series));
            ChartData data = ChartData.of(title, along, up, series);
            return point.map(data::with).orElse(data);
        }

        /** Zero belongs on the axis unless the curves only ripple far above it. */
        private static boolean spreads(List<ChartData.Series> series) {
            DoubleSummaryStatistics values =
                    series.stream()
                            .flatMap(s -> s.points().stream())
                            .mapToDouble(ChartData.Point::y)
                            .filter(Double::isFinite)
                            .summaryStatistics();
            double largest = Math.max(Math.abs(values.getMin()), Math.abs(values.getMax()));
            return values.getMax() - values.getMin() > RIPPLE * largest;
        }

        private double outputAt(Relation relation, Values fixed, double at) {
            try {
                return relation.value(y.name(), fixed.with(x.name(), at));
            } catch (RelationException e) {
                return Double.NaN;
            }
        }

        private String told(Slot slot, double si) {
            return Told.text(si, slot.quantity(), scale(slot), ambient, 4);
        }

        private double shown(Slot slot, double si) {
            return scale(slot).fromSi(si, slot.quantity(), ambient);
        }

        private Scale scale(Slot slot) {
            return SlotScale.of(slot, system);
        }
    }
}
