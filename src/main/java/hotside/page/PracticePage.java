// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.util.List;
import java.util.Optional;

/** Draws the place where a learner practises: what to practise, why this problem, the problem. */
public final class PracticePage {
    private PracticePage() {}

    /**
     * Something to choose.
     *
     * @param value what is sent when it is chosen
     * @param label for people
     * @param group the heading it stands under; empty for none
     */
    public record Option(String value, String label, String group) {}

    /**
     * What the page shows.
     *
     * @param options what can be practised
     * @param chosen the value of the chosen option
     * @param reason why this problem comes now, or why none does
     * @param example an example card, or nothing
     * @param problem the problem card; empty if nothing fits the choice
     */
    public record View(
            List<Option> options,
            String chosen,
            String reason,
            Optional<String> example,
            String problem) {}

    /** The whole page. */
    public static String html(View view) {
        StringBuilder out = new StringBuilder(head(view));
        if (view.problem().isEmpty()) {
            return out.append(Html.element("p", "", view.reason()))
                    .append(Html.element("p", "", Words.of("practice.nothing")))
                    .toString();
        }
        out.append("<p id=\"practice-why\" class=\"lead\"><strong>")
                .append(Xml.escape(Words.of("practice.why")))
                .append("</strong> ")
                .append(Xml.escape(view.reason()))
                .append("</p>");
        view.example()
                .ifPresent(
                        example ->
                                out.append(example)
                                        .append("<div class=\"buttons\">")
                                        .append(button("alone", "", Words.of("practice.alone")))
                                        .append("</div>"));
        return out.append(view.problem())
                .append("<div id=\"practice-after\" role=\"status\"></div>")
                .append("<div class=\"buttons\">")
                .append(button("next", "", Words.of("practice.next")))
                .append("</div>")
                .toString();
    }

    private static String head(View view) {
        return Html.element(
                        "h1", "id=\"practice-title\" tabindex=\"-1\"", Words.of("practice.title"))
                + "<section class=\"tools\"><div class=\"field\"><label for=\"practice-wish\">"
                + Xml.escape(Words.of("practice.wish"))
                + "</label><select id=\"practice-wish\" class=\"wide\" data-part=\"practice\""
                + " data-slot=\"wish\" data-kind=\"choice\">"
                + options(view.options(), view.chosen())
                + "</select></div>"
                + "<div class=\"field\"><label for=\"practice-minutes\">"
                + Xml.escape(Words.of("practice.test-label"))
                + "</label><select id=\"practice-minutes\" class=\"middle\" data-part=\"practice\""
                + " data-slot=\"minutes\" data-kind=\"choice\">"
                + options(minutes(), "0")
                + "</select>"
                + button("test", "", Words.of("practice.test"))
                + "</div></section>";
    }

    private static List<Option> minutes() {
        return List.of(
                new Option("0", Words.of("practice.no-limit"), ""),
                new Option("30", Words.of("practice.minutes", 30), ""),
                new Option("45", Words.of("practice.minutes", 45), ""),
                new Option("90", Words.of("practice.minutes", 90), ""));
    }

    /** The options of a select, under their groups. */
    static String options(List<Option> options, String chosen) {
        StringBuilder out = new StringBuilder();
        String group = "";
        for (Option option : options) {
            if (!option.group().equals(group)) {
                out.append(group.isEmpty() ? "" : "</optgroup>");
                group = option.group();
                out.append(
                        group.isEmpty() ? "" : "<optgroup" + Html.attribute("label", group) + ">");
            }
            out.append("<option")
                    .append(Html.attribute("value", option.value()))
                    .append(option.value().equals(chosen) ? " selected" : "")
                    .append(">")
                    .append(Xml.escape(option.label()))
                    .append("</option>");
        }
        return out.append(group.isEmpty() ? "" : "</optgroup>").toString();
    }

    /** A button that does something with an argument. */
    static String button(String action, String argument, String label) {
        return "<button type=\"button\""
                + Html.attribute("id", "do-" + action + argument.replaceAll("[^A-Za-z0-9-]", "-"))
                + Html.attribute("data-do", action)
                + Html.attribute("data-part", "practice")
                + Html.attribute("data-arg", argument)
                + ">"
                + Xml.escape(label)
                + "</button>";
    }

    /** What stands below a problem that is solved: how far its skill has come. */
    public static String after(SkillLine skill) {
        return "<p class=\"told\">"
                + Xml.escape(Words.of("practice.solved", skill.name()))
                + " "
                + skill.temper()
                + "</p><p class=\"quiet\">"
                + Xml.escape(skill.counts())
                + "</p>";
    }

    /** The page in plain text. */
    public static String text(View view, String problem) {
        return Words.of("practice.title")
                + "\n\n"
                + (view.problem().isEmpty()
                        ? view.reason() + " " + Words.of("practice.nothing")
                        : Words.of("practice.why") + " " + view.reason() + "\n\n" + problem);
    }
}
