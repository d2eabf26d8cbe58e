// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.cell.Rig;
import hotside.cell.RigException;
import hotside.cell.Stock;
import hotside.runlog.Comparison;
import hotside.runlog.ComparisonException;
import hotside.runlog.Worth;
import hotside.trial.Appraisal;
import hotside.trial.Conclusion;
import hotside.trial.Plan;
import hotside.trial.PlanText;
import hotside.trial.Remark;
import hotside.trial.Trial;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * Plans a comparison, runs it in the cell, reads the logs and judges plan, prediction and
 * conclusion by the truth.
 */
@Command(
        name = "trial",
        description = {
            "Plans a comparison of parts, runs it in the simulated cell and reads the logs.",
            "With a prediction or a conclusion the truth is told and both are judged by it."
        },
        mixinStandardHelpOptions = true)
final class TrialCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "RIG", description = "its id; pull --list shows the ids")
    private String rigName;

    @Option(
            names = "--base",
            paramLabel = "PARTS",
            description = "what A has fitted, such as pipe-76; as it is by default",
            defaultValue = "as-it-is")
    private String base;

    @Option(
            names = "--with",
            paramLabel = "PARTS",
            required = true,
            description =
                    "what B has, such as pipe-102 or \"pipe-102+muffler-none\"; again for C …")
    private List<String> others = List.of();

    @Option(names = "--order", description = "a letter for each pull", defaultValue = "ABBA")
    private String order;

    @Option(
            names = "--warm-up",
            description = "pulls before, which do not count",
            defaultValue = "1")
    private int warmUp;

    @Option(
            names = "--interval",
            description = "between the starts of two pulls, such as \"12 min\"",
            defaultValue = "10 min")
    private String interval;

    @Option(
            names = "--hold",
            paramLabel = "BOOST",
            description =
                    "boost that a control holds with every part, such as \"60 kPa\"; free by default",
            defaultValue = "free")
    private String hold;

    @Option(
            names = "--log",
            paramLabel = "CHANNELS",
            description = "what is logged besides speed and torque; all by default",
            defaultValue = "all")
    private String log;

    @Option(names = "--band", description = "rev/min to average over", defaultValue = "4000..6000")
    private String band;

    @Option(names = "--seed", description = "of scatter and noise", defaultValue = "1")
    private long seed;

    @Option(
            names = "--predict",
            description = "such as \"power rises 8 kW, boost stays, turbine-inlet falls 3 kPa\"")
    private String prediction;

    @Option(names = "--gain", description = "your interval for the gain, such as \"6 to 12 kW\"")
    private String gain;

    @Option(names = "--part", description = "your interval for the part at equal boost")
    private String part;

    @Option(names = "--claim", description = "pays, does-not or cannot-tell")
    private String claim;

    @Option(names = "--worth", description = "of boost, kW for each kPa, to split the gain by")
    private Double worth;

    @Option(names = "--units", description = "si or us", defaultValue = "si")
    private WorkCommand.Shop shop;

    @Option(names = "--out", description = "a folder to write the logs into")
    private Path folder;

    @Option(names = "--json", description = "for another program, SI")
    private boolean json;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        try {
            return run();
        } catch (RigException | ComparisonException e) {
            throw new UsageException(e.getMessage().replaceFirst("([^.])$", "$1."));
        }
    }

    private int run() throws IOException {
        UnitSystem system = shop.system();
        Plan plan = plan(system);
        Trial trial = Trial.run(plan, seed);
        if (folder != null) {
            for (int i = 0; i < trial.logs().size(); i++) {
                OutFile.write(trial.logs().get(i), folder.resolve(trial.logName(i)));
            }
        }
        Comparison.Settings settings =
                worth == null
                        ? Comparison.Settings.PLAIN
                        : Comparison.Settings.PLAIN.withWorth(Worth.stated(worth));
        CompareReport report =
                new CompareReport(trial.comparison(settings), List.of(), List.of(), system);
        List<Remark> remarks = remarks(plan, system);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            Map<String, Object> object = report.object();
            object.put("remarks", remarks.stream().map(TrialCommand::object).toList());
            out.println(Json.text(object));
        } else {
            report.print(out);
            if (!remarks.isEmpty()) {
                out.println("\nJudged by the truth");
                remarks.forEach(
                        r -> out.println("- " + sign(r) + " " + r.topic() + ": " + r.text()));
            }
        }
        return CommandLineDoor.FINE;
    }

    private Plan plan(UnitSystem system) {
        Stock stock = Stock.shipped();
        List<String> known = stock.rigs().stream().map(Rig::id).toList();
        Rig rig =
                stock.rig(rigName)
                        .orElseThrow(() -> Lookups.unknown("rig", rigName, known, "pull --list"));
        List<Plan.Contestant> parts = new ArrayList<>();
        parts.add(PlanText.contestant(rig, stock, base));
        others.forEach(other -> parts.add(PlanText.contestant(rig, stock, other)));
        double[] ends = PlanText.band(band);
        return new Plan(
                parts,
                order,
                warmUp,
                PlanText.interval(interval),
                PlanText.boost(hold, system, rig.ambient().pressure()),
                PlanText.channels(log),
                ends[0],
                ends[1]);
    }

    /** Nothing is told of the truth before something was said that can be judged by it. */
    private List<Remark> remarks(Plan plan, UnitSystem system) {
        List<Remark> remarks = new ArrayList<>();
        if (prediction == null && gain == null && part == null && claim == null) {
            return remarks;
        }
        Appraisal appraisal = Appraisal.of(plan, 1, system);
        if (prediction != null) {
            remarks.addAll(
                    PlanText.prediction(prediction, system).against(appraisal.truth(), system));
        }
        remarks.addAll(appraisal.remarks());
        if (gain != null || part != null || claim != null) {
            remarks.addAll(
                    new Conclusion(
                                    interval(gain, system),
                                    interval(part, system),
                                    claim == null
                                            ? Conclusion.Claim.CANNOT_TELL
                                            : PlanText.claim(claim))
                            .against(appraisal, system));
        }
        return remarks;
    }

    private static Optional<Conclusion.Interval> interval(String text, UnitSystem system) {
        return text == null ? Optional.empty() : PlanText.power(text, system);
    }

    private static String sign(Remark remark) {
        return switch (remark.kind()) {
            case GOOD -> "[well]";
            case MEND -> "[mend]";
            case NOTE -> "[note]";
        };
    }

    private static Map<String, Object> object(Remark remark) {
        return Json.object(
                "kind",
                remark.kind().name().toLowerCase(java.util.Locale.ROOT),
                "topic",
                remark.topic(),
                "text",
                remark.text());
    }
}
