// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.relation.Caution;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.relation.Worked;
import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Draws a calculator: a field and a slider for each input, the outputs, the curve with the present
 * point, the working. Each region has an id, so that a change redraws only what it changed and the
 * keyboard stays where it is.
 */
public final class CalculatorCard {
    /** Slider positions from end to end. */
    public static final int SLIDER_STEPS = 1000;

    /** Significant digits of outputs. */
    static final int DIGITS = 4;

    private final Maths maths;

    public CalculatorCard(Maths maths) {
        this.maths = maths;
    }

    /** The whole card. */
    public String html(CalculatorState state) {
        Relation relation = state.relation();
        StringBuilder out = new StringBuilder();
        out.append("<section class=\"card calculator\"")
                .append(Html.attribute("id", state.id()))
                .append(Html.attribute("aria-label", relation.title()))
                .append('>');
        out.append(Html.element("p", "class=\"card-head\"", Words.of("calculator.kicker")))
                .append(Html.element("h3", "", relation.title()))
                .append(Html.element("p", "", relation.says()))
                .append("<div class=\"law\">")
                .append(maths.block(relation.tex()))
                .append("</div>");
        out.append("<div class=\"fields\">");
        relation.inputs().forEach(slot -> out.append(field(state, slot)));
        out.append("</div>");
        out.append(region(state, "out", "out", " aria-live=\"polite\"", outputs(state)));
        out.append(region(state, "cautions", "cautions", "", cautions(state)));
        if (state.over().isPresent()) {
            out.append(axes(state));
            out.append(region(state, "curve", "curve", "", curve(state)));
        }
        out.append("<div class=\"buttons\">")
                .append(
                        button(
                                state,
                                "working",
                                Words.of(state.working() ? "working.hide" : "working.show")))
                .append(button(state, "ask-me", Words.of("calculator.ask-me")))
                .append(button(state, "reset", Words.of("calculator.reset")))
                .append("</div>");
        out.append(region(state, "work", "work", "", working(state)));
        out.append(region(state, "ask", "ask", "", ""));
        return out.append("</section>").toString();
    }

    /** The outputs with their units; a message in their place where the relation has no result. */
    public String outputs(CalculatorState state) {
        try {
            Worked worked = state.relation().work(state.values());
            StringBuilder out = new StringBuilder("<dl class=\"outputs\">");
            for (Slot slot : state.relation().outputs()) {
                out.append("<div><dt>")
                        .append(Xml.escape(slot.meaning()))
                        .append(" <span class=\"symbol\">")
                        .append(maths.inline(slot.symbol()))
                        .append("</span></dt><dd>")
                        .append(shown(state, slot, worked.out().number(slot.name())))
                        .append("</dd></div>");
            }
            return out.append("</dl>").toString();
        } catch (RelationException e) {
            return "<div class=\"verdict ask\"><p>"
                    + Xml.escape(Words.of("calculator.no-result", e.getMessage()))
                    + "</p></div>";
        }
    }

    /** What weakens the result, or nothing. */
    public String cautions(CalculatorState state) {
        try {
            List<Caution> cautions = state.relation().work(state.values()).cautions();
            return cautions.isEmpty()
                    ? ""
                    : cautions.stream()
                            .map(
                                    c ->
                                            Html.element(
                                                    "li",
                                                    "",
                                                    state.relation()
                                                            .slot(c.about())
                                                            .map(s -> s.meaning() + ": " + c.text())
                                                            .orElse(c.text())))
                            .collect(
                                    Collectors.joining(
                                            "",
                                            "<aside class=\"caution\"><p class=\"label\">"
                                                    + Words.of("calculator.cautions")
                                                    + "</p><ul>",
                                            "</ul></aside>"));
        } catch (RelationException e) {
            return "";
        }
    }

    /** The curve with the present point. */
    public String curve(CalculatorState state) {
        return state.over()
                .map(slot -> RelationCurve.chart(state, slot))
                .map(data -> LivingChart.frame(state.id(), data) + ChartTable.html(data))
                .orElse("");
    }

    /**
     * The value of the curve's input under a pointer, rounded to what a person would type; SI.
     *
     * @param across 0 at the left edge of the chart to 1 at its right edge
     */
    public static double pointed(CalculatorState state, Slot over, double across) {
        double shown = new ChartCursor(RelationCurve.chart(state, over)).axisAt(across);
        double si = scale(state, over).toSi(shown, over.quantity(), state.ambient());
        double within = Math.max(over.usualMin(), Math.min(over.usualMax(), si));
        return rounded(state, over, within);
    }

    /** The working, if it is shown. */
    public String working(CalculatorState state) {
        if (!state.working()) {
            return "";
        }
        try {
            return new WorkingHtml(maths)
                    .html(state.relation().work(state.values()), state.system(), state.ambient());
        } catch (RelationException e) {
            return "";
        }
    }

    /** What stands in the field of an input, in the shop's unit. */
    public static String fieldText(CalculatorState state, Slot slot) {
        Object value = state.values().get(slot.name());
        return switch (slot.kind()) {
            case NUMBER ->
                    typed(
                            Numbers.rounded(
                                    scale(state, slot)
                                            .fromSi(
                                                    (Double) value,
                                                    slot.quantity(),
                                                    state.ambient()),
                                    5));
            case NUMBERS ->
                    ((List<?>) value)
                            .stream()
                                    .map(
                                            v ->
                                                    typed(
                                                            scale(state, slot)
                                                                    .fromSi(
                                                                            (Double) v,
                                                                            slot.quantity(),
                                                                            state.ambient())))
                                    .collect(Collectors.joining("; "));
            case CHOICE, TEXT -> (String) value;
        };
    }

    /** A number as a person types it. */
    private static String typed(double value) {
        return DecimalHabit.spoken().write(Numbers.plain(value)).replace('−', '-');
    }

    /** Where the slider of an input stands, 0 to {@link #SLIDER_STEPS}. */
    public static int sliderAt(CalculatorState state, Slot slot) {
        double value = state.values().number(slot.name());
        double share = (value - slot.usualMin()) / (slot.usualMax() - slot.usualMin());
        return (int) Math.round(Math.max(0, Math.min(1, share)) * SLIDER_STEPS);
    }

    /** The value for a slider's place, rounded to what a person would type; SI. */
    public static double sliderValue(CalculatorState state, Slot slot, double place) {
        double si = slot.usualMin() + (slot.usualMax() - slot.usualMin()) * place / SLIDER_STEPS;
        return rounded(state, slot, si);
    }

    private static double rounded(CalculatorState state, Slot slot, double si) {
        Scale scale = scale(state, slot);
        double shown = Numbers.rounded(scale.fromSi(si, slot.quantity(), state.ambient()), 3);
        double back = scale.toSi(shown, slot.quantity(), state.ambient());
        return slot.admits(back) ? back : si;
    }

    private String field(CalculatorState state, Slot slot) {
        String id = state.id() + "-" + slot.name();
        StringBuilder out = new StringBuilder("<div class=\"field\">");
        out.append("<label")
                .append(Html.attribute("for", id))
                .append('>')
                .append(Xml.escape(slot.meaning()));
        if (slot.kind() == Slot.Kind.NUMBER || slot.kind() == Slot.Kind.NUMBERS) {
            out.append(" <span class=\"symbol\">")
                    .append(maths.inline(slot.symbol()))
                    .append("</span>");
        }
        out.append("</label>");
        if (slot.kind() == Slot.Kind.CHOICE) {
            out.append("<select").append(names(state, slot, id, "choice")).append('>');
            slot.choices()
                    .forEach(
                            choice ->
                                    out.append("<option")
                                            .append(Html.attribute("value", choice))
                                            .append(
                                                    choice.equals(state.values().get(slot.name()))
                                                            ? " selected"
                                                            : "")
                                            .append('>')
                                            .append(Xml.escape(slot.told(choice)))
                                            .append("</option>"));
            out.append("</select>");
        } else {
            out.append("<input type=\"text\" inputmode=\"decimal\" autocomplete=\"off\"")
                    .append(names(state, slot, id, "text"))
                    .append(Html.attribute("value", fieldText(state, slot)))
                    .append("><span class=\"unit\">")
                    .append(Xml.escape(scale(state, slot).told()))
                    .append("</span>");
        }
        if (slot.kind() == Slot.Kind.NUMBER) {
            out.append("<input type=\"range\" min=\"0\" max=\"" + SLIDER_STEPS + "\" step=\"1\"")
                    .append(names(state, slot, id + "-slider", "slider"))
                    .append(Html.attribute("value", String.valueOf(sliderAt(state, slot))))
                    .append(Html.attribute("aria-label", slot.meaning()))
                    .append('>');
        }
        String fault = state.faults().getOrDefault(slot.name(), "");
        return out.append("<div class=\"fault\"")
                .append(Html.attribute("id", id + "-fault"))
                .append(" role=\"status\">")
                .append(fault(fault))
                .append("</div></div>")
                .toString();
    }

    /** What is wrong with a field, as it stands beneath it; nothing where all is well. */
    public static String fault(String text) {
        return text.isEmpty() ? "" : Html.element("p", "class=\"field-note wrong\"", text);
    }

    /** Which input the curve runs over and which output it shows. */
    private static String axes(CalculatorState state) {
        List<Slot> inputs =
                state.relation().inputs().stream()
                        .filter(s -> s.kind() == Slot.Kind.NUMBER)
                        .toList();
        return "<div class=\"axes\">"
                + select(
                        state,
                        "over",
                        Words.of("calculator.over"),
                        inputs,
                        state.over().orElseThrow())
                + select(
                        state,
                        "curve",
                        Words.of("calculator.curve"),
                        state.relation().outputs(),
                        state.curve())
                + "</div>";
    }

    private static String select(
            CalculatorState state, String kind, String label, List<Slot> slots, Slot chosen) {
        String id = state.id() + "-" + kind + "-choice";
        String options =
                slots.stream()
                        .map(
                                s ->
                                        "<option"
                                                + Html.attribute("value", s.name())
                                                + (s == chosen ? " selected" : "")
                                                + ">"
                                                + Xml.escape(s.meaning())
                                                + "</option>")
                        .collect(Collectors.joining());
        return "<div><label"
                + Html.attribute("for", id)
                + ">"
                + Xml.escape(label)
                + "</label><select"
                + Html.attribute("id", id)
                + Html.attribute("data-part", state.id())
                + Html.attribute("data-slot", kind)
                + Html.attribute("data-kind", "axis")
                + ">"
                + options
                + "</select></div>";
    }

    private static String names(CalculatorState state, Slot slot, String id, String kind) {
        return Html.attribute("id", id)
                + Html.attribute("data-part", state.id())
                + Html.attribute("data-slot", slot.name())
                + Html.attribute("data-kind", kind)
                + (kind.equals("text") ? Html.attribute("aria-describedby", id + "-fault") : "");
    }

    private static String region(
            CalculatorState state, String name, String css, String attributes, String inside) {
        return "<div class=\""
                + css
                + "\""
                + Html.attribute("id", state.id() + "-" + name)
                + attributes
                + ">"
                + inside
                + "</div>";
    }

    private static String button(CalculatorState state, String action, String label) {
        return "<button type=\"button\""
                + Html.attribute("id", state.id() + "-" + action)
                + Html.attribute("data-do", action)
                + Html.attribute("data-part", state.id())
                + ">"
                + Xml.escape(label)
                + "</button>";
    }

    private static String shown(CalculatorState state, Slot slot, double si) {
        Scale scale = scale(state, slot);
        String number = Told.number(si, slot.quantity(), scale, state.ambient(), DIGITS);
        return Xml.escape(number)
                + (scale.told().isEmpty() || slot.quantity() == Quantity.FLAG
                        ? ""
                        : " " + Html.element("span", "class=\"unit\"", scale.told()));
    }

    static Scale scale(CalculatorState state, Slot slot) {
        return SlotScale.of(slot, state.system());
    }
}
