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
        List<String> changed = plan.changesInWords(part);
        if (changed.isEmpty()) {
            return Remark.mend("one change", TrialWords.of("change.none", letter()));
        }
        return changed.size() == 1
                ? Remark.good("one change", TrialWords.of("change.one", changed.get(0)))
                : Remark.mend(
                        "one change",
                        TrialWords.of("change.many", letter(), String.join(", ", changed)));
    }

    private Remark boost() {
        boolean moves = Math.abs(truth.boost()) > MOVED;
        String by = shown(truth.boost(), Quantity.PRESSURE_DIFFERENCE);
        if (plan.heldBoost().isPresent()) {
            return moves
                    ? Remark.mend("boost", TrialWords.of("boost.out-of-reach", by))
                    : Remark.good("boost", TrialWords.of("boost.held"));
        }
        if (!moves) {
            return Remark.good("boost", TrialWords.of("boost.still", by));
        }
        boolean logged = plan.logged().contains(Channel.BOOST);
        return Remark.mend(
                "boost", TrialWords.of(logged ? "boost.logged" : "boost.unseen", by, apart()));
    }

    /** What of the gain belongs to boost; nothing where that cannot be told. */
    private String apart() {
        return truth.boostPart().isPresent()
                ? TrialWords.of(
                        "boost.apart",
                        shown(truth.gain(), Quantity.POWER),
                        shown(truth.boostPart().getAsDouble(), Quantity.POWER))
                : "";
    }

    private Remark repeats() {
        if (Double.isInfinite(resolution)) {
            return Remark.mend(
                    "repeats", TrialWords.of("repeats.single", plan.pulls(0), plan.pulls(part)));
        }
        String sees =
                TrialWords.of(
                        "repeats.sees",
                        plan.pulls(0),
                        plan.pulls(part),
                        shown(scatter, Quantity.POWER),
                        shown(resolution, Quantity.POWER));
        String gain = shown(truth.gain(), Quantity.POWER);
        return Math.abs(truth.gain()) >= resolution
                ? Remark.good("repeats", sees + " " + TrialWords.of("repeats.enough", gain))
                : Remark.mend("repeats", sees + " " + TrialWords.of("repeats.few", gain));
    }

    private Remark order() {
        double limit = HARMLESS * (Double.isInfinite(resolution) ? 3 * scatter : resolution);
        String made = TrialWords.of("order.made", shown(bias, Quantity.POWER)) + " " + drift();
        if (Math.abs(bias) <= limit) {
            return Remark.good("order", made);
        }
        String cold = plan.warmUp() == 0 ? " " + TrialWords.of("order.cold") : "";
        return Remark.mend("order", made + cold + " " + TrialWords.of("order.turn"));
    }

    /** What the order does to a steady drift. */
    private String drift() {
        String pair = plan.order().replaceAll("[^A" + letter() + "]", "").replace(letter(), "B");
        double straight = OrderBalance.of(pair).driftBias();
        return straight == 0
                ? TrialWords.of("order.straight")
                : TrialWords.of(
                        "order.drift", DecimalHabit.spoken().write(Numbers.upTo(straight, 3)));
    }

    private Remark logged() {
        List<String> missing =
                NEEDED.stream()
                        .filter(channel -> !plan.logged().contains(channel))
                        .sorted()
                        .map(Appraisal::words)
                        .toList();
        return missing.isEmpty()
                ? Remark.good("log", TrialWords.of("log.good"))
                : Remark.mend("log", TrialWords.of("log.missing", String.join(", ", missing)));
    }

    private static String words(Channel channel) {
        return switch (channel) {
            case BOOST -> Watched.BOOST.words();
            case TURBINE_INLET_PRESSURE -> Watched.TURBINE_INLET.words();
            case TURBINE_OUTLET_PRESSURE -> Watched.TURBINE_OUTLET.words();
            default -> TrialWords.of("log.air");
        };
    }

    private String letter() {
        return String.valueOf((char) ('A' + part));
    }

    private String shown(double si, Quantity quantity) {
        return Shown.of(si, quantity, system, 3).text();
    }
}
