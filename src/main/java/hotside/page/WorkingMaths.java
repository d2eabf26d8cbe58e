// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.relation.Slot;
import hotside.relation.Step;
import hotside.relation.StepTex;
import hotside.relation.Worked;
import hotside.unit.Quantity;

/**
 * The lines of a working in MathML, with symbols and with numbers: what {@link StepTex} says in
 * TeX. Numbers come in SI units.
 */
public final class WorkingMaths {
    private record Known(String symbol, Quantity quantity, Object value) {}

    private final Maths maths;

    public WorkingMaths(Maths maths) {
        this.maths = maths;
    }

    /**
     * The line with symbols; the symbol alone for a line in words. A long line comes in pieces, see
     * {@link Maths#line}.
     */
    public String symbolic(Step step, Worked worked) {
        return maths.line(new StepTex(worked).symbolic(step));
    }

    /** The line with the numbers put in, and its result; a long one in pieces. */
    public String numeric(Step step, Worked worked) {
        return template(step).fillLine(place -> piece(place, step, worked));
    }

    /** {@link #symbolic} as plain text. */
    public String symbolicText(Step step, Worked worked) {
        return maths.plain(new StepTex(worked).symbolic(step));
    }

    /** {@link #numeric} as plain text. */
    public String numericText(Step step, Worked worked) {
        return template(step).plain(place -> piece(place, step, worked));
    }

    /** The result stands as a place of the step's own name after the last equals sign. */
    private MathTemplate template(Step step) {
        String middle = step.formula().isEmpty() ? "" : " = " + StepTex.multiplied(step.formula());
        return maths.template(step.symbol() + middle + " = @" + step.name());
    }

    private MathPiece piece(MathTemplate.Place place, Step step, Worked worked) {
        if (place.name().equals(step.name())) {
            return MathPiece.quantity(step.value(), step.quantity());
        }
        Known known = known(place.name(), worked);
        MathPiece piece =
                known.value() instanceof Double number
                        ? MathPiece.quantity(number, known.quantity())
                        : symbol(known.symbol());
        return place.raised() || piece.isNegative() ? piece.inParentheses() : piece;
    }

    /** Readings and words stay symbols: a row of numbers does not fit in a formula. */
    private MathPiece symbol(String tex) {
        String mathml = maths.inline(tex);
        String inner = mathml.substring(mathml.indexOf('>') + 1, mathml.lastIndexOf("</math>"));
        return new MathPiece(inner, maths.plain(tex));
    }

    private static Known known(String name, Worked worked) {
        for (Step line : worked.steps()) {
            if (line.name().equals(name)) {
                return new Known(line.symbol(), line.quantity(), line.value());
            }
        }
        for (Slot slot : worked.relation().inputs()) {
            if (slot.name().equals(name)) {
                return new Known(slot.symbol(), slot.quantity(), worked.in().get(name));
            }
        }
        throw new IllegalStateException("formula names what is not known: @" + name);
    }
}
