// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Computed;
import hotside.course.ComputedValue;
import hotside.course.Lesson;
import hotside.course.Markup;
import hotside.course.Part;
import hotside.course.PartBlock;
import hotside.course.TermUse;
import hotside.course.Tex;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.relation.Chain;
import hotside.relation.Slot;
import hotside.unit.UnitSystem;
import java.util.Set;
import java.util.function.Function;
import org.commonmark.node.Node;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.text.LineBreakRendering;
import org.commonmark.renderer.text.TextContentNodeRendererContext;
import org.commonmark.renderer.text.TextContentRenderer;

/** A lesson in plain text: for the terminal, and for those who have pages read to them. */
public final class LessonText {
    private static final int CHART_WIDTH = 680;

    private final Maths maths;

    public LessonText(Maths maths) {
        this.maths = maths;
    }

    /** The whole lesson. */
    public String of(Lesson lesson, ProblemBank bank, UnitSystem system) {
        Computed computed = new Computed(lesson, system);
        Function<String, String> values = e -> computed.text(e).orElse("{{" + e + "}}");
        StringBuilder out = new StringBuilder();
        out.append(lesson.title())
                .append('\n')
                .append("=".repeat(lesson.title().length()))
                .append("\n\n");
        out.append(LessonPage.kicker(lesson)).append("\n\n");
        lesson.cautions()
                .forEach(
                        c ->
                                out.append(Words.of("aside.caution"))
                                        .append(": ")
                                        .append(c)
                                        .append("\n\n"));
        out.append(
                text(
                        lesson.body(),
                        values,
                        part -> part(lesson, part, bank, computed, values, system)));
        if (!lesson.sources().isEmpty()) {
            out.append("\n\n").append(Words.of("lesson.sources")).append(":\n");
            lesson.sources().forEach(s -> out.append("- ").append(s).append('\n'));
        }
        return out.toString();
    }

    /** A piece of Markdown, such as a problem's text. */
    public String of(String markdown, Function<String, String> values) {
        return text(Markup.parse(markdown), values, part -> "").strip();
    }

    /** A piece of Markdown, read already. */
    String of(Node markdown, Function<String, String> values) {
        return text(markdown, values, part -> "").strip();
    }

    private String part(
            Lesson lesson,
            Part part,
            ProblemBank bank,
            Computed computed,
            Function<String, String> values,
            UnitSystem system) {
        if (part instanceof Part.Aside aside) {
            return Words.of(aside.caution() ? "aside.caution" : "aside.note")
                    + ": "
                    + text(aside.content(), values, inner -> "").strip();
        }
        if (part instanceof Part.WorkedExample worked) {
            StringBuilder out =
                    new StringBuilder(Words.of("worked.kicker"))
                            .append(": ")
                            .append(worked.title())
                            .append("\n")
                            .append(text(worked.intro(), values, inner -> ""));
            WorkingText working = new WorkingText(maths);
            for (String name : worked.uses()) {
                int index =
                        lesson.chain().uses().stream().map(Chain.Use::name).toList().indexOf(name);
                out.append('\n')
                        .append(
                                working.of(
                                        computed.run().workings().get(index),
                                        system,
                                        computed.ambient()));
            }
            return out.toString();
        }
        if (part instanceof Part.FadedExample faded) {
            return new FadedCard(maths).text(lesson, faded, system, this);
        }
        if (part instanceof Part.DiagramFigure diagram) {
            return DiagramFigure.text(diagram, system, computed.ambient());
        }
        if (part instanceof Part.SkillPicture picture) {
            return Words.of("text.diagram", Words.of("skills.title"), SkillDrawing.words(picture));
        }
        if (part instanceof Part.Prediction prediction) {
            return new PredictCard(maths).text(prediction, system, values, this);
        }
        if (part instanceof Part.ChartFigure figure) {
            return "["
                    + figure.title()
                    + "] "
                    + Chart.summary(
                            RelationCurve.chart(figure, system, computed.ambient(), CHART_WIDTH));
        }
        if (part instanceof Part.Calculator calculator) {
            String slots =
                    calculator.relation().inputs().stream()
                            .map(Slot::name)
                            .reduce((a, b) -> a + ", " + b)
                            .orElse("");
            return Words.of(
                    "text.calculator",
                    calculator.relation().title(),
                    calculator.relation().id(),
                    slots);
        }
        String id = ((Part.ProblemCard) part).problem();
        return Words.of("text.problem", bank.find(id).map(Template::title).orElse(id), id);
    }

    private String text(Node node, Function<String, String> values, Function<Part, String> parts) {
        return TextContentRenderer.builder()
                .extensions(Markup.EXTENSIONS)
                .lineBreakRendering(LineBreakRendering.SEPARATE_BLOCKS)
                .nodeRendererFactory(context -> new Living(context, values, parts))
                .build()
                .render(node);
    }

    private final class Living implements NodeRenderer {
        private final TextContentNodeRendererContext context;
        private final Function<String, String> values;
        private final Function<Part, String> parts;

        Living(
                TextContentNodeRendererContext context,
                Function<String, String> values,
                Function<Part, String> parts) {
            this.context = context;
            this.values = values;
            this.parts = parts;
        }

        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(Tex.class, ComputedValue.class, TermUse.class, PartBlock.class);
        }

        @Override
        public void render(Node node) {
            if (node instanceof Tex tex) {
                context.getWriter().write(plain(tex.source()));
            } else if (node instanceof ComputedValue value) {
                context.getWriter().write(values.apply(value.expression()));
            } else if (node instanceof TermUse use) {
                context.getWriter().write(use.literal());
            } else if (node instanceof PartBlock block) {
                context.getWriter().write(parts.apply(block.part()));
                context.getWriter().block();
            }
        }
    }

    private String plain(String tex) {
        try {
            return maths.plain(tex);
        } catch (MathsException e) {
            return tex;
        }
    }
}
