// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.content.Finding;
import hotside.runlog.Band;
import hotside.runlog.Channel;
import hotside.runlog.Comparison;
import hotside.runlog.Comparison.AtSpeed;
import hotside.runlog.Comparison.Gain;
import hotside.runlog.ComparisonWords;
import hotside.runlog.Curve;
import hotside.runlog.Difference;
import hotside.runlog.Part;
import hotside.runlog.RegressionSplit;
import hotside.runlog.Run;
import hotside.runlog.WorthSplit;
import hotside.statistics.Estimate;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A comparison as text for people, and as an object for other programs. */
final class CompareReport {
    private static final int DIGITS = 4;
    private static final List<Channel> IN_TABLE =
            List.of(
                    Channel.POWER,
                    Channel.MANIFOLD_PRESSURE,
                    Channel.TURBINE_INLET_PRESSURE,
                    Channel.TURBINE_OUTLET_PRESSURE);

    private final Comparison comparison;
    private final List<Finding> findings;
    private final List<String> notes;
    private final UnitSystem system;
    private final ComparisonWords words;
    private final double confidence;

    CompareReport(
            Comparison comparison, List<Finding> findings, List<String> notes, UnitSystem system) {
        this.comparison = comparison;
        this.findings = findings;
        this.notes = new ArrayList<>(notes);
        this.notes.addAll(comparison.leftOut());
        this.system = system;
        this.words = new ComparisonWords(comparison, system);
        this.confidence = comparison.settings().confidence();
    }

    void print(PrintWriter out) {
        findings.forEach(finding -> out.println(finding.text() + "\n"));
        notes.forEach(note -> out.println("Note: " + note));
        out.println(
                (notes.isEmpty() ? "" : "\n")
                        + "Pulls, averaged over "
                        + comparison.band().words());
        TextTable.print(pulls(), out);
        for (Gain gain : comparison.gains()) {
            out.println("\n" + gain.after().label() + " against " + gain.before().label());
            words.of(gain).forEach(sentence -> out.println("- " + sentence));
            out.println();
            TextTable.print(speeds(gain), out);
        }
    }

    private List<List<String>> pulls() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(
                List.of(
                        "part",
                        "file",
                        "pull",
                        "rows",
                        "from",
                        "to",
                        "mean power " + unit(Quantity.POWER),
                        "peak " + unit(Quantity.POWER),
                        "at rev/min"));
        for (Part part : comparison.parts()) {
            double[] means = comparison.bandMeans(part, Channel.POWER);
            for (int i = 0; i < means.length; i++) {
                Run run = part.runs().get(i);
                Curve power = run.curve(Channel.POWER);
                Band reach = power.reach();
                rows.add(
                        List.of(
                                part.label(),
                                run.pull().log().name(),
                                run.pull().label(),
                                Integer.toString(run.pull().rows()),
                                rpm(reach.low()),
                                rpm(reach.high()),
                                number(means[i], Quantity.POWER),
                                number(power.peak().value(), Quantity.POWER),
                                rpm(power.peak().speed())));
            }
        }
        return rows;
    }

    private List<List<String>> speeds(Gain gain) {
        List<Channel> channels = IN_TABLE.stream().filter(gain.band()::containsKey).toList();
        List<List<String>> rows = new ArrayList<>();
        List<String> head = new ArrayList<>();
        head.add("rev/min");
        for (Channel channel : channels) {
            head.add(channel.words() + " " + unit(ComparisonWords.difference(channel)));
            head.add("±");
        }
        rows.add(head);
        for (AtSpeed at : gain.speeds()) {
            List<String> row = new ArrayList<>();
            row.add(rpm(at.speed()));
            for (Channel channel : channels) {
                Difference d = at.differences().get(channel);
                Quantity quantity = ComparisonWords.difference(channel);
                row.add(d == null ? "gap" : number(d.value(), quantity));
                row.add(d == null ? "" : number(d.halfWidth(confidence), quantity));
            }
            rows.add(row);
        }
        return rows;
    }

    private String unit(Quantity quantity) {
        return quantity.shown(system).label();
    }

    private static String rpm(double speed) {
        Scale scale = Quantity.ROTATION.shown(UnitSystem.SI_SHOP);
        return Long.toString(Math.round(scale.fromSi(speed, Quantity.ROTATION, 0)));
    }

    private String number(double si, Quantity quantity) {
        return Double.isNaN(si)
                ? "?"
                : Numbers.significant(quantity.shown(system).fromSi(si, quantity, 0), DIGITS);
    }

    Map<String, Object> object() {
        return Json.object(
                "band",
                        Json.object(
                                "low", comparison.band().low(), "high", comparison.band().high()),
                "confidence", confidence,
                "parts", comparison.parts().stream().map(this::part).toList(),
                "gains", comparison.gains().stream().map(this::gain).toList(),
                "findings", findings.stream().map(Finding::oneLine).toList(),
                "notes", notes);
    }

    private Map<String, Object> part(Part part) {
        List<Map<String, Object>> pulls = new ArrayList<>();
        for (int i = 0; i < part.runs().size(); i++) {
            Run run = part.runs().get(i);
            Map<String, Object> means = new LinkedHashMap<>();
            for (Channel channel : Comparison.CHANNELS) {
                double mean = comparison.bandMeans(part, channel)[i];
                if (!Double.isNaN(mean)) {
                    means.put(channel.id(), mean);
                }
            }
            pulls.add(
                    Json.object(
                            "file", run.pull().log().name(),
                            "pull", run.pull().label(),
                            "rows", run.pull().rows(),
                            "factor", run.factor(),
                            "means", means));
        }
        return Json.object("label", part.label(), "pulls", pulls);
    }

    private Map<String, Object> gain(Gain gain) {
        return Json.object(
                "before", gain.before().label(),
                "after", gain.after().label(),
                "band", differences(gain.band()),
                "response",
                        gain.response()
                                .map(
                                        r ->
                                                Json.object(
                                                        "manifoldPressure",
                                                        comparison.responseLevel().orElseThrow(),
                                                        "speed",
                                                        difference(r)))
                                .orElse(null),
                "splitByWorth", gain.byWorth().map(this::byWorth).orElse(null),
                "splitByRegression", gain.byRegression().map(this::byRegression).orElse(null),
                "speeds",
                        gain.speeds().stream()
                                .map(
                                        at ->
                                                Json.object(
                                                        "speed",
                                                        at.speed(),
                                                        "differences",
                                                        differences(at.differences())))
                                .toList(),
                "says", words.of(gain));
    }

    private Map<String, Object> differences(Map<Channel, Difference> differences) {
        Map<String, Object> map = new LinkedHashMap<>();
        differences.forEach((channel, d) -> map.put(channel.id(), difference(d)));
        return map;
    }

    private Map<String, Object> difference(Difference d) {
        return Json.object(
                "before", d.before(),
                "after", d.after(),
                "difference", d.value(),
                "interval", d.estimate().map(this::interval).orElse(null));
    }

    private Map<String, Object> interval(Estimate e) {
        double half = e.halfWidth(confidence);
        return Json.object(
                "low",
                e.value() - half,
                "high",
                e.value() + half,
                "standardError",
                e.standardError(),
                "degreesOfFreedom",
                finite(e.degreesOfFreedom()));
    }

    private static Double finite(double value) {
        return Double.isFinite(value) ? value : null;
    }

    private Map<String, Object> byWorth(WorthSplit split) {
        return Json.object(
                "worth", split.worth().value(),
                "worthUncertainty", split.worth().uncertainty(),
                "origin", split.worth().origin(),
                "conditions", split.worth().conditions(),
                "boostPart", split.boost().value(),
                "boostPartHalfWidth", split.boostError().expanded(confidence),
                "exhaustPart", split.exhaust(),
                "exhaustPartHalfWidth", split.exhaustError().expanded(confidence),
                "pumping", split.pumping().map(WorthSplit.Pumping::power).orElse(null),
                "unexplained", split.unexplained(),
                "scatterKnown", split.scatterKnown());
    }

    private Map<String, Object> byRegression(RegressionSplit split) {
        return Json.object(
                "trouble", split.trouble().name().toLowerCase(Locale.ROOT),
                "gain", split.result().map(r -> value(r.gain())).orElse(null),
                "worth", split.result().map(r -> value(r.worth())).orElse(null),
                "boostPart", split.result().map(r -> r.boostPart()).orElse(null),
                "correlation", split.result().map(r -> r.fit().correlation(1, 2)).orElse(null));
    }

    private Map<String, Object> value(Estimate e) {
        return Json.object("value", e.value(), "interval", interval(e));
    }
}
