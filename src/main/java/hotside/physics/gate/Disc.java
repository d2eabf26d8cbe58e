// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

/** The round areas that pressures act on. */
public final class Disc {
    private Disc() {}

    /** Area of a disc, m²; it goes with the square of the diameter, m. */
    public static double area(double diameter) {
        return Math.PI / 4 * diameter * diameter;
    }
}
