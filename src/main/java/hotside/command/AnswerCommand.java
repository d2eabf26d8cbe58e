// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.learner.OwnContent;
import hotside.problem.Marker;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.problem.Verdict;
import hotside.unit.DecimalHabit;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Marks an answer. A wrong answer is an ordinary result: the exit code stays 0. */
@Command(
        name = "answer",
        description = "Marks answers to a problem's variant.",
        mixinStandardHelpOptions = true)
final class AnswerCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "PROBLEM", description = "its id")
    private String id;

    @Option(names = "--seed", required = true, description = "the variant's seed")
    private long seed;

    @Option(
            names = "--answer",
            required = true,
            arity = "1..*",
            paramLabel = "TEXT",
            description = "one for each thing asked, in order, with unit")
    private List<String> answers;

    @Option(names = "--json", description = "for another program")
    private boolean json;

    @Option(names = "--units", description = "si or us", defaultValue = "si")
    private WorkCommand.Shop shop;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Variant variant =
                Variants.draw(
                        Lookups.problem(OwnContent.bank(OwnContent.folder()), id),
                        seed,
                        shop.system());
        int asks = variant.answers().size();
        if (variant.template().kind().isLettered()) {
            // Letters are one answer, quoted or not.
            answers = List.of(String.join(" ", answers));
        }
        if (answers.size() > asks) {
            throw new UsageException(
                    id
                            + " asks "
                            + asks
                            + " thing"
                            + (asks == 1 ? "" : "s")
                            + ", but "
                            + answers.size()
                            + " answers were given.");
        }
        List<Optional<Verdict>> verdicts = Marker.mark(variant, answers, DecimalHabit.UNKNOWN);
        boolean all = verdicts.stream().allMatch(v -> v.map(x -> x.kind().good()).orElse(false));
        if (json) {
            out.println(Json.text(object(variant, verdicts, all)));
        } else {
            for (int i = 0; i < asks; i++) {
                String phrase = variant.template().asks().get(i).phrase();
                out.println(
                        phrase
                                + ": "
                                + verdicts.get(i).map(AnswerCommand::told).orElse("not answered"));
            }
        }
        return CommandLineDoor.FINE;
    }

    private static String told(Verdict verdict) {
        return hotside.page.Words.of("verdict." + word(verdict)) + " " + verdict.feedback();
    }

    private static String word(Verdict verdict) {
        return verdict.kind().name().toLowerCase(Locale.ROOT);
    }

    private static Map<String, Object> object(
            Variant variant, List<Optional<Verdict>> verdicts, boolean all) {
        List<Object> each = new ArrayList<>();
        for (int i = 0; i < verdicts.size(); i++) {
            Optional<Verdict> verdict = verdicts.get(i);
            each.add(
                    Json.object(
                            "slot", variant.template().asks().get(i).place(),
                            "verdict", verdict.map(AnswerCommand::word).orElse("missing"),
                            "correct",
                                    verdict.map(v -> v.kind() == Verdict.Kind.RIGHT).orElse(false),
                            "mistake", verdict.flatMap(Verdict::mistake).orElse(null),
                            "feedback", verdict.map(Verdict::feedback).orElse("")));
        }
        Optional<Verdict> first =
                verdicts.stream()
                        .flatMap(Optional::stream)
                        .filter(v -> !v.kind().good())
                        .findFirst()
                        .or(() -> verdicts.stream().flatMap(Optional::stream).findFirst());
        return Json.object(
                "problem", variant.template().id(),
                "seed", variant.seed(),
                "correct", all,
                "mistake", first.flatMap(Verdict::mistake).orElse(null),
                "feedback", first.map(Verdict::feedback).orElse(""),
                "answers", each);
    }
}
