// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.problem.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Wrong answers that are right for somebody else's numbers. A hint to look, not a proof: said only
 * where chance would rarely bring it about.
 */
public final class Likeness {
    /** Two answers given to four figures are the same within this, relatively. */
    private static final double SAME = 5e-4;

    /** Neighbours within this show how dense right answers lie. */
    private static final double NEAR = 0.2;

    private static final double RARE = 0.05;

    private Likeness() {}

    /** Remarks by learner. */
    public static Map<String, List<String>> remarks(List<MarkedHandIn> marked, int slots) {
        Map<String, List<String>> remarks = new LinkedHashMap<>();
        for (int slot = 0; slot < slots; slot++) {
            int asks = marked.isEmpty() ? 0 : marked.get(0).items().get(slot).right().size();
            for (int ask = 0; ask < asks; ask++) {
                look(marked, slot, ask, remarks);
            }
        }
        return remarks;
    }

    private static void look(
            List<MarkedHandIn> marked, int slot, int ask, Map<String, List<String>> remarks) {
        double[] right =
                marked.stream()
                        .mapToDouble(m -> m.items().get(slot).right().get(ask))
                        .sorted()
                        .toArray();
        for (MarkedHandIn one : marked) {
            Verdict verdict = one.items().get(slot).verdicts().get(ask).orElse(null);
            if (verdict != null
                    && verdict.kind() == Verdict.Kind.WRONG
                    && Double.isFinite(verdict.value())
                    && within(right, verdict.value(), SAME) > 0
                    && within(right, verdict.value(), NEAR) * SAME / NEAR < RARE) {
                remarks.computeIfAbsent(one.learner(), l -> new ArrayList<>())
                        .add(ClassWords.of("remark.likeness", (slot + 1)));
            }
        }
    }

    private static int within(double[] sorted, double value, double share) {
        double half = share * Math.abs(value);
        return place(sorted, value + half) - place(sorted, value - half);
    }

    private static int place(double[] sorted, double value) {
        int at = Arrays.binarySearch(sorted, value);
        return at < 0 ? -at - 1 : at;
    }
}
