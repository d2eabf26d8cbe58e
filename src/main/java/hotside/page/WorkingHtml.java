// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.relation.Step;
import hotside.relation.Worked;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;
import java.util.List;

/**
 * Draws a working: what goes in, in SI, then each line with its reason, its symbols and its
 * numbers.
 */
final class WorkingHtml {
    private static final int DIGITS = 4;

    private final Maths maths;
    private final WorkingMaths lines;

    WorkingHtml(Maths maths) {
        this.maths = maths;
        this.lines = new WorkingMaths(maths);
    }

    /**
     * @param worked what to draw
     * @param system the shop in whose units inputs and results are told
     * @param ambient absolute pressure of the air around, Pa
     */
    String html(Worked worked, UnitSystem system, double ambient) {
        return html(worked, system, ambient, worked.steps().size());
    }

    /**
     * As above with the last steps left out: their reasons alone remain.
     *
     * @param shown how many steps are told whole
     */
    String html(Worked worked, UnitSystem system, double ambient, int shown) {
        StringBuilder out = new StringBuilder();
        out.append(Html.element("p", "class=\"quiet\"", Words.of("working.inputs")))
                .append("<ul class=\"inputs\">");
        for (Slot slot : worked.relation().inputs()) {
            out.append("<li>")
                    .append(Xml.escape(slot.meaning()))
                    .append(": ")
                    .append(input(worked.in().get(slot.name()), slot, system, ambient))
                    .append("</li>");
        }
        out.append("</ul><ol class=\"working\">");
        for (int i = 0; i < worked.steps().size(); i++) {
            Step step = worked.steps().get(i);
            out.append(i < shown ? line(worked, step, system, ambient) : leftOut(step));
        }
        return out.append("</ol>").toString();
    }

    private String input(Object value, Slot slot, UnitSystem system, double ambient) {
        Scale shop = SlotScale.of(slot, system);
        if (value instanceof Double number) {
            String told = Told.given(number, slot.quantity(), shop, ambient);
            String si = Told.given(number, slot.quantity(), slot.quantity().siScale(), ambient);
            return maths.inline(slot.symbol())
                    + " = "
                    + Xml.escape(told)
                    + (told.equals(si) ? "" : " = " + Xml.escape(si));
        }
        if (value instanceof List<?> readings) {
            return Xml.escape(Told.row(readings, slot.quantity(), shop, ambient));
        }
        String text = String.valueOf(value);
        return Xml.escape(slot.kind() == Slot.Kind.CHOICE ? slot.told(text) : text);
    }

    private static String leftOut(Step step) {
        return "<li>"
                + Xml.escape(step.text())
                + Html.element("span", "class=\"left-out\"", Words.of("faded.left-out"))
                + "</li>";
    }

    private String line(Worked worked, Step step, UnitSystem system, double ambient) {
        StringBuilder out = new StringBuilder("<li>").append(Xml.escape(step.text()));
        if (!step.formula().isEmpty()) {
            out.append("<span class=\"symbolic\">")
                    .append(lines.symbolic(step, worked))
                    .append("</span>");
        }
        out.append("<span class=\"numeric\">")
                .append(lines.numeric(step, worked))
                .append("</span>");
        if (step.output()) {
            Slot slot = worked.relation().slot(step.name()).orElseThrow();
            Scale shop = SlotScale.of(slot, system);
            if (!shop.unit().equals(slot.quantity().si())) {
                String told = Told.text(step.value(), slot.quantity(), shop, ambient, DIGITS);
                out.append("<span class=\"told\">")
                        .append(Xml.escape(Words.of("working.told", told)))
                        .append("</span>");
            }
        }
        return out.append("</li>").toString();
    }
}
