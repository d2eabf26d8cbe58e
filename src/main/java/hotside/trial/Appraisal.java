// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

import hotside.cell.Channel;
import hotside.cell.Day;
import hotside.cell.OperatingPoint;
import hotside.cell.Rig;
import hotside.statistics.MeanSpread;
import hotside.statistics.OrderBalance;
import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Shown;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What a plan is worth, told from the truth: what the day would put into the gain without any luck,
 * how small a difference the pulls can show, and what was left free to move.
 */
public final class Appraisal {
    /** A false gain below this share of what the pulls can show at all does no harm. */
    private static final double HARMLESS = 0.25;

    /** Boost that moves by more than this is a confounder, Pa. */
    private static final double MOVED = 300;

    private static final Set<Channel> NEEDED =
            Set.of(
                    Channel.BOOST,
                    Channel.TURBINE_INLET_PRESSURE,
                    Channel.TURBINE_OUTLET_PRESSURE,
                    Channel.AMBIENT_TEMPERATURE);

    private final Plan plan;
    private final int part;
    private final UnitSystem system;
    private final Truth truth;
    private final double bias;
    private final double scatter;
    private final double resolution;

    private Appraisal(Plan plan, int part, UnitSystem system) {
        this.plan = plan;
        this.part = part;
        this.system = system;
        truth = Truth.of(plan, part);
        double[] before = means(0);
        double[] after = means(part);
        bias = MeanSpread.of(after).mean() - MeanSpread.of(before).mean() - truth.gain();
        double luck = plan.parts().get(0).rig().bench().repeatability() * truth.power();
        scatter = Math.hypot(luck, pooled(before, after));
        resolution = Resolution.of(scatter, plan.pulls(0), plan.pulls(part));
    }

    /**
     * Judges a plan for one of its parts.
     *
     * @param part from 1; measured by part 0
     * @throws hotside.cell.RigException if a rig finds no balance
     */
    public static Appraisal of(Plan plan, int part, UnitSystem system) {
        return new Appraisal(plan, part, system);
    }

    public Truth truth() {
        return truth;
    }

    /** The false gain that air, coolant and the order of pulls make, W; luck apart. */
    public double bias() {
        return bias;
    }

    /** How far single pulls with one part stray, luck and day together: standard deviation, W. */
    public double scatter() {
        return scatter;
    }

    /**
     * The smallest gain that the pulls find four times out of five, W; infinite with single pulls.
     */
    public double resolution() {
        return resolution;
    }

    /** Mean power that each pull of a part would show if there were no luck, W. */
    private double[] means(int which) {
        Rig rig = plan.rig(which);
        return IntStream.range(0, plan.order().length())
                .filter(pull -> plan.part(pull) == which)
                .mapToDouble(pull -> mean(Day.at(rig, plan.warmUp() + pull + 1, 0)))
                .toArray();
    }

    private double mean(Rig rig) {
        return Arrays.stream(plan.speeds())
                .map(speed -> OperatingPoint.solve(rig, speed).power())
                .average()
                .orElseThrow();
    }

    /** Standard deviation within two rows together; 0 where neither is repeated. */
    private static double pooled(double[] a, double[] b) {
        double squares = squares(a) + squares(b);
        int free = a.length + b.length - 2;
        return free > 0 ? Math.sqrt(squares / free) : 0;
    }

    private static double squares(double[] row) {
        double mean = MeanSpread.of(row).mean();
        return Arrays.stream(row).map(x -> (x - mean) * (x - mean)).sum();
    }

    /** What is to be said of it, in the order in which a plan is made. */
    public List<Remark> remarks() {
        List<Remark> remarks = new ArrayList<>();
        remarks.add(oneChange());
        remarks.add(boost());
        remarks.add(repeats());
        remarks.add(order());
        remarks.add(logged());
        return remarks;
    }

    private Remark oneChange() {
        List<String> changed = plan.changes(part);
        if (changed.isEmpty()) {
            return Remark.mend(
                    "one change", "A and " + letter() + " are the same; nothing is compared.");
        }
        return changed.size() == 1
                ? Remark.good("one change", "Only the " + changed.get(0) + " differs.")
                : Remark.mend(
                        "one change",
                        "Between A and "
                                + letter()
                                + " there changes at once: "
                                + String.join(", ", changed)
                                + ". Whatever comes out, no pull tells which of them did it. Change one, pull, then the next.");
    }

    private Remark boost() {
        boolean moves = Math.abs(truth.boost()) > MOVED;
        String by = shown(truth.boost(), Quantity.PRESSURE_DIFFERENCE);
        if (plan.heldBoost().isPresent()) {
            return moves
                    ? Remark.mend(
                            "boost",
                            "The control was to hold boost, but it cannot with both parts: boost moves by "
                                    + by
                                    + ". Choose a boost that both can hold.")
                    : Remark.good(
                            "boost",
                            "Boost is held, so what the pulls show is the part and not the boost.");
        }
        if (!moves) {
            return Remark.good(
                    "boost", "Boost was left free, and this part hardly moves it (" + by + ").");
        }
        String apart =
                truth.boostPart().isPresent()
                        ? " Of the true gain of "
                                + shown(truth.gain(), Quantity.POWER)
                                + ", "
                                + shown(truth.boostPart().getAsDouble(), Quantity.POWER)
                                + " belong to that boost and not to the part."
                        : "";
        return plan.logged().contains(Channel.BOOST)
                ? Remark.mend(
                        "boost",
                        "Nobody touches the control, yet boost moves by "
                                + by
                                + " with the part, because pressure behind and before the valve moves the gate."
                                + apart
                                + " It is logged, so it can be split; to hold it would be better.")
                : Remark.mend(
                        "boost",
                        "Boost moves by "
                                + by
                                + " with the part, and it is neither held nor logged."
                                + apart
                                + " From these pulls nobody can tell.");
    }

    private Remark repeats() {
        if (Double.isInfinite(resolution)) {
            return Remark.mend(
                    "repeats",
                    "With "
                            + plan.pulls(0)
                            + " and "
                            + plan.pulls(part)
                            + " pulls nothing tells how far a single pull strays: there is no interval. Make at least three"
                            + " with each.");
        }
        String sees =
                plan.pulls(0)
                        + " and "
                        + plan.pulls(part)
                        + " pulls, each straying by "
                        + shown(scatter, Quantity.POWER)
                        + ", show a gain four times out of five if it is "
                        + shown(resolution, Quantity.POWER)
                        + " or more.";
        double gain = Math.abs(truth.gain());
        return gain >= resolution
                ? Remark.good(
                        "repeats",
                        sees + " The true gain is " + shown(truth.gain(), Quantity.POWER) + ".")
                : Remark.mend(
                        "repeats",
                        sees
                                + " The true gain is "
                                + shown(truth.gain(), Quantity.POWER)
                                + ": more pulls, or a steadier bench.");
    }

    private Remark order() {
        String pair = plan.order().replaceAll("[^A" + letter() + "]", "").replace(letter(), "B");
        double straight = OrderBalance.of(pair).driftBias();
        String drift =
                straight == 0
                        ? "A drift that goes on steadily falls out of this order."
                        : "For each unit that the bench drifts from pull to pull, this order puts "
                                + DecimalHabit.spoken().write(Numbers.upTo(straight, 3))
                                + " units into the gain.";
        String warm =
                plan.warmUp() == 0
                        ? " The first pulls are made on a cold cell, whose heat builds up from pull to pull; one or two"
                                + " pulls that do not count let it settle."
                        : "";
        double limit = HARMLESS * (Double.isInfinite(resolution) ? 3 * scatter : resolution);
        String made =
                "Air, coolant and heat of the day put "
                        + shown(bias, Quantity.POWER)
                        + " into this gain, luck apart. ";
        return Math.abs(bias) <= limit
                ? Remark.good("order", made + drift)
                : Remark.mend(
                        "order",
                        made
                                + drift
                                + warm
                                + " Turn the order round in its middle, as in ABBA, or wait longer between pulls.");
    }

    private Remark logged() {
        List<String> missing =
                NEEDED.stream()
                        .filter(channel -> !plan.logged().contains(channel))
                        .sorted()
                        .map(Appraisal::words)
                        .toList();
        return missing.isEmpty()
                ? Remark.good("log", "What is needed to explain a gain is logged.")
                : Remark.mend(
                        "log",
                        "Not logged: "
                                + String.join(", ", missing)
                                + ". Without them a gain may be seen and not explained.");
    }

    private static String words(Channel channel) {
        return switch (channel) {
            case BOOST -> "boost";
            case TURBINE_INLET_PRESSURE -> "pressure before the turbine";
            case TURBINE_OUTLET_PRESSURE -> "pressure behind the turbine";
            default -> "temperature of the air";
        };
    }

    private String letter() {
        return String.valueOf((char) ('A' + part));
    }

    private String shown(double si, Quantity quantity) {
        return Shown.of(si, quantity, system, 3).text();
    }
}
