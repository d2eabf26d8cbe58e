// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.speech.Language;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Draws what a learner has done and how they stand: on the screen with buttons, or as a report. */
public final class MyWorkPage {
    private static final int WEEKS = 16;
    private static final int DAYS = 7;
    private static final int[] SHADES = {1, 5, 12, 25};

    private MyWorkPage() {}

    /**
     * What the page shows.
     *
     * @param learner the learner's random id
     * @param nickname what the learner wants to be called here; empty if nothing
     * @param today the day it is
     * @param learners everybody with a record here: value and name
     * @param days answers by day
     * @param skills in teaching order
     * @param due what is to be looked at again, the soonest first
     * @param mistakes those that keep coming first
     * @param history the latest first
     * @param answers how many answers are kept
     * @param exam the day of an exam, {@code 2027-01-31}; empty if there is none
     * @param retention for how many days answers are kept
     * @param notice what is to be said once, such as that a file was written
     */
    public record View(
            String learner,
            String nickname,
            LocalDate today,
            List<PracticePage.Option> learners,
            Map<LocalDate, Integer> days,
            List<SkillLine> skills,
            List<Due> due,
            List<MistakeLine> mistakes,
            List<Try> history,
            long answers,
            String exam,
            int retention,
            Optional<String> notice) {}

    /**
     * A review.
     *
     * @param skill its id
     * @param name for people
     * @param when in words
     */
    public record Due(String skill, String name, String when) {}

    /**
     * A sort of mistake.
     *
     * @param slip which
     * @param name for people
     * @param total how often
     * @param open how often since it last counted as gone
     * @param last the day of the last time
     * @param evidence answers that show it
     */
    public record MistakeLine(
            String slip, String name, int total, int open, LocalDate last, List<Try> evidence) {}

    /**
     * An answer.
     *
     * @param number in the record
     * @param when day and time
     * @param problem its title
     * @param question which of its questions, from 1; 0 if it has but one
     * @param answer as typed
     * @param verdict in words
     * @param replay true if its numbers can be drawn again
     */
    public record Try(
            long number,
            String when,
            String problem,
            int question,
            String answer,
            String verdict,
            boolean replay) {}

    /** The page. */
    public static String html(View view) {
        return "<div class=\"mywork bench\">"
                + Html.element(
                        "h1", "id=\"mywork-title\" tabindex=\"-1\"", Words.of("mywork.title"))
                + view.notice()
                        .map(n -> "<p class=\"told\" role=\"status\">" + Xml.escape(n) + "</p>")
                        .orElse("")
                + who(view)
                + (view.answers() == 0 ? empty() : work(view, true))
                + care(view)
                + "</div>";
    }

    /** The same as a page of its own, without buttons, to be printed. */
    public static String report(View view) {
        return "<!DOCTYPE html><html lang=\""
                + Language.spoken().code()
                + "\" data-theme=\"light\"><head><meta charset=\"utf-8\">"
                + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none';"
                + " img-src data:; style-src 'unsafe-inline'\">"
                + "<title>"
                + Xml.escape(Words.of("mywork.report", view.learner()))
                + "</title><style>"
                + Shell.styles()
                + "</style></head><body><main><div class=\"mywork\">"
                + Html.element("h1", "", Words.of("mywork.report", view.learner()))
                + Html.element("p", "", Words.of("mywork.made", view.today(), view.answers()))
                + work(view, false)
                + "</div></main></body></html>";
    }

    private static String work(View view, boolean live) {
        return "<div class=\"columns\">"
                + card(calendar(view))
                + card(due(view, live) + mistakes(view, live))
                + "</div>"
                + skills(view, live)
                + card(history(view, live));
    }

    private static String card(String inside) {
        return "<section class=\"card\">" + inside + "</section>";
    }

    private static String empty() {
        return "<section class=\"card\"><p>"
                + Xml.escape(Words.of("mywork.empty"))
                + "</p><div class=\"buttons\">"
                + button("practise", "", Words.of("mywork.begin"))
                        .replace("<button", "<button class=\"primary\"")
                + "</div></section>";
    }

    private static String who(View view) {
        return Html.element(
                        "p",
                        "",
                        view.nickname().isEmpty()
                                ? Words.of("mywork.who", view.learner())
                                : Words.of("mywork.who-named", view.nickname(), view.learner()))
                + "<div class=\"field\"><label for=\"mywork-learner\">"
                + Xml.escape(Words.of("mywork.learner"))
                + "</label><select class=\"wide\" id=\"mywork-learner\" data-part=\"mywork\""
                + " data-slot=\"learner\" data-kind=\"choice\">"
                + PracticePage.options(view.learners(), view.learner())
                + "</select>"
                + button("another", "", Words.of("mywork.another"))
                + "</div>";
    }

    private static String calendar(View view) {
        LocalDate monday = view.today().with(DayOfWeek.MONDAY).minusWeeks(WEEKS - 1);
        StringBuilder out =
                new StringBuilder(heading("mywork.calendar"))
                        .append("<div class=\"scroll\"><table class=\"calendar\"><caption>")
                        .append(Xml.escape(Words.of("mywork.calendar-what")))
                        .append("</caption><thead><tr><td></td>");
        for (int week = 0; week < WEEKS; week++) {
            LocalDate first = monday.plusWeeks(week);
            boolean newMonth = week == 0 || first.getDayOfMonth() <= DAYS;
            out.append(
                    Html.element(
                            "th",
                            "scope=\"col\"",
                            newMonth
                                    ? first.getMonth()
                                            .getDisplayName(
                                                    TextStyle.SHORT_STANDALONE,
                                                    Language.spoken().dates())
                                    : ""));
        }
        out.append("</tr></thead><tbody>");
        for (DayOfWeek day : DayOfWeek.values()) {
            out.append("<tr>")
                    .append(
                            Html.element(
                                    "th",
                                    "scope=\"row\"",
                                    day.getDisplayName(
                                            TextStyle.SHORT_STANDALONE,
                                            Language.spoken().dates())));
            for (int week = 0; week < WEEKS; week++) {
                out.append(cell(view, monday.plusWeeks(week).with(day)));
            }
            out.append("</tr>");
        }
        return out.append("</tbody></table></div>").toString();
    }

    private static String cell(View view, LocalDate day) {
        if (day.isAfter(view.today())) {
            return "<td></td>";
        }
        int answers = view.days().getOrDefault(day, 0);
        int shade = 0;
        while (shade < SHADES.length && answers >= SHADES[shade]) {
            shade++;
        }
        return Html.element(
                "td",
                "data-shade=\"" + shade + "\" title=\"" + day + "\"",
                answers == 0 ? "·" : String.valueOf(answers));
    }

    private static String skills(View view, boolean live) {
        StringBuilder out = new StringBuilder(heading("mywork.skills"));
        out.append(Html.element("p", "class=\"quiet\"", Words.of("mywork.skills-what")))
                .append("<div class=\"strands\">");
        String strand = "";
        for (SkillLine skill : view.skills()) {
            if (!skill.strand().equals(strand)) {
                out.append(strand.isEmpty() ? "" : "</ul></section>");
                strand = skill.strand();
                out.append("<section class=\"card\">")
                        .append(Html.element("h3", "", strand))
                        .append("<ul class=\"skills\">");
            }
            out.append("<li><span class=\"skill\"><strong>")
                    .append(Xml.escape(skill.name()))
                    .append("</strong> ")
                    .append(skill.temper())
                    .append("</span>")
                    .append(Html.element("span", "class=\"quiet counts\"", skill.counts()))
                    .append(live ? button("skill", skill.id(), Words.of("mywork.practise")) : "")
                    .append("</li>");
        }
        return out.append(strand.isEmpty() ? "" : "</ul></section>").append("</div>").toString();
    }

    private static String due(View view, boolean live) {
        StringBuilder out = new StringBuilder(heading("mywork.due"));
        if (view.due().isEmpty()) {
            return out.append(Html.element("p", "", Words.of("mywork.due-none"))).toString();
        }
        out.append("<ul class=\"skills\">");
        for (Due due : view.due()) {
            out.append("<li><span class=\"skill\"><strong>")
                    .append(Xml.escape(due.name()))
                    .append("</strong></span>")
                    .append(Html.element("span", "class=\"quiet counts\"", due.when()))
                    .append(live ? button("review", due.skill(), Words.of("mywork.practise")) : "")
                    .append("</li>");
        }
        return out.append("</ul>").toString();
    }

    private static String mistakes(View view, boolean live) {
        StringBuilder out = new StringBuilder(heading("mywork.mistakes"));
        if (view.mistakes().isEmpty()) {
            return out.append(Html.element("p", "", Words.of("mywork.mistakes-none"))).toString();
        }
        out.append("<ul class=\"skills\">");
        for (MistakeLine mistake : view.mistakes()) {
            out.append("<li><span class=\"skill\"><strong>")
                    .append(Xml.escape("“" + mistake.name() + "”"))
                    .append("</strong></span><span class=\"quiet counts\">")
                    .append(Xml.escape(told(mistake)));
            for (Try attempt : mistake.evidence()) {
                out.append("<br>")
                        .append(
                                Xml.escape(
                                        Words.of(
                                                "mywork.evidence",
                                                attempt.when(),
                                                attempt.problem(),
                                                attempt.answer())));
            }
            out.append("</span>")
                    .append(live ? button("drill", mistake.slip(), Words.of("mywork.drill")) : "")
                    .append("</li>");
        }
        return out.append("</ul>").toString();
    }

    private static String told(MistakeLine mistake) {
        String times =
                mistake.total() == 1
                        ? Words.of("mywork.once", mistake.last())
                        : Words.of("mywork.times", mistake.total(), mistake.last());
        return times + " " + Words.of(mistake.open() == 0 ? "mywork.gone" : "mywork.open");
    }

    private static String history(View view, boolean live) {
        StringBuilder out =
                new StringBuilder(heading("mywork.history"))
                        .append("<div class=\"scroll\"><table><thead><tr>");
        for (String column : List.of("when", "problem", "answer", "verdict")) {
            out.append(Html.element("th", "scope=\"col\"", Words.of("mywork.column." + column)));
        }
        out.append(live ? "<td></td>" : "").append("</tr></thead><tbody>");
        for (Try attempt : view.history()) {
            out.append("<tr>")
                    .append(Html.element("td", "class=\"when\"", attempt.when()))
                    .append(Html.element("td", "", titled(attempt)))
                    .append(Html.element("td", "", attempt.answer()))
                    .append(Html.element("td", "", attempt.verdict()))
                    .append(live ? "<td>" + again(attempt) + "</td>" : "")
                    .append("</tr>");
        }
        return out.append("</tbody></table></div>").toString();
    }

    private static String titled(Try attempt) {
        return attempt.question() == 0
                ? attempt.problem()
                : Words.of("mywork.question", attempt.problem(), attempt.question());
    }

    private static String again(Try attempt) {
        return attempt.replay()
                ? button("again", String.valueOf(attempt.number()), Words.of("mywork.again"))
                : Xml.escape(Words.of("mywork.edited"));
    }

    private static String care(View view) {
        return "<section class=\"card\">"
                + heading("mywork.care")
                + Html.element("p", "", Words.of("mywork.privacy", view.answers()))
                + "<div class=\"form\">"
                + field("nickname", Words.of("mywork.nickname"), view.nickname())
                + field("exam", Words.of("mywork.exam"), view.exam())
                + field("retention", Words.of("mywork.retention"), "" + view.retention())
                + "</div><div class=\"buttons\">"
                + button("save-csv", "", Words.of("mywork.csv"))
                + button("save-xapi", "", Words.of("mywork.xapi"))
                + button("save-report", "", Words.of("mywork.save-report"))
                + button("save-all", "", Words.of("mywork.save-all"))
                + button("take", "", Words.of("mywork.take"))
                + button("delete", "", Words.of("mywork.delete"))
                + "</div></section>";
    }

    private static String field(String name, String label, String value) {
        String id = "mywork-" + name;
        return "<div class=\"field\"><label"
                + Html.attribute("for", id)
                + ">"
                + Xml.escape(label)
                + "</label><input type=\"text\" autocomplete=\"off\" data-part=\"mywork\""
                + " data-kind=\"text\" data-enter=\"set-"
                + name
                + "\""
                + Html.attribute("id", id)
                + Html.attribute("data-slot", name)
                + Html.attribute("value", value)
                + ">"
                + button("set-" + name, "", Words.of("mywork.set"))
                + "<div role=\"status\""
                + Html.attribute("id", id + "-fault")
                + "></div></div>";
    }

    private static String heading(String key) {
        return Html.element("h2", "", Words.of(key));
    }

    private static String button(String action, String argument, String label) {
        return PracticePage.button(action, argument, label);
    }

    /** The page in plain text. */
    public static String text(View view) {
        StringBuilder out = new StringBuilder(Words.of("mywork.title")).append("\n\n");
        out.append(Words.of("mywork.who", view.learner())).append('\n');
        if (view.answers() == 0) {
            return out.append(Words.of("mywork.empty")).append('\n').toString();
        }
        line(out, "mywork.skills");
        for (SkillLine skill : view.skills()) {
            out.append("- ")
                    .append(skill.name())
                    .append(": ")
                    .append(skill.word())
                    .append(". ")
                    .append(skill.counts())
                    .append('\n');
        }
        line(out, "mywork.due");
        view.due().forEach(d -> out.append("- " + d.name() + ": " + d.when() + "\n"));
        line(out, "mywork.mistakes");
        view.mistakes().forEach(m -> out.append("- " + m.name() + ": " + told(m) + "\n"));
        line(out, "mywork.history");
        view.history()
                .forEach(
                        t ->
                                out.append(
                                        String.join(
                                                "; ",
                                                "- " + t.when(),
                                                titled(t),
                                                t.answer(),
                                                t.verdict() + "\n")));
        return out.toString();
    }

    private static void line(StringBuilder out, String key) {
        out.append('\n').append(Words.of(key)).append('\n');
    }
}
