// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import hotside.learner.Attempt;
import hotside.learner.Syllabus;
import hotside.problem.Answers;
import hotside.problem.SkillMap;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.io.StringWriter;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

class OwnStatementsTest {
    private static final Schema SCHEMA =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(
                            OwnStatementsTest.class.getResourceAsStream("statement.schema.json"));
    private static final Syllabus SYLLABUS = Syllabus.of(SkillMap.shipped(), Classes.BANK);
    private static final Instant FIRST_DAY = Instant.parse("2026-11-23T08:00:31.250Z");
    private static final String SKILL = "hot-side.pipe-drop";

    private final List<Template> problems =
            Classes.BANK.all().stream().filter(t -> t.skill().equals(SKILL)).limit(2).toList();
    private final List<Attempt> attempts = new ArrayList<>();
    private int left;

    /** All questions of a problem answered rightly at the first try. */
    private OwnStatementsTest solved(int problem, int day, int hints) {
        Template template = problems.get(problem);
        Variant variant = Variants.draw(template, 100 + attempts.size(), UnitSystem.SI_SHOP);
        for (int ask = 0; ask < variant.answers().size(); ask++) {
            attempts.add(
                    new Attempt(
                            template.id(),
                            String.valueOf(variant.seed()),
                            String.valueOf(Variants.GENERATOR_VERSION),
                            template.fingerprint(),
                            UnitSystem.SI_SHOP.name().toLowerCase(Locale.ROOT),
                            ask,
                            Answers.key(variant, ask),
                            "right",
                            null,
                            true,
                            hints,
                            95,
                            FIRST_DAY.plus(Duration.ofDays(day)).plusSeconds(attempts.size()),
                            null));
        }
        return this;
    }

    private JsonNode written() throws IOException {
        StringWriter out = new StringWriter();
        left =
                new OwnStatements("K7Q2M9XW4T", SYLLABUS, Classes.BANK, ZoneId.of("UTC"))
                        .write(attempts, out);
        return new ObjectMapper().readTree(out.toString());
    }

    private static List<JsonNode> mastered(JsonNode statements) {
        List<JsonNode> found = new ArrayList<>();
        statements.forEach(
                s -> {
                    if (s.get("verb").get("id").asText().endsWith("/mastered")) {
                        found.add(s);
                    }
                });
        return found;
    }

    /** Three right answers without help, from two problems, on two days. */
    @Test
    void aSkillIsStatedMasteredOnceTheEvidenceIsThere() throws IOException {
        solved(0, 0, 0).solved(1, 0, 0);
        assertEquals(List.of(), mastered(written()), "two on one day prove nothing");
        solved(0, 0, 0);
        assertEquals(List.of(), mastered(written()), "nor do three on one day");
        solved(1, 1, 0).solved(0, 2, 0);
        JsonNode statements = written();
        assertEquals(List.of(), SCHEMA.validate(statements));
        assertEquals(1, mastered(statements).size(), "once, however long it goes on");
        JsonNode one = mastered(statements).get(0);
        assertEquals(Statements.OURS + "skill/" + SKILL, one.get("object").get("id").asText());
        assertEquals("2026-11-24T08:00:00Z", one.get("timestamp").asText());
        JsonNode evidence = one.get("result").get("extensions");
        assertEquals(4, evidence.get(Statements.OURS + "extension/right-without-help").asInt());
        assertEquals(2, evidence.get(Statements.OURS + "extension/problems").asInt());
        assertEquals(0, left);
    }

    @Test
    void whatWasHelpedIsAnsweredButNotMastered() throws IOException {
        for (int day = 0; day < 4; day++) {
            solved(day % 2, day, 1);
        }
        JsonNode statements = written();
        assertEquals(List.of(), SCHEMA.validate(statements));
        assertEquals(attempts.size(), statements.size());
        assertEquals(List.of(), mastered(statements));
    }

    @Test
    void everyStatementHasANameOfItsOwnAndNoPersonInIt() throws IOException {
        solved(0, 0, 0).solved(0, 0, 0).solved(1, 1, 0);
        JsonNode statements = written();
        assertEquals(statements.size(), ids(statements).size());
        statements.forEach(
                s ->
                        assertEquals(
                                "K7Q2M9XW4T", s.get("actor").get("account").get("name").asText()));
    }

    /** Who takes statements in knows by the id which of them were there already. */
    @Test
    void aStatementKeepsItsNameWhenOlderAnswersAreDeleted() throws IOException {
        solved(0, 0, 1).solved(1, 40, 1);
        Set<String> all = ids(written());
        attempts.subList(0, attempts.size() / 2).clear();
        Set<String> kept = ids(written());
        assertEquals(attempts.size(), kept.size());
        assertTrue(all.containsAll(kept));
    }

    private static Set<String> ids(JsonNode statements) {
        Set<String> ids = new HashSet<>();
        statements.forEach(s -> ids.add(s.get("id").asText()));
        return ids;
    }

    @Test
    void answersToAProblemThatWasRewrittenAreLeftOutAndCounted() throws IOException {
        solved(0, 0, 0);
        Attempt a = attempts.get(0);
        attempts.add(
                new Attempt(
                        a.problem(),
                        a.seed(),
                        a.generator(),
                        "another",
                        a.unitSystem(),
                        0,
                        a.answer(),
                        a.verdict(),
                        null,
                        true,
                        0,
                        1,
                        a.time(),
                        null));
        assertEquals(attempts.size() - 1, written().size());
        assertEquals(1, left);
    }

    /** A schema that accepts everything would prove nothing. */
    @Test
    void theSchemaRefusesAMasteredThatIsNoSuccess() throws IOException {
        solved(0, 0, 0).solved(1, 0, 0).solved(0, 1, 0).solved(1, 2, 0);
        JsonNode statements = written();
        ((ObjectNode) mastered(statements).get(0).get("result")).put("success", false);
        assertFalse(SCHEMA.validate(statements).isEmpty());
        assertTrue(SCHEMA.validate(written()).isEmpty());
    }
}
