// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Optional;

/**
 * A standing as text, so that a start need not read every answer again. It is only ever a shortcut:
 * one that cannot be read, or was made by other rules, is thrown away and the answers are folded
 * anew.
 *
 * @param rules what it was made by, see {@link #rules}
 * @param upTo number of the last attempt in it
 * @param text the standing
 */
record Snapshot(String rules, long upTo, String text) {
    /** Goes up when the way of weighing answers changes. */
    private static final int VERSION = 1;

    private static final ObjectMapper JSON =
            new ObjectMapper()
                    .setVisibility(PropertyAccessor.ALL, Visibility.NONE)
                    .setVisibility(PropertyAccessor.FIELD, Visibility.ANY);

    /** Names the rules: the version of the weighing, the problems, the time zone. */
    static String rules(Syllabus syllabus, java.time.ZoneId zone) {
        return VERSION + " " + syllabus.fingerprint() + " " + zone.getId();
    }

    static Snapshot of(String rules, Standing standing) {
        try {
            String text = JSON.writeValueAsString(standing.state());
            return new Snapshot(rules, standing.upTo(), text);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The standing's state, if it was made by these rules and can be read. */
    Optional<Standing.State> state(String wanted) {
        if (!rules.equals(wanted)) {
            return Optional.empty();
        }
        try {
            Standing.State state = JSON.readValue(text, Standing.State.class);
            return state.upTo == upTo ? Optional.of(state) : Optional.empty();
        } catch (JsonProcessingException e) {
            return Optional.empty();
        }
    }
}
