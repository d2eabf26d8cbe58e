// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.course.Lesson;
import hotside.course.LookUp;
import hotside.course.Search;
import hotside.problem.SkillMap;
import java.util.Optional;

/** Glossary, skill map, search and single problems as pages; each made when it is first wanted. */
final class LookUpPages {
    static final String GLOSSARY = LookUp.GLOSSARY;
    static final String SKILLS = LookUp.SKILLS;
    private static final String PROBLEM = "problem:";

    private final Library library;
    private Lesson glossary;
    private Lesson skills;
    private Search search;

    LookUpPages(Library library) {
        this.library = library;
    }

    /** The page that a link leads to, if it leads to one of these. */
    Optional<Lesson> page(String href) {
        if (href.equals(GLOSSARY)) {
            glossary = glossary == null ? LookUp.glossary(library.course()) : glossary;
            return Optional.of(glossary);
        }
        if (href.equals(SKILLS)) {
            skills = skills == null ? LookUp.skills(library.course(), SkillMap.shipped()) : skills;
            return Optional.of(skills);
        }
        return href.startsWith(PROBLEM)
                ? problem(href.substring(PROBLEM.length()))
                : Optional.empty();
    }

    /** The lesson in which a problem is set, or a page for it alone. */
    private Optional<Lesson> problem(String id) {
        return library.course().lessons().stream()
                .filter(lesson -> lesson.problems().contains(id))
                .findFirst()
                .or(() -> library.bank().find(id).map(t -> LookUp.problem(id, t.title())));
    }

    /** What a search finds. */
    Lesson results(String query) {
        search = search == null ? new Search(library.course(), library.bank()) : search;
        return LookUp.results(query.strip(), search.find(query));
    }
}
