// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.physics.engine.TorquePower;
import hotside.statistics.draw.Gaussian;
import hotside.statistics.draw.SplitMix64;
import hotside.statistics.reading.SweepInertia;
import hotside.unit.Quantity;
import hotside.unit.Shown;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One pull of a rig in the cell: what its sensors showed, and the truth beside it. The same rig,
 * seed and number give the same pull.
 *
 * <p>A pull holds speeds one after the other, each row the mean over the end of a hold; or it
 * ramps, one row a sample, with the rotor lagging by its inertia and the brake missing what
 * speeding up takes.
 */
public final class Pull {
    private static final int MOST_SAMPLES = 1_000_000;
    private static final int MOST_RAMP_SAMPLES = 20_000;

    /** A rotor that stands still could not be spun up; turns per second. */
    private static final double LEAST_TURNING = 1;

    private final Rig rig;
    private final long seed;
    private final int number;
    private final List<Row> rows = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();
    private final List<Instrument> instruments = new ArrayList<>();

    private Pull(Rig rig, long seed, int number) {
        SplitMix64 seeds = new SplitMix64(seed);
        this.seed = seed;
        this.number = number;
        this.rig = Day.at(rig, number, new Gaussian(new SplitMix64(seeds.next())).next());
        // One stream for each channel, sensor or not: fitting a sensor changes no other's readings.
        Map<Channel, Gaussian> chances = new EnumMap<>(Channel.class);
        for (Channel channel : Channel.values()) {
            chances.put(channel, new Gaussian(new SplitMix64(seeds.next())));
        }
        rig.sensors().forEach(s -> instruments.add(new Instrument(s, chances.get(s.channel()))));
    }

    /** The first pull of a day. */
    public static Pull run(Rig rig, long seed) {
        return run(rig, seed, 1);
    }

    /**
     * @param rig as built; the day's drift and heat soak are added
     * @param seed of engine scatter and noise
     * @param number of the pull in the day, from 1
     * @throws RigException if the rig cannot run so, or the pull would be too long
     */
    public static Pull run(Rig rig, long seed, int number) {
        if (number < 1 || number > 1000) {
            throw new RigException(
                    CellWords.of("pull.number", number), CellWords.of("pull.number.wanted"));
        }
        Pull pull = new Pull(rig, seed, number);
        if (rig.bench().rampRate() > 0) {
            pull.ramp();
        } else {
            pull.steps();
        }
        return pull;
    }

    /** The rig as it was on the day. */
    public Rig rig() {
        return rig;
    }

    public long seed() {
        return seed;
    }

    /** Of the pull in the day, from 1. */
    public int number() {
        return number;
    }

    /** By time. */
    public List<Row> rows() {
        return List.copyOf(rows);
    }

    /** Who decided the boost, and what else a person should know, whenever that changed. */
    public List<Note> notes() {
        return List.copyOf(notes);
    }

    /** What the sensors of a rig show at a speed when all has settled, noise and day apart. */
    static Map<Channel, Double> settled(Rig rig, double speed) {
        OperatingPoint point = OperatingPoint.solve(rig, speed);
        Moment moment = new Moment(0, point.torque() - missing(rig.bench()), point);
        Map<Channel, Double> readings = new EnumMap<>(Channel.class);
        for (Sensor sensor : rig.sensors()) {
            Channel channel = sensor.channel();
            readings.put(channel, sensor.shows(channel.truth(moment), 0));
        }
        conclude(rig.bench(), readings);
        return readings;
    }

    private void steps() {
        Bench bench = rig.bench();
        int holds =
                (int) Math.floor((bench.toSpeed() - bench.fromSpeed()) / bench.step() + 1e-9) + 1;
        int samples = (int) Math.max(1, Math.round(bench.hold() / bench.sampling()));
        requireShort((double) holds * samples, MOST_SAMPLES, "pull.long.holds");
        for (int i = 0; i < holds; i++) {
            double speed = bench.fromSpeed() + i * bench.step();
            Optional<OperatingPoint> point = withinLimit(speed);
            if (point.isEmpty()) {
                cutOff(speed);
                return;
            }
            double torque = point.get().torque();
            hold(new Moment((i + 1) * bench.hold(), torque, point.get()), samples);
        }
    }

    /** The steady point; empty if the cell would stop the pull there. */
    private Optional<OperatingPoint> withinLimit(double speed) {
        try {
            OperatingPoint point = OperatingPoint.solve(rig, speed);
            return point.boost() > rig.bench().boostLimit() ? Optional.empty() : Optional.of(point);
        } catch (RigException e) {
            // Boost that finds no balance runs away, and so meets the limit.
            return Optional.empty();
        }
    }

    private void cutOff(double speed) {
        String limit =
                Shown.of(rig.bench().boostLimit(), Quantity.GAUGE_PRESSURE, UnitSystem.SI_SHOP, 3)
                        .text();
        if (rows.isEmpty()) {
            throw new RigException(
                    CellWords.of("pull.beyond", limit), CellWords.of("pull.beyond.wanted"));
        }
        notes.add(new Note(speed, List.of(CellWords.of("pull.stopped", limit))));
    }

    private void hold(Moment moment, int samples) {
        Bench bench = rig.bench();
        int averaged = (int) Math.max(1, Math.min(samples, bench.averaging() / bench.sampling()));
        Map<Channel, Double> sums = new EnumMap<>(Channel.class);
        for (int i = 0; i < samples; i++) {
            for (Instrument instrument : instruments) {
                Channel channel = instrument.channel();
                double reading = instrument.sample(channel.truth(moment), bench.sampling());
                if (i >= samples - averaged) {
                    sums.merge(channel, reading / averaged, Double::sum);
                }
            }
        }
        record(moment, sums);
    }

    private void ramp() {
        Bench bench = rig.bench();
        double duration = (bench.toSpeed() - bench.fromSpeed()) / bench.rampRate();
        requireShort(duration / bench.sampling(), MOST_RAMP_SAMPLES, "pull.long.ramp");
        double missing = missing(bench);
        double turning =
                Math.max(
                        LEAST_TURNING,
                        withinLimit(bench.fromSpeed())
                                .map(OperatingPoint::turboSpeed)
                                .orElse(LEAST_TURNING));
        int samples = (int) Math.floor(duration / bench.sampling() + 1e-9);
        for (int i = 0; i <= samples; i++) {
            double time = i * bench.sampling();
            double speed = bench.fromSpeed() + bench.rampRate() * time;
            OperatingPoint point = OperatingPoint.spinning(rig, speed, turning);
            if (point.boost() > bench.boostLimit()) {
                cutOff(speed);
                return;
            }
            sample(new Moment(time, point.torque() - missing, point));
            turning =
                    Math.max(
                            LEAST_TURNING,
                            Spool.after(rig, speed, bench.rampRate(), turning, bench.sampling()));
        }
    }

    private void sample(Moment moment) {
        Map<Channel, Double> readings = new EnumMap<>(Channel.class);
        for (Instrument instrument : instruments) {
            Channel channel = instrument.channel();
            readings.put(channel, instrument.sample(channel.truth(moment), rig.bench().sampling()));
        }
        record(moment, readings);
    }

    private void record(Moment moment, Map<Channel, Double> readings) {
        conclude(rig.bench(), readings);
        Map<Channel, Double> truth = new EnumMap<>(Channel.class);
        for (Channel channel : Channel.values()) {
            truth.put(channel, channel.truth(moment));
        }
        rows.add(new Row(moment.time(), readings, truth));
        note(moment.point());
    }

    /** What speeding up takes from the brake, N·m. */
    private static double missing(Bench bench) {
        return SweepInertia.torque(bench.inertia(), bench.rampRate());
    }

    /** What the cell makes of torque: it adds back what it believes is missing, and corrects. */
    private static void conclude(Bench bench, Map<Channel, Double> readings) {
        double added = SweepInertia.torque(bench.inertiaSetting(), bench.rampRate());
        readings.computeIfPresent(
                Channel.TORQUE, (channel, torque) -> (torque + added) * bench.powerFactor());
        Double torque = readings.get(Channel.TORQUE);
        Double speed = readings.get(Channel.ENGINE_SPEED);
        if (torque != null && speed != null) {
            readings.putIfAbsent(Channel.POWER, TorquePower.of(torque, speed));
        }
    }

    private void note(OperatingPoint point) {
        List<String> now = point.statements();
        if (notes.isEmpty() || !notes.get(notes.size() - 1).statements().equals(now)) {
            notes.add(new Note(point.speed(), now));
        }
    }

    private static void requireShort(double samples, int most, String remedy) {
        if (!(samples <= most)) {
            throw new RigException(
                    CellWords.of("pull.long", Math.round(samples)), CellWords.of(remedy, most));
        }
    }
}
