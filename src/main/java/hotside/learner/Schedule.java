// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.time.LocalDate;
import java.util.Optional;

/** When a mastered skill is looked at again: after growing gaps, or in time for an exam. */
final class Schedule {
    /** Days from one review to the next. */
    private static final int[] GAPS = {1, 3, 7, 16, 35};

    /** Of the days left to an exam, the share that a gap should take: 15 to 20 %. */
    private static final double EXAM_SHARE = 0.175;

    private Schedule() {}

    /** The last step; it repeats. */
    static int last() {
        return GAPS.length - 1;
    }

    /** True if the review of this step was a week after the one before, or longer. */
    static boolean week(int step) {
        return GAPS[step] >= 7;
    }

    /**
     * @param seen when the skill was mastered or last reviewed
     * @param step how many reviews in a row were passed
     * @param missed true if the last answer was wrong: then it is tomorrow
     * @param exam the day of an exam, if one was named
     * @param today never further ahead of today than one gap, so that a clock that was set back
     *     cannot put a review off for years
     */
    static LocalDate due(
            LocalDate seen, int step, boolean missed, Optional<LocalDate> exam, LocalDate today) {
        long gap = missed ? 1 : gap(seen, step, exam);
        LocalDate due = seen.plusDays(gap);
        LocalDate latest = today.plusDays(gap);
        return due.isAfter(latest) ? latest : due;
    }

    private static long gap(LocalDate seen, int step, Optional<LocalDate> exam) {
        int usual = GAPS[Math.max(0, Math.min(step, last()))];
        long left = exam.map(day -> day.toEpochDay() - seen.toEpochDay()).orElse(0L);
        if (left <= 1) {
            return usual;
        }
        return Math.min(left - 1, Math.max(1, Math.round(EXAM_SHARE * left)));
    }
}
