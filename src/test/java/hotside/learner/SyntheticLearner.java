// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import hotside.problem.SkillMap.Skill;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Somebody whose knowledge is known: each skill is there or not; one that is not may be learnt from
 * a problem, seldom if what it rests on is not there either. Answers slip and are guessed. A skill
 * fades, the more slowly the oftener it was used on a later day: that shape is what studies of
 * spacing find, the numbers are chosen.
 */
final class SyntheticLearner {
    private static final double FIRST_STRENGTH = 6;
    private static final double GROWTH = 2;

    private final Syllabus syllabus;
    private final SplittableRandom random;
    private final Map<String, Boolean> knows = new HashMap<>();
    private final Map<String, Double> strength = new HashMap<>();
    private final Map<String, Long> used = new HashMap<>();
    private final boolean forgets;
    private final double slip;
    private final double guess;
    private final double learning;

    SyntheticLearner(Syllabus syllabus, long seed, boolean forgets) {
        this.syllabus = syllabus;
        this.forgets = forgets;
        random = new SplittableRandom(seed);
        slip = 0.02 + 0.16 * random.nextDouble();
        guess = 0.02 + 0.10 * random.nextDouble();
        learning = 0.08 + 0.25 * random.nextDouble();
        double head = 0.5 * random.nextDouble();
        for (Skill skill : syllabus.practised()) {
            knows.put(skill.id(), ready(skill) && random.nextDouble() < head);
        }
    }

    boolean knows(String skill) {
        return knows.get(skill);
    }

    long known() {
        return knows.values().stream().filter(k -> k).count();
    }

    private boolean ready(Skill skill) {
        return skill.needs().stream().allMatch(n -> knows.getOrDefault(n, true));
    }

    /** A night passes. */
    void sleep(long day) {
        if (!forgets) {
            return;
        }
        for (Skill skill : syllabus.practised()) {
            double days = strength.getOrDefault(skill.id(), FIRST_STRENGTH);
            boolean fades = random.nextDouble() < 1 - Math.exp(-1 / days);
            if (fades && used.getOrDefault(skill.id(), -1L) < day) {
                knows.put(skill.id(), false);
            }
        }
    }

    /** Answers a problem, and may learn from it. */
    boolean answer(Exercise exercise, Stage stage, long day) {
        String skill = exercise.skill();
        if (knows(skill) && used.getOrDefault(skill, day) < day) {
            strength.merge(skill, FIRST_STRENGTH * GROWTH, (is, first) -> is * GROWTH);
        }
        used.put(skill, day);
        double chance = knows(skill) ? 1 - slip : guess;
        boolean right = random.nextDouble() < chance;
        Skill asked = syllabus.skills().find(skill).orElseThrow();
        double rate = ready(asked) ? learning : 0.2 * learning;
        double shown = stage == Stage.FULL ? rate : 1.5 * rate;
        if (random.nextDouble() < shown) {
            knows.put(skill, true);
        }
        return right;
    }
}
