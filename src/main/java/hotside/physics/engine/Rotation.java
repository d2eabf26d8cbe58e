// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

/** Turns per second, in which the core counts, and radians per second, in which mechanics does. */
public final class Rotation {
    private Rotation() {}

    /**
     * @param turnsPerSecond rotational frequency, 1/s
     * @return angular velocity, rad/s
     */
    public static double angular(double turnsPerSecond) {
        return 2 * Math.PI * turnsPerSecond;
    }

    /**
     * @param radiansPerSecond angular velocity, rad/s
     * @return rotational frequency, 1/s
     */
    public static double turns(double radiansPerSecond) {
        return radiansPerSecond / (2 * Math.PI);
    }
}
