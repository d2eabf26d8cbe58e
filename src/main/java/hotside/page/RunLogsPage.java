// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.content.Finding;
import hotside.page.RunLogsState.LogFile;
import hotside.runlog.Channel;
import hotside.runlog.Column;
import hotside.runlog.PowerCorrection;
import hotside.runlog.RunLog;
import hotside.unit.DecimalHabit;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The page of the run logs: files, what each of their columns is, how to compare, and what comes
 * out.
 */
public final class RunLogsPage {
    /** The part that all its fields and buttons name. */
    public static final String PART = "logs";

    /** Where it is told how far reading is, or what stands in the way. */
    public static final String STATUS = PART + "-status";

    /** Where the files are. */
    public static final String FILES = PART + "-files";

    /** Where the comparison is. */
    public static final String RESULT = PART + "-result";

    private static final int MOST_FINDINGS = 12;
    private static final List<String> EMPTY =
            List.of("logs.empty-open", "logs.empty-tell", "logs.empty-compare");

    private RunLogsPage() {}

    /** The whole page. */
    public static String html(RunLogsState state) {
        Form form = new Form(PART, state.typed());
        return "<div class=\"bench\">"
                + Html.element("p", "class=\"kicker\"", Words.of("logs.kicker"))
                + Html.element("h1", "id=\"place-title\"", Words.of("logs.title"))
                + Html.element("p", "", Words.of("logs.lead"))
                + "<div class=\"buttons\">"
                + form.button("open", Words.of("logs.open"), true)
                + form.button("sample", Words.of("logs.sample"), false)
                + "</div><div role=\"status\""
                + Html.attribute("id", STATUS)
                + ">"
                + status(state)
                + "</div><div"
                + Html.attribute("id", FILES)
                + ">"
                + files(state)
                + "</div><div"
                + Html.attribute("id", RESULT)
                + ">"
                + result(state)
                + "</div></div>";
    }

    /** How far reading is, or what stands in the way. */
    public static String status(RunLogsState state) {
        return state.fault()
                .map(
                        text ->
                                "<div class=\"verdict ask\">"
                                        + Html.element(
                                                "p", "class=\"label\"", Words.of("cell.not-yet"))
                                        + Html.element("p", "", text)
                                        + "</div>")
                .orElse("");
    }

    /** The files and, once there are two, how to compare them. */
    public static String files(RunLogsState state) {
        if (state.files().isEmpty()) {
            StringBuilder out =
                    new StringBuilder("<section class=\"empty\">")
                            .append(Html.element("p", "", Words.of("logs.empty")))
                            .append("<ol>");
            EMPTY.forEach(step -> out.append(Html.element("li", "", Words.of(step))));
            return out.append("</ol></section>").toString();
        }
        Form form = new Form(PART, state.typed());
        StringBuilder out = new StringBuilder("<div class=\"columns\">");
        state.files().forEach(file -> out.append(file(file, form)));
        return out.append("</div>").append(settings(form, state)).toString();
    }

    private static String file(LogFile file, Form form) {
        StringBuilder out =
                new StringBuilder("<section class=\"card\">")
                        .append(Html.element("h2", "", file.name()));
        if (file.invented()) {
            out.append(Html.element("p", "class=\"quiet\"", Words.of("logs.invented")));
        }
        file.reading()
                .log()
                .ifPresent(
                        log ->
                                out.append(Html.element("p", "", told(log)))
                                        .append("<div class=\"form\">")
                                        .append(
                                                form.text(
                                                        file.key() + "-label",
                                                        Words.of("logs.label"),
                                                        file.name(),
                                                        "compare"))
                                        .append(
                                                form.text(
                                                        file.key() + "-barometer",
                                                        Words.of("logs.barometer"),
                                                        Words.of("logs.barometer-hint"),
                                                        "reread"))
                                        .append("</div>")
                                        .append(columns(file, log, form)));
        file.reading()
                .notes()
                .forEach(note -> out.append(Html.element("p", "class=\"quiet\"", note)));
        out.append(findings(file.reading().findings()));
        return out.append("<div class=\"buttons\">")
                .append(form.button("remove", file.key(), Words.of("logs.remove"), false))
                .append("</div></section>")
                .toString();
    }

    private static String told(RunLog log) {
        return Words.of("logs.told", log.rows(), log.pulls().size());
    }

    /** The columns that were not made out can be told here. */
    private static String columns(LogFile file, RunLog log, Form form) {
        List<String> known =
                log.columns().stream()
                        .filter(c -> c.channel() != Channel.UNKNOWN)
                        .map(c -> c.channel().words() + unit(c))
                        .toList();
        StringBuilder out =
                new StringBuilder("<details><summary>")
                        .append(Xml.escape(Words.of("logs.known-count", known.size())))
                        .append("</summary>")
                        .append(
                                Html.element(
                                        "p", "", Words.of("logs.known", String.join("; ", known))))
                        .append("</details>");
        List<Column> unknown =
                log.columns().stream().filter(c -> c.channel() == Channel.UNKNOWN).toList();
        if (unknown.isEmpty()) {
            return out.toString();
        }
        out.append("<div class=\"form\">");
        for (Column column : unknown) {
            out.append(
                    form.text(
                            "map-" + column.header(),
                            Words.of("logs.map", column.header()),
                            Words.of("logs.map-hint"),
                            "reread"));
        }
        return out.append("</div><div class=\"buttons\">")
                .append(form.button("reread", file.key(), Words.of("logs.reread"), false))
                .append("</div>")
                .toString();
    }

    /** The unit of a known column, in the language spoken. */
    private static String unit(Column column) {
        return column.unit().isEmpty()
                ? ""
                : ", " + Scale.of(column.channel().quantity(), column.unit()).told();
    }

    private static String findings(List<Finding> findings) {
        if (findings.isEmpty()) {
            return "";
        }
        StringBuilder out =
                new StringBuilder("<details><summary>")
                        .append(Xml.escape(Words.of("logs.findings", findings.size())))
                        .append("</summary>");
        findings.stream()
                .limit(MOST_FINDINGS)
                .forEach(f -> out.append("<pre>").append(Xml.escape(f.text())).append("</pre>"));
        if (findings.size() > MOST_FINDINGS) {
            out.append(
                    Html.element("p", "", Words.of("logs.more", findings.size() - MOST_FINDINGS)));
        }
        return out.append("</details>").toString();
    }

    private static String settings(Form form, RunLogsState state) {
        Map<String, String> standards = new LinkedHashMap<>();
        standards.put("", Words.of("logs.uncorrected"));
        PowerCorrection.standards()
                .forEach(id -> standards.put(id, id.toUpperCase(java.util.Locale.ROOT)));
        String power = Quantity.POWER.shown(state.system()).told();
        String boost = Quantity.POWER_PER_PRESSURE.shown(state.system()).told();
        return "<section class=\"card\">"
                + Html.element("h2", "", Words.of("logs.compare"))
                + Html.element("p", "", Words.of("logs.compare-say"))
                + "<div class=\"form\">"
                + form.text("band", Words.of("logs.band"), Words.of("cell.band-hint"), "compare")
                + form.text(
                        "worth",
                        Words.of("logs.worth"),
                        Words.of("logs.worth-hint", boost),
                        "compare")
                + form.text("without", Words.of("logs.without"), "300 " + power, "compare")
                + form.text(
                        "displacement",
                        Words.of("logs.displacement"),
                        DecimalHabit.spoken().write("4.6 L"),
                        "compare")
                + form.select("standard", Words.of("logs.standard"), standards)
                + form.text("air", Words.of("logs.air"), "25 °C", "compare")
                + form.text("humidity", Words.of("logs.humidity"), "40 %", "compare")
                + form.text("smooth", Words.of("logs.smooth"), "1", "compare")
                + "</div><div class=\"buttons\">"
                + form.button("compare", Words.of("logs.compare-do"), true)
                + "</div></section>";
    }

    /** What came out. */
    public static String result(RunLogsState state) {
        return state.result()
                .map(
                        view ->
                                "<section class=\"card\">"
                                        + Html.element(
                                                "h2",
                                                "id=\"logs-result-title\"",
                                                Words.of("logs.result"))
                                        + view.html()
                                        + "</section>")
                .orElse("");
    }

    /** The page in sentences, for assistive technology. */
    public static String text(RunLogsState state) {
        StringBuilder out =
                new StringBuilder(Words.of("logs.title"))
                        .append(". ")
                        .append(Words.of("logs.lead"));
        state.files()
                .forEach(
                        file ->
                                out.append("\n\n")
                                        .append(file.name())
                                        .append(
                                                file.reading()
                                                        .log()
                                                        .map(log -> ": " + told(log))
                                                        .orElse("")));
        state.result().ifPresent(view -> out.append("\n\n").append(view.text()));
        return out.toString();
    }
}
