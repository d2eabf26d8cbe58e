// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.content.ContentFile;
import hotside.content.ContentReader;
import hotside.content.Fields;
import hotside.content.Findings;
import hotside.speech.Translations;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The skills, in the order in which they are taught, with what each needs. The file is front matter
 * and nothing else, so that it is read like every other content file; its name ends in {@code
 * .yaml}, so that nobody takes it for a problem.
 */
public final class SkillMap {
    private static final Translations NAMES = Translations.of("hotside.problem.skills");
    private static final String RESOURCE = "hotside/problems/skills.yaml";

    /**
     * A skill.
     *
     * @param id {@code strand.skill}
     * @param name for people
     * @param strand the id of its strand
     * @param needs ids of the skills to master before
     * @param slips sorts of mistake that betray this skill, wherever they are made in a skill that
     *     needs it
     */
    public record Skill(
            String id, String name, String strand, List<String> needs, List<String> slips) {
        public Skill {
            needs = List.copyOf(needs);
            slips = List.copyOf(slips);
        }

        /** In the language spoken, where it has a name there. */
        @Override
        public String name() {
            return NAMES.find(id).orElse(name);
        }
    }

    private final Map<String, String> strands = new LinkedHashMap<>();
    private final Map<String, Skill> skills = new LinkedHashMap<>();

    private SkillMap() {}

    /** The map that comes with the program. */
    public static SkillMap shipped() {
        try (InputStream in = SkillMap.class.getClassLoader().getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the program has no " + RESOURCE + " inside");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return read(ContentReader.read(RESOURCE, text));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads a map. What is wrong goes to the file's findings: a skill told twice, one of an unknown
     * strand, one that needs a skill that is not there or, in the end, itself.
     */
    public static SkillMap read(ContentFile file) {
        SkillMap map = new SkillMap();
        Fields fields = file.fields();
        Findings findings = file.findings();
        for (Fields strand : fields.maps("strands")) {
            map.strands.put(strand.text("id"), strand.text("name"));
            strand.noOthers();
        }
        List<Fields> listed = fields.maps("skills");
        listed.forEach(skill -> map.add(skill, findings));
        fields.noOthers();
        listed.forEach(skill -> map.check(skill, findings));
        return map;
    }

    private void add(Fields fields, Findings findings) {
        String id = fields.text("id");
        String strand = fields.oneOf("strand", strands.keySet());
        Skill skill =
                new Skill(
                        id,
                        fields.text("name"),
                        strand,
                        fields.optionalWords("needs"),
                        fields.optionalWords("slips"));
        fields.noOthers();
        if (skills.putIfAbsent(id, skill) != null) {
            findings.add(
                    fields.place("id"), "the skill \"" + id + "\" a second time", "each once", "");
        }
        if (!id.startsWith(strand + ".")) {
            findings.add(
                    fields.place("id"),
                    "the skill \"" + id + "\" is of the strand " + strand,
                    "an id that begins with \"" + strand + ".\"",
                    "");
        }
    }

    private void check(Fields fields, Findings findings) {
        String id = fields.text("id");
        for (String need : fields.optionalWords("needs")) {
            if (!skills.containsKey(need)) {
                findings.add(
                        fields.place("needs"),
                        id + " needs \"" + need + "\", which is not in this map",
                        "the id of a skill",
                        "");
            }
        }
        for (String slip : fields.optionalWords("slips")) {
            if (Slips.find(slip).isEmpty()) {
                findings.add(
                        fields.place("slips"),
                        "unknown slip \"" + slip + "\"",
                        "a sort of mistake, see problems/README.md",
                        "");
            }
        }
        if (before(id).contains(id)) {
            findings.add(
                    fields.place("needs"),
                    id + " needs itself in the end",
                    "skills that can be learnt one after the other",
                    "take out one of its needs");
        }
    }

    /** The strands by id, with their names. */
    public Map<String, String> strands() {
        Map<String, String> named = new LinkedHashMap<>();
        strands.forEach((id, name) -> named.put(id, NAMES.find(id).orElse(name)));
        return Collections.unmodifiableMap(named);
    }

    /** All skills, in the order of the file. */
    public List<Skill> all() {
        return List.copyOf(skills.values());
    }

    public Optional<Skill> find(String id) {
        return Optional.ofNullable(skills.get(id));
    }

    /**
     * Every skill that should be mastered before this one, near or far; itself only in a circle.
     */
    public Set<String> before(String id) {
        Set<String> found = new LinkedHashSet<>();
        collect(id, found);
        return found;
    }

    /** The skill that a sort of mistake speaks of, when it is made in a problem of this skill. */
    public String blamed(String id, String slip) {
        return before(id).stream()
                .filter(need -> find(need).map(s -> s.slips().contains(slip)).orElse(false))
                .findFirst()
                .orElse(id);
    }

    private void collect(String id, Set<String> found) {
        for (String need : find(id).map(Skill::needs).orElse(List.of())) {
            if (found.add(need)) {
                collect(need, found);
            }
        }
    }
}
