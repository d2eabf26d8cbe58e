// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.content.ContentFile;
import hotside.content.ContentFolder;
import hotside.content.Finding;
import hotside.speech.Language;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All lessons that could be read, in order, with what was wrong with the rest. */
public final class Course {
    private final List<Lesson> lessons;
    private final List<Finding> findings;
    private final Glossary glossary;
    private final Map<Term, Lesson> firstUses = new LinkedHashMap<>();

    private Course(List<Lesson> lessons, Glossary glossary, List<Finding> findings) {
        this.lessons = List.copyOf(lessons);
        this.glossary = glossary;
        this.findings = List.copyOf(findings);
        TermMarker marker = new TermMarker(glossary);
        for (Lesson lesson : lessons) {
            marker.mark(lesson).forEach(term -> firstUses.putIfAbsent(term, lesson));
        }
    }

    /** The lessons that come with the program. */
    public static Course shipped() {
        return of(ContentFolder.ofResources("hotside/lessons"));
    }

    /**
     * {@link #shipped} in a language; what is not translated stays in English. Examples name their
     * relations while they are read, so the program must speak the language already.
     */
    public static Course shipped(Language language) {
        return language == Language.ENGLISH
                ? shipped()
                : shipped()
                        .translated(
                                ContentFolder.ofResources("hotside/lessons/" + language.code()));
    }

    /** This course with the lessons that a folder translates in place of the originals. */
    public Course translated(ContentFolder folder) {
        List<Lesson> others = new ArrayList<>();
        List<Finding> found = new ArrayList<>(folder.findings());
        Glossary words = Glossary.of(folder);
        for (ContentFile file : folder.files()) {
            if (!Glossary.isGlossary(file)) {
                LessonTranslation.read(file, this::find).ifPresent(others::add);
            }
            found.addAll(file.findings().list());
        }
        return with(new Course(others, words, found));
    }

    /** The lessons of a folder. */
    public static Course of(ContentFolder folder) {
        List<Lesson> lessons = new ArrayList<>();
        List<Finding> findings = new ArrayList<>(folder.findings());
        Glossary glossary = Glossary.of(folder);
        for (ContentFile file : folder.files()) {
            if (!Glossary.isGlossary(file)) {
                LessonReader.read(file).ifPresent(lessons::add);
            }
            findings.addAll(file.findings().list());
        }
        return new Course(lessons, glossary, findings);
    }

    /**
     * This course and another one. Where both have a lesson, the other's takes its place; a new one
     * goes behind its strand, or to the end. The same holds for terms.
     */
    public Course with(Course other) {
        List<Lesson> both = new ArrayList<>(lessons);
        for (Lesson lesson : other.lessons) {
            int same = both.stream().map(Lesson::id).toList().indexOf(lesson.id());
            if (same >= 0) {
                both.set(same, lesson);
            } else {
                int last = both.stream().map(Lesson::strand).toList().lastIndexOf(lesson.strand());
                both.add(last < 0 ? both.size() : last + 1, lesson);
            }
        }
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(other.findings);
        return new Course(both, glossary.with(other.glossary), all);
    }

    public List<Lesson> lessons() {
        return lessons;
    }

    /** What is wrong with the files, in their order. */
    public List<Finding> findings() {
        return findings;
    }

    /** The words of the trade. */
    public Glossary glossary() {
        return glossary;
    }

    /** The first lesson that uses a term. */
    public Optional<Lesson> firstUse(Term term) {
        return Optional.ofNullable(firstUses.get(term));
    }

    public Optional<Lesson> find(String id) {
        return lessons.stream().filter(lesson -> lesson.id().equals(id)).findFirst();
    }

    public Optional<Lesson> before(Lesson lesson) {
        int index = lessons.indexOf(lesson);
        return index > 0 ? Optional.of(lessons.get(index - 1)) : Optional.empty();
    }

    public Optional<Lesson> after(Lesson lesson) {
        int index = lessons.indexOf(lesson);
        return index >= 0 && index + 1 < lessons.size()
                ? Optional.of(lessons.get(index + 1))
                : Optional.empty();
    }
}
