// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.Estimate;
import hotside.classroom.ProblemSet;
import hotside.classroom.Regrader;
import hotside.classroom.SetCheck;
import hotside.classroom.SetFile;
import hotside.page.Maths;
import hotside.problem.Answers;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variant;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what a set holds, and what a learner gets. */
@Command(
        name = "look",
        description = "Shows a set: its signature, rules, problems, and an estimate.",
        mixinStandardHelpOptions = true)
final class SetLookCommand implements Callable<Integer> {
    private static final DateTimeFormatter DUE =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT)
                    .withZone(ZoneId.systemDefault());

    @Parameters(paramLabel = "SET", description = "the set file")
    private Path file;

    @Option(
            names = "--learner",
            paramLabel = "ID",
            description = "shows the problems with this learner's numbers")
    private String learner;

    @Option(names = "--answers", description = "with the right answers")
    private boolean answers;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        SetFile set = SetFile.read(file);
        ProblemBank bank = ClassFiles.bank();
        tell(set, bank, out);
        if (learner != null) {
            Regrader regrader = new Regrader(set.set(), bank);
            Maths maths = new Maths();
            for (int i = 0; i < set.set().items().size(); i++) {
                Variant variant = regrader.variant(learner, i);
                out.println();
                problem(i, variant, maths, out);
                for (int ask = 0; answers && ask < variant.answers().size(); ask++) {
                    out.println("    = " + Answers.told(variant, ask));
                }
            }
        }
        return CommandLineDoor.FINE;
    }

    static void problem(int slot, Variant variant, Maths maths, PrintWriter out) {
        out.println("Problem " + (slot + 1) + ": " + variant.template().title());
        out.println(VariantCommand.prompt(variant, maths));
        for (int ask = 0; ask < variant.template().asks().size(); ask++) {
            out.println("  " + (ask + 1) + ") " + variant.template().asks().get(ask).phrase());
        }
    }

    static void tell(SetFile file, ProblemBank bank, PrintWriter out) {
        ProblemSet set = file.set();
        List<Template> templates = SetCheck.templates(set, bank);
        Estimate estimate = Estimate.of(templates);
        out.println(set.title() + " (set " + set.id() + ", edition " + set.edition() + ")");
        out.println("Signed with key " + file.key().fingerprint());
        out.println(rules(set.rules()));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "points", "level", "skill", "problem"));
        for (int i = 0; i < templates.size(); i++) {
            Template t = templates.get(i);
            rows.add(
                    List.of(
                            String.valueOf(i + 1),
                            String.valueOf(set.items().get(i).points()),
                            String.valueOf(t.level()),
                            t.skill(),
                            t.title()));
        }
        TextTable.print(rows, out);
        out.println(
                String.format(
                        Locale.ROOT,
                        "%d points. About %d minutes by rule of thumb; mean level %.1f; %d skills; %s.",
                        set.points(),
                        estimate.minutes(),
                        estimate.level(),
                        estimate.skills(),
                        inARow(estimate.repeats())));
    }

    private static String inARow(int repeats) {
        return repeats == 0
                ? "no skill comes twice in a row"
                : repeats + " times the same skill comes twice in a row";
    }

    private static String tries(int tries) {
        return switch (tries) {
            case 0 -> "any number of tries";
            case 1 -> "1 try";
            default -> tries + " tries";
        };
    }

    /** As the instructor wrote it: in the time of this machine. */
    static String due(ProblemSet.Rules rules) {
        return rules.due().map(due -> "due " + DUE.format(due)).orElse("no due date");
    }

    /**
     * What to know before going on with work whose date has passed; empty if there is time left.
     */
    static String past(ProblemSet.Rules rules, Instant now) {
        return rules.due()
                .filter(now::isAfter)
                .map(
                        due ->
                                "It was due "
                                        + DUE.format(due)
                                        + ", which is past: your instructor will find it among the late work.")
                .orElse("");
    }

    private static String rules(ProblemSet.Rules rules) {
        return (rules.numbers() == ProblemSet.Numbers.OWN
                        ? "Own numbers for each learner"
                        : "The same numbers for all")
                + "; "
                + (rules.feedback() == ProblemSet.Feedback.NOW
                        ? "feedback with every answer"
                        : "feedback after the due date")
                + "; "
                + tries(rules.tries())
                + "; "
                + (rules.hints() ? "hints" : "no hints")
                + "; "
                + due(rules)
                + ".";
    }
}
