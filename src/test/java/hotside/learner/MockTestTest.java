// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.problem.ProblemBank;
import hotside.problem.SkillMap;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class MockTestTest {
    private final Syllabus shipped = Syllabus.of(SkillMap.shipped(), ProblemBank.shipped());

    @Test
    void everyStrandIsInItAndNoProblemTwice() {
        for (long seed = 0; seed < 50; seed++) {
            List<Exercise> test = MockTest.draw(shipped, 8, seed);
            assertEquals(8, new HashSet<>(test).size());
            Set<String> strands =
                    test.stream()
                            .map(e -> shipped.skills().find(e.skill()).orElseThrow().strand())
                            .collect(Collectors.toSet());
            assertEquals(shipped.skills().strands().keySet(), strands, "seed " + seed);
        }
    }

    @Test
    void chartsAndTheTestCellAreInItWhereTheyCanBe() {
        List<Exercise> all = new ArrayList<>(shipped.all());
        for (String kind : List.of("graph", "plan")) {
            all.add(
                    new Exercise(
                            "a-" + kind, kind, "reading.axes", 2, kind, 1, Map.of(), Set.of()));
        }
        Syllabus with = new Syllabus(shipped.skills(), all);
        for (long seed = 0; seed < 50; seed++) {
            Set<String> kinds =
                    MockTest.draw(with, 8, seed).stream()
                            .map(Exercise::kind)
                            .collect(Collectors.toSet());
            assertTrue(kinds.contains("plan") || kinds.contains("split"), "seed " + seed);
            assertTrue(kinds.contains("graph") || kinds.contains("fault"), "seed " + seed);
        }
    }

    @Test
    void aSeedDrawsTheSameTestAgain() {
        assertEquals(MockTest.draw(shipped, 8, 5), MockTest.draw(shipped, 8, 5));
        assertNotEquals(MockTest.draw(shipped, 8, 5), MockTest.draw(shipped, 8, 6));
    }

    @Test
    void aSmallBankGivesWhatItHas() {
        assertEquals(
                SmallSchool.SYLLABUS.all().size(),
                MockTest.draw(SmallSchool.SYLLABUS, 20, 1).size());
    }
}
