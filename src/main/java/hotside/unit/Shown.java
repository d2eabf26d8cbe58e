// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

/**
 * The core's number as a person reads it: {@code 85.0 kPa gauge}, {@code 45°}, {@code yes}.
 *
 * @param number in digits, or {@code yes} or {@code no}
 * @param scale what the number is in
 */
public record Shown(String number, Scale scale) {

    /**
     * A number on this scale.
     *
     * @param si the core's number
     * @param quantity what it measures; of the dimension of the scale
     * @param scale to show it on
     * @param ambient absolute ambient pressure in Pa, used when gauge and absolute meet
     * @param digits significant digits, 1 to 15; counts are shown whole whatever it says
     * @param habit the reader's decimal mark
     */
    public static Shown of(
            double si,
            Quantity quantity,
            Scale scale,
            double ambient,
            int digits,
            DecimalHabit habit) {
        double value = scale.fromSi(si, quantity, ambient);
        boolean finite = Double.isFinite(value);
        String number =
                switch (quantity) {
                    case FLAG -> UnitWords.of(si == 0 ? "no" : "yes");
                    case COUNT ->
                            finite
                                    ? Numbers.plain(Math.rint(value))
                                    : Numbers.significant(value, digits);
                    default -> Numbers.significant(value, digits);
                };
        return new Shown(habit.write(number), scale);
    }

    /** In the units of this shop, with the standard atmosphere around, in the language spoken. */
    public static Shown of(double si, Quantity quantity, UnitSystem system, int digits) {
        return of(
                si,
                quantity,
                quantity.shown(system),
                Units.STANDARD_ATMOSPHERE,
                digits,
                DecimalHabit.spoken());
    }

    /** Number and unit together. */
    public String text() {
        boolean inDigits = number.chars().anyMatch(c -> c >= '0' && c <= '9');
        return inDigits ? join(number, scale) : number;
    }

    /** As {@link #text}. */
    @Override
    public String toString() {
        return text();
    }

    /** A number with the unit after it; the degree of an angle closes up, as NIST SP 811 has it. */
    static String join(String number, Scale scale) {
        String label = scale.told();
        return label.isEmpty() || label.equals("°") ? number + label : number + " " + label;
    }
}
