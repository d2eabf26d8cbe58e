// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.problem.Template;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ComposerTest {
    private static List<Template> chosen(int least, int most, int count, String... skills) {
        return Composer.choose(Classes.BANK, List.of(skills), least, most, count);
    }

    private static Map<Integer, Long> byLevel(List<Template> templates) {
        return templates.stream()
                .collect(Collectors.groupingBy(Template::level, Collectors.counting()));
    }

    @Test
    void problemsAreSpreadOverTheLevelsAskedFor() {
        assertEquals(Map.of(1, 4L, 2, 3L, 3, 3L), byLevel(chosen(1, 3, 10)));
        assertEquals(Map.of(2, 3L, 3, 3L, 4, 3L), byLevel(chosen(2, 4, 9)));
        assertEquals(Map.of(2, 5L), byLevel(chosen(2, 2, 5)));
    }

    @Test
    void whereALevelHasTooFewTheOthersFillUp() {
        List<Template> gate =
                Classes.BANK.all().stream().filter(t -> t.skill().startsWith("gate.")).toList();
        assertTrue(byLevel(gate).size() > 1, "problems of the gate have several levels");
        assertEquals(byLevel(gate), byLevel(chosen(1, 4, 100, "gate")));
        assertEquals(gate.size(), new HashSet<>(chosen(1, 4, 100, "gate")).size(), "each once");
    }

    @Test
    void easyOnesComeFirstAndNeighboursExerciseDifferentSkills() {
        List<Template> chosen = chosen(1, 3, 12);
        List<Integer> levels = chosen.stream().map(Template::level).toList();
        assertEquals(levels.stream().sorted().toList(), levels);
        for (int i = 1; i < chosen.size(); i++) {
            assertTrue(!chosen.get(i).skill().equals(chosen.get(i - 1).skill()), chosen.toString());
        }
    }

    @Test
    void severalSkillsAreChosenAlike() {
        List<Template> two = chosen(1, 4, 4, "gate.valve-force", "hot-side.pipe-drop");
        assertEquals(2, two.stream().filter(t -> t.skill().equals("gate.valve-force")).count());
    }
}
