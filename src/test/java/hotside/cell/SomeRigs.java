// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.statistics.draw.SplitMix64;
import java.util.List;

/** Rigs for tests: the shipped ones, and seeded variations of them. */
final class SomeRigs {
    private static final Stock STOCK = Stock.shipped();

    private SomeRigs() {}

    static List<Rig> shipped() {
        return STOCK.rigs();
    }

    static Rig named(String id) {
        return STOCK.rig(id).orElseThrow();
    }

    static Part part(String id) {
        return STOCK.part(id).orElseThrow();
    }

    /** A shipped rig with other parts, air, gate and control, as a workshop might put together. */
    static Rig random(long seed) {
        SplitMix64 random = new SplitMix64(seed);
        Rig rig = shipped().get(random.below(shipped().size()));
        double size = Math.cbrt(rig.engine().displacement() / 4.6e-3);
        rig = scaled(rig, random, "turbo.effectiveArea", 0.7, 1.5);
        rig = scaled(rig, random, "gate.seatDiameter", 0.8, 1.3);
        rig = scaled(rig, random, "gate.preload", 0.6, 1.4);
        rig = scaled(rig, random, "gate.rate", 0.6, 2);
        rig =
                rig.with("gate.vents", random.below(2) == 0 ? "ambient" : "pipe")
                        .with(
                                "control.kind",
                                List.of("spring", "bleed", "regulated").get(random.below(3)))
                        .with("control.signalShare", between(random, 0.5, 1))
                        .with("control.targetBoost", between(random, 20e3, 110e3))
                        .with("control.leastShare", between(random, 0.3, 0.7))
                        .with("exhaust.bore", size * between(random, 0.05, 0.13))
                        .with("exhaust.length", between(random, 0.3, 5))
                        .with("exhaust.bends", between(random, 0, 3))
                        .with("exhaust.mufflerLoss", random.below(2) * between(random, 0.5, 3))
                        .with("ambient.pressure", between(random, 75e3, 102e3))
                        .with("ambient.temperature", between(random, 265, 315));
        return seed % 10 == 0 ? faulty(rig, random) : rig;
    }

    /** With a leak, a leaking seat or a stuck valve. */
    private static Rig faulty(Rig rig, SplitMix64 random) {
        return switch (random.below(3)) {
            case 0 -> rig.with("turbo.inletLeak", between(random, 2e-3, 20e-3));
            case 1 -> rig.with("gate.seatLeak", between(random, 2e-3, 14e-3));
            default ->
                    rig.with("gate.stuck", "yes")
                            .with("gate.stuckLift", between(random, 4e-3, 10e-3));
        };
    }

    /** An engine speed, turns per second, for the same seed. */
    static double speed(Rig rig, long seed) {
        List<SpeedPoint> curve = rig.engine().curve();
        double last = curve.get(curve.size() - 1).speed();
        return between(new SplitMix64(~seed), 0.15 * last, 1.1 * last);
    }

    private static Rig scaled(Rig rig, SplitMix64 random, String path, double low, double high) {
        return rig.with(path, (Double) rig.value(path) * between(random, low, high));
    }

    static double between(SplitMix64 random, double low, double high) {
        return low + (high - low) * random.below(1_000_001) / 1e6;
    }
}
