// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

/**
 * What a day in the cell does to a rig: the air warms, pulls leave their heat around the cooler,
 * and an engine is never quite the same twice. Nobody touches the parts, yet the next pull differs.
 */
public final class Day {
    private static final double HOUR = 3600;

    private Day() {}

    /**
     * The rig as it is at a pull.
     *
     * @param number of the pull in the day, from 1, all at the rig's interval
     * @param chance a draw with mean 0 and standard deviation 1 for the engine's scatter
     */
    public static Rig at(Rig rig, int number, double chance) {
        Bench bench = rig.bench();
        double drift = bench.driftPerHour() * (number - 1) * bench.interval() / HOUR;
        double efficiency =
                rig.engine().indicatedEfficiency() * (1 + bench.repeatability() * chance);
        return rig.with("ambient.temperature", rig.ambient().temperature() + drift)
                .with(
                        "cooler.coolantTemperature",
                        rig.cooler().coolantTemperature() + drift + soak(bench, number))
                .with("engine.indicatedEfficiency", efficiency);
    }

    /**
     * Warmth that the earlier pulls of the day left, K: each fades exponentially, so their sum is
     * that of a geometric series.
     */
    static double soak(Bench bench, int number) {
        double kept = Math.exp(-bench.interval() / bench.soakRecovery());
        return bench.soakPerPull() * kept * (1 - Math.pow(kept, number - 1)) / (1 - kept);
    }
}
