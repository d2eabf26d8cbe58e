// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

import hotside.learner.Attempt;
import hotside.learner.Choice;
import hotside.learner.LearnerRecord;
import hotside.learner.Syllabus;
import hotside.learner.Tutor;
import hotside.learner.Wish;
import hotside.problem.ProblemBank;
import hotside.problem.SkillMap;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;

/**
 * A record with years of work in it: how long it takes to open, to choose the next problem and to
 * store an answer. Run in a program of its own.
 */
public final class LongRecord {
    private static final int ATTEMPTS = 100_000;
    private static final int BATCH = 10_000;
    private static final Instant NOW = Instant.parse("2026-11-25T12:00:00Z");

    private final Syllabus syllabus = Syllabus.of(SkillMap.shipped(), ProblemBank.shipped());
    private final SplittableRandom random = new SplittableRandom(1);

    private LongRecord() {}

    static List<Measure> measure(JarRun jar) throws IOException {
        JarRun.Told told = jar.run(LongRecord.class, List.of());
        String many = String.format(Locale.ROOT, "%,d answers: ", ATTEMPTS);
        return List.of(
                Measure.atMost(many + "opening", told.get("open"), 100, "%.0f ms"),
                Measure.atMost(many + "opening, first time", told.get("cold"), 500, "%.0f ms"),
                Measure.atMost(many + "next problem", told.get("next"), 100, "%.1f ms"),
                Measure.told(many + "how skills stand", told.get("skills"), "%.1f ms"),
                Measure.told(many + "storing one more", told.get("add"), "%.1f ms"),
                Measure.told(many + "opening without a snapshot", told.get("fold"), "%.0f ms"));
    }

    /** Prints each time in milliseconds. */
    public static void main(String[] args) throws IOException {
        try (Scratch scratch = new Scratch()) {
            new LongRecord().run(scratch);
        }
    }

    private void run(Scratch scratch) {
        try (LearnerRecord record = LearnerRecord.open(scratch.folder())) {
            for (int from = 0; from < ATTEMPTS; from += BATCH) {
                record.addMissing(attempts(from));
            }
            say("fold", timed(() -> new Tutor(record, syllabus, ZoneOffset.UTC).keep()));
        }
        say("cold", timed(() -> openAndClose(scratch)));
        say("open", median(15, () -> timed(() -> openAndClose(scratch))));
        try (LearnerRecord record = LearnerRecord.open(scratch.folder())) {
            Tutor tutor = new Tutor(record, syllabus, ZoneOffset.UTC);
            say("next", median(30, () -> timed(() -> next(tutor))));
            say("skills", median(30, () -> timed(() -> tutor.skills(NOW))));
            say("add", median(60, () -> timed(() -> tutor.add(attempt(random.nextInt())))));
        }
    }

    private void openAndClose(Scratch scratch) {
        try (LearnerRecord record = LearnerRecord.open(scratch.folder())) {
            record.progress();
            next(new Tutor(record, syllabus, ZoneOffset.UTC));
        }
    }

    private static Choice next(Tutor tutor) {
        return tutor.next(Wish.BEST, NOW).orElseThrow();
    }

    private List<Attempt> attempts(int from) {
        List<Attempt> all = new ArrayList<>();
        for (int i = from; i < from + BATCH; i++) {
            all.add(attempt(i));
        }
        return all;
    }

    /** Over three years, some hundred answers a day. */
    private Attempt attempt(int number) {
        var exercise = syllabus.all().get(random.nextInt(syllabus.all().size()));
        boolean right = random.nextInt(10) < 7;
        return new Attempt(
                exercise.id(),
                String.valueOf(random.nextInt(1_000_000)),
                "1",
                "0123456789abcdef",
                "si_shop",
                0,
                "123.4 kPa",
                right ? "right" : "mistake",
                right ? null : "gauge-as-absolute@push.upstream",
                right,
                random.nextInt(2),
                60,
                NOW.minus(Duration.ofMinutes(15L * (ATTEMPTS - number))),
                null);
    }

    private static double timed(Runnable work) {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e6;
    }

    private static double median(int times, DoubleSupplier measuring) {
        double[] all = new double[times];
        Arrays.setAll(all, i -> measuring.getAsDouble());
        Arrays.sort(all);
        return all[times / 2];
    }

    private static void say(String name, double value) {
        System.out.println(name + " " + value);
    }
}
