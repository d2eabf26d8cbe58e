// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import hotside.classroom.ProblemSet.Numbers;
import hotside.problem.Template;
import hotside.unit.DecimalHabit;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class StatementsTest {
    private static final Schema SCHEMA =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(StatementsTest.class.getResourceAsStream("statement.schema.json"));

    private final Regrader regrader = new Regrader(Classes.set(Numbers.OWN), Classes.BANK);

    private JsonNode written() throws IOException {
        List<MarkedHandIn> marked = new ArrayList<>();
        for (String learner : List.of("K1", "K2")) {
            Map<Integer, List<String>> answers =
                    Map.of(
                            0, Classes.slipped(regrader.variant(learner, 0), 0),
                            1, Classes.right(regrader.variant(learner, 1)),
                            2, List.of("=cmd \u202e\"}"));
            marked.add(regrader.mark("paper", learner, answers, DecimalHabit.POINT, Classes.END));
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Statements.write(out, regrader, marked);
        return new ObjectMapper().readTree(out.toByteArray());
    }

    @Test
    void everyStatementFollowsTheSchema() throws IOException {
        JsonNode statements = written();
        assertEquals(8, statements.size());
        assertEquals(List.of(), SCHEMA.validate(statements));
    }

    /** A schema that accepts everything would prove nothing. */
    @Test
    void theSchemaRefusesNamesNullsAndScoresBeyondOne() throws IOException {
        for (String[] path :
                new String[][] {{"actor", "mbox"}, {"result", "score"}, {"verb", "id"}}) {
            JsonNode statements = written();
            ((ObjectNode) statements.get(0).get(path[0])).putNull(path[1]);
            assertFalse(SCHEMA.validate(statements).isEmpty(), path[1]);
        }
        JsonNode statements = written();
        ((ObjectNode) statements.get(0).get("result").get("score")).put("scaled", 1.5);
        assertFalse(SCHEMA.validate(statements).isEmpty());
    }

    @Test
    void aStatementTellsWhatWasAnsweredAndWhichMistakeItIs() throws IOException {
        JsonNode first = written().get(0);
        assertEquals("K1", first.get("actor").get("account").get("name").asText());
        assertFalse(first.get("result").get("success").asBoolean());
        assertEquals(
                regrader.variant("K1", 0).slips().get(0).mistake().id(),
                first.get("result")
                        .get("extensions")
                        .get(Statements.OURS + "extension/mistake")
                        .asText());
        String[] band =
                first.get("object")
                        .get("definition")
                        .get("correctResponsesPattern")
                        .get(0)
                        .asText()
                        .split("\\[:]");
        double response = Double.parseDouble(first.get("result").get("response").asText());
        double low = Double.parseDouble(band[0]);
        double high = Double.parseDouble(band[1]);
        assertFalse(low <= response && response <= high);
        // The push is asked in newtons, which are SI.
        assertEquals(regrader.variant("K1", 0).answers().get(0).low(), low, 1e-6);
        assertEquals(regrader.variant("K1", 0).answers().get(0).high(), high, 1e-6);
    }

    @Test
    void everyStatementHasANameOfItsOwn() throws IOException {
        Set<String> ids = new HashSet<>();
        written().forEach(s -> ids.add(s.get("id").asText()));
        assertEquals(8, ids.size());
    }

    /** One of each kind of problem, answered rightly. */
    @Test
    void problemsOfLettersFollowTheSchemaToo() throws IOException {
        List<Template> templates =
                Arrays.stream(Template.Kind.values())
                        .flatMap(
                                kind ->
                                        Classes.BANK.all().stream()
                                                .filter(t -> t.kind() == kind)
                                                .limit(1))
                        .toList();
        Regrader all =
                new Regrader(
                        new ProblemSet(
                                "kinds",
                                1,
                                "Kinds",
                                1,
                                Classes.set(Numbers.OWN).rules(),
                                templates.stream().map(t -> Composer.item(t, 1)).toList()),
                        Classes.BANK);
        Map<Integer, List<String>> answers = new HashMap<>();
        for (int slot = 0; slot < templates.size(); slot++) {
            answers.put(slot, Classes.right(all.variant("K1", slot)));
        }
        MarkedHandIn in = all.mark("paper", "K1", answers, DecimalHabit.POINT, Classes.END);
        assertEquals(templates.size(), in.reached());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Statements.write(out, all, List.of(in));
        JsonNode statements = new ObjectMapper().readTree(out.toByteArray());
        assertEquals(List.of(), SCHEMA.validate(statements));
        Set<String> types = new HashSet<>();
        statements.forEach(
                s -> types.add(s.get("object").get("definition").get("interactionType").asText()));
        assertEquals(Set.of("numeric", "choice", "sequencing", "fill-in"), types);
    }
}
