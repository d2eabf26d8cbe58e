// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import hotside.problem.SkillMap.Skill;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Chooses the next problem. The same standing on the same day gives the same choice.
 *
 * <p>A new skill gets its first three problems in a row; from then on no two neighbours share a
 * skill. Reviews that are due go first, but never three in a row while there is something to learn;
 * then mistakes that keep coming back, skills that only want another day, the weakest of what has
 * been begun, and what is new and rests on skills that are known.
 */
final class Picker {
    /** So many problems of a new skill come in a row. */
    private static final int BLOCK = 3;

    /** So many skills are begun side by side before another is. */
    private static final int SIDE_BY_SIDE = 2;

    /** A mistake made so often since it last went well gets a problem of its own. */
    private static final int OFTEN = 2;

    private final Syllabus syllabus;
    private final Standing standing;
    private final Optional<LocalDate> exam;
    private final LocalDate today;
    private final List<String> recent;

    Picker(Syllabus syllabus, Standing standing, Optional<LocalDate> exam, LocalDate today) {
        this.syllabus = syllabus;
        this.standing = standing;
        this.exam = exam;
        this.today = today;
        this.recent = standing.recent();
    }

    /** The next problem; nothing if there is none that fits the wish. */
    Optional<Choice> next(Wish wish) {
        return switch (wish.kind()) {
            case BEST -> best(skill -> true);
            case STRAND -> best(skill -> skill.strand().equals(wish.of()));
            case SKILL -> chosen(wish.of());
            case MISTAKES -> mistake(1, skill -> true).or(() -> best(skill -> true));
            case MISTAKE -> drill(wish.of(), skill -> true);
            case PROBLEM ->
                    syllabus.find(wish.of())
                            .map(e -> choice(e, Reason.of("chosen-problem", e.title())));
        };
    }

    private Optional<Choice> best(Predicate<Skill> among) {
        List<Skill> all = syllabus.practised().stream().filter(among).toList();
        List<Skill> others = all.stream().filter(s -> !isLast(s)).toList();
        return block(all).or(() -> from(others, among)).or(() -> from(all, among));
    }

    private Optional<Choice> from(List<Skill> skills, Predicate<Skill> among) {
        List<Supplier<Optional<Choice>>> ways =
                List.of(
                        () -> tooManyReviews(skills) ? Optional.empty() : due(skills),
                        () -> mistakesTurn() ? mistake(OFTEN, among) : Optional.empty(),
                        () -> anotherDay(skills),
                        () ->
                                begun(skills).size() >= SIDE_BY_SIDE
                                        ? weakest(skills)
                                        : fresh(skills),
                        () -> weakest(skills),
                        () -> proof(skills),
                        () -> due(skills),
                        () -> keep(skills),
                        () -> unready(skills));
        return ways.stream().map(Supplier::get).flatMap(Optional::stream).findFirst();
    }

    private boolean isLast(Skill skill) {
        return !recent.isEmpty() && recent.get(0).equals(skill.id());
    }

    private boolean mistakesTurn() {
        return standing.state().sittings % 3 == 1;
    }

    /** True if the last two were of mastered skills and there is something to learn. */
    private boolean tooManyReviews(List<Skill> skills) {
        boolean twoOld =
                recent.size() >= 2
                        && recent.stream().limit(2).allMatch(s -> standing.of(s).everMastered());
        return twoOld && skills.stream().anyMatch(s -> isReady(s) && !log(s).known());
    }

    private Optional<Choice> block(List<Skill> skills) {
        return skills.stream()
                .filter(this::isLast)
                .filter(s -> inARow(s) < BLOCK && log(s).tries < BLOCK && !log(s).known())
                .filter(s -> log(s).lastDay == today.toEpochDay())
                .findFirst()
                .flatMap(s -> of(s, Reason.of("block", s.name(), inARow(s) + 1, BLOCK)));
    }

    private long inARow(Skill skill) {
        return recent.stream().takeWhile(skill.id()::equals).count();
    }

    private Optional<Choice> due(List<Skill> skills) {
        return skills.stream()
                .filter(s -> dueOn(s).map(day -> !day.isAfter(today)).orElse(false))
                .min(Comparator.comparing(s -> dueOn(s).orElseThrow()))
                .flatMap(s -> of(s, dueReason(s)));
    }

    private Reason dueReason(Skill skill) {
        long late = today.toEpochDay() - dueOn(skill).orElseThrow().toEpochDay();
        if (log(skill).missed) {
            return Reason.of("missed", skill.name());
        }
        return late == 0
                ? Reason.of("due", skill.name())
                : late == 1
                        ? Reason.of("due-yesterday", skill.name())
                        : Reason.of("overdue", skill.name(), late);
    }

    private Optional<LocalDate> dueOn(Skill skill) {
        return log(skill).due(exam, today);
    }

    /** A problem that invites a mistake that was made at least so often lately. */
    private Optional<Choice> mistake(int often, Predicate<Skill> among) {
        return standing.slips().stream()
                .filter(slip -> slip.open() >= often)
                .map(slip -> drill(slip.slip(), among))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<Choice> drill(String slip, Predicate<Skill> among) {
        SlipStanding made =
                standing.slips().stream()
                        .filter(s -> s.slip().equals(slip))
                        .findFirst()
                        .orElse(new SlipStanding(slip, 0, 0, "", today));
        List<Exercise> inviting =
                syllabus.all().stream()
                        .filter(e -> e.slips().contains(slip) || e.id().equals(made.problem()))
                        .filter(e -> skillOf(e).filter(among).isPresent())
                        .toList();
        List<Exercise> others =
                inviting.stream()
                        .filter(e -> recent.isEmpty() || !recent.get(0).equals(e.skill()))
                        .toList();
        List<Exercise> met = others.stream().filter(this::isMet).toList();
        return Stream.of(met, others, inviting)
                .filter(list -> !list.isEmpty())
                .findFirst()
                .map(list -> longestAgo(list))
                .map(e -> choice(e, mistakeReason(made)));
    }

    private static Reason mistakeReason(SlipStanding made) {
        return switch (made.open()) {
            case 0 -> Reason.of("mistake-gone", made.name());
            case 1 -> Reason.of("mistake-once", made.name());
            case 2 -> Reason.of("mistake-twice", made.name());
            default -> Reason.of("mistake", made.name(), made.open());
        };
    }

    private boolean isMet(Exercise e) {
        return standing.of(e.skill()).tries > 0;
    }

    private Optional<Skill> skillOf(Exercise e) {
        return syllabus.skills().find(e.skill());
    }

    /** A skill that looks known and on which today counts as another day. */
    private Optional<Choice> anotherDay(List<Skill> skills) {
        return skills.stream()
                .filter(s -> unproven(s) && log(s).lastDay < today.toEpochDay())
                .findFirst()
                .flatMap(s -> of(s, Reason.of("another-day", s.name(), log(s).right)));
    }

    /** A skill that looks known and wants more answers or another problem. */
    private Optional<Choice> proof(List<Skill> skills) {
        return skills.stream()
                .filter(
                        s ->
                                unproven(s)
                                        && (log(s).proofs < SkillLog.PROOFS
                                                || log(s).problems.size() < toProve(s)))
                .min(Comparator.comparingInt(s -> log(s).proofs))
                .flatMap(s -> of(s, Reason.of("proof", s.name(), log(s).right)));
    }

    private boolean unproven(Skill skill) {
        return log(skill).known() && !log(skill).proven(toProve(skill));
    }

    private int toProve(Skill skill) {
        return syllabus.problemsToProve(skill.id());
    }

    private List<Skill> begun(List<Skill> skills) {
        return skills.stream()
                .filter(s -> log(s).tries > 0 && !log(s).known() && isReady(s))
                .toList();
    }

    private Optional<Choice> weakest(List<Skill> skills) {
        return begun(skills).stream()
                .min(Comparator.comparingDouble(s -> log(s).belief))
                .flatMap(s -> of(s, weakReason(s)));
    }

    private Reason weakReason(Skill skill) {
        SkillLog log = log(skill);
        return log.flagged
                ? Reason.of("back", skill.name(), SkillLog.TRIES)
                : Reason.of("weak", skill.name(), log.right, log.tries);
    }

    private Optional<Choice> fresh(List<Skill> skills) {
        return skills.stream()
                .filter(s -> log(s).tries == 0 && isReady(s))
                .findFirst()
                .flatMap(s -> of(s, freshReason(s)));
    }

    private Reason freshReason(Skill skill) {
        return skill.needs().isEmpty()
                ? Reason.of("fresh", skill.name())
                : Reason.of("fresh-after", skill.name(), syllabus.name(skill.needs().get(0)));
    }

    /** Whatever was met and was not seen for the longest time. */
    private Optional<Choice> keep(List<Skill> skills) {
        return skills.stream()
                .filter(s -> log(s).tries > 0 && isReady(s))
                .min(Comparator.comparingLong(this::lastSeen))
                .flatMap(s -> of(s, Reason.of("keep", s.name())));
    }

    private long lastSeen(Skill skill) {
        return syllabus.of(skill.id()).stream()
                .mapToLong(e -> standing.ofProblem(e.id()).last)
                .max()
                .orElse(0);
    }

    private Optional<Choice> unready(List<Skill> skills) {
        return skills.stream()
                .filter(s -> !isReady(s))
                .findFirst()
                .flatMap(s -> of(s, Reason.of("early", s.name(), missing(s))));
    }

    private String missing(Skill skill) {
        List<String> names = new ArrayList<>();
        skill.needs().stream().filter(n -> !isThere(n)).forEach(n -> names.add(syllabus.name(n)));
        return String.join(", ", names);
    }

    private boolean isReady(Skill skill) {
        return skill.needs().stream().allMatch(this::isThere);
    }

    /** Known, or not to be practised at all. */
    private boolean isThere(String skill) {
        SkillLog log = standing.of(skill);
        return log.known() || log.everMastered() || syllabus.of(skill).isEmpty();
    }

    private Optional<Choice> chosen(String id) {
        return syllabus.skills().find(id).flatMap(s -> of(s, Reason.of("chosen", s.name())));
    }

    private Optional<Choice> of(Skill skill, Reason reason) {
        List<Exercise> exercises = syllabus.of(skill.id());
        return exercises.isEmpty()
                ? Optional.empty()
                : Optional.of(choice(longestAgo(exercises), reason));
    }

    /** What was never tried, the easy first; then what was longest ago. */
    private Exercise longestAgo(List<Exercise> exercises) {
        return exercises.stream()
                .min(
                        Comparator.<Exercise>comparingLong(e -> standing.ofProblem(e.id()).last)
                                .thenComparingInt(Exercise::level))
                .orElseThrow();
    }

    private SkillLog log(Skill skill) {
        return standing.of(skill.id());
    }

    private Choice choice(Exercise exercise, Reason reason) {
        return new Choice(exercise, standing.of(exercise.skill()).stage, reason);
    }
}
