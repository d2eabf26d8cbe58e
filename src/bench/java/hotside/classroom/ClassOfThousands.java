// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.bench.Scratch;
import hotside.problem.Answers;
import hotside.problem.ProblemBank;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.unit.DecimalHabit;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Marks folders of hand-ins of ten problems with numbers of their own, half of the answers right
 * and half slipped, each with a seal.
 */
public final class ClassOfThousands {
    private static final int[] SIZES = {100, 1_000, 10_000};
    private static final int PROBLEMS = 10;
    private static final Instant START = Instant.parse("2026-11-30T08:00:00Z");

    private final SigningKey key = SigningKey.fresh();
    private final SetFile file;
    private final Regrader regrader;

    private ClassOfThousands() {
        ProblemBank bank = ProblemBank.shipped();
        ProblemSet set =
                new ProblemSet(
                        "thousands",
                        1,
                        "Ten problems",
                        Variants.GENERATOR_VERSION,
                        new ProblemSet.Rules(
                                UnitSystem.SI_SHOP,
                                ProblemSet.Numbers.OWN,
                                0,
                                true,
                                ProblemSet.Feedback.NOW,
                                Optional.empty()),
                        Composer.choose(bank, List.of("hot-side", "gate"), 1, 4, PROBLEMS).stream()
                                .map(t -> Composer.item(t, 1))
                                .toList());
        file = SetFile.read(SetFile.bytes(set, key));
        regrader = new Regrader(set, bank);
    }

    public static void main(String[] args) throws IOException {
        ClassOfThousands bench = new ClassOfThousands();
        try (Scratch scratch = new Scratch()) {
            for (int size : SIZES) {
                bench.handIn(scratch.folder().resolve("c" + size), size);
            }
            bench.mark(scratch.folder().resolve("c" + SIZES[0]));
            for (int size : SIZES) {
                Path folder = scratch.folder().resolve("c" + size);
                System.out.println("seconds-" + size + " " + bench.mark(folder));
            }
        }
        System.out.println("peak-megabytes " + peak() / (1 << 20));
    }

    private void handIn(Path folder, int size) throws IOException {
        Files.createDirectories(folder);
        List<byte[]> made = IntStream.range(0, size).parallel().mapToObj(this::handIn).toList();
        for (int i = 0; i < size; i++) {
            Files.write(folder.resolve("L" + i), made.get(i));
        }
    }

    private byte[] handIn(int number) {
        String learner = "L" + number;
        List<String> lines = new ArrayList<>();
        lines.add(
                WorkLines.head(
                        new WorkLines.Head(
                                file.set().id(),
                                1,
                                file.hash(),
                                learner,
                                Variants.GENERATOR_VERSION,
                                DecimalHabit.POINT,
                                START)));
        for (int slot = 0; slot < PROBLEMS; slot++) {
            Variant variant = regrader.variant(learner, slot);
            List<String> answers = new ArrayList<>();
            for (int i = 0; i < variant.answers().size(); i++) {
                answers.add(Answers.key(variant, i));
            }
            if ((number + slot) % 2 == 0 && !variant.slips().isEmpty()) {
                Variant.Slipped slip = variant.slips().get(number % variant.slips().size());
                answers.set(slip.ask(), Answers.told(variant, slip.ask(), slip.value()));
            }
            lines.add(
                    WorkLines.entry(
                            lines.get(lines.size() - 1),
                            new Entry.Answered(START.plusSeconds(60L * slot), slot, answers)));
        }
        lines.add(WorkLines.finished(lines.get(lines.size() - 1), START.plusSeconds(3600)));
        return SealedLines.seal(lines, key);
    }

    /** Seconds from the folder to tables, analysis and mistakes. */
    private double mark(Path folder) throws IOException {
        long start = System.nanoTime();
        List<Path> files = Marking.files(folder);
        Marking.Result result =
                new Marking(file, regrader, Optional.empty(), false).mark(files, Watch.NONE);
        ClassResult whole = new ClassResult(regrader, Optional.empty(), result);
        double seconds = (System.nanoTime() - start) / 1e9;
        if (whole.marked().size() != files.size()) {
            throw new IllegalStateException(
                    whole.marked().size() + " of " + files.size() + " were marked");
        }
        return seconds;
    }

    private static double peak() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .map(MemoryPoolMXBean::getPeakUsage)
                .mapToLong(java.lang.management.MemoryUsage::getUsed)
                .sum();
    }
}
