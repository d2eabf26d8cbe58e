// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Markup;
import hotside.problem.Answers;
import hotside.problem.Ask;
import hotside.problem.PlanLine;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Verdict;
import hotside.relation.Worked;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Draws a problem: its text, a field for each answer, verdicts, hints, the worked answer. */
public final class ProblemCard {
    private final Maths maths;
    private final MarkdownHtml markdown;

    public ProblemCard(Maths maths) {
        this.maths = maths;
        this.markdown = new MarkdownHtml(maths);
    }

    /**
     * Its charts whose curves a cursor reads, by the part that each is; none where something is
     * measured on them, because that has a line of its own.
     */
    public static Map<String, ChartData> charts(ProblemState state) {
        return TaskCard.read(state);
    }

    /** The whole card. */
    public String html(ProblemState state) {
        return "<section class=\"card problem\""
                + Html.attribute("id", state.id())
                + Html.attribute("aria-label", state.variant().template().title())
                + ">"
                + inside(state)
                + "</section>";
    }

    /**
     * The card of a problem that was set: no worked answer, no other numbers.
     *
     * @param kicker what stands over its title
     * @param hints true if it has a button for hints
     */
    public String assigned(ProblemState state, String kicker, boolean hints) {
        return "<section class=\"card problem\""
                + Html.attribute("id", state.id())
                + Html.attribute("aria-label", state.variant().template().title())
                + ">"
                + inside(state, kicker, hints ? List.of("check", "hint") : List.of("check"))
                + "</section>";
    }

    /** The card without its frame, for fresh numbers in the same place. */
    public String inside(ProblemState state) {
        String kicker =
                Words.of(
                        "problem.kicker",
                        state.variant().template().level(),
                        state.variant().seed());
        return inside(state, kicker, List.of("check", "hint", "solution", "another"));
    }

    private String inside(ProblemState state, String kind, List<String> actions) {
        Template template = state.variant().template();
        StringBuilder out = new StringBuilder();
        out.append(Html.element("p", "class=\"card-head\"", kind))
                .append(Html.element("h3", "", template.title()));
        out.append("<div class=\"prompt\">")
                .append(text(state.variant(), template.prompt()))
                .append("</div>");
        out.append(new TaskCard(state).html());
        for (int i = 0; i < template.asks().size(); i++) {
            out.append(template.kind().isLettered() ? "" : answerRow(state, i))
                    .append(verdictRow(state, i));
        }
        out.append("<div class=\"buttons\">");
        actions.forEach(action -> out.append(button(state, action)));
        out.append("</div>");
        out.append(region(state, "hints", "hints", hints(state)));
        out.append(region(state, "solution-text", "work", solution(state)));
        return out.toString();
    }

    /** The id of what gets the keyboard when fresh numbers come. */
    public static String firstField(ProblemState state) {
        return state.id()
                + switch (state.variant().template().kind()) {
                    case ORDER -> "-" + state.inOrder().get(0).letter() + "-down";
                    case CHOICE, SEVERAL, FAULT -> "-option-A";
                    case NUMBER, STEPS, GRAPH, PLAN, SPLIT -> "-answer-0";
                };
    }

    /** The items of an order as they stand now, for one that was moved. */
    public String items(ProblemState state) {
        return new TaskCard(state).items();
    }

    /** The verdict on one answer, or nothing. */
    public String verdict(ProblemState state, int ask) {
        return state.verdicts().get(ask).map(ProblemCard::verdict).orElse("");
    }

    /** The hints shown so far. */
    public String hints(ProblemState state) {
        if (state.rung() == 0) {
            return "";
        }
        StringBuilder out = new StringBuilder();
        List<String> hints = state.variant().template().hints();
        for (int i = 0; i < Math.min(state.rung(), hints.size()); i++) {
            out.append(hint(i + 1, text(state.variant(), hints.get(i))));
        }
        if (state.rung() > hints.size()) {
            out.append(hint(state.rung(), workings(state)));
        }
        return out.toString();
    }

    /** Says that the next hint comes in a moment. */
    public static String readFirst() {
        return Html.element("p", "class=\"quiet\"", Words.of("problem.hint-wait"));
    }

    private static String hint(int number, String html) {
        return "<div class=\"hint\">"
                + Html.element("p", "class=\"label\"", Words.of("problem.hint-number", number))
                + html
                + "</div>";
    }

    /** The worked answer and why it matters, if they are shown. */
    public String solution(ProblemState state) {
        if (!state.working()) {
            return "";
        }
        String why = state.variant().template().why();
        return workings(state)
                + (why.isBlank()
                        ? ""
                        : "<h4>" + Words.of("problem.why") + "</h4>" + text(state.variant(), why));
    }

    private String workings(ProblemState state) {
        Variant variant = state.variant();
        StringBuilder out = new StringBuilder();
        WorkingHtml working = new WorkingHtml(maths);
        for (Worked worked : variant.run().workings()) {
            out.append(Html.element("h4", "", worked.relation().title()))
                    .append(working.html(worked, variant.system(), variant.ambient()));
        }
        if (!variant.lettered().isEmpty()) {
            out.append(TaskCard.explained(variant));
            return out.toString();
        }
        for (int i = 0; i < variant.answers().size(); i++) {
            Ask ask = variant.template().asks().get(i);
            out.append(
                    Html.element(
                            "p", "class=\"told\"", ask.phrase() + ": " + Answers.told(variant, i)));
        }
        if (variant.template().kind() == Template.Kind.PLAN) {
            out.append("<ul>");
            TaskCard.reasons(variant).forEach(r -> out.append(Html.element("li", "", r)));
            out.append("</ul>");
        }
        return out.toString();
    }

    private String answerRow(ProblemState state, int i) {
        Ask ask = state.variant().template().asks().get(i);
        String id = state.id() + "-answer-" + i;
        return "<div class=\"field answer\"><label"
                + Html.attribute("for", id)
                + ">"
                + Xml.escape(ask.phrase())
                + "</label><input type=\"text\" autocomplete=\"off\""
                + Html.attribute("id", id)
                + Html.attribute("data-part", state.id())
                + Html.attribute("data-slot", String.valueOf(i))
                + Html.attribute("data-kind", "answer")
                + Html.attribute("data-enter", "check")
                + Html.attribute("value", state.typed().get(i))
                + Html.attribute("placeholder", placeholder(state.variant(), i))
                + Html.attribute("aria-describedby", state.id() + "-verdict-" + i)
                + "></div>";
    }

    private static String placeholder(Variant variant, int i) {
        if (variant.template().kind() == Template.Kind.PLAN) {
            return Words.of("answer.such-as", PlanLine.values()[i].example());
        }
        String unit = variant.template().asks().get(i).scale(variant.system()).label();
        return unit.isEmpty() ? Words.of("answer.number") : Words.of("answer.number-unit", unit);
    }

    private String verdictRow(ProblemState state, int i) {
        return "<div role=\"status\""
                + Html.attribute("id", state.id() + "-verdict-" + i)
                + ">"
                + verdict(state, i)
                + "</div>";
    }

    /** What is said of an answer. */
    static String verdict(Verdict verdict) {
        String css =
                switch (verdict.kind()) {
                    case RIGHT, CARRIED -> "right";
                    case MISTAKE, WRONG -> "wrong";
                    case COARSE, ASK, UNREADABLE -> "ask";
                };
        String word = Words.of("verdict." + verdict.kind().name().toLowerCase(Locale.ROOT));
        return "<div class=\"verdict "
                + css
                + "\">"
                + Html.element("p", "class=\"label\"", word)
                + " "
                + Html.element("p", "", verdict.feedback())
                + "</div>";
    }

    private String text(Variant variant, String source) {
        return markdown.html(
                Markup.parse(source),
                name -> Optional.ofNullable(variant.shown().get(name)).orElse("{{" + name + "}}"),
                part -> "");
    }

    private static String region(ProblemState state, String name, String css, String inside) {
        return "<div class=\""
                + css
                + "\""
                + Html.attribute("id", state.id() + "-" + name)
                + ">"
                + inside
                + "</div>";
    }

    private static String button(ProblemState state, String action) {
        boolean hide = action.equals("solution") && state.working();
        String label = Words.of(hide ? "working.hide" : "problem." + action);
        return button(state, action, label, action.equals("check"));
    }

    private static String button(ProblemState state, String action, String label, boolean main) {
        return "<button type=\"button\""
                + (main ? " class=\"primary\"" : "")
                + Html.attribute("id", state.id() + "-" + action)
                + Html.attribute("data-do", action)
                + Html.attribute("data-part", state.id())
                + ">"
                + Xml.escape(label)
                + "</button>";
    }
}
