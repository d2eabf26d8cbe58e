// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Computed;
import hotside.course.Lesson;
import hotside.course.Part;
import hotside.problem.Answers;
import hotside.problem.Ask;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.relation.Worked;
import hotside.unit.UnitSystem;
import java.util.List;
import java.util.function.Function;

/**
 * Draws a faded example: a working whose last steps keep their reason and lose their numbers, a
 * field for the last result, and the steps themselves once they are found or asked for.
 */
public final class FadedCard {
    /** There is one draw: an example's numbers are fixed. */
    private static final long SEED = 1;

    private final Maths maths;
    private final MarkdownHtml markdown;

    public FadedCard(Maths maths) {
        this.maths = maths;
        this.markdown = new MarkdownHtml(maths);
    }

    /** The example in the units of a shop. */
    public static Variant variant(Part.FadedExample part, UnitSystem system) {
        return Variants.draw(part.template(), SEED, system);
    }

    /** The whole card; {@code state.working()} says whether the missing steps are shown. */
    public String html(Lesson lesson, Part.FadedExample part, ProblemState state) {
        String id = state.id();
        return "<section class=\"card worked faded\""
                + Html.attribute("id", id)
                + Html.attribute("aria-label", part.title())
                + ">"
                + Html.element("p", "class=\"card-head\"", Words.of("faded.kicker"))
                + Html.element("h3", "", part.title())
                + markdown.html(part.intro(), values(lesson, state.variant()), inner -> "")
                + "<div"
                + Html.attribute("id", id + "-steps")
                + ">"
                + steps(part, state)
                + "</div>"
                + field(state)
                + "<div class=\"buttons\">"
                + button(id, "check", Words.of("problem.check"), true)
                + button(id, "reveal", revealWord(state), false)
                + "</div></section>";
    }

    /** What the button says that shows the missing steps or hides them. */
    public static String revealWord(ProblemState state) {
        return Words.of(state.working() ? "faded.hide" : "faded.reveal");
    }

    /** The working, with or without its last steps. */
    public String steps(Part.FadedExample part, ProblemState state) {
        Variant variant = state.variant();
        List<Worked> shown = shown(part, variant);
        StringBuilder out = new StringBuilder();
        WorkingHtml working = new WorkingHtml(maths);
        for (int i = 0; i < shown.size(); i++) {
            Worked worked = shown.get(i);
            int left = i == shown.size() - 1 && !state.working() ? part.blank() : 0;
            if (shown.size() > 1) {
                out.append(Html.element("h4", "", worked.relation().title()));
            }
            out.append(
                    working.html(
                            worked,
                            variant.system(),
                            variant.ambient(),
                            worked.steps().size() - left));
        }
        return out.toString();
    }

    /** The verdict on the answer, or nothing. */
    public String verdict(ProblemState state) {
        return state.verdicts().get(0).map(ProblemCard::verdict).orElse("");
    }

    /** In plain text, the missing result at the end. */
    String text(Lesson lesson, Part.FadedExample part, UnitSystem system, LessonText texts) {
        Variant variant = variant(part, system);
        List<Worked> shown = shown(part, variant);
        StringBuilder out =
                new StringBuilder(Words.of("faded.kicker"))
                        .append(": ")
                        .append(part.title())
                        .append('\n')
                        .append(texts.of(part.intro(), values(lesson, variant)));
        WorkingText working = new WorkingText(maths);
        for (int i = 0; i < shown.size(); i++) {
            Worked worked = shown.get(i);
            int left = i == shown.size() - 1 ? part.blank() : 0;
            out.append('\n')
                    .append(
                            working.of(
                                    worked,
                                    variant.system(),
                                    variant.ambient(),
                                    worked.steps().size() - left));
        }
        return out.append(Words.of("text.faded", Answers.told(variant, 0))).toString();
    }

    /** Values of the text, with the example's own where it has them. */
    static Function<String, String> values(Lesson lesson, Variant variant) {
        Computed computed =
                new Computed(
                        lesson.with(variant.template().givens(), variant.givens()),
                        variant.system());
        return expression -> {
            String shown = variant.shown().get(expression);
            return shown != null
                    ? shown
                    : computed.text(expression).orElse("{{" + expression + "}}");
        };
    }

    private static List<Worked> shown(Part.FadedExample part, Variant variant) {
        List<String> names =
                part.template().chain().uses().stream().map(use -> use.name()).toList();
        return part.uses().stream()
                .filter(names::contains)
                .map(name -> variant.run().workings().get(names.indexOf(name)))
                .toList();
    }

    private static String field(ProblemState state) {
        Ask ask = state.variant().template().asks().get(0);
        String id = state.id() + "-answer-0";
        String unit = ask.scale(state.variant().system()).told();
        String verdict = state.verdicts().get(0).map(ProblemCard::verdict).orElse("");
        return "<div class=\"field answer\"><label"
                + Html.attribute("for", id)
                + ">"
                + Xml.escape(Words.of("faded.ask", ask.phrase()))
                + "</label><input type=\"text\" autocomplete=\"off\""
                + Html.attribute("id", id)
                + Html.attribute("data-part", state.id())
                + " data-slot=\"0\" data-kind=\"answer\" data-enter=\"check\""
                + Html.attribute("value", state.typed().get(0))
                + Html.attribute(
                        "placeholder",
                        unit.isEmpty()
                                ? Words.of("answer.number")
                                : Words.of("answer.number-unit", unit))
                + Html.attribute("aria-describedby", state.id() + "-verdict-0")
                + "></div><div role=\"status\""
                + Html.attribute("id", state.id() + "-verdict-0")
                + ">"
                + verdict
                + "</div>";
    }

    private static String button(String id, String action, String label, boolean main) {
        return "<button type=\"button\""
                + (main ? " class=\"primary\"" : "")
                + Html.attribute("id", id + "-" + action)
                + Html.attribute("data-do", action)
                + Html.attribute("data-part", id)
                + ">"
                + Xml.escape(label)
                + "</button>";
    }
}
