// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.physics.engine.BoostWorth;
import hotside.relation.Relation;
import java.util.List;

/**
 * What a unit of boost is taken to be worth in power.
 *
 * @param value W/Pa
 * @param uncertainty standard uncertainty, W/Pa
 * @param origin where it came from; a phrase
 * @param conditions under which it holds; phrases
 */
public record Worth(double value, double uncertainty, String origin, List<String> conditions) {
    /** Standard uncertainty of a worth that came without one: a judgement, no source. */
    public static final double SHARE_IN_DOUBT = 0.10;

    public Worth {
        conditions = List.copyOf(conditions);
    }

    /** A worth that somebody states, known to a tenth. */
    public static Worth stated(double value) {
        return new Worth(
                value,
                SHARE_IN_DOUBT * Math.abs(value),
                LogWords.of("worth.stated-tenth"),
                List.of());
    }

    public static Worth stated(double value, double uncertainty) {
        return new Worth(value, uncertainty, LogWords.of("worth.stated"), List.of());
    }

    /**
     * The trade's rule, known to a tenth.
     *
     * @param naturallyAspiratedPower W
     * @param ambient absolute, Pa
     */
    public static Worth byRule(double naturallyAspiratedPower, double ambient) {
        Relation rule = BoostWorth.RELATION;
        double value = BoostWorth.of(naturallyAspiratedPower, ambient);
        return new Worth(
                value, SHARE_IN_DOUBT * value, LogWords.of("worth.rule"), rule.assumptions());
    }
}
