// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.time.LocalDate;
import java.util.Optional;
import java.util.TreeSet;

/**
 * All that is remembered of one skill: the belief that it is known, the evidence, the stage of help
 * and the reviews. Written into the record as it stands, so a field is never renamed; days count
 * from 1970.
 */
final class SkillLog {
    /** Mastery wants so many right answers without help … */
    static final int PROOFS = 3;

    /** … from so many problems … */
    static final int PROBLEMS = 2;

    /** … on so many days. */
    static final int DAYS = 2;

    /** After so many tries without mastery it is back to a full example. */
    static final int TRIES = 10;

    private static final long NEVER = Long.MIN_VALUE;

    double belief = Tracing.START;
    int tries;
    int right;
    int helped;
    int wrong;
    int proofs;
    TreeSet<String> problems = new TreeSet<>();
    TreeSet<Long> days = new TreeSet<>();
    Stage stage = Stage.WORKED;
    int wrongInRow;
    int toward;
    boolean flagged;
    long mastered = NEVER;
    long seen = NEVER;
    int step;
    boolean missed;
    boolean week;
    String lastProblem = "";
    long lastDay = NEVER;
    boolean lastRight;
    long good = NEVER;

    /** What an answer was made under. */
    record Circumstance(String problem, Tracing tracing, Stage stage, int rung, long day) {
        boolean unaided() {
            return rung == 0 && stage == Stage.FULL;
        }
    }

    /**
     * A problem was solved at the first try.
     *
     * @param toProve from how many problems this skill must be proven
     */
    void solved(Circumstance now, int toProve) {
        // The same problem twice in a row on one day is one piece of evidence.
        boolean again = lastRight && lastDay == now.day() && lastProblem.equals(now.problem());
        tries++;
        wrongInRow = 0;
        if (now.unaided()) {
            right++;
            stage = Stage.FULL;
            if (!again) {
                prove(now);
            }
            reviewed(now.day());
            good = now.day();
        } else {
            helped++;
            if (now.rung() == 0) {
                stage = now.stage().next();
            } else if (now.rung() > 1) {
                belief = now.tracing().wrong(belief);
            }
        }
        remember(now, true, toProve);
    }

    private void prove(Circumstance now) {
        belief = now.tracing().right(belief);
        proofs++;
        problems.add(now.problem());
        days.add(now.day());
        if (days.size() > DAYS) {
            days.pollLast();
        }
    }

    /** A first try was wrong, and this skill is to blame. */
    void failed(Circumstance now, int toProve) {
        tries++;
        wrong++;
        belief = now.tracing().wrong(belief);
        if (++wrongInRow >= 2) {
            wrongInRow = 0;
            stage = stage.back();
        }
        if (mastered != NEVER) {
            step = 0;
            seen = now.day();
            missed = true;
        }
        remember(now, false, toProve);
    }

    private void reviewed(long day) {
        if (mastered == NEVER || day <= seen) {
            return;
        }
        LocalDate due = due(Optional.empty(), LocalDate.ofEpochDay(day)).orElseThrow();
        if (!due.isAfter(LocalDate.ofEpochDay(day))) {
            week |= !missed && Schedule.week(step);
            step = missed ? 0 : Math.min(step + 1, Schedule.last());
            missed = false;
            seen = day;
        }
    }

    private void remember(Circumstance now, boolean good, int toProve) {
        lastProblem = now.problem();
        lastDay = now.day();
        lastRight = good;
        toward++;
        if (known() && proven(toProve)) {
            if (mastered == NEVER) {
                mastered = now.day();
                seen = now.day();
            }
            flagged = false;
            toward = 0;
        } else if (toward >= TRIES && !known()) {
            flagged = true;
            stage = Stage.WORKED;
            toward = 0;
        }
    }

    boolean known() {
        return belief >= Tracing.KNOWN;
    }

    boolean proven(int toProve) {
        return proofs >= PROOFS && problems.size() >= toProve && days.size() >= DAYS;
    }

    boolean everMastered() {
        return mastered != NEVER;
    }

    /** When it is to be looked at again, if it was ever mastered. */
    Optional<LocalDate> due(Optional<LocalDate> exam, LocalDate today) {
        if (mastered == NEVER) {
            return Optional.empty();
        }
        // Before an exam every right answer counts as a look; else only one that was due.
        Optional<LocalDate> ahead = exam.filter(day -> day.isAfter(today));
        long from = ahead.isPresent() ? Math.max(seen, good) : seen;
        return Optional.of(Schedule.due(LocalDate.ofEpochDay(from), step, missed, ahead, today));
    }

    Temper temper(int toProve) {
        if (tries == 0) {
            return Temper.COLD;
        }
        if (known()) {
            return proven(toProve) && !missed ? Temper.BLUE : Temper.VIOLET;
        }
        if (everMastered()) {
            return belief >= 0.5 ? Temper.VIOLET : Temper.BRONZE;
        }
        return belief >= 0.5 ? Temper.BRONZE : Temper.STRAW;
    }
}
