// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.relation.Step;
import hotside.relation.Worked;
import hotside.unit.Quantity;
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
        StringBuilder out = new StringBuilder("<div class=\"working\">");
        out.append(Html.element("p", "class=\"working-head\"", Words.of("working.inputs")))
                .append("<ul class=\"inputs\">");
        worked.relation()
                .inputs()
                .forEach(slot -> out.append(input(worked, slot, system, ambient)));
        out.append("</ul><ol>");
        worked.steps().forEach(step -> out.append(line(worked, step, system, ambient)));
        return out.append("</ol></div>").toString();
    }

    private String input(Worked worked, Slot slot, UnitSystem system, double ambient) {
        Object value = worked.in().get(slot.name());
        StringBuilder out =
                new StringBuilder("<li>").append(Xml.escape(slot.meaning())).append(": ");
        if (value instanceof Double number) {
            Scale shop = SlotScale.of(slot, system);
            String told = Told.text(number, slot.quantity(), shop, ambient, DIGITS);
            String si = Told.text(number, slot.quantity(), slot.quantity().siScale(), ambient, 5);
            out.append(maths.inline(slot.symbol())).append(" = ").append(Xml.escape(told));
            if (!told.equals(si) && !plainNumber(slot.quantity())) {
                out.append(" = ").append(Xml.escape(si));
            }
        } else if (value instanceof List<?> readings) {
            out.append(
                    Xml.escape(
                            readings.stream()
                                    .map(
                                            v ->
                                                    Told.number(
                                                            (Double) v,
                                                            slot.quantity(),
                                                            SlotScale.of(slot, system),
                                                            ambient,
                                                            5))
                                    .reduce((a, b) -> a + "; " + b)
                                    .orElse("")));
        } else {
            out.append(Xml.escape(String.valueOf(value)));
        }
        return out.append("</li>").toString();
    }

    private String line(Worked worked, Step step, UnitSystem system, double ambient) {
        StringBuilder out =
                new StringBuilder("<li><p>").append(Xml.escape(step.text())).append("</p>");
        if (!step.formula().isEmpty()) {
            out.append("<div class=\"eq\">").append(lines.symbolic(step, worked)).append("</div>");
        }
        out.append("<div class=\"eq numbers\">")
                .append(lines.numeric(step, worked))
                .append("</div>");
        if (step.output()) {
            Slot slot = worked.relation().slot(step.name()).orElseThrow();
            String told =
                    Told.text(
                            step.value(),
                            slot.quantity(),
                            SlotScale.of(slot, system),
                            ambient,
                            DIGITS);
            if (!plainNumber(slot.quantity())) {
                out.append("<p class=\"told\">")
                        .append(Xml.escape(Words.of("working.told", told)))
                        .append("</p>");
            }
        }
        return out.append("</li>").toString();
    }

    private static boolean plainNumber(Quantity quantity) {
        return quantity.si().symbol().equals("1") && quantity != Quantity.PERCENTAGE;
    }
}
