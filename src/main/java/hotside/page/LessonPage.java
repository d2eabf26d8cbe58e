// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Computed;
import hotside.course.Lesson;
import hotside.course.LookUp;
import hotside.course.Part;
import hotside.relation.Chain;
import hotside.unit.UnitSystem;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Draws a lesson. */
public final class LessonPage {
    /** The living cards of a page, whose state the caller holds. */
    public interface Cards {
        /** The card's id in the page. */
        String id(Part part);

        /** A calculator, a problem, a faded example, a diagram or a prediction. */
        String html(Part part);

        /** Width of figures in pixels at 100 % text, less for larger text. */
        int chartWidth();
    }

    private final Maths maths;
    private final MarkdownHtml markdown;

    public LessonPage(Maths maths) {
        this.maths = maths;
        this.markdown = new MarkdownHtml(maths);
    }

    /**
     * The inside of the page.
     *
     * @param lesson the lesson
     * @param system the shop whose units it speaks
     * @param cards draws calculators and problems, and names figures
     * @param before the lesson before it, if any
     * @param after the lesson after it, if any
     */
    public String html(
            Lesson lesson,
            UnitSystem system,
            Cards cards,
            Optional<Lesson> before,
            Optional<Lesson> after) {
        Computed computed = new Computed(lesson, system);
        StringBuilder out =
                new StringBuilder(
                        lesson.id().startsWith(LookUp.PREFIX)
                                ? "<header class=\"look-up\">"
                                : "<header>");
        out.append(Html.element("p", "class=\"kicker\"", kicker(lesson)))
                .append(Html.element("h1", "id=\"lesson-title\"", lesson.title()))
                .append("</header>");
        if (!lesson.cautions().isEmpty()) {
            out.append("<aside class=\"caution\" role=\"note\">")
                    .append(head("caution"))
                    .append("<ul>");
            lesson.cautions().forEach(text -> out.append(Html.element("li", "", text)));
            out.append("</ul></aside>");
        }
        Function<String, String> values =
                expression -> computed.text(expression).orElse("{{" + expression + "}}");
        out.append(
                markdown.html(
                        lesson.body(),
                        values,
                        part -> part(lesson, part, system, computed, values, cards)));
        if (!lesson.sources().isEmpty()) {
            out.append("<footer class=\"sources\">")
                    .append(Html.element("h2", "", Words.of("lesson.sources")))
                    .append("<ul>");
            lesson.sources().forEach(text -> out.append(Html.element("li", "", text)));
            out.append("</ul></footer>");
        }
        return out.append("<div id=\"term-note\" role=\"status\"></div>")
                .append(neighbours(before, after))
                .toString();
    }

    /** What a lesson's figure shows. */
    public static ChartData figure(
            Lesson lesson, Part.ChartFigure figure, UnitSystem system, int chartWidth) {
        double ambient = new Computed(lesson, system).ambient();
        return RelationCurve.chart(figure, system, ambient, chartWidth);
    }

    private String part(
            Lesson lesson,
            Part part,
            UnitSystem system,
            Computed computed,
            Function<String, String> values,
            Cards cards) {
        if (part instanceof Part.Aside aside) {
            String css = aside.caution() ? "caution" : "note";
            return "<aside class=\""
                    + css
                    + "\" role=\"note\">"
                    + head(css)
                    + markdown.html(aside.content(), values, inner -> "")
                    + "</aside>";
        }
        if (part instanceof Part.WorkedExample worked) {
            return worked(lesson, worked, system, computed, values);
        }
        if (part instanceof Part.ChartFigure figure) {
            return LivingChart.figure(
                    cards.id(part), figure(lesson, figure, system, cards.chartWidth()));
        }
        if (part instanceof Part.SkillPicture picture) {
            return SkillDrawing.html(picture);
        }
        return cards.html(part);
    }

    /** What computed values in a lesson's text say. */
    public static Function<String, String> values(Lesson lesson, UnitSystem system) {
        Computed computed = new Computed(lesson, system);
        return expression -> computed.text(expression).orElse("{{" + expression + "}}");
    }

    private String worked(
            Lesson lesson,
            Part.WorkedExample part,
            UnitSystem system,
            Computed computed,
            Function<String, String> values) {
        StringBuilder out =
                new StringBuilder("<section class=\"card worked\"")
                        .append(Html.attribute("aria-label", part.title()))
                        .append(">")
                        .append(Html.element("p", "class=\"card-head\"", Words.of("worked.kicker")))
                        .append(Html.element("h3", "", part.title()))
                        .append(markdown.html(part.intro(), values, inner -> ""));
        WorkingHtml working = new WorkingHtml(maths);
        for (String name : part.uses()) {
            int index = lesson.chain().uses().stream().map(Chain.Use::name).toList().indexOf(name);
            var worked = computed.run().workings().get(index);
            if (part.uses().size() > 1) {
                out.append(Html.element("h4", "", worked.relation().title()));
            }
            out.append(working.html(worked, system, computed.ambient()));
        }
        return out.append("</section>").toString();
    }

    /** Strand and time; a page to look things up in has no time. */
    static String kicker(Lesson lesson) {
        return lesson.minutes() == 0
                ? lesson.strand()
                : Words.of("lesson.kicker", lesson.strand(), lesson.minutes());
    }

    /** The word that names an aside; the stylesheet puts its sign before it. */
    private static String head(String kind) {
        return Html.element("p", "class=\"label\"", Words.of("aside." + kind));
    }

    private static String neighbours(Optional<Lesson> before, Optional<Lesson> after) {
        Map<String, Optional<Lesson>> ends = new java.util.LinkedHashMap<>();
        ends.put("lesson.before", before);
        ends.put("lesson.after", after);
        if (before.isEmpty() && after.isEmpty()) {
            return "";
        }
        StringBuilder out = new StringBuilder("<nav class=\"neighbours\">");
        ends.forEach(
                (key, lesson) ->
                        lesson.ifPresent(
                                l ->
                                        out.append("<a")
                                                .append(
                                                        key.equals("lesson.after")
                                                                ? " class=\"after\""
                                                                : "")
                                                .append(Html.attribute("href", "lesson:" + l.id()))
                                                .append('>')
                                                .append(Xml.escape(Words.of(key, l.title())))
                                                .append("</a>")));
        return out.append("</nav>").toString();
    }
}
