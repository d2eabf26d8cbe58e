// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import hotside.page.Words;
import java.util.List;

/**
 * Why a problem was chosen.
 *
 * @param kind the words, {@code reason.…} in the words of pages
 * @param fillings names and numbers for them
 */
public record Reason(String kind, List<String> fillings) {
    public Reason {
        fillings = List.copyOf(fillings);
    }

    static Reason of(String kind, Object... fillings) {
        return new Reason(kind, List.of(fillings).stream().map(String::valueOf).toList());
    }

    /** A sentence for the learner. */
    public String text() {
        return Words.of("reason." + kind, fillings.toArray());
    }
}
