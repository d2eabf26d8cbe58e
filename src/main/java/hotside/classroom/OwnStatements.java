// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotside.learner.Attempt;
import hotside.learner.Mastery;
import hotside.learner.SkillStanding;
import hotside.learner.Syllabus;
import hotside.problem.Marker;
import hotside.problem.NoVariantException;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.problem.Verdict;
import hotside.unit.DecimalHabit;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.io.Writer;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A learner's own record as xAPI statements: {@code answered} for each answer, {@code mastered} for
 * each skill that the answers prove. Only the record can say so: a single set that was handed in
 * never holds the days and problems that mastery takes.
 */
public final class OwnStatements {
    private static final String MASTERED = "http://adlnet.gov/expapi/verbs/mastered";
    private static final String OBJECTIVE = "http://adlnet.gov/expapi/activities/objective";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final String learner;
    private final Syllabus syllabus;
    private final ProblemBank bank;
    private final ZoneId zone;

    /**
     * @param learner the random id of the record
     * @param zone whose days count
     */
    public OwnStatements(String learner, Syllabus syllabus, ProblemBank bank, ZoneId zone) {
        this.learner = learner;
        this.syllabus = syllabus;
        this.bank = bank;
        this.zone = zone;
    }

    /**
     * Writes them as one JSON array. The writer is flushed, not closed.
     *
     * @return how many answers were left out because their problem has another text by now, so that
     *     nobody can say any more what was right
     */
    public int write(List<Attempt> attempts, Writer out) throws IOException {
        JsonGenerator json = MAPPER.getFactory().createGenerator(out);
        json.writeStartArray();
        int left = 0;
        Map<String, Integer> before = new HashMap<>();
        for (Attempt attempt : attempts) {
            Optional<Map<String, Object>> statement =
                    answered(before.merge(name(attempt), 1, Integer::sum), attempt);
            left += statement.isEmpty() ? 1 : 0;
            if (statement.isPresent()) {
                MAPPER.writeValue(json, statement.get());
            }
        }
        for (Mastery mastery : Mastery.of(attempts, syllabus, zone)) {
            MAPPER.writeValue(json, mastered(mastery));
        }
        json.writeEndArray();
        json.flush();
        return left;
    }

    private Optional<Map<String, Object>> answered(int nth, Attempt attempt) {
        return variant(attempt)
                .filter(v -> attempt.ask() < v.answers().size())
                .map(v -> answered(nth, attempt, v));
    }

    private Optional<Variant> variant(Attempt attempt) {
        Optional<Template> template =
                bank.find(attempt.problem())
                        .filter(t -> t.fingerprint().equals(attempt.fingerprint()));
        Optional<UnitSystem> system =
                Arrays.stream(UnitSystem.values())
                        .filter(s -> s.name().equalsIgnoreCase(attempt.unitSystem()))
                        .findFirst();
        boolean sameNumbers =
                attempt.generator().equals(String.valueOf(Variants.GENERATOR_VERSION))
                        && attempt.seed().matches("-?\\d{1,19}");
        if (template.isEmpty() || system.isEmpty() || !sameNumbers) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    Variants.draw(template.get(), Long.parseLong(attempt.seed()), system.get()));
        } catch (NoVariantException | NumberFormatException e) {
            return Optional.empty();
        }
    }

    private String sitting(Attempt attempt) {
        return learner + "/" + attempt.problem() + "/" + attempt.seed();
    }

    /** Stays the same when older answers go from the record. */
    private String name(Attempt attempt) {
        return sitting(attempt) + "/" + attempt.ask() + "/" + attempt.time();
    }

    /**
     * @param nth of all answers of this name
     */
    private Map<String, Object> answered(int nth, Attempt attempt, Variant variant) {
        Map<String, Object> statement = new LinkedHashMap<>();
        statement.put("id", Statements.uuid(name(attempt) + "/" + nth));
        statement.put("actor", Statements.actor(learner));
        statement.put("verb", Statements.verb(Statements.ANSWERED, "answered"));
        statement.put("object", Statements.object(attempt.ask(), variant));
        statement.put("result", result(attempt, variant));
        statement.put(
                "context",
                Statements.context(
                        sitting(attempt),
                        attempt.lesson() == null ? "practice" : "lesson/" + attempt.lesson()));
        statement.put("timestamp", minute(attempt.time()));
        return statement;
    }

    private static Map<String, Object> result(Attempt attempt, Variant variant) {
        Map<String, Object> extensions = new LinkedHashMap<>();
        extensions.put(Statements.OURS + "extension/seed", attempt.seed());
        extensions.put(Statements.OURS + "extension/generator", Variants.GENERATOR_VERSION);
        extensions.put(Statements.OURS + "extension/typed", attempt.answer());
        extensions.put(Statements.OURS + "extension/hints", attempt.hints());
        extensions.put(Statements.OURS + "extension/verdict", attempt.verdict());
        if (attempt.mistake() != null) {
            extensions.put(Statements.OURS + "extension/mistake", attempt.mistake());
        }
        Map<String, Object> result = new LinkedHashMap<>();
        result.put("success", attempt.correct());
        result.put("score", Map.of("scaled", attempt.correct() ? 1 : 0));
        result.put("response", response(attempt, variant));
        result.put("duration", "PT" + Math.round(attempt.seconds() / 60) + "M");
        result.put("extensions", extensions);
        return result;
    }

    private static String response(Attempt attempt, Variant variant) {
        List<String> answers = new ArrayList<>(Collections.nCopies(variant.answers().size(), ""));
        answers.set(attempt.ask(), attempt.answer());
        double value =
                Marker.mark(variant, answers, DecimalHabit.spoken())
                        .get(attempt.ask())
                        .map(Verdict::value)
                        .orElse(Double.NaN);
        return Statements.response(variant, attempt.ask(), value, attempt.answer());
    }

    private Map<String, Object> mastered(Mastery mastery) {
        SkillStanding skill = mastery.skill();
        Map<String, Object> definition = new LinkedHashMap<>();
        definition.put("type", OBJECTIVE);
        definition.put("name", Statements.words(skill.name()));
        definition.put(
                "description",
                Map.of(
                        "en",
                        "At least three right answers without help, from at least two problems (one, if the skill"
                                + " has only one), on at least two days, and an estimate of at least 0.95"
                                + " that it is known."));
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("objectType", "Activity");
        object.put("id", Statements.OURS + "skill/" + skill.skill());
        object.put("definition", definition);
        Map<String, Object> extensions = new LinkedHashMap<>();
        extensions.put(Statements.OURS + "extension/right-without-help", skill.proofs());
        extensions.put(Statements.OURS + "extension/problems", skill.problems());
        Map<String, Object> result = new LinkedHashMap<>();
        result.put("success", true);
        result.put("extensions", extensions);
        Map<String, Object> statement = new LinkedHashMap<>();
        statement.put("id", Statements.uuid(learner + "/mastered/" + skill.skill() + mastery.at()));
        statement.put("actor", Statements.actor(learner));
        statement.put("verb", Statements.verb(MASTERED, "mastered"));
        statement.put("object", object);
        statement.put("result", result);
        statement.put("context", Statements.context(learner, "strand/" + skill.strand()));
        statement.put("timestamp", minute(mastery.at()));
        return statement;
    }

    /** To the minute: more says nothing about the work and something about the person. */
    private static String minute(Instant at) {
        return at.truncatedTo(ChronoUnit.MINUTES).toString();
    }
}
