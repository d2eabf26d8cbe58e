// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.util.List;
import java.util.OptionalLong;

/** Draws a mock test: problems without help, verdicts at the end, a result for each skill. */
public final class TestPage {
    private TestPage() {}

    /**
     * The result of one skill.
     *
     * @param skill its name
     * @param right answers that were right
     * @param asked questions that were asked
     */
    public record Result(String skill, int right, int asked) {}

    /** The test while it runs. */
    public static String running(List<String> cards, OptionalLong minutesLeft) {
        StringBuilder out =
                new StringBuilder("<div class=\"test\">")
                        .append(
                                Html.element(
                                        "h1",
                                        "id=\"test-title\" tabindex=\"-1\"",
                                        Words.of("test.title")))
                        .append(Html.element("p", "", Words.of("test.how", cards.size())))
                        .append("<p class=\"told\" id=\"test-left\" role=\"timer\">")
                        .append(left(minutesLeft))
                        .append("</p>");
        cards.forEach(out::append);
        return out.append("<div class=\"buttons\">")
                .append(PracticePage.button("hand-in", "", Words.of("test.hand-in")))
                .append(PracticePage.button("give-up", "", Words.of("test.give-up")))
                .append("</div></div>")
                .toString();
    }

    /** How long there is still time. */
    public static String left(OptionalLong minutesLeft) {
        return Xml.escape(
                minutesLeft.isEmpty()
                        ? Words.of("test.no-limit")
                        : minutesLeft.getAsLong() == 1
                                ? Words.of("test.minute-left")
                                : Words.of("test.minutes-left", minutesLeft.getAsLong()));
    }

    /** The test when it is over. */
    public static String over(List<String> cards, List<Result> results, boolean timeUp) {
        int right = results.stream().mapToInt(Result::right).sum();
        int asked = results.stream().mapToInt(Result::asked).sum();
        StringBuilder out =
                new StringBuilder("<div class=\"test over\">")
                        .append(
                                Html.element(
                                        "h1",
                                        "id=\"test-title\" tabindex=\"-1\"",
                                        Words.of("test.over")))
                        .append(timeUp ? Html.element("p", "", Words.of("test.time-up")) : "")
                        .append(Html.element("p", "", Words.of("test.result", right, asked)))
                        .append("<table><thead><tr>")
                        .append(Html.element("th", "scope=\"col\"", Words.of("test.skill")))
                        .append(Html.element("th", "scope=\"col\"", Words.of("test.right")))
                        .append("</tr></thead><tbody>");
        for (Result result : results) {
            out.append("<tr>")
                    .append(Html.element("th", "scope=\"row\"", result.skill()))
                    .append(
                            Html.element(
                                    "td", "", Words.of("test.of", result.right(), result.asked())))
                    .append("</tr>");
        }
        out.append("</tbody></table>");
        cards.forEach(out::append);
        return out.append("<div class=\"buttons\">")
                .append(PracticePage.button("next", "", Words.of("test.back")))
                .append("</div></div>")
                .toString();
    }

    /** The result in plain text. */
    public static String text(List<Result> results) {
        StringBuilder out = new StringBuilder(Words.of("test.over")).append('\n');
        for (Result result : results) {
            out.append(result.skill())
                    .append(": ")
                    .append(Words.of("test.of", result.right(), result.asked()))
                    .append('\n');
        }
        return out.toString();
    }
}
