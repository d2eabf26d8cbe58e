// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.Channel;
import hotside.cell.Pull;
import hotside.cell.Rig;
import hotside.cell.RigException;
import hotside.cell.Row;
import hotside.relation.Chain;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.relation.Values;
import hotside.trial.Trial;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes the charts of a variant: runs the pulls, or works the relations along their axis. */
final class Figures {
    private static final int POINTS = 41;

    /** Between the samples of a hold, s. */
    private static final double SAMPLING = 0.5;

    private static final int MOST_CURVES = 4;
    private static final int X_STEPS = 6;
    private static final int Y_STEPS = 10;

    private final UnitSystem system;
    private final Values givens;

    /**
     * @param givens of the variant, SI
     */
    Figures(UnitSystem system, Values givens) {
        this.system = system;
        this.givens = givens;
    }

    /**
     * The charts of pulls.
     *
     * @param ran by the plan's names
     * @return one, or one for each channel
     */
    List<Figure> of(ChartPlan.Pulls plan, Map<String, Pull> ran) {
        if (plan.together()) {
            return List.of(figure(plan, ran, plan.show()));
        }
        return plan.show().stream().map(c -> figure(plan, ran, List.of(c))).toList();
    }

    /** Power and boost of the pulls of a trial, each in a chart of its own. */
    List<Figure> of(Contest contest, Trial trial) {
        Map<String, Pull> ran = new LinkedHashMap<>();
        Map<String, ChartPlan.Planned> planned = new LinkedHashMap<>();
        List<String> seen = new ArrayList<>();
        boolean all = trial.pulls().size() <= MOST_CURVES;
        for (int i = 0; i < trial.pulls().size(); i++) {
            String letter = String.valueOf(trial.plan().order().charAt(i));
            if (all || !seen.contains(letter)) {
                String name = "pull" + (i + 1);
                ran.put(name, trial.pulls().get(i));
                planned.put(
                        name,
                        new ChartPlan.Planned(
                                ProblemWords.of("plan.pull", i + 1, letter),
                                contest.rig(),
                                new RigChange.Settings(Map.of())));
                seen.add(letter);
            }
        }
        return of(
                new ChartPlan.Pulls(
                        planned,
                        List.of(Channel.POWER, Channel.BOOST),
                        Channel.ENGINE_SPEED,
                        false,
                        false),
                ran);
    }

    /**
     * Runs all pulls of a plan.
     *
     * @param seed of noise and scatter; each pull gets its own number in the day's row
     * @throws RigException if a rig cannot run so
     */
    Map<String, Pull> run(ChartPlan.Pulls plan, long seed) {
        Map<String, Pull> ran = new LinkedHashMap<>();
        plan.pulls()
                .forEach(
                        (name, planned) -> {
                            Rig rig = planned.change().on(planned.rig(), givens);
                            ran.put(name, pull(rig, seed + ran.size()));
                        });
        return ran;
    }

    /** A pull that is sampled no more often than a chart of held speeds needs. */
    static Pull pull(Rig rig, long seed) {
        boolean holds = rig.bench().rampRate() == 0;
        boolean often = rig.bench().sampling() < SAMPLING;
        return Pull.run(holds && often ? rig.with("cell.sampling", SAMPLING) : rig, seed);
    }

    private Figure figure(ChartPlan.Pulls plan, Map<String, Pull> ran, List<Channel> channels) {
        List<Figure.Curve> curves = new ArrayList<>();
        ran.forEach(
                (name, pull) ->
                        channels.forEach(
                                channel ->
                                        curves.add(
                                                curve(
                                                        plan,
                                                        name,
                                                        pull,
                                                        channel,
                                                        channels.size() > 1))));
        Set<String> headings = new LinkedHashSet<>();
        channels.forEach(c -> headings.add(c.words()));
        Channel over = plan.over();
        return framed(
                curves,
                over.words(),
                over.quantity(),
                over.quantity().shown(system),
                String.join(", ", headings),
                plan.fromZero());
    }

    private Figure.Curve curve(
            ChartPlan.Pulls plan, String name, Pull pull, Channel channel, boolean several) {
        String say = plan.pulls().get(name).say();
        String label = several ? channel.words() + (say.isEmpty() ? "" : ", " + say) : say;
        return new Figure.Curve(
                name + "." + channel.label(),
                label.isEmpty() ? channel.words() : label,
                channel.quantity(),
                channel.quantity().shown(system),
                column(pull, plan.over()),
                column(pull, channel));
    }

    private List<Double> column(Pull pull, Channel channel) {
        Quantity quantity = channel.quantity();
        Scale scale = quantity.shown(system);
        double ambient = pull.rig().ambient().pressure();
        return pull.rows().stream()
                .map(Row::readings)
                .map(readings -> scale.fromSi(readings.get(channel), quantity, ambient))
                .toList();
    }

    /**
     * The chart of relations along one of their slots.
     *
     * @param run the chain worked with the variant's numbers
     */
    Figure of(ChartPlan.Curves plan, Chain chain, Chain.Run run, double ambient) {
        Slot over = slot(chain, plan.uses().keySet().iterator().next(), plan.over());
        Slot output = slot(chain, plan.uses().keySet().iterator().next(), plan.output());
        Scale along = SlotScale.of(over, system);
        Scale up = SlotScale.of(output, system);
        List<Figure.Curve> curves = new ArrayList<>();
        plan.uses()
                .forEach(
                        (use, name) -> {
                            List<Double> xs = new ArrayList<>();
                            List<Double> ys = new ArrayList<>();
                            for (int i = 0; i < POINTS; i++) {
                                double x =
                                        plan.from() + (plan.to() - plan.from()) * i / (POINTS - 1);
                                double y = worked(chain, run, use, plan, x);
                                xs.add(along.fromSi(x, over.quantity(), ambient));
                                ys.add(up.fromSi(y, output.quantity(), ambient));
                            }
                            curves.add(
                                    new Figure.Curve(
                                            use + "." + plan.output(),
                                            name,
                                            output.quantity(),
                                            up,
                                            xs,
                                            ys));
                        });
        return framed(
                curves, over.meaning(), over.quantity(), along, output.meaning(), plan.fromZero());
    }

    private static Slot slot(Chain chain, String use, String slot) {
        return chain.slotAt(use + "." + slot).orElseThrow();
    }

    private static double worked(
            Chain chain, Chain.Run run, String use, ChartPlan.Curves plan, double x) {
        Relation relation =
                chain.uses().stream()
                        .filter(u -> u.name().equals(use))
                        .findFirst()
                        .orElseThrow()
                        .relation();
        Map<String, Object> in = new LinkedHashMap<>();
        for (Slot slot : relation.inputs()) {
            String place = use + "." + slot.name();
            if (run.values().has(place)) {
                in.put(slot.name(), run.values().get(place));
            }
        }
        in.put(plan.over(), x);
        return relation.value(plan.output(), Values.of(in));
    }

    private static Figure framed(
            List<Figure.Curve> curves,
            String xLabel,
            Quantity xQuantity,
            Scale xScale,
            String yLabel,
            boolean fromZero) {
        var xs = curves.stream().flatMap(c -> c.xs().stream()).mapToDouble(d -> d);
        var ys = curves.stream().flatMap(c -> c.ys().stream()).mapToDouble(d -> d);
        var across = xs.summaryStatistics();
        var up = ys.summaryStatistics();
        List<String> units = curves.stream().map(c -> c.scale().told()).distinct().toList();
        // One unit stands beside the axis; several have to be told with the label.
        String label = units.size() == 1 ? yLabel : yLabel + ", " + String.join(" and ", units);
        if (!Double.isFinite(up.getMin() + up.getMax()) || !(up.getMin() < up.getMax())) {
            throw new Reading.Unclear("a curve is flat or has gaps");
        }
        return new Figure(
                new Figure.Axis(
                        xLabel,
                        xQuantity,
                        xScale,
                        AxisMarks.covering(across.getMin(), across.getMax(), false, X_STEPS)),
                new Figure.Axis(
                        label,
                        curves.get(0).quantity(),
                        curves.get(0).scale(),
                        AxisMarks.covering(up.getMin(), up.getMax(), fromZero, Y_STEPS)),
                curves);
    }

    /** How far two sets of charts lie apart at most, as a share of an upright axis. */
    static double apart(List<Figure> some, List<Figure> others) {
        double most = 0;
        for (int i = 0; i < some.size(); i++) {
            double span = some.get(i).y().marks().span();
            for (Figure.Curve curve : some.get(i).curves()) {
                Figure.Curve other = others.get(i).curve(curve.id()).orElseThrow();
                for (int p = 0; p < Math.min(curve.ys().size(), other.ys().size()); p++) {
                    most = Math.max(most, Math.abs(curve.ys().get(p) - other.ys().get(p)) / span);
                }
            }
        }
        return most;
    }
}
