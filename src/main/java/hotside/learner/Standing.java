// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a learner's answers say: a fold over the attempts in the order in which they were stored.
 *
 * <p>The evidence is a problem with its numbers, not an answer: it counts once, as failed with the
 * first wrong first answer to one of its questions, as solved when all of them had a right one.
 * Further answers to the same numbers teach, but prove nothing.
 */
final class Standing {
    private static final int OPEN_SITTINGS = 64;
    private static final int RECENT = 12;
    private static final int CALENDAR_DAYS = 400;

    /** The state as it is stored; see {@link Snapshot}. */
    static final class State {
        long upTo;
        long sittings;
        long latest = Long.MIN_VALUE;
        TreeMap<String, SkillLog> skills = new TreeMap<>();
        TreeMap<String, SlipLog> slips = new TreeMap<>();
        TreeMap<String, ProblemLog> problems = new TreeMap<>();
        LinkedHashMap<String, Sitting> open = new LinkedHashMap<>();
        TreeMap<Long, DayLog> days = new TreeMap<>();
        List<String> recent = new ArrayList<>();
    }

    private final Syllabus syllabus;
    private final ZoneId zone;
    private final State state;

    Standing(Syllabus syllabus, ZoneId zone) {
        this(syllabus, zone, new State());
    }

    Standing(Syllabus syllabus, ZoneId zone, State state) {
        this.syllabus = syllabus;
        this.zone = zone;
        this.state = state;
    }

    State state() {
        return state;
    }

    /** Number of the last attempt taken in; 0 if there is none. */
    long upTo() {
        return state.upTo;
    }

    /** When the latest attempt was made, by the clock of then. */
    Optional<Instant> latest() {
        return state.latest == Long.MIN_VALUE
                ? Optional.empty()
                : Optional.of(Instant.ofEpochMilli(state.latest));
    }

    /** Takes an attempt in; attempts come in the order of their numbers. */
    void take(long id, Attempt attempt) {
        state.upTo = id;
        state.latest = Math.max(state.latest, attempt.time().toEpochMilli());
        long day = day(attempt.time());
        DayLog log = state.days.computeIfAbsent(day, d -> new DayLog());
        log.tries++;
        log.right += attempt.correct() ? 1 : 0;
        while (state.days.size() > CALENDAR_DAYS) {
            state.days.pollFirstEntry();
        }
        if (attempt.way() != Attempt.Way.AGAIN) {
            syllabus.find(attempt.problem()).ifPresent(e -> weigh(e, attempt, day));
        }
    }

    private void weigh(Exercise exercise, Attempt attempt, long day) {
        Sitting sitting = sitting(exercise, attempt);
        if (!sitting.answered.add(attempt.ask()) || sitting.decided) {
            return;
        }
        sitting.rung = Math.max(sitting.rung, attempt.hints());
        if (!attempt.correct()) {
            sitting.decided = true;
            failed(exercise, attempt, now(exercise, attempt, sitting, day));
        } else if (sitting.answered.size() >= exercise.asks()) {
            sitting.decided = true;
            solved(exercise, now(exercise, attempt, sitting, day));
        }
    }

    private static SkillLog.Circumstance now(
            Exercise exercise, Attempt attempt, Sitting sitting, long day) {
        return new SkillLog.Circumstance(
                exercise.id(),
                Tracing.of(exercise.kind()),
                attempt.way().stage(),
                sitting.rung,
                day);
    }

    private void failed(Exercise exercise, Attempt attempt, SkillLog.Circumstance now) {
        String blamed = exercise.blamed(attempt.mistake());
        log(blamed).failed(now, syllabus.problemsToProve(blamed));
        if (attempt.mistake() != null) {
            state.slips
                    .computeIfAbsent(Exercise.slip(attempt.mistake()), s -> new SlipLog())
                    .made(exercise.id(), now.day());
        }
    }

    private void solved(Exercise exercise, SkillLog.Circumstance now) {
        log(exercise.skill()).solved(now, syllabus.problemsToProve(exercise.skill()));
        if (now.unaided()) {
            problem(exercise.id()).solved++;
            state.slips.forEach(
                    (slip, log) -> {
                        if (exercise.slips().contains(slip)
                                || exercise.id().equals(log.lastProblem)) {
                            log.avoided();
                        }
                    });
        }
    }

    private Sitting sitting(Exercise exercise, Attempt attempt) {
        String key = attempt.problem() + " " + attempt.seed() + " " + attempt.unitSystem();
        Sitting open = state.open.get(key);
        if (open != null) {
            return open;
        }
        Sitting fresh = new Sitting();
        state.open.put(key, fresh);
        if (state.open.size() > OPEN_SITTINGS) {
            state.open.remove(state.open.keySet().iterator().next());
        }
        state.sittings++;
        ProblemLog log = problem(exercise.id());
        log.tries++;
        log.last = state.sittings;
        state.recent.add(0, exercise.skill());
        if (state.recent.size() > RECENT) {
            state.recent.remove(RECENT);
        }
        return fresh;
    }

    private ProblemLog problem(String id) {
        return state.problems.computeIfAbsent(id, p -> new ProblemLog());
    }

    private SkillLog log(String skill) {
        return state.skills.computeIfAbsent(skill, s -> new SkillLog());
    }

    private long day(Instant time) {
        return LocalDate.ofInstant(time, zone).toEpochDay();
    }

    /** What is remembered of a skill; an empty log if nothing is. */
    SkillLog of(String skill) {
        return state.skills.getOrDefault(skill, new SkillLog());
    }

    /** What is remembered of a problem; an empty log if nothing is. */
    ProblemLog ofProblem(String id) {
        return state.problems.getOrDefault(id, new ProblemLog());
    }

    /** The skills of the last problems, the latest first. */
    List<String> recent() {
        return List.copyOf(state.recent);
    }

    Temper temper(String skill) {
        return of(skill).temper(syllabus.problemsToProve(skill));
    }

    SkillStanding skill(String id, Optional<LocalDate> exam, LocalDate today) {
        SkillLog log = of(id);
        return new SkillStanding(
                id,
                syllabus.name(id),
                syllabus.skills().find(id).map(s -> s.strand()).orElse(""),
                temper(id),
                log.tries,
                log.right,
                log.helped,
                log.wrong,
                log.proofs,
                log.problems.size(),
                log.days.size(),
                syllabus.problemsToProve(id),
                log.stage,
                log.flagged,
                log.week,
                log.due(exam, today));
    }

    /** The sorts of mistake made, those still open and made often first. */
    List<SlipStanding> slips() {
        List<SlipStanding> all = new ArrayList<>();
        state.slips.forEach(
                (slip, log) ->
                        all.add(
                                new SlipStanding(
                                        slip,
                                        log.total,
                                        log.open,
                                        log.lastProblem,
                                        LocalDate.ofEpochDay(log.lastDay))));
        all.sort(
                Comparator.comparingInt(SlipStanding::open)
                        .thenComparingInt(SlipStanding::total)
                        .reversed()
                        .thenComparing(SlipStanding::slip));
        return all;
    }

    /** Answers and right answers by day, oldest first. */
    Map<LocalDate, DayStanding> calendar() {
        Map<LocalDate, DayStanding> all = new LinkedHashMap<>();
        state.days.forEach(
                (day, log) ->
                        all.put(LocalDate.ofEpochDay(day), new DayStanding(log.tries, log.right)));
        return all;
    }
}
