// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Markup;
import hotside.problem.Variant;
import hotside.relation.Worked;
import java.util.List;
import java.util.Optional;

/** Draws a problem that is worked already: whole, or with its last step left to the learner. */
public final class ExampleCard {
    private final Maths maths;
    private final MarkdownHtml markdown;
    private final ProblemCard problems;

    public ExampleCard(Maths maths) {
        this.maths = maths;
        this.markdown = new MarkdownHtml(maths);
        this.problems = new ProblemCard(maths);
    }

    /**
     * True if this problem can be shown worked: what is seen in a chart cannot be told in lines.
     */
    public static boolean canShow(Variant variant) {
        return variant.figures().isEmpty();
    }

    /** True if the last step of this problem's working can be left out. */
    public static boolean canFade(Variant variant) {
        return canShow(variant) && !variant.run().workings().isEmpty();
    }

    /**
     * The card.
     *
     * @param variant the same problem with other numbers than the learner's
     * @param faded true to leave the last step out
     */
    public String html(String id, Variant variant, boolean faded) {
        String told =
                markdown.html(
                        Markup.parse(variant.template().prompt()),
                        name ->
                                Optional.ofNullable(variant.shown().get(name))
                                        .orElse("{{" + name + "}}"),
                        part -> "");
        return "<section class=\"card worked\""
                + Html.attribute("id", id)
                + Html.attribute("aria-label", Words.of("example.kicker"))
                + ">"
                + Html.element("p", "class=\"card-head\"", Words.of("example.kicker"))
                + Html.element(
                        "p", "class=\"quiet\"", Words.of(faded ? "example.faded" : "example.whole"))
                + told
                + "<div class=\"work\">"
                + (faded ? faded(variant) : whole(id, variant))
                + "</div></section>";
    }

    private String whole(String id, Variant variant) {
        return problems.solution(ProblemState.fresh(id + "-w", variant).working(true));
    }

    private String faded(Variant variant) {
        StringBuilder out = new StringBuilder();
        WorkingHtml working = new WorkingHtml(maths);
        List<Worked> workings = variant.run().workings();
        for (int i = 0; i < workings.size(); i++) {
            Worked worked = workings.get(i);
            boolean last = i == workings.size() - 1;
            out.append(Html.element("h4", "", worked.relation().title()))
                    .append(
                            working.html(
                                    last ? withoutItsEnd(worked) : worked,
                                    variant.system(),
                                    variant.ambient()));
        }
        return out.append(Html.element("p", "class=\"told\"", Words.of("example.yours")))
                .toString();
    }

    private static Worked withoutItsEnd(Worked worked) {
        return new Worked(
                worked.relation(),
                worked.in(),
                worked.out(),
                worked.steps().subList(0, worked.steps().size() - 1),
                worked.cautions());
    }
}
