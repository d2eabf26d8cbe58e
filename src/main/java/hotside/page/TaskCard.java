// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.problem.Answers;
import hotside.problem.Figure;
import hotside.problem.Lettered;
import hotside.problem.Marker;
import hotside.problem.PullMeans;
import hotside.problem.Task;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Verdict;
import hotside.unit.DecimalHabit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a problem card has between its text and its answer: charts, options, items. */
final class TaskCard {
    private final ProblemState state;
    private final Variant variant;

    TaskCard(ProblemState state) {
        this.state = state;
        this.variant = state.variant();
    }

    String html() {
        return PullMeans.of(variant).map(TaskCard::table).orElse("")
                + figures()
                + switch (variant.template().kind()) {
                    case NUMBER, STEPS, GRAPH, PLAN, SPLIT -> "";
                    case ORDER -> order();
                    case SEVERAL -> options("checkbox", Words.of("choice.several"));
                    case CHOICE, FAULT -> options("radio", Words.of("choice.one"));
                };
    }

    /** What each pull gave on average, as it is worked with. */
    static String table(PullMeans means) {
        StringBuilder out = new StringBuilder("<table class=\"data\"><thead><tr>");
        means.heads().forEach(head -> out.append(Html.element("th", "scope=\"col\"", head)));
        out.append("</tr></thead><tbody>");
        for (List<String> row : means.rows()) {
            out.append("<tr>");
            row.forEach(cell -> out.append(Html.element("td", "", cell)));
            out.append("</tr>");
        }
        return out.append("</tbody></table>").toString();
    }

    private String figures() {
        StringBuilder out = new StringBuilder();
        boolean measured = ReadingCursor.of(variant, state.chartWidth()).isPresent();
        if (!measured) {
            read(state).forEach((id, data) -> out.append(LivingChart.figure(id, data)));
            return out.toString();
        }
        for (Figure figure : variant.figures()) {
            ChartData data = FigureChart.of(figure, state.chartWidth());
            out.append("<figure class=\"chart\">")
                    .append(measured(data))
                    .append(ChartTable.html(data))
                    .append("</figure>");
        }
        return out.toString();
    }

    /** The charts whose curves a cursor reads, by the part that each is. */
    static Map<String, ChartData> read(ProblemState state) {
        Map<String, ChartData> charts = new LinkedHashMap<>();
        if (ReadingCursor.of(state.variant(), state.chartWidth()).isEmpty()) {
            for (Figure figure : state.variant().figures()) {
                charts.put(
                        state.id() + "-f" + (charts.size() + 1),
                        FigureChart.of(figure, state.chartWidth()));
            }
        }
        return charts;
    }

    /** The chart with a hair line, and what it measures. */
    private String measured(ChartData data) {
        ReadingCursor cursor = ReadingCursor.of(variant, state.chartWidth()).orElseThrow();
        String keys = Words.of(cursor.isUpright() ? "chart.measure-along" : "chart.measure-up");
        return "<div class=\"chart-frame\" tabindex=\"0\" role=\"group\" data-enter=\"take\""
                + Html.attribute("data-chart", cursor.isUpright() ? "" : "level")
                + Html.attribute("id", state.id() + "-svg")
                + Html.attribute("data-part", state.id())
                + Html.attribute("aria-label", keys + " " + Chart.summary(data))
                + ">"
                + Chart.svg(data)
                + "</div><p class=\"reading\" role=\"status\""
                + Html.attribute("id", state.id() + "-reading")
                + ">"
                + Html.escape(keys)
                + "</p><div class=\"buttons\">"
                + "<button type=\"button\" data-do=\"take\""
                + Html.attribute("id", state.id() + "-take")
                + Html.attribute("data-part", state.id())
                + ">"
                + Xml.escape(Words.of("chart.take"))
                + "</button>"
                + "</div>";
    }

    private String options(String type, String how) {
        StringBuilder out =
                new StringBuilder("<fieldset class=\"task\"")
                        .append(Html.attribute("aria-describedby", state.id() + "-verdict-0"))
                        .append('>')
                        .append(legend(how))
                        .append("<ul class=\"choices\">");
        for (Lettered option : variant.lettered()) {
            out.append("<li><label><input")
                    .append(Html.attribute("type", type))
                    .append(Html.attribute("id", state.id() + "-option-" + option.letter()))
                    .append(Html.attribute("name", state.id() + "-option"))
                    .append(Html.attribute("value", option.letter()))
                    .append(Html.attribute("data-part", state.id()))
                    .append(
                            Html.attribute(
                                    "data-slot", type.equals("radio") ? "0" : option.letter()))
                    .append(" data-kind=\"answer\"")
                    .append(Html.attribute("data-enter", "check"))
                    .append(state.takes(option.letter()) ? " checked" : "")
                    .append("> ")
                    .append(lettered(option))
                    .append("</label></li>");
        }
        return out.append("</ul></fieldset>").toString();
    }

    private String legend(String how) {
        return "<legend>"
                + Xml.escape(variant.template().asks().get(0).phrase())
                + " <span class=\"how\">"
                + Xml.escape(how)
                + "</span></legend>";
    }

    private static String lettered(Lettered one) {
        return "<span class=\"text\"><b>"
                + one.letter()
                + "</b> "
                + Xml.escape(one.text())
                + "</span>";
    }

    private String order() {
        return "<fieldset class=\"task\""
                + Html.attribute("aria-describedby", state.id() + "-verdict-0")
                + ">"
                + legend(Words.of("order.how"))
                + "<ol class=\"order\""
                + Html.attribute("id", state.id() + "-items")
                + ">"
                + items()
                + "</ol></fieldset>";
    }

    String items() {
        StringBuilder out = new StringBuilder();
        for (Lettered item : state.inOrder()) {
            String id = state.id() + "-" + item.letter();
            out.append("<li>")
                    .append(lettered(item))
                    .append(move("up", item, id + "-up", "↑", Words.of("order.up", item.letter())))
                    .append(
                            move(
                                    "down",
                                    item,
                                    id + "-down",
                                    "↓",
                                    Words.of("order.down", item.letter())))
                    .append("</li>");
        }
        return out.toString();
    }

    private String move(String way, Lettered item, String id, String sign, String name) {
        return "<button type=\"button\""
                + Html.attribute("id", id)
                + Html.attribute("data-do", way + ":" + item.letter())
                + Html.attribute("data-part", state.id())
                + Html.attribute("aria-label", name)
                + ">"
                + sign
                + "</button>";
    }

    /** The right answer with its reasons. */
    static String explained(Variant variant) {
        StringBuilder out = new StringBuilder();
        Template template = variant.template();
        out.append(
                Html.element(
                        "p",
                        "class=\"told\"",
                        template.asks().get(0).phrase() + ": " + Answers.key(variant, 0)));
        out.append("<ul>");
        for (String reason : reasons(variant)) {
            out.append(Html.element("li", "", reason));
        }
        return out.append("</ul>").toString();
    }

    /** Why each option is right or wrong, each item stands where it does, each line is right. */
    static List<String> reasons(Variant variant) {
        if (variant.template().task() instanceof Task.Arrange arrange) {
            return arrange.rules().stream()
                    .map(
                            rule ->
                                    Words.of(
                                            "order.rule",
                                            letter(variant, rule.first()),
                                            letter(variant, rule.then()),
                                            rule.because()))
                    .toList();
        }
        if (variant.template().task() instanceof Task.Rank) {
            return Answers.right(variant).stream()
                    .map(item -> item.letter() + ": " + item.because())
                    .toList();
        }
        if (variant.template().kind() == Template.Kind.PLAN) {
            List<String> plan =
                    java.util.stream.IntStream.range(0, variant.template().asks().size())
                            .mapToObj(i -> Answers.key(variant, i))
                            .toList();
            return Marker.mark(variant, plan, DecimalHabit.POINT).stream()
                    .flatMap(verdict -> verdict.map(Verdict::feedback).stream())
                    .distinct()
                    .toList();
        }
        return variant.lettered().stream().map(TaskCard::reason).toList();
    }

    private static String reason(Lettered option) {
        String key = option.right() ? "choice.holds" : "choice.fails";
        return Words.of(key, option.letter(), option.text(), option.because()).strip();
    }

    private static String letter(Variant variant, String id) {
        return variant.lettered().stream()
                .filter(item -> item.id().equals(id))
                .map(Lettered::letter)
                .findFirst()
                .orElse(id);
    }
}
