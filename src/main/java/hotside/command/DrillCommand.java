// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.learner.OwnContent;
import hotside.page.Maths;
import hotside.page.Words;
import hotside.problem.Marker;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.problem.Verdict;
import hotside.unit.DecimalHabit;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Practice in the terminal: a problem, an answer a line, a verdict. */
@Command(
        name = "drill",
        description =
                "Practise in the terminal: one problem, all of a skill, or everything. Type ? for a hint, ! for the worked answer, "
                        + "an empty line to go on, q to stop.",
        mixinStandardHelpOptions = true)
final class DrillCommand implements Callable<Integer> {
    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "SKILL|PROBLEM",
            description = "what to practise")
    private String what;

    @Option(names = "--seed", description = "the first seed", defaultValue = "1")
    private long seed;

    @Option(names = "--units", description = "si or us", defaultValue = "si")
    private WorkCommand.Shop shop;

    @Spec private CommandSpec spec;

    private final Maths maths = new Maths();
    private final BufferedReader in;
    private PrintWriter out;
    private int right;
    private int tried;

    DrillCommand(InputStream in) {
        this.in = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }

    @Override
    public Integer call() throws IOException {
        out = spec.commandLine().getOut();
        List<Template> chosen = chosen();
        boolean more = true;
        for (int i = 0; more; i++) {
            more = practise(Variants.draw(chosen.get(i % chosen.size()), seed + i, shop.system()));
        }
        out.println(right + " of " + tried + " right.");
        return CommandLineDoor.FINE;
    }

    private List<Template> chosen() {
        ProblemBank bank = OwnContent.bank(OwnContent.folder());
        if (bank.all().isEmpty()) {
            throw new UsageException("There are no problems to practise.");
        }
        List<Template> chosen =
                what == null
                        ? bank.all()
                        : bank.all().stream()
                                .filter(t -> t.id().equals(what) || t.skill().equals(what))
                                .toList();
        if (chosen.isEmpty()) {
            Set<String> known = new LinkedHashSet<>();
            bank.all().forEach(t -> known.addAll(List.of(t.id(), t.skill())));
            throw Lookups.unknown("skill or problem", what, List.copyOf(known), "variant --list");
        }
        return chosen;
    }

    /** False when the learner has had enough. */
    private boolean practise(Variant variant) throws IOException {
        out.println(
                "\n"
                        + variant.template().title()
                        + "\n\n"
                        + VariantCommand.prompt(variant, maths)
                        + "\n");
        List<String> answers = new ArrayList<>();
        for (int ask = 0; ask < variant.answers().size(); ask++) {
            answers.add("");
            int rung = 0;
            while (true) {
                out.print(variant.template().asks().get(ask).phrase() + " = ");
                out.flush();
                String line = in.readLine();
                if (line == null || line.strip().equals("q")) {
                    return false;
                }
                if (line.isBlank()) {
                    break;
                }
                if (line.strip().equals("?")) {
                    List<String> hints = VariantCommand.hints(variant, maths);
                    out.println(hints.get(Math.min(rung++, hints.size() - 1)));
                    continue;
                }
                if (line.strip().equals("!")) {
                    out.println(VariantCommand.working(variant, maths));
                    continue;
                }
                answers.set(ask, line);
                if (judged(variant, answers, ask)) {
                    break;
                }
            }
        }
        return true;
    }

    private boolean judged(Variant variant, List<String> answers, int ask) {
        Optional<Verdict> verdict = Marker.mark(variant, answers, DecimalHabit.UNKNOWN).get(ask);
        verdict.ifPresent(
                v ->
                        out.println(
                                Words.of("verdict." + v.kind().name().toLowerCase(Locale.ROOT))
                                        + " "
                                        + v.feedback()));
        boolean counts = verdict.map(v -> v.kind().counts()).orElse(false);
        boolean good = verdict.map(v -> v.kind().good()).orElse(false);
        tried += counts ? 1 : 0;
        right += good ? 1 : 0;
        return good;
    }
}
