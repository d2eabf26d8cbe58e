// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.util.List;
import java.util.Optional;

/** Draws the page of keys, versions and licences. */
public final class HelpPage {
    private static final List<String> IN_THE_PAGE =
            List.of("tab", "enter", "chart", "chart-far", "plain-lines", "plain-copy");

    private HelpPage() {}

    /**
     * A key and what it does.
     *
     * @param shown as the platform writes it
     */
    public record Key(String shown, String says) {}

    /**
     * The program.
     *
     * @param version of a packed program
     * @param java its version
     * @param javafx its version
     * @param data the folder of the record
     * @param logs the folder of log and reports
     * @param libraries one line each; none if the program was not packed
     */
    public record About(
            Optional<String> version,
            String java,
            String javafx,
            String data,
            String logs,
            List<String> libraries) {}

    /** The whole page. */
    public static String html(List<Key> keys, About about) {
        StringBuilder out = new StringBuilder();
        out.append("<div class=\"bench help\">")
                .append(Html.element("h1", "id=\"help-title\"", Words.of("help.title")))
                .append(Html.element("p", "", Words.of("help.intro")))
                .append("<div class=\"columns\">")
                .append(table("help.everywhere", keys))
                .append(table("help.in-page", inThePage()))
                .append("</div>");
        out.append(Html.element("h2", "id=\"about\"", Words.of("about.title")))
                .append("<dl class=\"about\">")
                .append(line("about.version", about.version().orElse(Words.of("about.unpacked"))))
                .append(line("about.java", about.java()))
                .append(line("about.javafx", about.javafx()))
                .append(line("about.data", about.data()))
                .append(line("about.logs", about.logs()))
                .append("</dl>")
                .append(Html.element("p", "", Words.of("about.trust")))
                .append(Html.element("h2", "", Words.of("about.licences")))
                .append(Html.element("p", "", Words.of("about.own-licence")));
        if (about.libraries().isEmpty()) {
            return out.append(Html.element("p", "", Words.of("about.no-list")))
                    .append("</div>")
                    .toString();
        }
        out.append(Html.element("p", "", Words.of("about.libraries"))).append("<ul>");
        about.libraries().forEach(library -> out.append(Html.element("li", "", library)));
        return out.append("</ul></div>").toString();
    }

    /** Keys that the page hears, whatever it shows. */
    private static List<Key> inThePage() {
        return IN_THE_PAGE.stream()
                .map(key -> new Key(Words.of("keys." + key + ".keys"), Words.of("keys." + key)))
                .toList();
    }

    private static String table(String heading, List<Key> keys) {
        StringBuilder out = new StringBuilder("<section>");
        out.append(Html.element("h2", "", Words.of(heading)))
                .append("<div class=\"scroll\"><table class=\"keys\"><thead><tr>")
                .append(Html.element("th", "scope=\"col\"", Words.of("help.key")))
                .append(Html.element("th", "scope=\"col\"", Words.of("help.does")))
                .append("</tr></thead><tbody>");
        keys.forEach(
                key ->
                        out.append("<tr><th scope=\"row\">")
                                .append(Html.element("kbd", "", key.shown()))
                                .append("</th>")
                                .append(Html.element("td", "", key.says()))
                                .append("</tr>"));
        return out.append("</tbody></table></div></section>").toString();
    }

    private static String line(String key, String value) {
        return "<div>"
                + Html.element("dt", "", Words.of(key))
                + Html.element("dd", "", value)
                + "</div>";
    }
}
