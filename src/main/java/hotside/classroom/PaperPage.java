// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.page.Form;
import hotside.page.Html;
import hotside.page.Words;
import hotside.problem.Ask;
import hotside.problem.Template;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where answers are typed in from paper: a code, a column of fields, the papers so far. */
public final class PaperPage {
    /** Name of the field for the code. */
    public static final String CODE = "paper-code";

    /** Id of that field. */
    public static final String CODE_FIELD = GivePage.PART + "-" + CODE;

    /** Where it is told what became of a code or a paper. */
    public static final String TOLD = GivePage.PART + "-paper-told";

    /** Where the fields of a paper are. */
    public static final String SHEET = GivePage.PART + "-paper-sheet";

    /** Where the papers so far are. */
    public static final String LIST = GivePage.PART + "-paper-list";

    private PaperPage() {}

    /**
     * What is shown.
     *
     * @param regrader of the set
     * @param roster whose papers there can be
     * @param answers typed in so far
     * @param kept where they are kept
     * @param open whose paper is being typed in
     */
    public record State(
            Regrader regrader,
            Roster roster,
            PaperAnswers answers,
            String kept,
            Optional<Roster.Learner> open) {}

    /** All of it; a sentence alone if there is no set or no list of learners. */
    public static String html(Map<String, String> typed, Optional<State> state) {
        Form form = new Form(GivePage.PART, typed);
        return "<div class=\"form\">"
                + form.text(CODE, Words.of("class.paper-code"), "", "paper-open")
                + "</div><div class=\"buttons\">"
                + form.button("paper-open", Words.of("class.paper-open"), false)
                + form.button("mark-paper", Words.of("class.paper-mark"), false)
                + "</div><div role=\"status\""
                + Html.attribute("id", TOLD)
                + "></div>"
                + GivePage.region(SHEET, state.map(PaperPage::sheet).orElse(""))
                + GivePage.region(LIST, state.map(PaperPage::list).orElse(""));
    }

    /** The fields of the open paper. */
    public static String sheet(State state) {
        if (state.open.isEmpty()) {
            return "";
        }
        Roster.Learner learner = state.open.get();
        StringBuilder out =
                new StringBuilder(
                        Html.element(
                                "h3",
                                "",
                                Words.of(
                                        "class.paper-of",
                                        state.regrader.set().paperCode(learner.id()),
                                        learner.shown())));
        out.append("<div class=\"paper-fields\">");
        for (PaperQuestion question : PaperQuestion.all(state.regrader)) {
            out.append(field(state, learner, question));
        }
        Form form = new Form(GivePage.PART, Map.of());
        return out.append("</div><div class=\"buttons\">")
                .append(form.button("paper-store", Words.of("class.paper-store"), true))
                .append("</div>")
                .toString();
    }

    private static String field(State state, Roster.Learner learner, PaperQuestion question) {
        Template template = state.regrader.template(question.slot());
        Ask ask = template.asks().get(question.ask());
        List<String> given =
                state.answers.of(learner.id(), question.slot(), template.asks().size());
        Form form = new Form(GivePage.PART, Map.of(question.field(), given.get(question.ask())));
        String label =
                Words.of(
                        "class.paper-question",
                        question.number(state.regrader),
                        template.title(),
                        ask.phrase());
        return form.text(
                        question.field(),
                        label,
                        placeholder(state, template, ask),
                        "paper-next" + question.field().substring("paper".length()))
                + "<p class=\"field-note\""
                + Html.attribute("id", readId(question))
                + "></p>";
    }

    private static String placeholder(State state, Template template, Ask ask) {
        return template.kind().isLettered()
                ? Words.of("class.paper-letters")
                : ask.scale(state.regrader.set().rules().units()).told();
    }

    /** Where it is told how an answer was read. */
    public static String readId(PaperQuestion question) {
        return GivePage.PART + "-" + question.field() + "-read";
    }

    /** The papers so far. */
    public static String list(State state) {
        List<String> learners = state.answers.learners();
        if (learners.isEmpty()) {
            return "";
        }
        int questions = PaperQuestion.all(state.regrader).size();
        Form form = new Form(GivePage.PART, Map.of());
        StringBuilder out =
                new StringBuilder(
                        Html.element(
                                "p",
                                "class=\"quiet\"",
                                Words.of(
                                        "class.paper-count",
                                        learners.size(),
                                        state.roster.all().size(),
                                        state.kept)));
        out.append(
                GivePage.table("class.learner", "paper.code", "class.paper-answered", "class.do"));
        for (String id : learners) {
            Optional<Roster.Learner> learner = state.roster.find(id);
            out.append("<tr>")
                    .append(Html.element("td", "", learner.map(Roster.Learner::shown).orElse(id)))
                    .append(Html.element("td", "", state.regrader.set().paperCode(id)))
                    .append(
                            Html.element(
                                    "td",
                                    "",
                                    Words.of("paper.of", state.answers.answered(id), questions)))
                    .append("<td>")
                    .append(
                            learner.isPresent()
                                    ? form.button(
                                            "paper-again",
                                            id,
                                            Words.of("class.paper-again", id),
                                            false)
                                    : Html.element("span", "", Words.of("class.paper-stranger")))
                    .append("</td></tr>");
        }
        return out.append("</tbody></table>").toString();
    }
}
