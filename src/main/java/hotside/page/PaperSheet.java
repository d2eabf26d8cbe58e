// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Markup;
import hotside.problem.Answers;
import hotside.problem.Ask;
import hotside.problem.Lettered;
import hotside.problem.Marker;
import hotside.problem.PullMeans;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Verdict;
import hotside.speech.Language;
import hotside.unit.DecimalHabit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A problem on paper: to be answered by hand, as a line of the key, and marked. XHTML. */
public final class PaperSheet {
    private static final int CHART_WIDTH = 620;
    private static final Pattern LABEL = Pattern.compile("aria-label=\"([^\"]*)\"");

    private final MarkdownHtml markdown;

    public PaperSheet(Maths maths) {
        this.markdown = new MarkdownHtml(maths);
    }

    /**
     * A whole document, as it goes into a file of its own or into {@link Pdf}.
     *
     * @param title of the document
     * @param foot what every page says at its foot
     * @param body XHTML
     */
    public static String document(String title, String foot, String body) {
        return "<html lang=\""
                + Language.spoken().code()
                + "\" xmlns=\"http://www.w3.org/1999/xhtml\"><head><meta charset=\"utf-8\"/>"
                + Html.element("title", "", title)
                + "<meta name=\"description\""
                + Html.attribute("content", title)
                + "/><style>"
                + new String(resource("/hotside/page/paper.css"), StandardCharsets.UTF_8)
                + "</style></head><body>"
                + Html.element("div", "class=\"foot\"", foot)
                + withAlternatives(body)
                + "</body></html>";
    }

    /** A reader of the PDF hears the formula's plain text, which it looks for under this name. */
    private static String withAlternatives(String body) {
        return body.replaceAll("<math alttext=\"([^\"]*)\"", "<math alt=\"$1\" alttext=\"$1\"");
    }

    /** The scenario alone. */
    public String prompt(Variant variant) {
        return text(variant, variant.template().prompt());
    }

    /** The charts of a variant, each an SVG document that says what it shows. */
    public static List<String> charts(Variant variant) {
        return variant.figures().stream()
                .map(figure -> Chart.svg(FigureChart.of(figure, CHART_WIDTH)))
                .toList();
    }

    /** What a chart shows, in words, as its SVG says it. */
    public static String told(String svg) {
        Matcher label = LABEL.matcher(svg);
        return label.find() ? label.group(1) : "";
    }

    /** Charts, and what there is to choose from. */
    static String task(Variant variant) {
        StringBuilder out =
                new StringBuilder(PullMeans.of(variant).map(TaskCard::table).orElse(""));
        for (String svg : charts(variant)) {
            out.append("<figure class=\"chart\">")
                    .append(
                            svg.replaceFirst(
                                    "<svg ",
                                    "<svg alt=\"" + Matcher.quoteReplacement(told(svg)) + "\" "))
                    .append("</figure>");
        }
        if (variant.lettered().isEmpty()) {
            return out.toString();
        }
        out.append(Html.element("p", "", sentence(variant.template().asks().get(0).phrase())));
        out.append("<table class=\"options\"><tbody>");
        for (Lettered option : variant.lettered()) {
            out.append("<tr><td><b>")
                    .append(option.letter())
                    .append("</b></td>")
                    .append(Html.element("td", "", option.text()))
                    .append("</tr>");
        }
        return out.append("</tbody></table>").toString();
    }

    static String letters(Template.Kind kind) {
        return switch (kind) {
            case ORDER -> Words.of("paper.answer-order");
            case SEVERAL -> Words.of("paper.answer-several");
            default -> Words.of("paper.answer-letter");
        };
    }

    /** The problem with lines to write on. */
    public String toAnswer(int number, int points, Variant variant) {
        Template template = variant.template();
        StringBuilder out = new StringBuilder("<div class=\"problem\">");
        out.append(heading(number, points, template));
        out.append(text(variant, template.prompt()));
        out.append(task(variant));
        if (template.kind().isLettered()) {
            out.append(line(letters(template.kind())));
            return out.append("</div>").toString();
        }
        boolean several = template.asks().size() > 1;
        out.append("<div class=\"space\">")
                .append(Html.element("p", "class=\"quiet\"", Words.of("paper.workings")))
                .append("</div>");
        for (int i = 0; i < template.asks().size(); i++) {
            Ask ask = template.asks().get(i);
            String label = ask.scale(variant.system()).told();
            String asked =
                    label.isEmpty()
                            ? Words.of("paper.answer-bare")
                            : Words.of("paper.answer", label);
            out.append(
                    line((several ? (i + 1) + ") " : "") + sentence(ask.phrase()) + ". " + asked));
        }
        return out.append("</div>").toString();
    }

    private static String line(String asked) {
        return "<div class=\"ask\">"
                + Html.element("p", "", asked)
                + "<div class=\"line\"></div></div>";
    }

    /** The problem's lines of the key: what is right, what is accepted, what a mistake gives. */
    public String key(int number, int points, Variant variant) {
        Template template = variant.template();
        StringBuilder out = new StringBuilder("<div class=\"problem\">");
        out.append(heading(number, points, template));
        out.append("<table><thead><tr>");
        for (String head :
                List.of(
                        "paper.question",
                        "paper.right",
                        "paper.accepted",
                        "paper.given",
                        "paper.reached")) {
            out.append(Html.element("th", "scope=\"col\"", Words.of(head)));
        }
        out.append("</tr></thead><tbody>");
        for (int i = 0; i < template.asks().size(); i++) {
            Variant.Answer answer = variant.answers().get(i);
            out.append("<tr>")
                    .append(Html.element("td", "", sentence(template.asks().get(i).phrase())))
                    .append(Html.element("td", "", Answers.told(variant, i)))
                    .append("<td>")
                    .append(answer.band() > 0 ? accepted(variant, i, answer) : "")
                    .append("</td>")
                    .append("<td class=\"box\"> </td><td class=\"box\"> </td></tr>");
        }
        return out.append("</tbody></table>").append(slips(variant)).append("</div>").toString();
    }

    /** A number stays on one line with its unit, however narrow the column. */
    private static String accepted(Variant variant, int ask, Variant.Answer answer) {
        return Xml.escape(
                        Words.of(
                                "paper.from-to",
                                Answers.told(variant, ask, answer.low()).replace(' ', '\u00a0'),
                                Answers.told(variant, ask, answer.high()).replace(' ', '\u00a0')))
                .replaceAll("(\\S*\\u00a0\\S*)", "<span class=\"whole\">$1</span>");
    }

    /** Each number that a known mistake gives, with what a learner who gives it is told. */
    private static String slips(Variant variant) {
        Set<String> lines = new LinkedHashSet<>();
        for (Variant.Slipped slip : variant.slips()) {
            String number = Answers.told(variant, slip.ask(), slip.value());
            List<String> answers = new ArrayList<>(Collections.nCopies(slip.ask() + 1, ""));
            answers.set(slip.ask(), number);
            Marker.mark(variant, answers, DecimalHabit.spoken())
                    .get(slip.ask())
                    .filter(v -> v.kind() == Verdict.Kind.MISTAKE)
                    .ifPresent(v -> lines.add(number + ": " + v.feedback()));
        }
        if (lines.isEmpty()) {
            return "";
        }
        StringBuilder out =
                new StringBuilder(
                        Html.element("p", "class=\"quiet\"", Words.of("paper.slips") + ":"));
        out.append("<ul class=\"quiet\">");
        lines.forEach(line -> out.append(Html.element("li", "", line)));
        return out.append("</ul>").toString();
    }

    private static String sentence(String phrase) {
        return phrase.isEmpty()
                ? phrase
                : phrase.substring(0, 1).toUpperCase(Locale.ROOT) + phrase.substring(1);
    }

    /**
     * The problem with what was answered and what is to be said of it.
     *
     * @param answers as typed
     * @param reached points, already in words
     */
    public String marked(
            int number,
            int points,
            Variant variant,
            List<String> answers,
            List<Optional<Verdict>> verdicts,
            String reached) {
        Template template = variant.template();
        StringBuilder out = new StringBuilder(heading(number, points, template));
        out.append(text(variant, template.prompt())).append(task(variant));
        for (int i = 0; i < template.asks().size(); i++) {
            out.append(Html.element("h3", "", sentence(template.asks().get(i).phrase())));
            Optional<Verdict> verdict = verdicts.get(i);
            out.append(
                    verdict.isEmpty()
                            ? Html.element("p", "", Words.of("paper.no-answer"))
                            : Html.element("p", "", Words.of("paper.your-answer", answers.get(i)))
                                    + said(verdict.get()));
            if (verdict.map(v -> !v.kind().good()).orElse(true)) {
                out.append(
                        Html.element(
                                "p",
                                "",
                                Words.of("paper.right") + ": " + Answers.told(variant, i)));
            }
        }
        return out.append(Html.element("p", "class=\"quiet\"", reached)).toString();
    }

    private static String said(Verdict verdict) {
        return "<p>"
                + Html.element(
                        "span",
                        "class=\"" + (verdict.kind().good() ? "right" : "wrong") + "\"",
                        // Nobody is there to answer a question any more.
                        verdict.kind() == Verdict.Kind.ASK
                                ? Words.of("paper.not-judged")
                                : Words.of(
                                        "verdict."
                                                + verdict.kind().name().toLowerCase(Locale.ROOT)))
                + " "
                + Xml.escape(verdict.feedback())
                + "</p>";
    }

    private static String heading(int number, int points, Template template) {
        return Html.element("h2", "", Words.of("paper.problem", number, template.title()))
                + Html.element(
                        "p",
                        "class=\"quiet\"",
                        points == 1 ? Words.of("paper.point") : Words.of("paper.points", points));
    }

    private String text(Variant variant, String source) {
        String html =
                markdown.html(
                        Markup.parse(source),
                        name ->
                                Optional.ofNullable(variant.shown().get(name))
                                        .orElse("{{" + name + "}}"),
                        part -> "");
        // One run of text instead of three keeps its order when it is copied or read aloud.
        return html.replaceAll("<span class=\"computed\">([^<]*)</span>", "$1");
    }

    private static byte[] resource(String path) {
        try (java.io.InputStream in = PaperSheet.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("missing from the program: " + path);
            }
            return in.readAllBytes();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
