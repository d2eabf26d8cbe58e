// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.problem.ProblemBank;
import hotside.problem.SkillMap;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Synthetic learners work through the shipped problems. What they know is known, so it can be said
 * how well the estimate tells it, and what the order of the problems is worth. The slips and
 * guesses of these learners differ from each other and from those that the estimate assumes.
 *
 * <p>The bounds are far below what comes out; the numbers go to the test's output.
 */
class SimulationTest {
    private static final int LEARNERS = 80;
    private static final int DAYS = 30;
    private static final int A_DAY = 10;

    private static Syllabus syllabus;
    private static Outcome picked;
    private static Outcome shuffled;
    private static Outcome pickedFading;
    private static Outcome shuffledFading;

    /** What came out for all learners. */
    private record Outcome(
            double auc,
            double aucOfCounts,
            double mastered,
            double known,
            double trueMastery,
            double problemsToMastery,
            double knownHalfway) {}

    private interface Order {
        Choice next(Standing standing, LocalDate day);
    }

    @BeforeAll
    static void work() {
        syllabus = Syllabus.of(SkillMap.shipped(), ProblemBank.shipped());
        picked = run(seed -> SimulationTest::byPicker, false);
        shuffled = run(SimulationTest::byChance, false);
        pickedFading = run(seed -> SimulationTest::byPicker, true);
        shuffledFading = run(SimulationTest::byChance, true);
        print("picker", picked);
        print("random order", shuffled);
        print("picker, knowledge fades", pickedFading);
        print("random order, knowledge fades", shuffledFading);
    }

    @Test
    void theEstimateTellsWhoKnowsFromWhoDoesNot() {
        assertTrue(picked.auc > 0.90, "AUC " + picked.auc);
        assertTrue(shuffled.auc > 0.75, "AUC in random order " + shuffled.auc);
    }

    @Test
    void whoeverIsCalledMasterNearlyAlwaysIsOne() {
        assertTrue(picked.trueMastery > 0.97, "of masters, " + picked.trueMastery);
    }

    @Test
    void masteryTakesNotTooManyProblems() {
        assertTrue(picked.problemsToMastery < 15, "problems " + picked.problemsToMastery);
    }

    @Test
    void thePickerBeatsARandomOrder() {
        assertTrue(
                picked.mastered > 1.5 * shuffled.mastered,
                picked.mastered + " against " + shuffled.mastered + " skills mastered");
        assertTrue(
                pickedFading.mastered > 1.5 * shuffledFading.mastered,
                pickedFading.mastered + " against " + shuffledFading.mastered + ", fading");
    }

    @Test
    void withThePickerMoreIsLeftOfWhatFades() {
        assertTrue(
                pickedFading.known > shuffledFading.known + 3,
                pickedFading.known + " against " + shuffledFading.known + " skills known");
        assertTrue(pickedFading.trueMastery > 0.9, "of masters, " + pickedFading.trueMastery);
    }

    @Test
    void whereNothingFadesThePickerCostsLittleKnowledge() {
        assertTrue(
                picked.known > shuffled.known - 4,
                picked.known + " against " + shuffled.known + " skills known");
    }

    private static Choice byPicker(Standing standing, LocalDate day) {
        return new Picker(syllabus, standing, Optional.empty(), day).next(Wish.BEST).orElseThrow();
    }

    private static Order byChance(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Exercise> all = syllabus.all();
        return (standing, day) -> {
            Exercise exercise = all.get(random.nextInt(all.size()));
            return new Choice(exercise, standing.of(exercise.skill()).stage, Reason.of("keep", ""));
        };
    }

    private static Outcome run(java.util.function.LongFunction<Order> orders, boolean fading) {
        List<Double> beliefsOfMasters = new ArrayList<>();
        List<Double> beliefsOfOthers = new ArrayList<>();
        List<Double> sharesOfMasters = new ArrayList<>();
        List<Double> sharesOfOthers = new ArrayList<>();
        double mastered = 0;
        double rightly = 0;
        double known = 0;
        double halfway = 0;
        TriesToMastery tries = new TriesToMastery();
        for (int n = 0; n < LEARNERS; n++) {
            SyntheticLearner learner = new SyntheticLearner(syllabus, 20261125L + n, fading);
            Standing standing = new Standing(syllabus, ZoneOffset.UTC);
            Order order = orders.apply(n);
            tries.begin();
            for (int i = 1; i <= DAYS * A_DAY; i++) {
                LocalDate day = SmallSchool.FIRST_DAY.plusDays((i - 1) / A_DAY);
                Choice choice = order.next(standing, day);
                boolean right = learner.answer(choice.exercise(), choice.stage(), day.toEpochDay());
                take(standing, i, choice, right, SmallSchool.noon(day));
                tries.look(standing, choice.exercise().skill());
                if (i == DAYS * A_DAY / 2) {
                    halfway += learner.known();
                }
                if (i % A_DAY == 0) {
                    learner.sleep(day.toEpochDay());
                }
            }
            for (SkillMap.Skill skill : syllabus.practised()) {
                SkillLog log = standing.of(skill.id());
                boolean master = standing.temper(skill.id()) == Temper.BLUE;
                mastered += master ? 1 : 0;
                rightly += master && learner.knows(skill.id()) ? 1 : 0;
                if (log.tries > 0) {
                    boolean knows = learner.knows(skill.id());
                    (knows ? beliefsOfMasters : beliefsOfOthers).add(log.belief);
                    (knows ? sharesOfMasters : sharesOfOthers)
                            .add((double) (log.tries - log.wrong) / log.tries);
                }
            }
            known += learner.known();
        }
        return new Outcome(
                auc(beliefsOfMasters, beliefsOfOthers),
                auc(sharesOfMasters, sharesOfOthers),
                mastered / LEARNERS,
                known / LEARNERS,
                rightly / mastered,
                tries.mean(),
                halfway / LEARNERS);
    }

    private static void take(Standing standing, int i, Choice choice, boolean right, Instant now) {
        for (int ask = 0; ask < (right ? choice.exercise().asks() : 1); ask++) {
            standing.take(
                    i,
                    new Attempt(
                            choice.exercise().id(),
                            String.valueOf(i),
                            "1",
                            "",
                            "si_shop",
                            ask,
                            "",
                            right ? "right" : "wrong",
                            null,
                            right,
                            0,
                            60,
                            now,
                            null,
                            Attempt.Way.of(choice.stage())));
        }
    }

    /** The tries of each skill when it was mastered for the first time. */
    private static final class TriesToMastery {
        private final java.util.Set<String> seen = new java.util.HashSet<>();
        private double sum;
        private int skills;

        void begin() {
            seen.clear();
        }

        void look(Standing standing, String skill) {
            if (standing.of(skill).everMastered() && seen.add(skill)) {
                sum += standing.of(skill).tries;
                skills++;
            }
        }

        double mean() {
            return sum / skills;
        }
    }

    /** The chance that a master ranks above another, ties half: the Mann-Whitney statistic. */
    private static double auc(List<Double> masters, List<Double> others) {
        double above = 0;
        for (double master : masters) {
            for (double other : others) {
                above += master > other ? 1 : master == other ? 0.5 : 0;
            }
        }
        return above / ((double) masters.size() * others.size());
    }

    private static void print(String order, Outcome o) {
        System.out.printf(
                Locale.ROOT,
                "Simulation, %s: %d learners, %d problems each: AUC %.3f (share of right answers:"
                        + " %.3f); %.1f skills mastered, of these known %.1f %%; %.1f problems to"
                        + " mastery; %.1f skills known halfway, %.1f at the end%n",
                order,
                LEARNERS,
                DAYS * A_DAY,
                o.auc,
                o.aucOfCounts,
                o.mastered,
                100 * o.trueMastery,
                o.problemsToMastery,
                o.knownHalfway,
                o.known);
    }
}
