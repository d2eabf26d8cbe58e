// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.relation.StepTex;
import hotside.unit.DecimalHabit;
import hotside.unit.Quantity;

/**
 * What is put into a place of a {@link MathTemplate}.
 *
 * @param mathml one element of MathML
 * @param plain the same as plain text
 */
public record MathPiece(String mathml, String plain) {
    private static final String GAP = "<mspace width=\"0.17em\"/>";
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /** A number to the digits of a working, with its SI unit. */
    public static MathPiece quantity(double value, Quantity quantity) {
        return of(
                DecimalHabit.spoken().write(StepTex.written(value, quantity)),
                quantity.si().told());
    }

    /**
     * A number as {@link Numbers} writes it, with a unit.
     *
     * @param number such as {@code −3.20} or {@code 1.20×10⁻⁵}
     * @param unit as printed; {@code 1} or empty for a pure number
     */
    public static MathPiece of(String number, String unit) {
        boolean pure = unit.isEmpty() || unit.equals("1");
        String figures = figures(number);
        return pure
                ? new MathPiece("<mrow>" + figures + "</mrow>", number)
                : new MathPiece(
                        "<mrow>" + figures + GAP + "<mtext>" + Xml.escape(unit) + "</mtext></mrow>",
                        number + " " + unit);
    }

    /** As it must stand before a power, or after an operator if it is negative. */
    public MathPiece inParentheses() {
        return new MathPiece(
                "<mrow><mo fence=\"true\" form=\"prefix\">(</mo>"
                        + mathml
                        + "<mo fence=\"true\" form=\"postfix\">)</mo></mrow>",
                "(" + plain + ")");
    }

    boolean isNegative() {
        return plain.startsWith("−");
    }

    private static String figures(String number) {
        if (number.startsWith("−")) {
            return "<mo form=\"prefix\">−</mo>" + figures(number.substring(1));
        }
        if (!Character.isDigit(number.charAt(0))) {
            return "<mtext>" + Xml.escape(number) + "</mtext>";
        }
        int times = number.indexOf("×10");
        return times < 0
                ? "<mn>" + number + "</mn>"
                : "<mn>"
                        + number.substring(0, times)
                        + "</mn><mo>×</mo><msup><mn>10</mn>"
                        + exponent(number.substring(times + 3))
                        + "</msup>";
    }

    private static String exponent(String superscript) {
        StringBuilder digits = new StringBuilder();
        for (char c : superscript.toCharArray()) {
            if (c != '⁻') {
                digits.append(SUPERSCRIPTS.indexOf(c));
            }
        }
        String number = "<mn>" + digits + "</mn>";
        return superscript.startsWith("⁻")
                ? "<mrow><mo form=\"prefix\">−</mo>" + number + "</mrow>"
                : number;
    }
}
