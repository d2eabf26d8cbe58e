// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.catalogue.Catalogue;
import hotside.relation.Relation;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The shipped problems together ask for everything, and for each thing in more than one way. */
class BankCoverageTest {
    private static final int LEAST_TEMPLATES = 100;
    private static final int WAYS = 2;
    private static final List<Template> BANK = ProblemBank.shipped().all();

    @Test
    void thereAreAtLeastAHundredTemplatesOnFourLevelsAndOfEveryKind() {
        assertTrue(BANK.size() >= LEAST_TEMPLATES, BANK.size() + " templates");
        Map<Integer, Long> levels = counted(Template::level);
        assertEquals(4, levels.size(), levels.toString());
        Map<Template.Kind, Long> kinds = counted(Template::kind);
        for (Template.Kind kind : Template.Kind.values()) {
            assertTrue(kinds.getOrDefault(kind, 0L) >= WAYS, kind + " of " + kinds);
        }
    }

    private static <T> Map<T, Long> counted(Function<Template, T> by) {
        return BANK.stream().collect(Collectors.groupingBy(by, Collectors.counting()));
    }

    @Test
    void everySkillIsAskedByTwoTemplates() {
        Map<String, Long> counts = counted(Template::skill);
        assertEquals(
                List.of(),
                SkillMap.shipped().all().stream()
                        .map(SkillMap.Skill::id)
                        .filter(id -> counts.getOrDefault(id, 0L) < WAYS)
                        .toList());
    }

    @Test
    void everyRelationIsAskedByTwoTemplates() {
        Map<String, Long> counts =
                BANK.stream()
                        .flatMap(
                                template ->
                                        template.chain().uses().stream()
                                                .map(use -> use.relation().id())
                                                .distinct())
                        .collect(Collectors.groupingBy(id -> id, Collectors.counting()));
        assertEquals(
                List.of(),
                Catalogue.all().stream()
                        .map(Relation::id)
                        .filter(id -> counts.getOrDefault(id, 0L) < WAYS)
                        .toList());
    }
}
