// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.problem.Template;
import java.util.List;

/**
 * How long a set may take and how hard it is, from the levels of its problems. A rule of thumb of
 * our own, not a measurement: 2 minutes to read, 2 for each level, 2 for each further question.
 *
 * @param minutes for a learner who knows the lessons
 * @param level mean level, 1 to 4
 * @param skills how many skills are exercised
 * @param repeats how many neighbours exercise the same skill
 */
public record Estimate(int minutes, double level, int skills, int repeats) {
    private static final int READING = 2;
    private static final int A_LEVEL = 2;
    private static final int A_QUESTION = 2;

    /** Of these problems in this order. */
    public static Estimate of(List<Template> templates) {
        int minutes =
                templates.stream()
                        .mapToInt(
                                t ->
                                        READING
                                                + A_LEVEL * t.level()
                                                + A_QUESTION * (t.asks().size() - 1))
                        .sum();
        int repeats = 0;
        for (int i = 1; i < templates.size(); i++) {
            repeats += templates.get(i).skill().equals(templates.get(i - 1).skill()) ? 1 : 0;
        }
        return new Estimate(
                minutes,
                templates.stream().mapToInt(Template::level).average().orElse(0),
                (int) templates.stream().map(Template::skill).distinct().count(),
                repeats);
    }
}
