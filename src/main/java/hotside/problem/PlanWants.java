// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.Channel;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What a plan must do to be right.
 *
 * @param before the letter of what is measured by
 * @param after the letter of what is measured
 * @param boost what has to become of boost
 * @param sees the gain that must be found four times out of five: a given or a power; empty for the
 *     true one
 * @param time that all pulls together may take: a given or a time; empty for any
 * @param log what must be logged
 */
public record PlanWants(
        String before,
        String after,
        Boost boost,
        Optional<String> sees,
        Optional<String> time,
        Set<Channel> log) {

    /** What has to become of boost. */
    public enum Boost {
        /** It is held. */
        HELD,
        /** It is held, or logged so that it can be split off. */
        LOGGED,
        /** It may do what it likes. */
        FREE;

        String id() {
            return name().toLowerCase(Locale.ROOT);
        }

        static List<String> ids() {
            return Arrays.stream(values()).map(Boost::id).toList();
        }
    }

    /** What a verdict on a plan may name. */
    static final List<String> MISTAKES =
            List.of(
                    "nothing-compared",
                    "wrong-parts",
                    "two-changes",
                    "too-few-pulls",
                    "order-lets-drift-in",
                    "cold-cell",
                    "pulls-too-close",
                    "takes-too-long",
                    "boost-left-free",
                    "boost-out-of-reach",
                    "not-logged");
}
