// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Lesson;
import hotside.course.Markup;
import hotside.course.Part;
import hotside.course.Watched;
import hotside.problem.Answers;
import hotside.problem.Ask;
import hotside.problem.ProblemBank;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.relation.Slot;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The living parts of a lesson as they stand on paper: calculators with their start values, blank
 * lines where a window has fields. What the window would say afterwards is kept for the answers at
 * the end.
 */
final class PrintCards implements LessonPage.Cards {
    /** Everybody's paper has the same numbers; the problem says from which seed. */
    static final long SEED = 1;

    private static final int WIDTH = 620;

    private final Lesson lesson;
    private final ProblemBank bank;
    private final UnitSystem system;
    private final double ambient;
    private final Maths maths;
    private final MarkdownHtml markdown;
    private final List<String> answers = new ArrayList<>();
    private int parts;

    PrintCards(Lesson lesson, ProblemBank bank, UnitSystem system, double ambient, Maths maths) {
        this.lesson = lesson;
        this.bank = bank;
        this.system = system;
        this.ambient = ambient;
        this.maths = maths;
        this.markdown = new MarkdownHtml(maths);
    }

    /** What comes out, in the order of the parts that asked for it; each a piece of HTML. */
    List<String> answers() {
        return List.copyOf(answers);
    }

    @Override
    public String id(Part part) {
        return "part" + ++parts;
    }

    @Override
    public int chartWidth() {
        return WIDTH;
    }

    @Override
    public String html(Part part) {
        if (part instanceof Part.Calculator calculator) {
            return calculator(calculator);
        }
        if (part instanceof Part.ProblemCard card) {
            return bank.find(card.problem())
                    .map(template -> problem(Variants.draw(template, SEED, system)))
                    .orElse("");
        }
        if (part instanceof Part.FadedExample faded) {
            return faded(faded);
        }
        if (part instanceof Part.DiagramFigure diagram) {
            return DiagramFigure.html(
                    id(part), diagram, DiagramFigure.atRest(diagram), system, ambient);
        }
        return part instanceof Part.Prediction prediction ? prediction(prediction) : "";
    }

    private String calculator(Part.Calculator part) {
        CalculatorState state =
                new CalculatorState(
                        id(part),
                        part.relation(),
                        part.start(),
                        Map.of(),
                        part.over(),
                        part.curve(),
                        system,
                        Units.STANDARD_ATMOSPHERE,
                        WIDTH,
                        false);
        StringBuilder out =
                card("calculator", Words.of("calculator.kicker"), part.relation().title());
        out.append(Html.element("p", "", part.relation().says()))
                .append("<div class=\"law\">")
                .append(maths.block(part.relation().tex()))
                .append("</div><ul>");
        for (Slot slot : part.relation().inputs()) {
            out.append("<li>").append(Xml.escape(slot.meaning()));
            if (!slot.symbol().isEmpty()) {
                out.append(", ").append(maths.inline(slot.symbol()));
            }
            out.append(": ")
                    .append(Xml.escape(CalculatorCard.fieldText(state, slot)))
                    .append(' ')
                    .append(Xml.escape(unit(slot)))
                    .append("</li>");
        }
        out.append("</ul>").append(new CalculatorCard(maths).outputs(state));
        part.over()
                .ifPresent(
                        over ->
                                out.append("<figure class=\"chart\">")
                                        .append(Chart.svg(RelationCurve.chart(state, over)))
                                        .append("</figure>"));
        return out.append("</section>").toString();
    }

    private String unit(Slot slot) {
        return slot.kind() == Slot.Kind.CHOICE || slot.kind() == Slot.Kind.TEXT
                ? ""
                : hotside.relation.SlotScale.of(slot, system).told();
    }

    private String problem(Variant variant) {
        StringBuilder out =
                card(
                        "problem",
                        Words.of("problem.kicker", variant.template().level(), variant.seed()),
                        variant.template().title());
        out.append(
                        markdown.html(
                                Markup.parse(variant.template().prompt()),
                                name ->
                                        Optional.ofNullable(variant.shown().get(name))
                                                .orElse("{{" + name + "}}"),
                                inner -> ""))
                .append(PaperSheet.task(variant));
        if (variant.template().kind().isLettered()) {
            out.append(blank(PaperSheet.letters(variant.template().kind())));
            answer(variant.template().title(), Html.element("p", "", Answers.key(variant, 0)));
            return out.append("</section>").toString();
        }
        StringBuilder answer = new StringBuilder();
        for (int i = 0; i < variant.template().asks().size(); i++) {
            Ask ask = variant.template().asks().get(i);
            out.append(blank(ask, variant));
            answer.append(Html.element("p", "", ask.phrase() + ": " + Answers.told(variant, i)));
        }
        answer(variant.template().title(), answer.toString());
        return out.append("</section>").toString();
    }

    private String faded(Part.FadedExample part) {
        Variant variant = FadedCard.variant(part, system);
        ProblemState state = ProblemState.fresh(id(part), variant);
        StringBuilder out = card("worked faded", Words.of("faded.kicker"), part.title());
        out.append(markdown.html(part.intro(), FadedCard.values(lesson, variant), inner -> ""))
                .append(new FadedCard(maths).steps(part, state))
                .append(blank(variant.template().asks().get(0), variant));
        answer(part.title(), Html.element("p", "", Answers.told(variant, 0)));
        return out.append("</section>").toString();
    }

    private String prediction(Part.Prediction part) {
        CellAnswer said = CellAnswer.of(part);
        StringBuilder out = card("predict", Words.of("predict.kicker"), part.question());
        out.append(Html.element("p", "", PredictCard.rig(part, system)))
                .append(Html.element("p", "", PredictCard.change(part, system)))
                .append("<table class=\"data\"><thead><tr>");
        for (String head : List.of("predict.quantity", "print.way", "print.size")) {
            out.append("<th>").append(Words.of(head)).append("</th>");
        }
        out.append("</tr></thead><tbody>");
        StringBuilder answer = new StringBuilder("<ul>");
        for (int i = 0; i < part.watched().size(); i++) {
            Watched watched = part.watched().get(i);
            out.append("<tr><td>")
                    .append(Xml.escape(watched.words()))
                    .append(
                            "</td><td class=\"fill\">\u00a0</td><td class=\"fill\">\u00a0</td></tr>");
            answer.append(Html.element("li", "", PredictCard.outcome(part, said, i, system)));
        }
        out.append("</tbody></table>")
                .append(Html.element("p", "class=\"quiet\"", PredictCard.band()));
        answer(
                part.question(),
                answer
                        + "</ul>"
                        + markdown.html(
                                part.explain(), LessonPage.values(lesson, system), inner -> ""));
        return out.append("</section>").toString();
    }

    private static StringBuilder card(String css, String kicker, String title) {
        return new StringBuilder("<section class=\"card ")
                .append(css)
                .append("\">")
                .append(Html.element("p", "class=\"card-head\"", kicker))
                .append(Html.element("h3", "", title));
    }

    private String blank(Ask ask, Variant variant) {
        String unit = ask.scale(variant.system()).told();
        return blank(ask.phrase() + (unit.isEmpty() ? "" : ", " + unit) + ":");
    }

    private static String blank(String asked) {
        return "<div class=\"ask\">"
                + Html.element("p", "", asked)
                + "<div class=\"line\">\u00a0</div></div>";
    }

    private void answer(String title, String html) {
        answers.add(Html.element("h3", "", title) + html);
    }
}
