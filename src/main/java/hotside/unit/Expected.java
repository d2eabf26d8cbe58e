// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import java.util.Locale;

/**
 * What a field expects a person to type.
 *
 * @param quantity what is asked for
 * @param scale the unit printed beside the field, which a bare number is in; null if the unit has
 *     to be typed
 * @param ambient absolute ambient pressure in Pa, for where gauge and absolute meet
 * @param habit the person's decimal mark
 */
public record Expected(Quantity quantity, Scale scale, double ambient, DecimalHabit habit) {
    public Expected {
        if (scale != null && scale.unit().dimension() != quantity.dimension()) {
            throw new IllegalArgumentException(
                    scale.label() + " is no unit for " + quantity.words());
        }
        if (!Double.isFinite(ambient) || ambient < 0) {
            throw new IllegalArgumentException("ambient pressure " + ambient + " Pa");
        }
    }

    /** With the standard atmosphere around, and a point as decimal mark. */
    public static Expected of(Quantity quantity, Scale scale) {
        return new Expected(quantity, scale, Units.STANDARD_ATMOSPHERE, DecimalHabit.POINT);
    }

    /** In the unit that this shop reads the quantity in. */
    public static Expected of(Quantity quantity, UnitSystem system) {
        return of(quantity, quantity.shown(system));
    }

    public Expected withScale(Scale other) {
        return new Expected(quantity, other, ambient, habit);
    }

    public Expected withAmbient(double pascal) {
        return new Expected(quantity, scale, pascal, habit);
    }

    public Expected withHabit(DecimalHabit other) {
        return new Expected(quantity, scale, ambient, other);
    }

    /** The zero that a pressure without a mark is counted from: that of the field. */
    Reference unmarked() {
        boolean fieldSays = scale != null && scale.reference() != Reference.NONE;
        return fieldSays && quantity != Quantity.PRESSURE_DIFFERENCE
                ? scale.reference()
                : quantity.naturalReference();
    }

    /** A whole sentence: what was expected, with an example. */
    String sentence() {
        return switch (quantity) {
            case FLAG -> UnitWords.of("type-yes-or-no");
            case COUNT -> UnitWords.of("such-as", expectation(), "4");
            default -> UnitWords.of("such-as", expectation(), example());
        };
    }

    /** A number as it could be typed, with its unit. */
    String example() {
        Scale shown = scale == null ? quantity.shown(UnitSystem.SI_SHOP) : scale;
        return Shown.join(written("12.5"), shown);
    }

    /** Numbers that were written with a point, with the person's mark, or that of the language. */
    String written(String numbers) {
        return (habit == DecimalHabit.UNKNOWN ? DecimalHabit.spoken() : habit).write(numbers);
    }

    /** {@code A gauge pressure was expected}, to be gone on with. */
    String expectation() {
        return UnitWords.of("expected." + quantity.name().toLowerCase(Locale.ROOT));
    }
}
