// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.content.ContentFile;
import hotside.content.ContentFolder;
import hotside.content.Finding;
import hotside.content.Once;
import hotside.problem.SkillMap;
import hotside.speech.Language;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * All lessons that could be read, in order, with what was wrong with the rest. The pages of those
 * that come with the program are read when they are opened.
 */
public final class Course {
    private final List<Lesson> lessons;
    private final Once<List<Finding>> findings;
    private final Glossary glossary;
    private final Once<Map<Term, Lesson>> firstUses = new Once<>(this::firstUses);
    private final TermMarker marker;

    private Course(List<Lesson> lessons, Glossary glossary, Once<List<Finding>> findings) {
        this.glossary = glossary;
        this.findings = findings;
        this.marker = new TermMarker(glossary);
        this.lessons = lessons.stream().map(lesson -> lesson.onceRead(marker::mark)).toList();
    }

    private Map<Term, Lesson> firstUses() {
        Map<Term, Lesson> first = new LinkedHashMap<>();
        for (Lesson lesson : lessons) {
            // What is marked already stays so.
            marker.mark(lesson).forEach(term -> first.putIfAbsent(term, lesson));
        }
        return first;
    }

    /** The lessons that come with the program. */
    public static Course shipped() {
        return later(
                ContentFolder.ofResources("hotside/lessons"),
                file -> Optional.of(LessonReader.later(file)));
    }

    /**
     * {@link #shipped} in a language; what is not translated stays in English. Examples name their
     * relations while they are read, so the program must speak the language already.
     */
    public static Course shipped(Language language) {
        Course english = shipped();
        if (language == Language.ENGLISH) {
            return english;
        }
        ContentFolder folder = ContentFolder.ofResources("hotside/lessons/" + language.code());
        Course told =
                later(
                        folder,
                        file ->
                                LessonTranslation.original(file, english::find)
                                        .map(original -> LessonReader.later(file, original)));
        folder.files().stream()
                .filter(Glossary::isGlossary)
                .forEach(file -> told.glossary.checkOriginals(file, english.glossary));
        return english.markedWhere(lesson -> told.find(lesson.id()).isEmpty()).with(told);
    }

    /** What is not translated is said to be in English, under its strand as it is called here. */
    private Course markedWhere(Predicate<Lesson> untranslated) {
        Map<String, String> strands = SkillMap.shipped().strands();
        List<Lesson> marked =
                lessons.stream()
                        .map(
                                lesson ->
                                        untranslated.test(lesson)
                                                ? lesson.headed(
                                                        strand(lesson, strands),
                                                        CourseWords.of(
                                                                "lesson.in-english",
                                                                lesson.title()))
                                                : lesson)
                        .toList();
        return new Course(marked, glossary, findings);
    }

    private static String strand(Lesson lesson, Map<String, String> strands) {
        String folder = lesson.id().substring(0, lesson.id().indexOf('/'));
        return folder.equals("capstone")
                ? CourseWords.of("strand.capstone")
                : strands.getOrDefault(folder, lesson.strand());
    }

    private static Course later(
            ContentFolder folder, Function<ContentFile, Optional<LessonReader.Later>> reader) {
        List<Lesson> lessons = new ArrayList<>();
        List<LessonReader.Later> all = new ArrayList<>();
        for (ContentFile file : folder.files()) {
            if (!Glossary.isGlossary(file)) {
                reader.apply(file).ifPresent(all::add);
            }
        }
        all.forEach(later -> lessons.add(later.lesson()));
        Once<List<Finding>> findings =
                new Once<>(
                        () -> {
                            all.forEach(later -> later.whole().get());
                            return folder.allFindings();
                        });
        return new Course(lessons, Glossary.of(folder), findings);
    }

    /** This course with the lessons that a folder translates in place of the originals. */
    public Course translated(ContentFolder folder) {
        List<Lesson> others = new ArrayList<>();
        List<Finding> found = new ArrayList<>(folder.findings());
        Glossary words = Glossary.of(folder);
        for (ContentFile file : folder.files()) {
            if (Glossary.isGlossary(file)) {
                words.checkOriginals(file, glossary);
            } else {
                LessonTranslation.read(file, this::find).ifPresent(others::add);
            }
            found.addAll(file.findings().list());
        }
        return with(new Course(others, words, Once.of(found)));
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
        return new Course(lessons, glossary, Once.of(findings));
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
        Once<List<Finding>> all =
                new Once<>(
                        () ->
                                Stream.concat(findings().stream(), other.findings().stream())
                                        .toList());
        return new Course(both, glossary.with(other.glossary), all);
    }

    public List<Lesson> lessons() {
        return lessons;
    }

    /** What is wrong with the files, in their order. */
    public List<Finding> findings() {
        return findings.get();
    }

    /** The words of the trade. */
    public Glossary glossary() {
        return glossary;
    }

    /** The first lesson that uses a term. */
    public Optional<Lesson> firstUse(Term term) {
        return Optional.ofNullable(firstUses.get().get(term));
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
