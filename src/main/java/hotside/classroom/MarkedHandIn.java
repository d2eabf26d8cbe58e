// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.time.Instant;
import java.util.List;

/**
 * A hand-in, marked by working everything again.
 *
 * @param source the file's name, or where else the answers came from
 * @param learner the id
 * @param started when work began, by the learner's clock
 * @param finished when it ended, by the learner's clock
 * @param fingerprint of the key that sealed it; empty for answers from paper
 * @param receipt as the learner saw it; empty for answers from paper
 * @param items in the set's order
 * @param remarks what the instructor may want to know; never a reason for a sanction by itself
 */
public record MarkedHandIn(
        String source,
        String learner,
        Instant started,
        Instant finished,
        String fingerprint,
        String receipt,
        List<MarkedItem> items,
        List<String> remarks) {
    public MarkedHandIn {
        items = List.copyOf(items);
        remarks = List.copyOf(remarks);
    }

    /** Points reached. */
    public double reached() {
        return items.stream().mapToDouble(MarkedItem::reached).sum();
    }

    /** True if it was typed in from paper, so that nothing is known of when and how long. */
    public boolean fromPaper() {
        return receipt.isEmpty();
    }

    /** The same with these problems. */
    MarkedHandIn with(List<MarkedItem> others) {
        return new MarkedHandIn(
                source, learner, started, finished, fingerprint, receipt, others, remarks);
    }
}
