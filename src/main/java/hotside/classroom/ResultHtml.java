// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.content.Visible;
import hotside.page.Form;
import hotside.page.Html;
import hotside.page.Words;
import hotside.unit.DecimalHabit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What came of marking, as tables of the class's page. */
final class ResultHtml {
    private static final int LONGEST_ANSWER = 40;

    private ResultHtml() {}

    static String of(ClassResult result, Map<String, String> typed) {
        Form form = new Form(GivePage.PART, typed);
        StringBuilder out = new StringBuilder("<section class=\"card\">");
        out.append(
                Html.element(
                        "p",
                        "",
                        Words.of("class.marked", result.marked().size(), result.aside().size())));
        aside(result, out);
        if (!result.marked().isEmpty()) {
            marks(result, out);
            out.append(HandPage.section(result, typed));
            items(result, out);
            mistakes(result, out);
            again(result, out);
        }
        return out.append("<div class=\"buttons\">")
                .append(form.button("save-tables", Words.of("class.save-tables"), false))
                .append(form.button("save-reports", Words.of("class.save-reports"), false))
                .append(form.button("save-drill", Words.of("class.save-drill"), false))
                .append(form.button("save-xapi", Words.of("class.save-xapi"), false))
                .append("</div>")
                .append(Html.element("p", "class=\"quiet\"", Words.of("class.guarantee")))
                .append("</section>")
                .toString();
    }

    private static void aside(ClassResult result, StringBuilder out) {
        if (result.aside().isEmpty()) {
            return;
        }
        out.append(Html.element("h2", "", Words.of("class.aside")))
                .append(GivePage.table("class.file", "class.learner", "class.why"));
        result.aside()
                .forEach(
                        a -> row(out, a.source(), a.learner(), a.reason().word() + ": " + a.why()));
        out.append("</tbody></table>");
    }

    private static void marks(ClassResult result, StringBuilder out) {
        int slots = result.regrader().set().items().size();
        out.append(Html.element("h2", "", Words.of("class.marks")))
                .append("<div class=\"scroll\"><table class=\"data\"><thead><tr>")
                .append(Html.element("th", "scope=\"col\"", Words.of("class.learner")));
        for (int i = 0; i < slots; i++) {
            out.append(Html.element("th", "scope=\"col\"", String.valueOf(i + 1)));
        }
        out.append(Html.element("th", "scope=\"col\"", Words.of("class.points")))
                .append(Html.element("th", "scope=\"col\"", Words.of("class.remarks")))
                .append("</tr></thead><tbody>");
        for (Roster.Learner learner : result.roster().all()) {
            Optional<MarkedHandIn> in = result.of(learner.id());
            List<String> cells = new ArrayList<>();
            cells.add(learner.shown());
            for (int i = 0; i < slots; i++) {
                int slot = i;
                cells.add(in.map(m -> points(m.items().get(slot))).orElse("–"));
            }
            cells.add(in.map(m -> number(m.reached())).orElse("–"));
            cells.add(
                    in.map(m -> String.join("; ", remarks(result, m)))
                            .orElse(nothing(result, learner)));
            row(out, cells.toArray(String[]::new));
        }
        out.append("</tbody></table></div>");
    }

    private static String nothing(ClassResult result, Roster.Learner learner) {
        return result.aside(learner)
                .map(a -> Words.of("class.aside-of", a.source()))
                .orElse(Words.of("class.nothing-in"));
    }

    /** A star says that they were set by hand; the remarks say why and in place of what. */
    private static String points(MarkedItem item) {
        return number(item.reached()) + (item.byHand().isPresent() ? "*" : "");
    }

    private static List<String> remarks(ClassResult result, MarkedHandIn in) {
        List<String> remarks = new ArrayList<>();
        result.byHand(in).forEach(told -> remarks.add("* " + told));
        remarks.addAll(result.remarks(in));
        return remarks;
    }

    private static void items(ClassResult result, StringBuilder out) {
        ItemAnalysis analysis = result.analysis();
        out.append(Html.element("h2", "", Words.of("class.items")))
                .append(
                        GivePage.table(
                                "class.problem",
                                "class.share",
                                "class.apart",
                                "class.minutes",
                                "class.look-at"));
        for (int i = 0; i < analysis.items().size(); i++) {
            ItemAnalysis.Item item = analysis.items().get(i);
            row(
                    out,
                    (i + 1) + ". " + result.regrader().template(i).title(),
                    result.isSmall()
                            ? soFar(result.full(i), result.analysis().learners())
                            : percent(item.difficulty()) + plusMinus(item.standardError()),
                    apart(item.discrimination()),
                    number(result.medianMinutes(i)),
                    String.join(
                            "; ",
                            item.flags().stream()
                                    .map(f -> Words.of("class.flag." + Names.of(f)))
                                    .toList()));
        }
        out.append("</tbody></table>").append(Html.element("p", "", reliability(analysis)));
    }

    private static String reliability(ItemAnalysis analysis) {
        if (analysis.reliability().isEmpty()) {
            return Words.of("class.no-reliability");
        }
        double alpha = analysis.reliability().getAsDouble();
        return Words.of(
                        "class.reliability",
                        DecimalHabit.spoken().write(String.format(Locale.ROOT, "%.2f", alpha)),
                        number(analysis.error().orElse(Double.NaN)))
                + (alpha < ItemAnalysis.RANKING ? " " + Words.of("class.no-ranking") : "");
    }

    private static String apart(Discrimination d) {
        return Words.of(
                "class.apart." + Names.of(d.trust()), two(d.value()), two(d.low()), two(d.high()));
    }

    private static void mistakes(ClassResult result, StringBuilder out) {
        if (result.mistakes().isEmpty()) {
            return;
        }
        out.append(Html.element("h2", "", Words.of("class.mistakes")))
                .append(
                        GivePage.table(
                                "class.problem",
                                "class.learners",
                                "class.mistake",
                                "class.examples"));
        for (MistakeCount count : result.mistakes()) {
            row(
                    out,
                    String.valueOf(count.slot() + 1),
                    result.isSmall()
                            ? soFar(count.count(), count.answered())
                            : Words.of("paper.of", count.count(), count.answered())
                                    + " ("
                                    + percent(count.share())
                                    + ")",
                    count.mistake().isEmpty()
                            ? Words.of("class.unknown-mistake")
                            : count.feedback(),
                    String.join(
                            "; ",
                            count.examples().stream()
                                    .map(e -> together(Visible.cut(e.answer(), LONGEST_ANSWER)))
                                    .toList()));
        }
        out.append("</tbody></table>");
    }

    /** A number that stands in one line and its unit in the next is easily misread. */
    private static String together(String answer) {
        return answer.replace(' ', '\u00a0');
    }

    private static String soFar(int count, int of) {
        return Words.of("class.so-far", count, of);
    }

    private static void again(ClassResult result, StringBuilder out) {
        boolean small = result.isSmall();
        out.append(Html.element("h2", "", Words.of(small ? "class.again-small" : "class.again")));
        if (small) {
            out.append(
                    Html.element(
                            "p",
                            "class=\"quiet\"",
                            Words.of(
                                    "class.again-few",
                                    result.analysis().learners(),
                                    Discrimination.FEWEST)));
        }
        if (result.again().isEmpty()) {
            out.append(
                    Html.element(
                            "p",
                            "",
                            Words.of(small ? "class.again-none-small" : "class.again-none")));
            return;
        }
        out.append("<ul>");
        result.again().forEach(a -> out.append(Html.element("li", "", told(a, small))));
        out.append("</ul>");
    }

    private static String told(TeachAgain again, boolean small) {
        String skill = SkillNames.of(again.skill());
        return small
                ? Words.of("class.again-so-far", skill, again.falling(), again.learners())
                : Words.of(
                        "class.again-told",
                        skill,
                        percent(again.share()),
                        again.falling(),
                        again.learners());
    }

    private static void row(StringBuilder out, String... cells) {
        out.append("<tr>");
        for (String cell : cells) {
            out.append(Html.element("td", "", cell));
        }
        out.append("</tr>");
    }

    private static String percent(double share) {
        return Double.isFinite(share) ? String.format(Locale.ROOT, "%.0f %%", 100 * share) : "–";
    }

    private static String plusMinus(double error) {
        return Double.isFinite(error) ? String.format(Locale.ROOT, " ± %.0f %%", 100 * error) : "";
    }

    private static String two(double value) {
        return DecimalHabit.spoken()
                .write(String.format(Locale.ROOT, "%.2f", value))
                .replace('-', '−');
    }

    private static String number(double value) {
        return Double.isFinite(value)
                ? DecimalHabit.spoken()
                        .write(String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", ""))
                : "–";
    }
}
