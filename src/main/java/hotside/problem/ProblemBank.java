// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.content.ContentFile;
import hotside.content.ContentFolder;
import hotside.content.Finding;
import hotside.content.Once;
import hotside.speech.Language;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * All problems that could be read, by id, with what was wrong with the rest. Those that come with
 * the program are read when they are first asked for.
 */
public final class ProblemBank {
    private final Map<String, Once<Optional<Template>>> byId = new LinkedHashMap<>();
    private final List<Once<List<Finding>>> findings = new ArrayList<>();

    private ProblemBank() {}

    /** The problems that come with the program. */
    public static ProblemBank shipped() {
        return later(ContentFolder.ofResources("hotside/problems"), TemplateReader::read);
    }

    /** {@link #shipped} in a language; what is not translated stays in English. */
    public static ProblemBank shipped(Language language) {
        ProblemBank english = shipped();
        if (language == Language.ENGLISH) {
            return english;
        }
        ProblemBank told =
                later(
                        ContentFolder.ofResources("hotside/problems/" + language.code()),
                        file -> ProblemTranslation.read(file, english::find));
        return english.markedWhere(id -> !told.byId.containsKey(id)).with(told);
    }

    /** What is not translated is said to be in English, once it is read. */
    private ProblemBank markedWhere(Predicate<String> untranslated) {
        ProblemBank marked = new ProblemBank();
        marked.findings.addAll(findings);
        byId.forEach(
                (id, template) ->
                        marked.byId.put(
                                id,
                                untranslated.test(id)
                                        ? new Once<>(
                                                () -> template.get().map(ProblemBank::inEnglish))
                                        : template));
        return marked;
    }

    private static Template inEnglish(Template template) {
        return template.worded(
                ProblemWords.of("title.in-english", template.title()),
                template.mistakes().stream().map(Mistake::quoted).toList());
    }

    /** The problems of files that are called as they are, read when they are asked for. */
    private static ProblemBank later(
            ContentFolder folder, Function<ContentFile, Optional<Template>> reader) {
        ProblemBank bank = new ProblemBank();
        bank.findings.add(Once.of(folder.findings()));
        for (ContentFolder.Entry entry : folder.entries()) {
            Once<Optional<Template>> template = new Once<>(() -> reader.apply(entry.file().get()));
            bank.byId.put(entry.name(), template);
            bank.findings.add(
                    new Once<>(
                            () -> {
                                template.get();
                                return entry.file().get().findings().list();
                            }));
        }
        return bank;
    }

    /** This bank with the words of the problems that a folder translates. */
    public ProblemBank translated(ContentFolder folder) {
        ProblemBank others = new ProblemBank();
        others.findings.add(Once.of(folder.findings()));
        for (ContentFile file : folder.files()) {
            ProblemTranslation.read(file, this::find)
                    .ifPresent(template -> others.add(file, template));
            others.findings.add(Once.of(file.findings().list()));
        }
        return with(others);
    }

    /** The problems of a folder. */
    public static ProblemBank of(ContentFolder folder) {
        ProblemBank bank = new ProblemBank();
        bank.findings.add(Once.of(folder.findings()));
        for (ContentFile file : folder.files()) {
            TemplateReader.read(file).ifPresent(template -> bank.add(file, template));
            bank.findings.add(Once.of(file.findings().list()));
        }
        return bank;
    }

    /** This bank and another one; where both have a problem, the other's is taken. */
    public ProblemBank with(ProblemBank other) {
        ProblemBank both = new ProblemBank();
        both.byId.putAll(byId);
        other.byId.forEach(
                (id, template) ->
                        both.byId.put(id, new Once<>(() -> template.get().or(() -> find(id)))));
        both.findings.addAll(findings);
        both.findings.addAll(other.findings);
        return both;
    }

    private void add(ContentFile file, Template template) {
        if (byId.putIfAbsent(template.id(), Once.of(Optional.of(template))) != null) {
            file.findings()
                    .add(
                            file.fields().place("id"),
                            "another problem is called \"" + template.id() + "\" too",
                            "an id of its own",
                            "");
        }
    }

    public List<Template> all() {
        return byId.values().stream().flatMap(template -> template.get().stream()).toList();
    }

    public Optional<Template> find(String id) {
        return Optional.ofNullable(byId.get(id)).flatMap(Once::get);
    }

    /** What is wrong with the files, in their order. */
    public List<Finding> findings() {
        return findings.stream().flatMap(found -> found.get().stream()).toList();
    }
}
