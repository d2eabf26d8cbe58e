// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.problem.SkillMap;

/** What skills are called for people. */
public final class SkillNames {
    private static final SkillMap MAP = SkillMap.shipped();

    private SkillNames() {}

    /** A strand's name, or a skill's with its strand's before it, to choose from a list. */
    static String listed(String id) {
        return MAP.find(id)
                .map(skill -> MAP.strands().get(skill.strand()) + ": " + skill.name())
                .orElse(MAP.strands().getOrDefault(id, id));
    }

    /** A skill's name in the language spoken; its id if it has none, as a teacher's own may. */
    public static String of(String id) {
        return MAP.find(id).map(SkillMap.Skill::name).orElse(id);
    }
}
