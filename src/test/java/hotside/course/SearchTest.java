// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.problem.ProblemBank;
import hotside.problem.SkillMap;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Against the shipped content, by what must be in it. */
class SearchTest {
    private static final Course COURSE = Course.shipped();
    private static final Search SEARCH = new Search(COURSE, ProblemBank.shipped());

    @Test
    void aTitleComesBeforeATextAndEveryWordCounts() {
        List<Search.Hit> hits = SEARCH.find("  Wall TAP ");
        assertEquals("wall tap", hits.get(0).title());
        assertEquals("term:wall-tap", hits.get(0).link());
        assertTrue(
                hits.stream()
                        .anyMatch(
                                hit ->
                                        hit.kind() == Search.Kind.RELATION
                                                && hit.link().equals("relation:static-total")));
        assertTrue(
                hits.stream()
                        .allMatch(
                                hit ->
                                        hit.title()
                                                        .toLowerCase(java.util.Locale.ROOT)
                                                        .contains("tap")
                                                || !hit.excerpt().isEmpty()));
    }

    @Test
    void lessonsAndProblemsAreFoundByTheirText() {
        List<Search.Kind> kinds =
                SEARCH.find("pipe").stream().map(Search.Hit::kind).distinct().toList();
        assertTrue(
                kinds.containsAll(List.of(Search.Kind.LESSON, Search.Kind.PROBLEM)),
                kinds.toString());
    }

    @Test
    void theBeginningOfAWordIsEnoughAndItsMiddleIsNot() {
        assertTrue(SEARCH.find("gat").stream().anyMatch(hit -> hit.title().contains("gate")));
        assertTrue(
                SEARCH.find("astegat").isEmpty(), "the middle of a word is no word that begins so");
    }

    @Test
    void nothingIsFoundForNothing() {
        assertEquals(List.of(), SEARCH.find("  … "));
        assertEquals(List.of(), SEARCH.find("xylophone"));
    }

    @Test
    void whatIsTypedCannotBecomeMarkup() {
        Lesson page = LookUp.results("<b>*x*</b> [y](http://z)", List.of());
        assertTrue(
                Search.words(page.body()).contains("<b>*x*</b> [y](http://z)"),
                Search.words(page.body()));
    }

    @Test
    void theSkillPageNamesEverySkillAndTheLessonsThatTeachIt() {
        SkillMap map = SkillMap.shipped();
        String words = Search.words(LookUp.skills(COURSE, map).body());
        map.all().forEach(skill -> assertTrue(words.contains(skill.name()), skill.name()));
        COURSE.lessons().stream()
                .filter(lesson -> lesson.skills().stream().anyMatch(s -> map.find(s).isPresent()))
                .forEach(lesson -> assertTrue(words.contains(lesson.title()), lesson.title()));
    }
}
