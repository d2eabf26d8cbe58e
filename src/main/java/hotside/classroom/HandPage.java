// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.content.Visible;
import hotside.page.Form;
import hotside.page.Html;
import hotside.page.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Where points are set by hand: answers that wait for a person, and a form. */
public final class HandPage {
    /** Where all of it is. */
    public static final String PLACE = GivePage.PART + "-hand";

    /** Where it is told what came of it. */
    public static final String TOLD = GivePage.PART + "-hand-told";

    /** Name of the field for the learner. */
    public static final String LEARNER = "hand-learner";

    /** Name of the field for the problem, counted from 0. */
    public static final String SLOT = "hand-slot";

    /** Name of the field for the points. */
    public static final String POINTS = "hand-points";

    /** Name of the field for the reason. */
    public static final String REASON = "hand-reason";

    /** Names of all its fields. */
    public static final List<String> FIELDS = List.of(LEARNER, SLOT, POINTS, REASON);

    private static final int LONGEST_ANSWER = 40;
    private static final int MOST_ROWS = 100;

    private HandPage() {}

    static String section(ClassResult result, Map<String, String> typed) {
        return Html.element("h2", "", Words.of("class.hand"))
                + GivePage.region(PLACE, html(result, typed))
                + "<div role=\"status\""
                + Html.attribute("id", TOLD)
                + "></div>";
    }

    /** What waits, and the form. */
    public static String html(ClassResult result, Map<String, String> typed) {
        Form form = new Form(GivePage.PART, typed);
        Map<String, String> learners = new LinkedHashMap<>();
        result.marked().forEach(in -> learners.put(in.learner(), shown(result, in)));
        Map<String, String> problems = new LinkedHashMap<>();
        for (int slot = 0; slot < result.regrader().set().items().size(); slot++) {
            problems.put(
                    String.valueOf(slot),
                    (slot + 1) + ". " + result.regrader().template(slot).title());
        }
        return Html.element("p", "", Words.of("class.hand-say"))
                + waiting(result, form)
                + "<div class=\"form\">"
                + form.select(LEARNER, Words.of("class.learner"), learners)
                + form.select(SLOT, Words.of("class.problem"), problems)
                + form.text(POINTS, Words.of("class.points"), "", "hand-set")
                + form.text(REASON, Words.of("class.hand-reason"), "", "hand-set")
                + "</div><div class=\"buttons\">"
                + form.button("hand-set", Words.of("class.hand-set"), false)
                + form.button("hand-back", Words.of("class.hand-back"), false)
                + "</div>";
    }

    private static String shown(ClassResult result, MarkedHandIn in) {
        return result.roster().find(in.learner()).map(Roster.Learner::shown).orElse(in.learner());
    }

    private static String waiting(ClassResult result, Form form) {
        List<ClassResult.Unsettled> all = result.unsettled();
        if (all.isEmpty()) {
            return "";
        }
        StringBuilder out =
                new StringBuilder("<div class=\"scroll\">")
                        .append(
                                GivePage.table(
                                        "class.learner",
                                        "class.problem",
                                        "class.hand-answer",
                                        "class.why",
                                        "class.do"));
        for (ClassResult.Unsettled one : all.subList(0, Math.min(MOST_ROWS, all.size()))) {
            out.append("<tr>")
                    .append(Html.element("td", "", shown(result, one.in())))
                    .append(Html.element("td", "", String.valueOf(one.slot() + 1)))
                    .append(Html.element("td", "", Visible.cut(one.answer(), LONGEST_ANSWER)))
                    .append(Html.element("td", "", one.why()))
                    .append("<td>")
                    .append(
                            form.button(
                                    "hand-pick",
                                    one.slot() + "-" + one.ask() + "-" + one.in().learner(),
                                    Words.of("class.hand-pick"),
                                    false))
                    .append("</td></tr>");
        }
        out.append("</tbody></table></div>");
        return all.size() <= MOST_ROWS
                ? out.toString()
                : out.append(
                                Html.element(
                                        "p",
                                        "class=\"quiet\"",
                                        Words.of("class.hand-more", all.size() - MOST_ROWS)))
                        .toString();
    }
}
