// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.physics.engine.TorquePower;
import java.util.function.DoubleBinaryOperator;

/** One pull of a run log: rows from one end of the speed range to the other. Immutable. */
public final class Pull {
    private final RunLog log;
    private final String label;
    private final int from;
    private final int to;

    Pull(RunLog log, String label, int from, int to) {
        this.log = log;
        this.label = label;
        this.from = from;
        this.to = to;
    }

    public RunLog log() {
        return log;
    }

    public String label() {
        return label;
    }

    /** First row in the log. */
    public int from() {
        return from;
    }

    /** Row after the last in the log. */
    public int to() {
        return to;
    }

    public int rows() {
        return to - from;
    }

    /** Whether the channel was logged, or follows from what was: power from torque and back. */
    public boolean has(Channel channel) {
        return logged(channel)
                || logged(Channel.SPEED)
                        && (channel == Channel.POWER && logged(Channel.TORQUE)
                                || channel == Channel.TORQUE && logged(Channel.POWER));
    }

    private boolean logged(Channel channel) {
        return log.indexOf(channel) >= 0;
    }

    /**
     * The readings, in SI, one for each row; NaN where missing. Power that was not logged is worked
     * from torque and speed, torque from power and speed.
     *
     * @throws IllegalArgumentException if there is no such channel
     */
    public double[] values(Channel channel) {
        int column = log.indexOf(channel);
        if (column >= 0) {
            return log.copy(column, from, to);
        }
        if (!has(channel)) {
            throw new IllegalArgumentException(log.name() + " has no " + channel.words());
        }
        return channel == Channel.POWER
                ? withSpeed(Channel.TORQUE, TorquePower::of)
                : withSpeed(Channel.POWER, TorquePower::torque);
    }

    private double[] withSpeed(Channel other, DoubleBinaryOperator relation) {
        double[] out = values(other);
        double[] speed = values(Channel.SPEED);
        for (int i = 0; i < out.length; i++) {
            out[i] = relation.applyAsDouble(out[i], speed[i]);
        }
        return out;
    }

    /** The channel against engine speed, as read: ascending speed, repeated speeds averaged. */
    public Curve curve(Channel channel) {
        return Curve.through(values(Channel.SPEED), values(channel));
    }
}
