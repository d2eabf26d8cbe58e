// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

/**
 * A round pipe of one bore.
 *
 * @param diameter bore, m, above 0
 * @param length along its middle, m, at least 0
 * @param roughness height of the equivalent sand grains, m, at least 0
 * @param lossSum sum of the loss coefficients of its bends and fittings, at least 0, each counted
 *     in velocity heads of this bore
 */
public record Pipe(double diameter, double length, double roughness, double lossSum) {
    /** Roughness of commercial steel tube, m (Moody 1944, from memory). */
    public static final double STEEL = 45e-6;

    /**
     * @throws IllegalArgumentException if a measure is negative or not finite, or the bore is 0
     */
    public Pipe {
        if (!(diameter > 0) || !atLeastZero(length, roughness, lossSum)) {
            throw new IllegalArgumentException(
                    "no such pipe: bore %s m, length %s m, roughness %s m, losses %s"
                            .formatted(diameter, length, roughness, lossSum));
        }
    }

    private static boolean atLeastZero(double... values) {
        for (double value : values) {
            if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
                return false;
            }
        }
        return true;
    }

    /** Flow area, m². */
    public double area() {
        return Math.PI / 4 * diameter * diameter;
    }

    /** Roughness over bore. */
    public double relativeRoughness() {
        return roughness / diameter;
    }

    /**
     * Velocity heads that the whole pipe takes: wall and fittings.
     *
     * @param frictionFactor Darcy's
     */
    public double resistance(double frictionFactor) {
        return frictionFactor * length / diameter + lossSum;
    }
}
