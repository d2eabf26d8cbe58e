// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import hotside.statistics.draw.SplitMix64;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Draws the problems of a test: from every strand in turn, with charts and the test cell in it. */
public final class MockTest {
    /** Kinds that a test has at least one of, where there are such problems. */
    private static final List<Set<String>> WANTED =
            List.of(Set.of("graph", "fault"), Set.of("plan", "split"));

    private MockTest() {}

    /**
     * The problems of a test.
     *
     * @param count how many, if there are so many
     * @param seed the same seed draws the same problems
     */
    public static List<Exercise> draw(Syllabus syllabus, int count, long seed) {
        SplitMix64 random = new SplitMix64(seed);
        List<Exercise> all = new ArrayList<>(syllabus.all());
        shuffle(all, random);
        Set<Exercise> drawn = new LinkedHashSet<>();
        for (Set<String> kinds : WANTED) {
            all.stream().filter(e -> kinds.contains(e.kind())).findFirst().ifPresent(drawn::add);
        }
        Map<String, List<Exercise>> byStrand = new LinkedHashMap<>();
        for (Exercise e : all) {
            String strand = syllabus.skills().find(e.skill()).orElseThrow().strand();
            byStrand.computeIfAbsent(strand, s -> new ArrayList<>()).add(e);
        }
        while (drawn.size() < Math.min(count, all.size())) {
            for (List<Exercise> strand : byStrand.values()) {
                if (drawn.size() < count && !strand.isEmpty()) {
                    addFresh(drawn, strand);
                }
            }
        }
        List<Exercise> test = new ArrayList<>(drawn);
        shuffle(test, random);
        return test;
    }

    /** By Fisher and Yates. */
    private static void shuffle(List<Exercise> list, SplitMix64 random) {
        for (int i = list.size() - 1; i > 0; i--) {
            Collections.swap(list, i, random.below(i + 1));
        }
    }

    /** The first of a strand whose skill is not in the test yet, or the first. */
    private static void addFresh(Set<Exercise> drawn, List<Exercise> strand) {
        Exercise next =
                strand.stream()
                        .filter(e -> drawn.stream().noneMatch(d -> d.skill().equals(e.skill())))
                        .findFirst()
                        .orElse(strand.get(0));
        strand.remove(next);
        drawn.add(next);
    }
}
