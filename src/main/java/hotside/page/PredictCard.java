// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Part;
import hotside.course.Watched;
import hotside.page.diagram.Sketch;
import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Draws a prediction: what is asked, a direction and a size to choose for each quantity, and once
 * the cell has run both side by side and the why.
 */
public final class PredictCard {
    /** A change that the numbers beside it do not show; what a solver leaves is far smaller. */
    private static final double UNSEEN = 1e-4;

    private static final int DIGITS = 4;
    private static final double ROW = 40;

    private final MarkdownHtml markdown;

    public PredictCard(Maths maths) {
        markdown = new MarkdownHtml(maths);
    }

    /**
     * The whole card.
     *
     * @param values what a computed value in the why says
     */
    public String html(PredictState state, UnitSystem system, Function<String, String> values) {
        return "<section class=\"card predict\""
                + Html.attribute("id", state.id())
                + Html.attribute("aria-label", state.part().question())
                + ">"
                + inside(state, system, values)
                + "</section>";
    }

    /** The card without its frame, to begin afresh in the same place. */
    public String inside(PredictState state, UnitSystem system, Function<String, String> values) {
        return Html.element("p", "class=\"card-head\"", Words.of("predict.kicker"))
                + Html.element("h3", "", state.part().question())
                + Html.element("p", "", rig(state.part(), system))
                + Html.element("p", "", change(state.part(), system))
                + choices(state)
                + Html.element("p", "class=\"quiet\"", band())
                + region(state, "run", run(state))
                + region(state, "result", result(state, system, values));
    }

    /** The button that runs the cell; it cannot be pressed before everything is foretold. */
    public String run(PredictState state) {
        boolean again = state.answer().isPresent() || !state.fault().isEmpty();
        String action = again ? "again" : "run";
        boolean ready = again || state.complete() && !state.running();
        return "<div class=\"buttons\"><button type=\"button\" class=\"primary\""
                + Html.attribute("id", state.id() + "-go")
                + Html.attribute("data-do", action)
                + Html.attribute("data-part", state.id())
                + (ready ? "" : " disabled")
                + ">"
                + Xml.escape(Words.of("predict." + action))
                + "</button></div>"
                + (ready
                        ? ""
                        : Html.element(
                                "p",
                                "class=\"quiet\"",
                                Words.of(state.running() ? "predict.running" : "predict.first")));
    }

    /** What came out, or nothing. */
    public String result(PredictState state, UnitSystem system, Function<String, String> values) {
        if (!state.fault().isEmpty()) {
            return "<div class=\"verdict ask\">"
                    + Html.element("p", "", Words.of("predict.failed", state.fault()))
                    + "</div>";
        }
        return state.answer()
                .map(
                        answer ->
                                Html.element("h4", "", Words.of("predict.result"))
                                        + table(state, answer, system)
                                        + chart(state, answer)
                                        + who(answer)
                                        + markdown.html(
                                                state.part().explain(), values, inner -> ""))
                .orElse("");
    }

    /** In plain text, what the cell says and the why at the end. */
    String text(
            Part.Prediction part,
            UnitSystem system,
            Function<String, String> values,
            LessonText texts) {
        String watched =
                part.watched().stream().map(Watched::words).collect(Collectors.joining("; "));
        CellAnswer answer = CellAnswer.of(part);
        StringBuilder out =
                new StringBuilder(
                        Words.of(
                                "text.predict",
                                part.question(),
                                rig(part, system),
                                change(part, system),
                                watched));
        out.append('\n').append(Words.of("predict.result")).append(":\n");
        for (int i = 0; i < part.watched().size(); i++) {
            out.append("- ").append(outcome(part, answer, i, system)).append('\n');
        }
        return out.append(texts.of(part.explain(), values)).toString();
    }

    static String rig(Part.Prediction part, UnitSystem system) {
        return Words.of(
                "predict.rig",
                part.before().title(),
                Told.text(
                        part.speed(),
                        Quantity.ROTATION,
                        Quantity.ROTATION.shown(system),
                        part.before().ambient().pressure(),
                        DIGITS));
    }

    /** One quantity before and after, with its change. */
    static String outcome(Part.Prediction part, CellAnswer answer, int i, UnitSystem system) {
        Watched watched = part.watched().get(i);
        return watched.words()
                + ": "
                + told(watched, answer.before().get(i), part, system)
                + " → "
                + told(watched, answer.after().get(i), part, system)
                + " ("
                + percent(answer.change(i))
                + ")";
    }

    /** Each path that differs, with its value before and after in the shop's unit. */
    static String change(Part.Prediction part, UnitSystem system) {
        String told =
                part.before().paths().stream()
                        .filter(path -> !part.before().value(path).equals(part.after().value(path)))
                        .map(
                                path ->
                                        named(path, part)
                                                + ": "
                                                + value(
                                                        part.before().value(path),
                                                        path,
                                                        part,
                                                        system)
                                                + " → "
                                                + value(
                                                        part.after().value(path),
                                                        path,
                                                        part,
                                                        system))
                        .collect(Collectors.joining("; "));
        return Words.of("predict.change", told.isEmpty() ? part.change() : told);
    }

    private static String named(String path, Part.Prediction part) {
        return path.replaceAll(".*\\.(\\w+)\\.(\\w+)$|^(\\w+)\\.(\\w+)$", "$1$3 $2$4")
                .replaceAll("([a-z])([A-Z])", "$1 $2")
                .toLowerCase(Locale.ROOT);
    }

    private static String value(
            Object value, String path, Part.Prediction part, UnitSystem system) {
        Quantity quantity =
                part.before().slot(path).map(slot -> slot.quantity()).orElse(Quantity.RATIO);
        return value instanceof Double number
                ? Told.text(
                        number,
                        quantity,
                        quantity.shown(system),
                        part.before().ambient().pressure(),
                        DIGITS)
                : String.valueOf(value);
    }

    private static String choices(PredictState state) {
        StringBuilder out = new StringBuilder();
        List<Watched> watched = state.part().watched();
        for (int i = 0; i < watched.size(); i++) {
            String name = watched.get(i).words();
            out.append("<div class=\"foretold\">")
                    .append(
                            select(
                                    state,
                                    i,
                                    "direction",
                                    Words.of("predict.direction", capital(name)),
                                    Arrays.asList(CellAnswer.Way.values()),
                                    state.ways().get(i)))
                    .append(
                            select(
                                    state,
                                    i,
                                    "size",
                                    Words.of("predict.size", capital(name)),
                                    Arrays.asList(CellAnswer.Extent.values()),
                                    state.extents().get(i)))
                    .append("</div>");
        }
        return out.toString();
    }

    private static <T extends Enum<T>> String select(
            PredictState state,
            int index,
            String kind,
            String label,
            List<T> options,
            Optional<T> chosen) {
        String id = state.id() + "-" + kind + "-" + index;
        StringBuilder out =
                new StringBuilder("<div><label")
                        .append(Html.attribute("for", id))
                        .append('>')
                        .append(Xml.escape(label))
                        .append("</label><select")
                        .append(Html.attribute("id", id))
                        .append(Html.attribute("data-part", state.id()))
                        .append(Html.attribute("data-slot", String.valueOf(index)))
                        .append(Html.attribute("data-kind", kind))
                        .append("><option value=\"\">")
                        .append(Xml.escape(Words.of("predict.choose")))
                        .append("</option>");
        for (T option : options) {
            out.append("<option")
                    .append(Html.attribute("value", option.name()))
                    .append(chosen.equals(Optional.of(option)) ? " selected" : "")
                    .append('>')
                    .append(Xml.escape(word(option)))
                    .append("</option>");
        }
        return out.append("</select></div>").toString();
    }

    private static String word(Enum<?> option) {
        String key = "predict." + option.name().toLowerCase(Locale.ROOT);
        return option instanceof CellAnswer.Extent extent
                ? Words.of(key, share(extent.most()))
                : Words.of(key);
    }

    static String band() {
        return Words.of("predict.band", share(CellAnswer.STAYS));
    }

    private static String share(double share) {
        return Double.isFinite(share)
                ? DecimalHabit.spoken().write(Numbers.plain(100 * share)) + "\u00a0%"
                : "";
    }

    static String percent(double exact) {
        double change = Math.abs(exact) < UNSEEN ? 0 : exact;
        String number = DecimalHabit.spoken().write(Numbers.significant(Math.abs(100 * change), 2));
        return (change < 0 ? "−" : change > 0 ? "+" : "") + number + "\u00a0%";
    }

    private static String table(PredictState state, CellAnswer answer, UnitSystem system) {
        StringBuilder out =
                new StringBuilder("<div class=\"scroll\"><table class=\"data\"><thead><tr>");
        for (String head : List.of("quantity", "before", "after", "shift", "said")) {
            out.append("<th scope=\"col\">").append(Words.of("predict." + head)).append("</th>");
        }
        out.append("</tr></thead><tbody>");
        for (int i = 0; i < state.part().watched().size(); i++) {
            Watched w = state.part().watched().get(i);
            out.append("<tr><th scope=\"row\">")
                    .append(Xml.escape(w.words()))
                    .append("</th>")
                    .append(cell(told(w, answer.before().get(i), state.part(), system)))
                    .append(cell(told(w, answer.after().get(i), state.part(), system)))
                    .append(cell(percent(answer.change(i))))
                    .append(cell(judged(state, answer, i)))
                    .append("</tr>");
        }
        return out.append("</tbody></table></div>").toString();
    }

    private static String cell(String text) {
        return Html.element("td", "", text);
    }

    /** What the learner said, and how it compares. */
    static String judged(PredictState state, CellAnswer answer, int i) {
        CellAnswer.Way said = state.ways().get(i).orElse(CellAnswer.Way.STAYS);
        Optional<CellAnswer.Extent> size = state.extents().get(i);
        String words =
                word(said)
                        + (said == CellAnswer.Way.STAYS
                                ? ""
                                : " " + size.map(PredictCard::word).orElse(""));
        CellAnswer.Way went = answer.way(i);
        String verdict;
        if (said != went) {
            verdict =
                    went == CellAnswer.Way.STAYS
                            ? Words.of("predict.still")
                            : said == CellAnswer.Way.STAYS
                                    ? Words.of("predict.moved", word(went))
                                    : Words.of("predict.other");
        } else if (said == CellAnswer.Way.STAYS || size.equals(Optional.of(answer.extent(i)))) {
            verdict = Words.of("predict.same");
        } else {
            verdict = Words.of("predict.way");
        }
        return words + ". " + verdict;
    }

    /** A bar for each quantity, over the band that was foretold. */
    private static String chart(PredictState state, CellAnswer answer) {
        int count = state.part().watched().size();
        double most = 0.25;
        for (int i = 0; i < count; i++) {
            most = Math.max(most, Math.abs(answer.change(i)));
        }
        double middle = Sketch.WIDTH / 2.0;
        double scale = 215 / most;
        Sketch sketch = new Sketch((int) (count * ROW + 34));
        for (int i = 0; i < count; i++) {
            double y = 20 + i * ROW;
            band(sketch, state, i, y, middle, scale, most);
            double length = answer.change(i) * scale;
            sketch.rect("hot-dot", middle + Math.min(0, length), y + 6, Math.abs(length), 8);
            String name = state.part().watched().get(i).id() + " " + percent(answer.change(i));
            sketch.words("words", "start", 4, y - 4, name);
        }
        sketch.line("edge", middle, 6, middle, count * ROW + 18);
        sketch.words("quiet-words", "middle", middle, count * ROW + 32, "0");
        return "<figure class=\"drawing\">"
                + sketch.svg(state.id() + "-chart", Words.of("predict.chart"), words(state, answer))
                + Html.element("figcaption", "", Words.of("predict.chart"))
                + "</figure>";
    }

    private static void band(
            Sketch sketch,
            PredictState state,
            int i,
            double y,
            double middle,
            double scale,
            double most) {
        CellAnswer.Way said = state.ways().get(i).orElse(CellAnswer.Way.STAYS);
        if (said == CellAnswer.Way.STAYS) {
            double half = CellAnswer.STAYS * scale;
            sketch.rect("cool", middle - half, y, 2 * half, 20);
            return;
        }
        CellAnswer.Extent extent = state.extents().get(i).orElse(CellAnswer.Extent.LITTLE);
        double near = extent.least() * scale;
        double far = Math.min(extent.most(), Math.max(most, extent.least() * 1.1)) * scale;
        far = Math.min(far, Sketch.WIDTH / 2.0 - 2);
        double x = said == CellAnswer.Way.RISES ? middle + near : middle - far;
        sketch.rect("cool", x, y, Math.max(2, far - near), 20);
    }

    private static String words(PredictState state, CellAnswer answer) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < state.part().watched().size(); i++) {
            out.append(state.part().watched().get(i).words())
                    .append(": ")
                    .append(percent(answer.change(i)))
                    .append(". ");
        }
        return out.toString().strip();
    }

    private static String who(CellAnswer answer) {
        return Html.element("p", "", Words.of("predict.who-before", answer.whoBefore()))
                + Html.element("p", "", Words.of("predict.who-after", answer.whoAfter()));
    }

    private static String told(
            Watched watched, double si, Part.Prediction part, UnitSystem system) {
        return Told.text(
                si,
                watched.quantity(),
                watched.quantity().shown(system),
                part.before().ambient().pressure(),
                DIGITS);
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private static String region(PredictState state, String name, String inside) {
        return "<div role=\"status\""
                + Html.attribute("id", state.id() + "-" + name)
                + ">"
                + inside
                + "</div>";
    }
}
