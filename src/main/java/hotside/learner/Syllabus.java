// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import hotside.problem.ProblemBank;
import hotside.problem.SkillMap;
import hotside.problem.Template;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The skills and the problems that exercise them. Immutable. */
public final class Syllabus {
    private final SkillMap skills;
    private final Map<String, Exercise> byId = new LinkedHashMap<>();
    private final Map<String, List<Exercise>> bySkill = new HashMap<>();

    /**
     * @param skills the skills, in teaching order
     * @param exercises the problems; those of a skill that the map lacks are kept out of practice
     */
    public Syllabus(SkillMap skills, List<Exercise> exercises) {
        this.skills = skills;
        exercises.stream()
                .filter(e -> skills.find(e.skill()).isPresent())
                .sorted(Comparator.comparingInt(Exercise::level).thenComparing(Exercise::id))
                .forEach(
                        e -> {
                            byId.put(e.id(), e);
                            bySkill.computeIfAbsent(e.skill(), k -> new ArrayList<>()).add(e);
                        });
    }

    /** The skills and problems that come with the program, or those of a bank. */
    public static Syllabus of(SkillMap skills, ProblemBank bank) {
        return new Syllabus(skills, bank.all().stream().map(t -> exercise(t, skills)).toList());
    }

    static Exercise exercise(Template template, SkillMap skills) {
        Set<String> slips =
                template.mistakeIds().stream().map(Exercise::slip).collect(Collectors.toSet());
        Map<String, String> blame = new HashMap<>();
        slips.forEach(slip -> blame.put(slip, skills.blamed(template.skill(), slip)));
        return new Exercise(
                template.id(),
                template.title(),
                template.skill(),
                template.level(),
                template.kind().name().toLowerCase(Locale.ROOT),
                template.asks().size(),
                blame,
                slips);
    }

    public Optional<Exercise> find(String problem) {
        return Optional.ofNullable(byId.get(problem));
    }

    /** The problems of a skill, the easy ones first. */
    public List<Exercise> of(String skill) {
        return bySkill.getOrDefault(skill, List.of());
    }

    /** All problems. */
    public List<Exercise> all() {
        return List.copyOf(byId.values());
    }

    /** The skills that have problems, in teaching order. */
    public List<SkillMap.Skill> practised() {
        return skills.all().stream().filter(s -> bySkill.containsKey(s.id())).toList();
    }

    public SkillMap skills() {
        return skills;
    }

    /** The name of a skill, or its id if the map lacks it. */
    public String name(String skill) {
        return skills.find(skill).map(SkillMap.Skill::name).orElse(skill);
    }

    /** From how many problems a skill must be proven: two, where there are two. */
    int problemsToProve(String skill) {
        return Math.max(1, Math.min(SkillLog.PROBLEMS, of(skill).size()));
    }

    /** Changes whenever what problems say of skills does; a stored estimate then starts over. */
    String fingerprint() {
        StringBuilder all = new StringBuilder();
        for (Exercise e : byId.values()) {
            all.append(e.id()).append(' ').append(e.skill()).append(' ').append(e.kind());
            all.append(' ').append(e.asks()).append(' ');
            all.append(new java.util.TreeMap<>(e.blame())).append('\n');
        }
        return Long.toHexString(hash(all));
    }

    /** 64-bit FNV-1a. */
    private static long hash(CharSequence text) {
        long hash = 0xcbf29ce484222325L;
        for (int i = 0; i < text.length(); i++) {
            hash = (hash ^ text.charAt(i)) * 0x100000001b3L;
        }
        return hash;
    }
}
