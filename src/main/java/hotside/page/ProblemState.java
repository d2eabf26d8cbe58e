// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.problem.Variant;
import hotside.problem.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a problem card shows just now. Immutable.
 *
 * @param id the card's id in the page
 * @param variant the problem with its numbers
 * @param typed what stands in each answer field
 * @param verdicts the verdict on each answer, where there is one
 * @param rung how many hints are shown
 * @param working true if the full working is shown
 * @param tries how many counted tries there were
 */
public record ProblemState(
        String id,
        Variant variant,
        List<String> typed,
        List<Optional<Verdict>> verdicts,
        int rung,
        boolean working,
        int tries) {
    public ProblemState {
        typed = List.copyOf(typed);
        verdicts = List.copyOf(verdicts);
    }

    /** A card with fresh numbers and nothing typed. */
    public static ProblemState fresh(String id, Variant variant) {
        int asks = variant.template().asks().size();
        return new ProblemState(
                id,
                variant,
                java.util.Collections.nCopies(asks, ""),
                java.util.Collections.nCopies(asks, Optional.empty()),
                0,
                false,
                0);
    }

    /** With another text in an answer field. */
    public ProblemState typed(int ask, String text) {
        List<String> texts = new ArrayList<>(typed);
        texts.set(ask, text);
        return new ProblemState(id, variant, texts, verdicts, rung, working, tries);
    }

    /** With new verdicts; {@code counted} is the number of tries among them. */
    public ProblemState judged(List<Optional<Verdict>> judged, int counted) {
        return new ProblemState(id, variant, typed, judged, rung, working, tries + counted);
    }

    /** With so many hints shown. */
    public ProblemState rung(int shown) {
        return new ProblemState(id, variant, typed, verdicts, shown, working, tries);
    }

    public ProblemState working(boolean shown) {
        return new ProblemState(id, variant, typed, verdicts, rung, shown, tries);
    }

    /** True if every answer is right, by the learner's own numbers at least. */
    public boolean solved() {
        return verdicts.stream()
                .allMatch(v -> v.map(verdict -> verdict.kind().good()).orElse(false));
    }
}
