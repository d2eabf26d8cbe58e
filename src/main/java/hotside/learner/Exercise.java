// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.util.Map;
import java.util.Set;

/**
 * What this room needs to know of a problem.
 *
 * @param id of the problem
 * @param title for people
 * @param skill that it exercises
 * @param level 1 to 4
 * @param kind as its file says: {@code number}, {@code choice} …
 * @param asks how many questions it has
 * @param blame for sorts of mistake that betray another skill: that skill by the sort
 * @param slips the sorts of mistake it recognises, see {@link #slip}
 */
public record Exercise(
        String id,
        String title,
        String skill,
        int level,
        String kind,
        int asks,
        Map<String, String> blame,
        Set<String> slips) {
    public Exercise {
        blame = Map.copyOf(blame);
        slips = Set.copyOf(slips);
    }

    /** The sort of a mistake: what stands before the place in its id. */
    public static String slip(String mistake) {
        int at = mistake.indexOf('@');
        return at < 0 ? mistake : mistake.substring(0, at);
    }

    /** The skill that an answer with this mistake speaks of. */
    String blamed(String mistake) {
        return mistake == null ? skill : blame.getOrDefault(slip(mistake), skill);
    }
}
