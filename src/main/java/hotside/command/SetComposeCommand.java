// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.Composer;
import hotside.classroom.Ids;
import hotside.classroom.ProblemSet;
import hotside.classroom.ProblemSet.Feedback;
import hotside.classroom.ProblemSet.Item;
import hotside.classroom.ProblemSet.Numbers;
import hotside.classroom.ProblemSet.Rules;
import hotside.classroom.RefusedException;
import hotside.classroom.SetFile;
import hotside.classroom.SigningKey;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variants;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Makes a set and seals it. */
@Command(
        name = "compose",
        description = "Makes a problem set and signs it with your key.",
        mixinStandardHelpOptions = true)
final class SetComposeCommand implements Callable<Integer> {
    private static final Pattern PROBLEM = Pattern.compile("([a-z0-9-]+)(?::(\\d{1,3}))?");
    private static final Pattern LEVELS = Pattern.compile("([1-4])(?:-([1-4]))?");

    @Option(names = "--to", required = true, paramLabel = "FILE", description = "the set file")
    private Path to;

    @Option(names = "--title", required = true)
    private String title;

    @Option(names = "--id", description = "of the set; a random one if not given")
    private String id;

    @Option(
            names = "--edition",
            defaultValue = "1",
            description = "raise it to hand a set out anew")
    private int edition;

    @Option(
            names = "--problem",
            arity = "1..*",
            paramLabel = "ID[:POINTS]",
            description = "problems, in order")
    private List<String> problems = List.of();

    @Option(
            names = "--skill",
            arity = "1..*",
            paramLabel = "SKILL",
            description = "a skill or strand to choose problems of; more than one are mixed")
    private List<String> skills = List.of();

    @Option(
            names = "--count",
            defaultValue = "10",
            description = "how many to choose by --skill (${DEFAULT-VALUE})")
    private int count;

    @Option(names = "--levels", defaultValue = "1-4", description = "of chosen problems, as 1-2")
    private String levels;

    @Option(
            names = "--numbers",
            defaultValue = "own",
            description = "own for each learner, or the same for all (${DEFAULT-VALUE})")
    private Numbers numbers;

    @Option(
            names = "--tries",
            defaultValue = "0",
            description = "counted tries a problem has with feedback now; 0 for any number")
    private int tries;

    @Option(names = "--no-hints", description = "no hints may be read")
    private boolean noHints;

    @Option(
            names = "--feedback",
            defaultValue = "now",
            description = "now, or after the due date: after-due (${DEFAULT-VALUE})",
            converter = FeedbackWord.class)
    private Feedback feedback;

    @Option(names = "--due", paramLabel = "DATE", description = "2026-12-01 or 2026-12-01T18:00")
    private String due;

    @Option(names = "--units", description = "si or us", defaultValue = "si")
    private WorkCommand.Shop shop;

    @Option(names = "--key", paramLabel = "FILE", description = "your key, if not the usual one")
    private Path key;

    @Spec private CommandSpec spec;

    /** Reads {@code after-due}. */
    static final class FeedbackWord implements picocli.CommandLine.ITypeConverter<Feedback> {
        @Override
        public Feedback convert(String word) {
            return Feedback.valueOf(word.toUpperCase(java.util.Locale.ROOT).replace('-', '_'));
        }
    }

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        ProblemBank bank = ClassFiles.bank();
        ProblemSet set;
        try {
            set = set(items(bank));
        } catch (IllegalArgumentException e) {
            throw new UsageException(e.getMessage());
        }
        refuseToReplaceAnother(set);
        SigningKey mine = ClassFiles.key(key, "instructor");
        SetFile file = SetFile.write(to, set, mine);
        SetLookCommand.tell(file, bank, out);
        out.println("Written to " + to + ".");
        return CommandLineDoor.FINE;
    }

    /** Work begun on a set that was written over could never be marked again. */
    private void refuseToReplaceAnother(ProblemSet set) {
        if (Files.exists(to) && !isEarlierEdition(set)) {
            throw new UsageException(
                    to
                            + " is there already. Name a new file, or move the old one away: work on the old set can"
                            + " be marked only with it. A new edition may replace it: --id with its id, and a higher"
                            + " --edition.");
        }
    }

    private boolean isEarlierEdition(ProblemSet set) {
        try {
            ProblemSet old = SetFile.read(to).set();
            return old.id().equals(set.id()) && old.edition() < set.edition();
        } catch (RefusedException e) {
            return false;
        }
    }

    private ProblemSet set(List<Item> items) {
        return new ProblemSet(
                id == null ? Ids.fresh() : id,
                edition,
                title,
                Variants.GENERATOR_VERSION,
                new Rules(
                        shop.system(),
                        numbers,
                        tries,
                        !noHints,
                        feedback,
                        Optional.ofNullable(due).map(ClassFiles::date)),
                items);
    }

    private List<Item> items(ProblemBank bank) {
        List<Item> items = new ArrayList<>();
        for (String problem : problems) {
            Matcher matcher = PROBLEM.matcher(problem);
            if (!matcher.matches()) {
                throw new UsageException(
                        "\"" + problem + "\" is no problem. Write its id, or id:points.");
            }
            int points = matcher.group(2) == null ? 1 : Integer.parseInt(matcher.group(2));
            items.add(Composer.item(Lookups.problem(bank, matcher.group(1)), points));
        }
        if (!skills.isEmpty() || problems.isEmpty()) {
            chosen(bank).forEach(t -> items.add(Composer.item(t, 1)));
        }
        return items;
    }

    private List<Template> chosen(ProblemBank bank) {
        Matcher matcher = LEVELS.matcher(levels);
        if (!matcher.matches()) {
            throw new UsageException("--levels is one level, as 2, or a range, as 1-3.");
        }
        int least = Integer.parseInt(matcher.group(1));
        int most = matcher.group(2) == null ? least : Integer.parseInt(matcher.group(2));
        for (String skill : skills) {
            if (Composer.choose(bank, List.of(skill), 1, 4, 1).isEmpty()) {
                List<String> known =
                        bank.all().stream()
                                .map(Template::skill)
                                .flatMap(s -> Stream.of(s.split("\\.")[0], s))
                                .distinct()
                                .sorted()
                                .toList();
                throw Lookups.unknown("skill", skill, known, "variant --list");
            }
        }
        List<Template> chosen = Composer.choose(bank, skills, least, most, count);
        if (chosen.isEmpty()) {
            throw new UsageException("No problem of these skills has a level of " + levels + ".");
        }
        return chosen;
    }
}
