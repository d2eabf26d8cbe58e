// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

/**
 * What share of the boost reaches the gate's diaphragm.
 *
 * @param kind how it is chosen
 * @param signalShare the share of a bleed set by hand
 * @param targetBoost that a regulating control holds, Pa gauge
 * @param leastShare the least share that a regulating control can give; it can always give all
 */
public record Control(Kind kind, double signalShare, double targetBoost, double leastShare) {
    /** How the share is chosen. */
    public enum Kind {
        /** All of the boost: the spring alone decides. */
        SPRING("spring"),
        /** A share set by hand. */
        BLEED("bleed"),
        /** Whatever share holds the target, within reach. */
        REGULATED("regulated");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** As in a rig file. */
        public String word() {
            return word;
        }
    }

    /** The share while boost is below any target: the most boost that this control can make. */
    double openLoopShare() {
        return switch (kind) {
            case SPRING -> 1;
            case BLEED -> signalShare;
            case REGULATED -> leastShare;
        };
    }

    boolean regulates() {
        return kind == Kind.REGULATED;
    }
}
