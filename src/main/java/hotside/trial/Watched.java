// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

import hotside.unit.Quantity;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What a prediction is made of: each changes by so much, on average over the band, when a part is
 * fitted.
 */
public enum Watched {
    POWER("power", Quantity.POWER, Truth::gain),
    BOOST("boost", Quantity.PRESSURE_DIFFERENCE, Truth::boost),
    TURBINE_INLET("pressure before the turbine", Quantity.PRESSURE_DIFFERENCE, Truth::turbineInlet),
    TURBINE_OUTLET(
            "pressure behind the turbine", Quantity.PRESSURE_DIFFERENCE, Truth::turbineOutlet);

    /** So little counts as no change: half a kilopascal, or half a percent of power. */
    private static final double STILL = 500;

    private static final double STILL_POWER = 0.005;

    private final String topic;
    private final Quantity quantity;
    private final ToDoubleFunction<Truth> change;

    Watched(String topic, Quantity quantity, ToDoubleFunction<Truth> change) {
        this.topic = topic;
        this.quantity = quantity;
        this.change = change;
    }

    /** As typed: {@code turbine-inlet}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Watched> find(String id) {
        return Arrays.stream(values()).filter(w -> w.id().equals(id)).findFirst();
    }

    /** What it is called, in the language spoken. */
    public String words() {
        return TrialWords.topic(topic);
    }

    /** What it is called in English, whatever the language. */
    String topic() {
        return topic;
    }

    public Quantity quantity() {
        return quantity;
    }

    /** The true change, SI. */
    public double change(Truth truth) {
        return change.applyAsDouble(truth);
    }

    /** Below this a change counts as none, SI. */
    public double still(Truth truth) {
        return this == POWER ? STILL_POWER * truth.power() : STILL;
    }

    /** Which way it truly goes. */
    public Direction direction(Truth truth) {
        double by = change(truth);
        return Math.abs(by) < still(truth)
                ? Direction.STAYS
                : by < 0 ? Direction.FALLS : Direction.RISES;
    }

    /** Ways to go. */
    public enum Direction {
        FALLS,
        STAYS,
        RISES;

        /** As typed. */
        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Direction> find(String id) {
            return Arrays.stream(values()).filter(d -> d.id().equals(id)).findFirst();
        }
    }
}
