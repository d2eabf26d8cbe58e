// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.content.ContentFile;
import hotside.content.ContentFolder;
import hotside.content.Finding;
import hotside.speech.Language;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All problems that could be read, by id, with what was wrong with the rest. */
public final class ProblemBank {
    private final Map<String, Template> byId = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    private ProblemBank() {}

    /** The problems that come with the program. */
    public static ProblemBank shipped() {
        return of(ContentFolder.ofResources("hotside/problems"));
    }

    /** {@link #shipped} in a language; what is not translated stays in English. */
    public static ProblemBank shipped(Language language) {
        return language == Language.ENGLISH
                ? shipped()
                : shipped()
                        .translated(
                                ContentFolder.ofResources("hotside/problems/" + language.code()));
    }

    /** This bank with the words of the problems that a folder translates. */
    public ProblemBank translated(ContentFolder folder) {
        ProblemBank others = new ProblemBank();
        others.findings.addAll(folder.findings());
        for (ContentFile file : folder.files()) {
            ProblemTranslation.read(file, this::find)
                    .ifPresent(template -> others.add(file, template));
            others.findings.addAll(file.findings().list());
        }
        return with(others);
    }

    /** The problems of a folder. */
    public static ProblemBank of(ContentFolder folder) {
        ProblemBank bank = new ProblemBank();
        bank.findings.addAll(folder.findings());
        for (ContentFile file : folder.files()) {
            TemplateReader.read(file).ifPresent(template -> bank.add(file, template));
            bank.findings.addAll(file.findings().list());
        }
        return bank;
    }

    /** This bank and another one; where both have a problem, the other's is taken. */
    public ProblemBank with(ProblemBank other) {
        ProblemBank both = new ProblemBank();
        both.byId.putAll(byId);
        both.byId.putAll(other.byId);
        both.findings.addAll(findings);
        both.findings.addAll(other.findings);
        return both;
    }

    private void add(ContentFile file, Template template) {
        if (byId.putIfAbsent(template.id(), template) != null) {
            file.findings()
                    .add(
                            file.fields().place("id"),
                            "another problem is called \"" + template.id() + "\" too",
                            "an id of its own",
                            "");
        }
    }

    public List<Template> all() {
        return List.copyOf(byId.values());
    }

    public Optional<Template> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** What is wrong with the files, in their order. */
    public List<Finding> findings() {
        return List.copyOf(findings);
    }
}
