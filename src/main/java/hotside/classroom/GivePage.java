// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.page.Form;
import hotside.page.Html;
import hotside.page.Words;
import hotside.problem.Template;
import hotside.unit.DecimalHabit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The instructor's side of the class's page: list of learners, set, hand-out, marking. */
public final class GivePage {
    /** The part that all fields and buttons of the class's page name. */
    public static final String PART = "class";

    /** Where it is told how far work is, or what stands in its way. */
    public static final String STATUS = PART + "-status";

    /** Where the chosen problems are. */
    public static final String CHOSEN = PART + "-chosen";

    /** Where a variant is looked at. */
    public static final String PREVIEW = PART + "-preview";

    /** Where it is told who the class is. */
    public static final String ROSTER = PART + "-roster-told";

    /** Where it is told which set is open. */
    public static final String SET = PART + "-set-told";

    /** Where the results are. */
    public static final String RESULT = PART + "-result";

    private GivePage() {}

    /**
     * What the page shows.
     *
     * @param typed the fields, by name
     * @param skills what problems can be chosen by
     * @param bank all problems, by id with their titles
     * @param chosen problems of the set that is being composed
     * @param roster the class, if one was opened
     * @param rosterFrom its file's name
     * @param set the set that is handed out, if one is open
     * @param paper where answers are typed in from paper, by {@link PaperPage}
     * @param result what came of marking, if there was any
     */
    public record State(
            Map<String, String> typed,
            List<String> skills,
            Map<String, String> bank,
            List<Template> chosen,
            Optional<Roster> roster,
            String rosterFrom,
            Optional<SetFile> set,
            String paper,
            Optional<ClassResult> result) {}

    /** What a fresh page's fields hold. */
    public static Map<String, String> fresh() {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("levels", "1-4");
        typed.put("count", "10");
        typed.put("numbers", "own");
        typed.put("units", "si");
        typed.put("feedback", "now");
        typed.put("tries", "0");
        typed.put("hints", "true");
        typed.put("fresh", "25");
        return typed;
    }

    /** The whole page. */
    public static String html(State state) {
        Form form = new Form(PART, state.typed);
        return "<div class=\"bench\">"
                + Html.element("p", "class=\"kicker\"", Words.of("class.kicker"))
                + Html.element("h1", "id=\"place-title\"", Words.of("class.title-give"))
                + Html.element("p", "", Words.of("class.lead-give"))
                + sides(form, true, form.button("sample", Words.of("class.sample"), false))
                + section("roster", rosterForm(form), ROSTER, roster(state))
                + section("compose", compose(form, state), CHOSEN, chosen(state))
                + region(PREVIEW, "")
                + region(SET, set(state))
                + section("hand-out", handOut(form), PART + "-papers-told", "")
                + section("paper", state.paper, PART + "-paper-after", "")
                + section("take-in", takeIn(form), PART + "-mark-told", "")
                + "<div role=\"status\""
                + Html.attribute("id", STATUS)
                + "></div>"
                + region(RESULT, result(state))
                + "</div>";
    }

    /**
     * @param more what else can be pressed there
     */
    static String sides(Form form, boolean give, String more) {
        return "<div class=\"buttons\">"
                + form.button("side-give", Words.of("class.side-give"), give)
                + form.button("side-work", Words.of("class.side-work"), !give)
                + more
                + "</div>";
    }

    private static String section(String name, String inside, String id, String told) {
        return "<section class=\"card\">"
                + Html.element("h2", "", Words.of("class." + name))
                + Html.element("p", "", Words.of("class." + name + "-say"))
                + inside
                + region(id, told)
                + "</section>";
    }

    static String region(String id, String inside) {
        return "<div" + Html.attribute("id", id) + ">" + inside + "</div>";
    }

    private static String rosterForm(Form form) {
        return "<div class=\"form\">"
                + form.text("fresh", Words.of("class.roster-count"), "25", "roster-fresh")
                + "</div><div class=\"buttons\">"
                + form.button("roster-open", Words.of("class.roster-open"), false)
                + form.button("roster-fresh", Words.of("class.roster-fresh"), false)
                + "</div>";
    }

    /** Who the class is, with what is wrong with the list. */
    public static String roster(State state) {
        if (state.roster.isEmpty()) {
            return Html.element("p", "class=\"quiet\"", Words.of("class.roster-none"));
        }
        StringBuilder out =
                new StringBuilder(
                        Html.element(
                                "p",
                                "",
                                Words.of(
                                        "class.roster-told",
                                        state.roster.get().all().size(),
                                        state.rosterFrom)));
        state.roster
                .get()
                .findings()
                .forEach(f -> out.append(Html.element("p", "", f.oneLine() + ". " + f.expected())));
        return out.toString();
    }

    private static String compose(Form form, State state) {
        Map<String, String> skills = new LinkedHashMap<>();
        skills.put("", Words.of("class.all-skills"));
        state.skills.forEach(s -> skills.put(s, SkillNames.listed(s)));
        return "<div class=\"form\">"
                + form.text("title", Words.of("class.set-title"), "", "estimate")
                + form.select("skill", Words.of("class.skill"), skills)
                + form.text("levels", Words.of("class.levels"), "1-4", "choose")
                + form.text("count", Words.of("class.count"), "10", "choose")
                + form.select("numbers", Words.of("class.numbers"), words("numbers", "own", "same"))
                + form.select("units", Words.of("class.units"), words("units", "si", "us"))
                + form.select(
                        "feedback",
                        Words.of("class.feedback"),
                        words("feedback", "now", "after-due"))
                + form.text("tries", Words.of("class.tries"), "0", "estimate")
                + form.text("due", Words.of("class.due"), "", "estimate")
                + form.select("problem", Words.of("class.add"), state.bank)
                + form.tick("hints", Words.of("class.hints"))
                + "</div><div class=\"buttons\">"
                + form.button("choose", Words.of("class.choose"), true)
                + form.button("add", Words.of("class.add-button"), false)
                + form.button("save-set", Words.of("class.save-set"), false)
                + form.button("open-set", Words.of("class.open-set"), false)
                + "</div>";
    }

    private static Map<String, String> words(String key, String... values) {
        Map<String, String> words = new LinkedHashMap<>();
        for (String value : values) {
            words.put(value, Words.of("class." + key + "." + value));
        }
        return words;
    }

    /** The chosen problems, with an estimate. */
    public static String chosen(State state) {
        if (state.chosen.isEmpty()) {
            return "";
        }
        Form form = new Form(PART, state.typed);
        StringBuilder out =
                new StringBuilder(
                        table(
                                "class.problem",
                                "class.skill",
                                "class.level",
                                "class.points",
                                "class.do"));
        for (int i = 0; i < state.chosen.size(); i++) {
            Template t = state.chosen.get(i);
            String n = String.valueOf(i);
            out.append("<tr>")
                    .append(Html.element("td", "", (i + 1) + ". " + t.title()))
                    .append(Html.element("td", "", SkillNames.of(t.skill())))
                    .append(Html.element("td", "", String.valueOf(t.level())))
                    .append("<td>")
                    .append(
                            form.cell(
                                    "points-" + t.id(),
                                    Words.of("class.points") + ", " + t.title(),
                                    "1",
                                    "estimate"))
                    .append("</td><td><div class=\"buttons\">")
                    .append(form.button("preview", n, Words.of("class.preview"), false))
                    .append(form.button("up", n, Words.of("class.up"), false))
                    .append(form.button("take-out", n, Words.of("class.take-out"), false))
                    .append("</div></td></tr>");
        }
        Estimate estimate = Estimate.of(state.chosen);
        int points = state.chosen.stream().mapToInt(t -> points(state.typed, t.id())).sum();
        return out.append("</tbody></table>")
                .append(
                        Html.element(
                                "p",
                                "class=\"quiet\"",
                                Words.of(
                                        "class.estimate",
                                        state.chosen.size(),
                                        points,
                                        estimate.minutes(),
                                        DecimalHabit.spoken()
                                                .write(
                                                        String.format(
                                                                Locale.ROOT,
                                                                "%.1f",
                                                                estimate.level())),
                                        estimate.repeats())))
                .toString();
    }

    /** The points that a problem was given; 1 if the field holds no such number. */
    public static int points(Map<String, String> typed, String problem) {
        String text = typed.getOrDefault("points-" + problem, "1").strip();
        return text.matches("[1-9]\\d?|100") ? Integer.parseInt(text) : 1;
    }

    /** Which set is open. */
    public static String set(State state) {
        return state.set
                .map(
                        file ->
                                Html.element(
                                        "p",
                                        "",
                                        Words.of(
                                                "class.set-now",
                                                file.set().title(),
                                                file.set().id(),
                                                file.set().edition(),
                                                file.key().fingerprint())))
                .orElseGet(() -> Html.element("p", "class=\"quiet\"", Words.of("class.set-none")));
    }

    private static String handOut(Form form) {
        return "<div class=\"buttons\">"
                + form.button("papers", Words.of("class.papers"), false)
                + form.button("save-qti", Words.of("class.save-qti"), false)
                + "</div>";
    }

    private static String takeIn(Form form) {
        return "<div class=\"form\">"
                + form.tick("accept-late", Words.of("class.accept-late"))
                + "</div><div class=\"buttons\">"
                + form.button("mark", Words.of("class.mark"), true)
                + "</div>";
    }

    /** How far work is, with a button to stop it. */
    public static String progress(int done, int all) {
        return Html.element("p", "", Words.of("class.progress", done, all))
                + "<div class=\"buttons\">"
                + new Form(PART, Map.of()).button("stop", Words.of("class.stop"), false)
                + "</div>";
    }

    /** What a learner may get of a problem, and below it the key for the instructor. */
    public static String preview(String title, String paper, String key, int number) {
        Form form = new Form(PART, Map.of());
        return "<section class=\"card\">"
                + Html.element("p", "class=\"quiet\"", Words.of("class.preview-of", title))
                + paper
                + "<div class=\"buttons\">"
                + form.button(
                        "preview-other", String.valueOf(number), Words.of("problem.another"), false)
                + "</div>"
                + Html.element("p", "class=\"quiet\"", Words.of("class.preview-key"))
                + key
                + "</section>";
    }

    /** That something longer has begun. */
    public static String working() {
        return Html.element("p", "", Words.of("class.working"));
    }

    /** What came of marking. */
    public static String result(State state) {
        return state.result.map(r -> ResultHtml.of(r, state.typed)).orElse("");
    }

    static String table(String... heads) {
        StringBuilder out = new StringBuilder("<table class=\"data\"><thead><tr>");
        for (String head : heads) {
            out.append(Html.element("th", "scope=\"col\"", Words.of(head)));
        }
        return out.append("</tr></thead><tbody>").toString();
    }
}
