// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

import hotside.cell.Channel;
import hotside.cell.Pull;
import hotside.cell.PullTable;
import hotside.cell.Rig;
import hotside.cell.RigException;
import hotside.cell.Row;
import hotside.runlog.Band;
import hotside.runlog.Comparison;
import hotside.runlog.LogReader;
import hotside.runlog.ReadOptions;
import hotside.runlog.Run;
import hotside.statistics.draw.SplitMix64;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;

/**
 * A plan that was run: its pulls with their truth, and the logs that they left. The same plan and
 * seed give the same trial.
 */
public final class Trial {
    private final Plan plan;
    private final long seed;
    private final List<Pull> pulls = new ArrayList<>();
    private final List<String> logs = new ArrayList<>();

    private Trial(Plan plan, long seed) {
        this.plan = plan;
        this.seed = seed;
    }

    /** Runs a plan. */
    public static Trial run(Plan plan, long seed) {
        return run(plan, seed, share -> {}, () -> false);
    }

    /**
     * Runs a plan.
     *
     * @param seed of scatter and noise
     * @param progress told after each pull what share is done, 0 to 1
     * @param stop asked before each pull
     * @throws RigException if a rig cannot run so
     * @throws java.util.concurrent.CancellationException if it was stopped
     */
    public static Trial run(Plan plan, long seed, DoubleConsumer progress, BooleanSupplier stop) {
        Trial trial = new Trial(plan, seed);
        SplitMix64 seeds = new SplitMix64(seed);
        int count = plan.order().length();
        List<Rig> rigs = IntStream.range(0, plan.parts().size()).mapToObj(plan::rig).toList();
        for (int i = 0; i < count; i++) {
            if (stop.getAsBoolean()) {
                throw new java.util.concurrent.CancellationException("the trial was stopped");
            }
            Pull pull = Pull.run(rigs.get(plan.part(i)), seeds.next(), plan.warmUp() + i + 1);
            trial.pulls.add(pull);
            trial.logs.add(PullTable.of(pull, plan.columns()));
            progress.accept((i + 1.0) / count);
        }
        return trial;
    }

    public Plan plan() {
        return plan;
    }

    public long seed() {
        return seed;
    }

    /** In the order they were made; warm-up pulls are not among them. */
    public List<Pull> pulls() {
        return List.copyOf(pulls);
    }

    /** What the cell wrote down of each pull, CSV in SI. */
    public List<String> logs() {
        return List.copyOf(logs);
    }

    /** The name of the part that a pull was made with. */
    public String partOf(int pull) {
        return plan.name(plan.part(pull));
    }

    /** The name of a pull's log: {@code pull-3-B.csv}. */
    public String logName(int pull) {
        return "pull-" + (pull + 1) + "-" + plan.order().charAt(pull) + ".csv";
    }

    /** The logs, read as those of any bench, and set against each other over the plan's band. */
    public Comparison comparison() {
        return comparison(Comparison.Settings.PLAIN);
    }

    /** The same with settings of one's own; the band is the plan's. */
    public Comparison comparison(Comparison.Settings settings) {
        List<List<Run>> runs = new ArrayList<>();
        plan.parts().forEach(part -> runs.add(new ArrayList<>()));
        LogReader reader =
                new LogReader(
                        ReadOptions.PLAIN.withAmbient(
                                plan.parts().get(0).rig().ambient().pressure()));
        for (int i = 0; i < logs.size(); i++) {
            byte[] text = logs.get(i).getBytes(StandardCharsets.UTF_8);
            try {
                for (hotside.runlog.Pull pull :
                        reader.read(logName(i), new ByteArrayInputStream(text))
                                .log()
                                .orElseThrow()
                                .pulls()) {
                    runs.get(plan.part(i)).add(new Run(pull, 1));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        List<hotside.runlog.Part> parts = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            parts.add(new hotside.runlog.Part(plan.name(i), runs.get(i)));
        }
        return new Comparison(parts, settings.withBand(new Band(plan.fromSpeed(), plan.toSpeed())));
    }

    /**
     * True mean over the band of what a pull's log would show without noise of its sensors, SI.
     *
     * @param pull from 0
     */
    double trueMean(int pull, Channel channel) {
        double sum = 0;
        int count = 0;
        for (Row row : pulls.get(pull).rows()) {
            double speed = row.truth().get(Channel.ENGINE_SPEED);
            if (speed >= plan.fromSpeed() - 1e-9 && speed <= plan.toSpeed() + 1e-9) {
                sum += row.truth().get(channel);
                count++;
            }
        }
        return sum / count;
    }
}
