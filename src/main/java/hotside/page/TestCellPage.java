// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.cell.Channel;
import hotside.cell.Part;
import hotside.cell.Rig;
import hotside.trial.Conclusion;
import hotside.trial.Judgement;
import hotside.trial.Remark;
import hotside.trial.Watched;
import hotside.unit.Quantity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The page of the test cell: question, prediction, plan, pulls, conclusion, and at the end the
 * truth. Nothing of the truth is on it before a conclusion is.
 */
public final class TestCellPage {
    /** The part that all its fields and buttons name. */
    public static final String PART = "cell";

    /** Where the pulls and all that follows from them are. */
    public static final String RESULT = PART + "-result";

    /** Where it is told how far a trial is, or what stands in its way. */
    public static final String STATUS = PART + "-status";

    /** Where the truth is told. */
    public static final String JUDGED = PART + "-judged";

    /** What may be logged. */
    public static final List<Channel> LOGGABLE =
            List.of(
                    Channel.BOOST,
                    Channel.TURBINE_INLET_PRESSURE,
                    Channel.TURBINE_OUTLET_PRESSURE,
                    Channel.MANIFOLD_TEMPERATURE,
                    Channel.AMBIENT_TEMPERATURE,
                    Channel.AIR_FLOW);

    private TestCellPage() {}

    /** The whole page. */
    public static String html(TestCellState state) {
        Form form = new Form(PART, state.typed());
        return "<div class=\"bench\">"
                + Html.element("p", "class=\"kicker\"", Words.of("cell.kicker"))
                + Html.element("h1", "id=\"place-title\"", Words.of("cell.title"))
                + Html.element("p", "", Words.of("cell.lead"))
                + section("question", question(form, state))
                + section("predict", predict(form, state))
                + section("plan", plan(form, state))
                + "<div class=\"buttons\">"
                + form.button("run", Words.of("cell.run"), true)
                + "</div><div role=\"status\""
                + Html.attribute("id", STATUS)
                + ">"
                + status(state)
                + "</div><div"
                + Html.attribute("id", RESULT)
                + ">"
                + result(state)
                + "</div></div>";
    }

    private static String section(String name, String inside) {
        return "<section class=\"card\">"
                + Html.element("h2", "", Words.of("cell." + name))
                + Html.element("p", "", Words.of("cell." + name + "-say"))
                + inside
                + "</section>";
    }

    private static String question(Form form, TestCellState state) {
        Map<String, String> rigs = new LinkedHashMap<>();
        for (Rig rig : state.stock().rigs()) {
            rigs.put(rig.id(), rig.title());
        }
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("as-it-is", Words.of("cell.as-it-is"));
        for (Part part : state.stock().parts()) {
            parts.put(part.id(), part.title());
        }
        return "<div class=\"form\">"
                + form.select("rig", Words.of("cell.rig"), rigs)
                + form.select("a", Words.of("cell.a"), parts)
                + form.select("b", Words.of("cell.b"), parts)
                + "</div>";
    }

    private static String predict(Form form, TestCellState state) {
        Map<String, String> ways = new LinkedHashMap<>();
        ways.put("", Words.of("cell.way.none"));
        for (Watched.Direction way : Watched.Direction.values()) {
            ways.put(way.id(), Words.of("cell.way." + way.id()));
        }
        StringBuilder out = new StringBuilder("<div class=\"form pairs\">");
        for (Watched watched : Watched.values()) {
            String unit = watched.quantity().shown(state.system()).told();
            out.append(form.select("way-" + watched.id(), capital(watched.words()), ways))
                    .append(
                            form.text(
                                    "size-" + watched.id(),
                                    Words.of("cell.by"),
                                    Words.of("cell.by-hint", unit),
                                    "run"));
        }
        return out.append("</div>").toString();
    }

    private static String plan(Form form, TestCellState state) {
        StringBuilder out =
                new StringBuilder("<div class=\"form\">")
                        .append(
                                form.text(
                                        "order",
                                        Words.of("cell.order"),
                                        Words.of("cell.order-hint"),
                                        "run"))
                        .append(form.text("warm-up", Words.of("cell.warm-up"), "0", "run"))
                        .append(form.text("interval", Words.of("cell.interval"), "10 min", "run"))
                        .append(
                                form.text(
                                        "hold",
                                        Words.of("cell.hold"),
                                        Words.of(
                                                "cell.hold-hint",
                                                Quantity.GAUGE_PRESSURE
                                                        .shown(state.system())
                                                        .told()),
                                        "run"))
                        .append(
                                form.text(
                                        "band",
                                        Words.of("cell.band"),
                                        Words.of("cell.band-hint"),
                                        "run"))
                        .append("</div><fieldset><legend>")
                        .append(Xml.escape(Words.of("cell.log")))
                        .append("</legend><div class=\"form\">");
        for (Channel channel : LOGGABLE) {
            out.append(
                    form.tick(
                            "log-" + channel.label(), Words.of("cell.channel." + channel.label())));
        }
        return out.append("</div></fieldset>").toString();
    }

    /** How far a trial is, or what stands in its way. */
    public static String status(TestCellState state) {
        if (state.running()) {
            return progress(PART, 0);
        }
        return state.fault()
                .map(
                        text ->
                                "<div class=\"verdict ask\">"
                                        + Html.element(
                                                "p", "class=\"label\"", Words.of("cell.not-yet"))
                                        + Html.element("p", "", text)
                                        + "</div>")
                .orElse("");
    }

    /**
     * A bar of progress, with a button that stops.
     *
     * @param part that the button names
     * @param share 0 to 1
     */
    public static String progress(String part, double share) {
        long percent = Math.round(100 * share);
        return "<div class=\"progress\" role=\"progressbar\" aria-valuemin=\"0\" aria-valuemax=\"100\""
                + Html.attribute("aria-valuenow", String.valueOf(percent))
                + "><div"
                + Html.attribute("style", "width:" + percent + "%")
                + "></div></div>"
                + "<div class=\"buttons\">"
                + new Form(part, Map.of()).button("stop", Words.of("cell.stop"), false)
                + Html.element("p", "class=\"quiet\"", Words.of("cell.running", percent))
                + "</div>";
    }

    /** The pulls, the fields for a conclusion, and the truth if it may be told. */
    public static String result(TestCellState state) {
        if (state.result().isEmpty()) {
            return "";
        }
        Form form = new Form(PART, state.typed());
        return "<section class=\"card\">"
                + Html.element("h2", "id=\"cell-pulls\"", Words.of("cell.pulls"))
                + state.result().get().html()
                + "<div class=\"buttons\">"
                + form.button("save", Words.of("cell.save"), false)
                + form.button("logs", Words.of("cell.open-logs"), false)
                + "</div></section>"
                + section("conclude", conclude(form, state))
                + "<div role=\"status\""
                + Html.attribute("id", JUDGED)
                + ">"
                + judged(state)
                + "</div>";
    }

    private static String conclude(Form form, TestCellState state) {
        Map<String, String> claims = new LinkedHashMap<>();
        claims.put("", Words.of("cell.way.none"));
        for (Conclusion.Claim claim : Conclusion.Claim.values()) {
            claims.put(claim.id(), Words.of("cell.claim." + claim.id()));
        }
        String hint = Words.of("cell.interval-hint", Quantity.POWER.shown(state.system()).told());
        return "<div class=\"form\">"
                + form.text("gain", Words.of("cell.gain"), hint, "judge")
                + form.text("part", Words.of("cell.part"), hint, "judge")
                + form.select("claim", Words.of("cell.claim"), claims)
                + "</div><div class=\"buttons\">"
                + form.button("judge", Words.of("cell.judge"), true)
                + "</div>";
    }

    /** What is to be said, now that the truth may be told; or what stands in the way of it. */
    public static String judged(TestCellState state) {
        if (state.judged().isEmpty()) {
            return status(state);
        }
        Judgement told = state.judged().get();
        return "<section class=\"card\">"
                + Html.element("h2", "", Words.of("cell.truth"))
                + "<div class=\"columns\">"
                + remarks("prediction", told.prediction())
                + remarks("plan", told.plan())
                + remarks("conclusion", told.conclusion())
                + "</div></section>";
    }

    private static String remarks(String of, List<Remark> remarks) {
        StringBuilder out =
                new StringBuilder("<div>")
                        .append(Html.element("h3", "", Words.of("cell.truth." + of)));
        for (Remark remark : remarks) {
            String css =
                    switch (remark.kind()) {
                        case GOOD -> "right";
                        case MEND -> "wrong";
                        case NOTE -> "ask";
                    };
            out.append("<div class=\"verdict ")
                    .append(css)
                    .append("\">")
                    .append(
                            Html.element(
                                    "p",
                                    "class=\"label\"",
                                    Words.of("cell.remark." + css, capital(remark.title()))))
                    .append(Html.element("p", "", remark.text()))
                    .append("</div>");
        }
        return out.append("</div>").toString();
    }

    /** The page in sentences, for assistive technology. */
    public static String text(TestCellState state) {
        StringBuilder out =
                new StringBuilder(Words.of("cell.title"))
                        .append(". ")
                        .append(Words.of("cell.lead"));
        state.result().ifPresent(view -> out.append("\n\n").append(view.text()));
        state.judged()
                .ifPresent(
                        told ->
                                Stream.of(told.prediction(), told.plan(), told.conclusion())
                                        .flatMap(List::stream)
                                        .forEach(r -> out.append(line(r))));
        return out.toString();
    }

    private static String line(Remark remark) {
        return "\n\n" + remark.title() + ": " + remark.text();
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
