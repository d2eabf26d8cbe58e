// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as people read them, rounded as a pocket calculator does: half goes up. A point is the
 * decimal mark here; a screen may put its own in its place.
 */
public final class Numbers {
    private static final int LONGEST_PLAIN = 7;
    private static final int SMALLEST_PLAIN = -4;
    private static final double NICE_EDGE = 1e-9;

    private Numbers() {}

    /**
     * A number rounded to significant digits, trailing zeros kept: {@code 66.0}, {@code 1.20×10⁻⁵}.
     *
     * @param digits 1 to 15
     */
    public static String significant(double value, int digits) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "not a number" : value > 0 ? "infinite" : "−infinite";
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded =
                BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        int exponent = rounded.precision() - rounded.scale() - 1;
        if (exponent >= LONGEST_PLAIN || exponent < SMALLEST_PLAIN) {
            return scientific(rounded.unscaledValue().toString(), exponent, digits);
        }
        BigDecimal padded =
                rounded.scale() < digits - 1 - exponent
                        ? rounded.setScale(Math.max(0, digits - 1 - exponent))
                        : rounded;
        return minus(
                padded.scale() < 0 ? padded.setScale(0).toPlainString() : padded.toPlainString());
    }

    /**
     * A number rounded to significant digits, trailing zeros dropped: {@code 66}, {@code 0.046}.
     */
    public static String upTo(double value, int digits) {
        if (value == 0 || !Double.isFinite(value)) {
            return significant(value, digits);
        }
        MathContext context = new MathContext(digits, RoundingMode.HALF_UP);
        int needed = BigDecimal.valueOf(value).round(context).stripTrailingZeros().precision();
        return significant(value, needed);
    }

    /** A number as it is, with no more digits than it has, at most ten: {@code 85}, {@code 3.5}. */
    public static String plain(double value) {
        if (!Double.isFinite(value) || value == 0) {
            return significant(value, 10);
        }
        BigDecimal rounded =
                BigDecimal.valueOf(value)
                        .round(new MathContext(10, RoundingMode.HALF_UP))
                        .stripTrailingZeros();
        int exponent = rounded.precision() - rounded.scale() - 1;
        if (exponent >= 10 || exponent < -6) {
            return scientific(rounded.unscaledValue().toString(), exponent, rounded.precision());
        }
        return minus(
                rounded.scale() < 0
                        ? rounded.setScale(0).toPlainString()
                        : rounded.toPlainString());
    }

    /** The number of significant digits rounded to, as a number. */
    public static double rounded(double value, int digits) {
        if (value == 0 || !Double.isFinite(value)) {
            return value;
        }
        return BigDecimal.valueOf(value)
                .round(new MathContext(digits, RoundingMode.HALF_UP))
                .doubleValue();
    }

    /**
     * The next of 1, 2, 5 or 10 times a power of ten: a step between marks that people count by.
     *
     * @param raw about how wide the step should be; above 0
     */
    public static BigDecimal niceStep(double raw) {
        int power = (int) Math.floor(Math.log10(raw));
        double lead = raw / Math.pow(10, power);
        int digit =
                lead <= 1 + NICE_EDGE
                        ? 1
                        : lead <= 2 + NICE_EDGE ? 2 : lead <= 5 + NICE_EDGE ? 5 : 10;
        return BigDecimal.valueOf(digit).scaleByPowerOfTen(power);
    }

    private static String scientific(String unscaled, int exponent, int digits) {
        String sign = unscaled.startsWith("-") ? "−" : "";
        StringBuilder mantissa = new StringBuilder(unscaled.replace("-", ""));
        while (mantissa.length() < digits) {
            mantissa.append('0');
        }
        if (mantissa.length() > 1) {
            mantissa.insert(1, '.');
        }
        return sign + mantissa + "×10" + superscript(exponent);
    }

    /** A whole number in raised digits: {@code ⁻¹²}. */
    public static String superscript(int exponent) {
        StringBuilder text = new StringBuilder();
        for (char c : Integer.toString(exponent).toCharArray()) {
            text.append(c == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(c - '0'));
        }
        return text.toString();
    }

    private static String minus(String text) {
        return text.replace('-', '−');
    }
}
