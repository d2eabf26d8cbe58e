// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.problem.Answers;
import hotside.problem.Ask;
import hotside.problem.Figure;
import hotside.problem.Lettered;
import hotside.problem.PullMeans;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.relation.Worked;
import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Collectors;

/** A problem in plain text: for the terminal, and for those who have pages read to them. */
public final class ProblemText {
    /** A curve is told at so many places at most. */
    private static final int MOST_ROWS = 40;

    private static final int DIGITS = 4;

    private final Maths maths;

    public ProblemText(Maths maths) {
        this.maths = maths;
    }

    /** The scenario, with the numbers of its charts, and what there is to choose from. */
    public String prompt(Variant variant) {
        StringBuilder out = new StringBuilder(text(variant, variant.template().prompt()));
        PullMeans.of(variant).ifPresent(means -> out.append("\n\n").append(table(means)));
        for (Figure figure : variant.figures()) {
            out.append("\n\n").append(figure(figure));
        }
        if (!variant.lettered().isEmpty()) {
            out.append('\n');
            variant.lettered()
                    .forEach(
                            o -> out.append('\n').append(o.letter()).append("  ").append(o.text()));
            out.append("\n\n").append(how(variant));
        }
        return out.toString();
    }

    private static String table(PullMeans means) {
        StringJoiner lines = new StringJoiner("\n");
        lines.add(String.join(" | ", means.heads()));
        means.rows().forEach(row -> lines.add(String.join(" | ", row)));
        return lines.toString();
    }

    private static String how(Variant variant) {
        return switch (variant.template().kind()) {
            case SEVERAL -> Words.of("text.answer-several");
            case ORDER ->
                    Words.of(
                            "text.answer-order",
                            variant.lettered().stream()
                                    .map(Lettered::letter)
                                    .collect(Collectors.joining(" ")));
            default -> Words.of("text.answer-one");
        };
    }

    /** The ladder of hints; its last rung is the full working. */
    public List<String> hints(Variant variant) {
        List<String> hints = new ArrayList<>();
        variant.template().hints().forEach(hint -> hints.add(text(variant, hint)));
        hints.add(working(variant));
        return hints;
    }

    /** The worked answer. */
    public String working(Variant variant) {
        WorkingText working = new WorkingText(maths);
        StringBuilder out = new StringBuilder();
        for (Worked worked : variant.run().workings()) {
            out.append(working.of(worked, variant.system(), variant.ambient()));
        }
        boolean numbers = variant.lettered().isEmpty();
        if (variant.template().task().isWorked()) {
            return out.append(answers(variant)).toString();
        }
        if (variant.template().kind() == Template.Kind.PLAN) {
            return plan(variant);
        }
        Ask ask = variant.template().asks().get(0);
        out.append(ask.phrase())
                .append(": ")
                .append(numbers ? Answers.told(variant, 0) : Answers.key(variant, 0))
                .append('\n');
        if (!numbers) {
            TaskCard.reasons(variant).forEach(r -> out.append("- ").append(r).append('\n'));
        }
        return out.toString();
    }

    /** What is right, a line for each thing that is asked. */
    private static String answers(Variant variant) {
        StringBuilder out = new StringBuilder();
        List<Ask> asks = variant.template().asks();
        for (int i = 0; i < asks.size(); i++) {
            out.append(asks.get(i).phrase())
                    .append(": ")
                    .append(Answers.told(variant, i))
                    .append('\n');
        }
        return out.toString();
    }

    /** A plan that is right, and what is well about it. */
    private static String plan(Variant variant) {
        StringBuilder out = new StringBuilder(answers(variant));
        TaskCard.reasons(variant).forEach(r -> out.append("- ").append(r).append('\n'));
        return out.toString();
    }

    private String text(Variant variant, String markdown) {
        return new LessonText(maths).of(markdown, name -> variant.shown().getOrDefault(name, name));
    }

    private static String figure(Figure figure) {
        StringBuilder out = new StringBuilder();
        Figure.Axis x = figure.x();
        for (Figure.Curve curve : figure.curves()) {
            out.append('[')
                    .append(name(figure, curve))
                    .append(unit(curve.scale().told()))
                    .append(" over ")
                    .append(x.label())
                    .append(unit(x.scale().told()))
                    .append("]\n");
            StringJoiner points = new StringJoiner("; ");
            int step = (curve.xs().size() + MOST_ROWS - 1) / MOST_ROWS;
            for (int i = 0; i < curve.xs().size(); i += step) {
                points.add(
                        DecimalHabit.spoken().write(Numbers.upTo(curve.xs().get(i), DIGITS))
                                + ": "
                                + DecimalHabit.spoken()
                                        .write(Numbers.upTo(curve.ys().get(i), DIGITS)));
            }
            out.append(points).append('\n');
        }
        return out.toString().strip();
    }

    /** With what it shows, where several charts hold curves of one name. */
    private static String name(Figure figure, Figure.Curve curve) {
        boolean told = figure.curves().stream().map(Figure.Curve::scale).distinct().count() > 1;
        return told || curve.name().equals(figure.y().label())
                ? curve.name()
                : figure.y().label() + ", " + curve.name();
    }

    private static String unit(String label) {
        return label.isEmpty() ? "" : ", " + label;
    }
}
