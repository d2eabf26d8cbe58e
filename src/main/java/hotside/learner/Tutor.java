// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a learner knows, and what to do next: the record seen through the syllabus.
 *
 * <p>Every answer goes in through {@link #add}. Answers that another window stored are taken in
 * before each question. Methods may be called from any thread, one at a time; they wait for the
 * disk.
 */
public final class Tutor {
    /** Name of the setting that holds the day of an exam, {@code 2027-01-31}. */
    public static final String EXAM = "exam";

    /** Name of the setting that holds for how many days answers are kept. */
    public static final String RETENTION = "retention";

    /** For how many days answers are kept, unless the learner says otherwise. */
    public static final int RETENTION_DAYS = 400;

    private static final int KEEP_EVERY = 50;
    private static final int AT_ONCE = 10_000;

    private final LearnerRecord record;
    private final Syllabus syllabus;
    private final ZoneId zone;
    private final String rules;
    private final Standing standing;
    private long kept;

    /**
     * @param zone whose days count
     */
    public Tutor(LearnerRecord record, Syllabus syllabus, ZoneId zone) {
        this.record = record;
        this.syllabus = syllabus;
        this.zone = zone;
        this.rules = Snapshot.rules(syllabus, zone);
        Optional<Standing.State> state = record.snapshot().flatMap(s -> s.state(rules));
        this.standing =
                state.map(s -> new Standing(syllabus, zone, s))
                        .orElseGet(() -> new Standing(syllabus, zone));
        this.kept = standing.upTo();
        catchUp();
    }

    public LearnerRecord record() {
        return record;
    }

    public Syllabus syllabus() {
        return syllabus;
    }

    /** Stores an answer and takes it in; returns when it is on the disk. */
    public synchronized long add(Attempt attempt) {
        long number = record.add(attempt);
        catchUp();
        return number;
    }

    /** Takes in what this or another window has stored since. */
    private void catchUp() {
        List<Stored> fresh;
        do {
            fresh = record.after(standing.upTo(), AT_ONCE);
            fresh.forEach(stored -> standing.take(stored.number(), stored.attempt()));
        } while (fresh.size() == AT_ONCE);
        if (standing.upTo() - kept >= KEEP_EVERY) {
            keep();
        }
    }

    /** Stores how things stand, so that the next start is quick. It is worth no failure. */
    public synchronized void keep() {
        if (standing.upTo() == kept) {
            return;
        }
        try {
            record.keep(Snapshot.of(rules, standing));
        } catch (RecordException later) {
            // The answers themselves are safe; the next start reads them instead.
        }
        kept = standing.upTo();
    }

    /** The next problem for a wish; nothing if no problem fits it. */
    public synchronized Optional<Choice> next(Wish wish, Instant now) {
        catchUp();
        return new Picker(syllabus, standing, exam(), day(now)).next(wish);
    }

    /** How the learner stands with every skill that has problems, in teaching order. */
    public synchronized List<SkillStanding> skills(Instant now) {
        catchUp();
        return syllabus.practised().stream()
                .map(s -> standing.skill(s.id(), exam(), day(now)))
                .toList();
    }

    /** The sorts of mistake made, those that keep coming first. */
    public synchronized List<SlipStanding> mistakes() {
        catchUp();
        return standing.slips();
    }

    /** The days of work, oldest first. */
    public synchronized Map<LocalDate, DayStanding> calendar() {
        catchUp();
        return new LinkedHashMap<>(standing.calendar());
    }

    /** The day of the exam that the learner named, if it can be read. */
    public Optional<LocalDate> exam() {
        return record.setting(EXAM).flatMap(Tutor::date);
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** For how many days answers are kept. */
    public int retention() {
        return record.setting(RETENTION)
                .filter(t -> t.matches("\\d{1,5}"))
                .map(Integer::parseInt)
                .filter(days -> days > 0)
                .orElse(RETENTION_DAYS);
    }

    /** Deletes what is older than the learner wants it kept. How the learner stands is kept. */
    public synchronized int tidy(Instant now) {
        catchUp();
        keep();
        return record.forgetOlderThan(retention(), now);
    }

    /** By how much the latest answer lies ahead of the clock, if by more than a day. */
    public synchronized Optional<Duration> clockBehind(Instant now) {
        return standing.latest()
                .map(latest -> Duration.between(now, latest))
                .filter(ahead -> ahead.compareTo(Duration.ofDays(1)) > 0);
    }

    LocalDate day(Instant now) {
        return LocalDate.ofInstant(now, zone);
    }

    Standing standing() {
        return standing;
    }
}
