// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.page.Form;
import hotside.page.Html;
import hotside.page.Maths;
import hotside.page.ProblemCard;
import hotside.page.ProblemState;
import hotside.page.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The learner's side of the class's page: a set, its problems, handing in. */
public final class WorkPage {
    /** Ids of problem cards begin with it. */
    public static final String CARD = "set-";

    /** Where it is asked before handing in, and told after. */
    public static final String HAND_IN = GivePage.PART + "-hand-in-told";

    private final ProblemCard card;

    public WorkPage(Maths maths) {
        card = new ProblemCard(maths);
    }

    /** A set at work, with what its cards show. */
    public record Open(ProblemSet set, List<ProblemState> cards, boolean newKey, String key) {}

    /** The whole page. */
    public String html(Map<String, String> typed, Optional<Open> open) {
        Form form = new Form(GivePage.PART, typed);
        return "<div class=\"bench\">"
                + Html.element("p", "class=\"kicker\"", Words.of("class.kicker"))
                + Html.element("h1", "id=\"place-title\"", Words.of("class.title-work"))
                + Html.element("p", "", Words.of("class.lead-work"))
                + GivePage.sides(form, false, "")
                + "<section class=\"card\"><div class=\"form\">"
                + form.text("learner", Words.of("class.your-id"), "", "open-work")
                + "</div><div class=\"buttons\">"
                + form.button("open-work", Words.of("class.open-work"), open.isEmpty())
                + "</div></section><div role=\"status\""
                + Html.attribute("id", GivePage.STATUS)
                + "></div>"
                + open.map(o -> work(form, o)).orElse("")
                + "</div>";
    }

    private String work(Form form, Open open) {
        ProblemSet set = open.set;
        StringBuilder out = new StringBuilder();
        if (open.newKey) {
            out.append(Html.element("p", "", Words.of("class.new-key", open.key)));
        }
        out.append(
                Html.element(
                        "p",
                        "",
                        Words.of(
                                "class.work-of",
                                set.title(),
                                set.items().size(),
                                set.points(),
                                set.rules()
                                        .due()
                                        .map(due -> Words.of("class.work-due", date(due)))
                                        .orElse(Words.of("class.work-no-due")))));
        for (int slot = 0; slot < open.cards.size(); slot++) {
            int points = set.items().get(slot).points();
            String worth = points == 1 ? Words.of("paper.point") : Words.of("paper.points", points);
            out.append(
                            card.assigned(
                                    open.cards.get(slot),
                                    Words.of("class.number", slot + 1, set.items().size(), worth),
                                    set.rules().hints()))
                    .append(GivePage.region(told(slot), ""));
        }
        return out.append("<div class=\"buttons\">")
                .append(form.button("hand-in", Words.of("class.hand-in"), true))
                .append("</div><div role=\"status\"")
                .append(Html.attribute("id", HAND_IN))
                .append("></div>")
                .toString();
    }

    /** Where it is told of a problem what is not a verdict. */
    public static String told(int slot) {
        return CARD + slot + "-told";
    }

    /** The verdict on one answer, or nothing. */
    public String verdict(ProblemState state, int ask) {
        return card.verdict(state, ask);
    }

    /** The hints shown so far. */
    public String hints(ProblemState state) {
        return card.hints(state);
    }

    /** The question before handing in. */
    public static String ask(List<Integer> open) {
        Form form = new Form(GivePage.PART, Map.of());
        String missing =
                open.isEmpty()
                        ? ""
                        : Words.of(
                                        "class.hand-in-open",
                                        String.join(
                                                ", ",
                                                open.stream()
                                                        .map(s -> String.valueOf(s + 1))
                                                        .toList()))
                                + " ";
        return Html.element("p", "", missing + Words.of("class.hand-in-ask"))
                + "<div class=\"buttons\">"
                + form.button("hand-in-yes", Words.of("class.hand-in-yes"), true)
                + form.button("hand-in-no", Words.of("class.hand-in-no"), false)
                + "</div>";
    }

    private static String date(Instant due) {
        return DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT)
                .withZone(ZoneId.systemDefault())
                .format(due);
    }
}
