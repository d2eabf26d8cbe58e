// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.relation.Step;
import hotside.relation.Worked;
import hotside.unit.UnitSystem;

/** A working in plain text, line by line. */
public final class WorkingText {
    private static final int DIGITS = 4;

    private final WorkingMaths lines;

    public WorkingText(Maths maths) {
        this.lines = new WorkingMaths(maths);
    }

    /**
     * @param worked what to tell
     * @param system the shop in whose units results are told
     * @param ambient absolute pressure of the air around, Pa
     */
    public String of(Worked worked, UnitSystem system, double ambient) {
        return of(worked, system, ambient, worked.steps().size());
    }

    /** As above with the last steps left out but for their reasons. */
    String of(Worked worked, UnitSystem system, double ambient, int shown) {
        StringBuilder out = new StringBuilder(worked.relation().title()).append('\n');
        int number = 0;
        for (Step step : worked.steps()) {
            out.append("  ").append(++number).append(". ").append(step.text()).append('\n');
            if (number > shown) {
                out.append("     ").append(Words.of("faded.left-out")).append('\n');
                continue;
            }
            if (!step.formula().isEmpty()) {
                out.append("     ").append(lines.symbolicText(step, worked)).append('\n');
            }
            out.append("     ").append(lines.numericText(step, worked));
            if (step.output()) {
                Slot slot = worked.relation().slot(step.name()).orElseThrow();
                String told =
                        Told.text(
                                step.value(),
                                slot.quantity(),
                                SlotScale.of(slot, system),
                                ambient,
                                DIGITS);
                out.append("   (").append(told).append(')');
            }
            out.append('\n');
        }
        return out.toString();
    }
}
