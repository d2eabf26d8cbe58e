// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.classroom.OwnStatements;
import hotside.learner.Attempt;
import hotside.learner.LearnerRecord;
import hotside.learner.Learners;
import hotside.learner.SkillStanding;
import hotside.learner.SlipStanding;
import hotside.learner.Stored;
import hotside.learner.Syllabus;
import hotside.learner.Tutor;
import hotside.page.MyWorkPage;
import hotside.page.PracticePage;
import hotside.page.Words;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads all that the page of a learner's work shows. Runs beside the screen. */
final class MyWorkReading {
    private static final int HISTORY = 40;
    private static final int EVIDENCE = 2;
    private static final int DUE_WITHIN_DAYS = 14;
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private final ProblemBank bank;
    private final ZoneId zone;

    MyWorkReading(ProblemBank bank, ZoneId zone) {
        this.bank = bank;
        this.zone = zone;
    }

    MyWorkReading of(ProblemBank other) {
        return new MyWorkReading(other, zone);
    }

    /** The learner's answers as xAPI statements. */
    OwnStatements statements(Tutor tutor) {
        return new OwnStatements(tutor.record().learner(), tutor.syllabus(), bank, zone);
    }

    MyWorkPage.View of(Tutor tutor, List<Learners.Seat> seats, Instant now, String notice) {
        LearnerRecord record = tutor.record();
        LocalDate today = LocalDate.ofInstant(now, zone);
        List<SkillStanding> skills = tutor.skills(now);
        Syllabus syllabus = tutor.syllabus();
        return new MyWorkPage.View(
                record.learner(),
                record.setting(Learners.NICKNAME).orElse(""),
                today,
                seats.stream().map(s -> new PracticePage.Option(s.id(), s.told(), "")).toList(),
                days(tutor),
                skills.stream().map(s -> SkillLines.of(s, syllabus, today)).toList(),
                due(skills, today),
                tutor.mistakes().stream().map(slip -> mistake(slip, record)).toList(),
                record.latest(HISTORY).stream().map(this::told).toList(),
                record.count(),
                tutor.exam().map(LocalDate::toString).orElse(""),
                tutor.retention(),
                notice.isEmpty() ? Optional.empty() : Optional.of(notice));
    }

    private static Map<LocalDate, Integer> days(Tutor tutor) {
        Map<LocalDate, Integer> days = new LinkedHashMap<>();
        tutor.calendar().forEach((day, standing) -> days.put(day, standing.tries()));
        return days;
    }

    private static List<MyWorkPage.Due> due(List<SkillStanding> skills, LocalDate today) {
        return skills.stream()
                .filter(s -> s.due().isPresent())
                .filter(s -> !s.due().get().isAfter(today.plusDays(DUE_WITHIN_DAYS)))
                .sorted(Comparator.comparing(s -> s.due().orElseThrow()))
                .map(
                        s ->
                                new MyWorkPage.Due(
                                        s.skill(),
                                        s.name(),
                                        SkillLines.due(s.due().orElseThrow(), today)))
                .toList();
    }

    private MyWorkPage.MistakeLine mistake(SlipStanding slip, LearnerRecord record) {
        return new MyWorkPage.MistakeLine(
                slip.slip(),
                slip.name(),
                slip.total(),
                slip.open(),
                slip.last(),
                record.withSlip(slip.slip(), EVIDENCE).stream().map(this::told).toList());
    }

    private MyWorkPage.Try told(Stored stored) {
        Attempt a = stored.attempt();
        Optional<Template> template = bank.find(a.problem());
        boolean several = template.map(t -> t.asks().size() > 1).orElse(false);
        return new MyWorkPage.Try(
                stored.number(),
                WHEN.format(
                        LocalDateTime.ofInstant(a.time(), zone).truncatedTo(ChronoUnit.MINUTES)),
                template.map(Template::title).orElse(Words.of("mywork.gone-problem")),
                several ? a.ask() + 1 : 0,
                a.answer(),
                verdict(a),
                template.map(t -> PracticePlace.replays(a, t)).orElse(false));
    }

    private static String verdict(Attempt a) {
        String word = Words.of(a.correct() ? "verdict.right" : "verdict.wrong");
        return a.mistake() == null
                ? word
                : word + " “" + hotside.learner.Exercise.slip(a.mistake()).replace('-', ' ') + "”";
    }
}
