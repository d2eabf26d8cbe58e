// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.page.ChartData.Axis;
import hotside.page.ChartData.Series;
import hotside.runlog.Band;
import hotside.runlog.Channel;
import hotside.runlog.Comparison;
import hotside.runlog.Comparison.AtSpeed;
import hotside.runlog.Comparison.Gain;
import hotside.runlog.ComparisonWords;
import hotside.runlog.Curve;
import hotside.runlog.Difference;
import hotside.runlog.Grid;
import hotside.runlog.Part;
import hotside.runlog.Run;
import hotside.runlog.Smoothing;
import hotside.statistics.MeanSpread;
import hotside.statistics.reading.ChartExaggeration;
import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A comparison of run logs as a page shows it: the pulls, curves one over the other, differences,
 * and what follows.
 */
public final class ComparisonView {
    private static final int DIGITS = 4;
    private static final int POINTS = 60;
    private static final int HEIGHT = 340;
    private static final List<Channel> DRAWN =
            List.of(
                    Channel.POWER,
                    Channel.MANIFOLD_PRESSURE,
                    Channel.TURBINE_INLET_PRESSURE,
                    Channel.TURBINE_OUTLET_PRESSURE);

    private final Comparison comparison;
    private final UnitSystem system;
    private final Map<String, ChartData> figures = new LinkedHashMap<>();
    private final String html;

    /**
     * @param part ids of its figures begin with this
     * @param chartWidth in pixels at 100 % text
     */
    public ComparisonView(Comparison comparison, UnitSystem system, String part, int chartWidth) {
        this(comparison, system, part, chartWidth, 1, List.of());
    }

    /**
     * @param part ids of its figures begin with this
     * @param chartWidth in pixels at 100 % text
     * @param smoothing how many neighbouring readings a smoothed curve averages, odd; 1 for none
     * @param notes what else has to be said of the logs, whole sentences
     */
    public ComparisonView(
            Comparison comparison,
            UnitSystem system,
            String part,
            int chartWidth,
            int smoothing,
            List<String> notes) {
        this.comparison = comparison;
        this.system = system;
        StringBuilder out = new StringBuilder();
        out.append(Html.element("h3", "", Words.of("comparison.pulls", comparison.band().words())))
                .append(pulls());
        notes.forEach(text -> out.append(Html.element("p", "class=\"quiet\"", text)));
        comparison
                .leftOut()
                .forEach(text -> out.append(Html.element("p", "class=\"quiet\"", text)));
        ComparisonWords words = new ComparisonWords(comparison, system);
        for (Gain gain : comparison.gains()) {
            out.append(
                            Html.element(
                                    "h3",
                                    "",
                                    Words.of(
                                            "comparison.against",
                                            gain.after().label(),
                                            gain.before().label())))
                    .append("<div class=\"figures\"><ul>");
            words.of(gain).forEach(text -> out.append(Html.element("li", "", text)));
            out.append("</ul>");
            figure(
                    out,
                    part + "-d" + comparison.gains().indexOf(gain),
                    difference(gain, chartWidth));
            out.append("</div>");
        }
        out.append(axes(part, chartWidth)).append("<div class=\"figures\">");
        for (Channel channel : DRAWN.subList(1, DRAWN.size())) {
            if (comparison.parts().stream().allMatch(p -> has(p, channel))) {
                figure(out, part + "-" + channel.id(), overlay(channel, false, chartWidth));
            }
        }
        out.append("</div>");
        if (smoothing > 1) {
            out.append(smoothed(part, smoothing, chartWidth));
        }
        html = out.toString();
    }

    public String html() {
        return html;
    }

    /** Its figures by the part that they are. */
    public Map<String, ChartData> figures() {
        return figures;
    }

    /** The same in sentences. */
    public String text() {
        StringBuilder out =
                new StringBuilder(Words.of("comparison.pulls", comparison.band().words()));
        ComparisonWords words = new ComparisonWords(comparison, system);
        for (Gain gain : comparison.gains()) {
            out.append("\n\n")
                    .append(
                            Words.of(
                                    "comparison.against",
                                    gain.after().label(),
                                    gain.before().label()));
            words.of(gain).forEach(text -> out.append("\n- ").append(text));
        }
        figures.values().forEach(data -> out.append("\n\n").append(Chart.summary(data)));
        return out.toString();
    }

    private void figure(StringBuilder out, String id, ChartData data) {
        figures.put(id, data);
        out.append(LivingChart.figure(id, data));
    }

    private static boolean has(Part part, Channel channel) {
        return part.runs().stream().allMatch(run -> run.pull().has(channel));
    }

    private String pulls() {
        StringBuilder out =
                new StringBuilder("<div class=\"scroll\"><table><thead><tr>")
                        .append(Html.element("th", "scope=\"col\"", Words.of("comparison.part")))
                        .append(Html.element("th", "scope=\"col\"", Words.of("comparison.log")));
        List<Channel> channels =
                DRAWN.stream()
                        .filter(c -> comparison.parts().stream().allMatch(p -> has(p, c)))
                        .toList();
        for (Channel channel : channels) {
            out.append(
                    Html.element(
                            "th",
                            "scope=\"col\" class=\"number\"",
                            Words.of(
                                    "comparison.mean",
                                    channel.words(),
                                    scale(channel.quantity()).told())));
        }
        out.append(
                        Html.element(
                                "th",
                                "scope=\"col\" class=\"number\"",
                                Words.of("comparison.peak", scale(Quantity.POWER).told())))
                .append("</tr></thead><tbody>");
        for (Part part : comparison.parts()) {
            for (int i = 0; i < part.runs().size(); i++) {
                out.append(row(part, i, channels));
            }
        }
        return out.append("</tbody></table></div>").toString();
    }

    private String row(Part part, int i, List<Channel> channels) {
        Run run = part.runs().get(i);
        StringBuilder out =
                new StringBuilder("<tr>")
                        .append(Html.element("td", "class=\"name\"", part.label()))
                        .append(Html.element("td", "class=\"name\"", log(run)));
        for (Channel channel : channels) {
            double mean = comparison.bandMeans(part, channel)[i];
            out.append(Html.element("td", "class=\"number\"", number(mean, channel.quantity())));
        }
        Curve.Point peak = run.curve(Channel.POWER).peak();
        return out.append(
                        Html.element(
                                "td",
                                "class=\"number\"",
                                Words.of(
                                        "comparison.peak-at",
                                        number(peak.value(), Quantity.POWER),
                                        Math.round(60 * peak.speed()))))
                .append("</tr>")
                .toString();
    }

    private static String log(Run run) {
        return run.pull().log().pulls().size() == 1 ? run.pull().log().name() : run.words();
    }

    /** Mean curves of the parts, one over the other. */
    private ChartData overlay(Channel channel, boolean zoomed, int width) {
        Scale scale = scale(channel.quantity());
        List<Series> series = new ArrayList<>();
        for (Part part : comparison.parts()) {
            series.add(Series.of(shortName(part), rpm(), means(part, channel, scale)));
        }
        boolean zero = channel == Channel.POWER && !zoomed;
        return ChartData.of(
                        Words.of("comparison.overlay", channel.words()),
                        speedAxis(),
                        zero
                                ? Axis.fromZero(channel.words(), scale.told())
                                : Axis.aroundData(channel.words(), scale.told()),
                        series)
                .sized(width, HEIGHT);
    }

    private double[] speeds() {
        Band band = comparison.band();
        double[] speeds = new double[POINTS + 1];
        Arrays.setAll(speeds, i -> band.low() + band.width() * i / POINTS);
        return speeds;
    }

    private double[] rpm() {
        return Arrays.stream(speeds()).map(s -> 60 * s).toArray();
    }

    private double[] means(Part part, Channel channel, Scale scale) {
        List<Curve> curves = part.runs().stream().map(run -> run.curve(channel)).toList();
        return Arrays.stream(speeds())
                .map(
                        speed -> {
                            double[] there =
                                    curves.stream()
                                            .mapToDouble(c -> c.at(speed))
                                            .filter(v -> !Double.isNaN(v))
                                            .toArray();
                            return there.length == 0
                                    ? Double.NaN
                                    : scale.fromSi(
                                            MeanSpread.of(there).mean(), channel.quantity(), 0);
                        })
                .toArray();
    }

    /** The difference of power speed by speed, with its interval where pulls were repeated. */
    private ChartData difference(Gain gain, int width) {
        Scale scale = scale(Quantity.POWER);
        List<AtSpeed> rows =
                gain.speeds().stream()
                        .filter(row -> row.differences().containsKey(Channel.POWER))
                        .toList();
        double confidence = comparison.settings().confidence();
        long percent = Math.round(100 * confidence);
        double[] x = rows.stream().mapToDouble(row -> 60 * row.speed()).toArray();
        List<Series> series = new ArrayList<>();
        series.add(
                Series.of(
                        Words.of("comparison.difference"),
                        x,
                        differences(rows, scale, 0, confidence)));
        if (rows.stream().allMatch(row -> power(row).estimate().isPresent())) {
            series.add(
                    Series.of(
                                    Words.of("comparison.low", percent),
                                    x,
                                    differences(rows, scale, -1, confidence))
                            .drawn(ChartData.Dash.DOTTED, ChartData.Marker.NONE)
                            .toned(0));
            series.add(
                    Series.of(
                                    Words.of("comparison.high", percent),
                                    x,
                                    differences(rows, scale, 1, confidence))
                            .drawn(ChartData.Dash.DOTTED, ChartData.Marker.NONE)
                            .toned(0));
        }
        return ChartData.of(
                        Words.of(
                                "comparison.difference-title",
                                shortName(gain.after()),
                                shortName(gain.before())),
                        speedAxis(),
                        Axis.fromZero(Words.of("comparison.difference"), scale.told()),
                        series)
                .sized(width, HEIGHT);
    }

    private static Difference power(AtSpeed row) {
        return row.differences().get(Channel.POWER);
    }

    private static double[] differences(
            List<AtSpeed> rows, Scale scale, int side, double confidence) {
        return rows.stream()
                .map(ComparisonView::power)
                .mapToDouble(d -> d.value() + (side == 0 ? 0 : side * d.halfWidth(confidence)))
                .map(si -> scale.fromSi(si, Quantity.POWER, 0))
                .toArray();
    }

    /** One and the same data on two axes, and by how much the second one shouts. */
    private String axes(String part, int width) {
        ChartData honest = overlay(Channel.POWER, false, width);
        ChartData zoomed = overlay(Channel.POWER, true, width);
        double low = new ChartLayout(zoomed).y.low();
        double first = honest.series().get(0).drawable().get(0).y();
        StringBuilder out =
                new StringBuilder(Html.element("h3", "", Words.of("comparison.axes")))
                        .append(
                                Html.element(
                                        "p",
                                        "",
                                        low > 0 && low < first
                                                ? Words.of(
                                                        "comparison.axes-say",
                                                        DecimalHabit.spoken()
                                                                .write(
                                                                        Numbers.significant(
                                                                                ChartExaggeration
                                                                                        .of(
                                                                                                low,
                                                                                                first),
                                                                                2)))
                                                : Words.of("comparison.axes-same")));
        out.append("<div class=\"figures\">");
        figure(out, part + "-power", honest);
        figure(out, part + "-zoomed", zoomed);
        return out.append("</div>").toString();
    }

    /** The first pull of each part before and after smoothing, and what that did to its peak. */
    private String smoothed(String part, int points, int width) {
        Scale scale = scale(Quantity.POWER);
        StringBuilder out =
                new StringBuilder(Html.element("h3", "", Words.of("comparison.smoothed")));
        List<Series> series = new ArrayList<>();
        for (Part each : comparison.parts()) {
            Curve raw = each.runs().get(0).curve(Channel.POWER);
            Grid grid = Grid.inside(comparison.band(), comparison.band().width() / POINTS);
            Smoothing smooth = Smoothing.of(raw, grid, points);
            series.add(smooth(Words.of("comparison.raw", shortName(each)), raw.on(grid), scale));
            series.add(
                    smooth(Words.of("comparison.smooth", shortName(each)), smooth.curve(), scale));
            out.append(
                    Html.element(
                            "p",
                            "",
                            Words.of(
                                    "comparison.smoothed-say",
                                    shortName(each),
                                    points,
                                    peak(smooth.rawPeak(), scale),
                                    peak(smooth.peak(), scale))));
        }
        figure(
                out,
                part + "-smoothed",
                ChartData.of(
                                Words.of("comparison.smoothed"),
                                speedAxis(),
                                Axis.aroundData(Channel.POWER.words(), scale.told()),
                                series)
                        .sized(width, HEIGHT));
        return out.toString();
    }

    private static Series smooth(String label, Curve curve, Scale scale) {
        double[] x = new double[curve.size()];
        double[] y = new double[curve.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = 60 * curve.speed(i);
            y[i] = scale.fromSi(curve.value(i), Quantity.POWER, 0);
        }
        return Series.of(label, x, y);
    }

    private String peak(Curve.Point peak, Scale scale) {
        return Double.isNaN(peak.value())
                ? Words.of("comparison.gap")
                : Words.of(
                        "comparison.peak-at",
                        number(peak.value(), Quantity.POWER) + " " + scale.told(),
                        Math.round(60 * peak.speed()));
    }

    private Axis speedAxis() {
        return Axis.aroundData(Channel.SPEED.words(), scale(Quantity.ROTATION).told());
    }

    /** Pressures and temperatures are differences to nobody here: shown as they are. */
    private Scale scale(Quantity quantity) {
        return quantity.shown(system);
    }

    private String number(double si, Quantity quantity) {
        return Double.isNaN(si)
                ? Words.of("comparison.gap")
                : DecimalHabit.spoken()
                        .write(
                                Numbers.significant(
                                        scale(quantity).fromSi(si, quantity, 0), DIGITS));
    }

    /** What stands at a curve's end: no more than fits there. */
    private static String shortName(Part part) {
        String label = part.label();
        int comma = label.indexOf(',');
        return comma > 0 && comma <= 3 ? label.substring(0, comma) : label;
    }
}
