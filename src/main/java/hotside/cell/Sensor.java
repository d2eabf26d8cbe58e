// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

/**
 * A sensor with its faults.
 *
 * @param channel what it reads
 * @param lowest that it can tell, SI
 * @param highest that it can tell, SI
 * @param noise standard deviation of each sample
 * @param offset added to every reading
 * @param gainError by which every reading is too large, as a share
 * @param lag time constant of its first-order answer, s; 0 for none
 * @param resolution step between readings that it can tell apart; 0 for none
 */
public record Sensor(
        Channel channel,
        double lowest,
        double highest,
        double noise,
        double offset,
        double gainError,
        double lag,
        double resolution) {

    /**
     * What it shows of a value it feels.
     *
     * @param felt SI, lagged already
     * @param chance a draw with mean 0 and standard deviation 1
     */
    double shows(double felt, double chance) {
        double raw = felt * (1 + gainError) + offset + noise * chance;
        double stepped = resolution > 0 ? resolution * Math.rint(raw / resolution) : raw;
        return Math.max(lowest, Math.min(highest, stepped));
    }
}
