// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

/**
 * A pull with the factor that its power is corrected by.
 *
 * @param pull as read
 * @param factor on power and torque; 1 for none
 */
public record Run(Pull pull, double factor) {
    /** The channel against speed, power and torque corrected. */
    public Curve curve(Channel channel) {
        Curve raw = pull.curve(channel);
        boolean corrected = channel == Channel.POWER || channel == Channel.TORQUE;
        return corrected && factor != 1 ? raw.times(factor) : raw;
    }

    /** {@code pull 2 of base.csv}. */
    public String words() {
        return LogWords.of("run", pull.label(), pull.log().name());
    }
}
