// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.problem.Lettered;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

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
 * @param cursor where the hair line of its chart stands, in the unit of its axis; NaN before it is
 *     used
 * @param chartWidth of its charts, in pixels at 100 % text size
 */
public record ProblemState(
        String id,
        Variant variant,
        List<String> typed,
        List<Optional<Verdict>> verdicts,
        int rung,
        boolean working,
        int tries,
        double cursor,
        int chartWidth) {
    /** Width of charts at 100 % text. */
    static final int CHART_WIDTH = 680;

    public ProblemState {
        typed = List.copyOf(typed);
        verdicts = List.copyOf(verdicts);
    }

    /** A card with fresh numbers and nothing typed. */
    public static ProblemState fresh(String id, Variant variant) {
        int asks = variant.template().asks().size();
        // An order stands there from the start, and is an answer as it stands.
        String typed =
                variant.template().kind() == Template.Kind.ORDER
                        ? variant.lettered().stream()
                                .map(Lettered::letter)
                                .collect(Collectors.joining(" "))
                        : "";
        return new ProblemState(
                id,
                variant,
                java.util.Collections.nCopies(asks, typed),
                java.util.Collections.nCopies(asks, Optional.empty()),
                0,
                false,
                0,
                Double.NaN,
                CHART_WIDTH);
    }

    /** With another text in an answer field. */
    public ProblemState typed(int ask, String text) {
        List<String> texts = new ArrayList<>(typed);
        texts.set(ask, text);
        return new ProblemState(
                id, variant, texts, verdicts, rung, working, tries, cursor, chartWidth);
    }

    /** With new verdicts; {@code counted} is the number of tries among them. */
    public ProblemState judged(List<Optional<Verdict>> judged, int counted) {
        return new ProblemState(
                id, variant, typed, judged, rung, working, tries + counted, cursor, chartWidth);
    }

    /** With so many hints shown. */
    public ProblemState rung(int shown) {
        return new ProblemState(
                id, variant, typed, verdicts, shown, working, tries, cursor, chartWidth);
    }

    public ProblemState working(boolean shown) {
        return new ProblemState(
                id, variant, typed, verdicts, rung, shown, tries, cursor, chartWidth);
    }

    /** With an option taken, in place of every other. */
    public ProblemState taken(String letter) {
        return typed(0, letter);
    }

    /** With a tick set or taken away. */
    public ProblemState ticked(String letter, boolean set) {
        String letters =
                variant.lettered().stream()
                        .map(Lettered::letter)
                        .filter(l -> l.equals(letter) ? set : takes(l))
                        .collect(Collectors.joining(" "));
        return typed(0, letters);
    }

    /** True if an option is taken. */
    public boolean takes(String letter) {
        return List.of(typed.get(0).split(" ")).contains(letter);
    }

    /** The items of an order as they stand now. */
    public List<Lettered> inOrder() {
        List<String> letters = List.of(typed.get(0).split(" "));
        return variant.lettered().stream()
                .sorted(Comparator.comparingInt(item -> letters.indexOf(item.letter())))
                .toList();
    }

    /** With an item of an order moved, to the end at most. */
    public ProblemState moved(String letter, int by) {
        List<String> letters = new ArrayList<>(List.of(typed.get(0).split(" ")));
        int from = letters.indexOf(letter);
        int to = Math.max(0, Math.min(letters.size() - 1, from + by));
        if (from < 0) {
            return this;
        }
        letters.add(to, letters.remove(from));
        return typed(0, String.join(" ", letters));
    }

    /** With the hair line of the chart at a place of its axis. */
    public ProblemState cursor(double at) {
        return new ProblemState(id, variant, typed, verdicts, rung, working, tries, at, chartWidth);
    }

    public ProblemState chartWidth(int width) {
        return new ProblemState(id, variant, typed, verdicts, rung, working, tries, cursor, width);
    }

    /** True if every answer is right, by the learner's own numbers at least. */
    public boolean solved() {
        return verdicts.stream()
                .allMatch(v -> v.map(verdict -> verdict.kind().good()).orElse(false));
    }
}
