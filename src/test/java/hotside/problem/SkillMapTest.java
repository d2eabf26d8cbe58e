// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFile;
import hotside.content.ContentFolder;
import hotside.content.ContentReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class SkillMapTest {
    private static final Path FILE = Path.of("problems", "skills.yaml");

    @Test
    void theShippedMapHasNoFindings() {
        ContentFile file = ContentReader.read(FILE);
        SkillMap.read(file);
        assertEquals(List.of(), file.findings().list());
    }

    @Test
    void everySkillThatAProblemExercisesIsInTheMap() {
        Set<String> used = new TreeSet<>();
        for (ContentFile file : ContentFolder.read(Path.of("problems")).files()) {
            used.add(file.fields().text("skill"));
        }
        assertTrue(used.size() > 10, "problems were found");
        assertEquals(Set.of(), unknown(used));
    }

    @Test
    void everySkillThatALessonTeachesOrNeedsIsInTheMap() {
        Set<String> used = new TreeSet<>();
        for (ContentFile file : ContentFolder.read(Path.of("lessons")).files()) {
            used.addAll(file.fields().words("skills"));
            used.addAll(file.fields().optionalWords("needs"));
        }
        assertFalse(used.isEmpty(), "lessons were found");
        assertEquals(Set.of(), unknown(used));
    }

    @Test
    void everySkillOfTheMapIsExercisedByAProblem() {
        Set<String> idle = new TreeSet<>();
        SkillMap.shipped().all().forEach(skill -> idle.add(skill.id()));
        for (ContentFile file : ContentFolder.read(Path.of("problems")).files()) {
            idle.remove(file.fields().text("skill"));
        }
        assertEquals(Set.of(), idle);
    }

    @Test
    void noShippedSkillNeedsItselfInTheEnd() {
        SkillMap map = SkillMap.shipped();
        for (SkillMap.Skill skill : map.all()) {
            assertFalse(map.before(skill.id()).contains(skill.id()), skill.id());
        }
    }

    @Test
    void skillsBeforeOneAreFoundThroughOthers() {
        assertEquals(
                Set.of("a.one", "a.two"),
                map(", needs: [a.two]", ", needs: [a.one]", "").before("a.three"));
    }

    @Test
    void aCircleOfNeedsIsAFinding() {
        ContentFile file = file(", needs: [a.two]", ", needs: [a.one]", ", needs: [a.three]");
        SkillMap.read(file);
        assertEquals(3, file.findings().list().size());
        assertTrue(file.findings().list().toString().contains("needs itself"));
    }

    @Test
    void aNeedThatNobodyTeachesIsAFinding() {
        ContentFile file = file(", needs: [a.four]", "", "");
        SkillMap.read(file);
        assertEquals(1, file.findings().list().size());
        assertTrue(file.findings().list().toString().contains("a.four"));
    }

    @Test
    void aSkillOfAStrangeStrandIsAFinding() {
        ContentFile file =
                ContentReader.read(
                        "skills.yaml",
                        """
                        ---
                        strands:
                          - {id: a, name: A}
                        skills:
                          - {id: b.one, name: One, strand: a}
                        ---
                        """);
        SkillMap.read(file);
        assertEquals(1, file.findings().list().size());
    }

    private static Set<String> unknown(Set<String> used) {
        Set<String> unknown = new TreeSet<>(used);
        SkillMap.shipped().all().forEach(skill -> unknown.remove(skill.id()));
        return unknown;
    }

    private static SkillMap map(String three, String two, String one) {
        return SkillMap.read(file(three, two, one));
    }

    private static ContentFile file(String three, String two, String one) {
        return ContentReader.read(
                "skills.yaml",
                """
                ---
                strands:
                  - {id: a, name: A}
                skills:
                  - {id: a.one, name: One, strand: a%s}
                  - {id: a.two, name: Two, strand: a%s}
                  - {id: a.three, name: Three, strand: a%s}
                ---
                """
                        .formatted(one, two, three));
    }
}
