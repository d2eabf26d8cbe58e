// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.relation.Chain;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A problem before it has numbers.
 *
 * @param id unique among problems
 * @param title for people
 * @param skill the skill it exercises
 * @param level 1 (one step, one idea) to 4
 * @param kind what the learner does
 * @param givens what the learner is told
 * @param chain how the answer is worked
 * @param asks what the learner is asked, in working order
 * @param mistakes the mistakes that are recognised
 * @param strict true if a draw in which a mistake cannot be told apart is thrown away; false if
 *     only that mistake is
 * @param prompt Markdown with {@code {{given}}}
 * @param hints Markdown, from pointing at the givens to setting it up; the full working is the last
 *     rung and is computed
 * @param why Markdown: why it matters
 * @param task what the learner does, with all that only its kind has
 * @param fingerprint changes whenever the file does, so that a recorded variant can tell whether it
 *     still holds
 */
public record Template(
        String id,
        String title,
        String skill,
        int level,
        Kind kind,
        List<Given> givens,
        Chain chain,
        List<Ask> asks,
        List<Mistake> mistakes,
        boolean strict,
        String prompt,
        List<String> hints,
        String why,
        Task task,
        String fingerprint) {

    /** What the learner does. */
    public enum Kind {
        /** Finds one number. */
        NUMBER,
        /** Finds several numbers, one from the other. */
        STEPS,
        /** Chooses one of several. */
        CHOICE,
        /** Chooses all that hold. */
        SEVERAL,
        /** Puts items into order. */
        ORDER,
        /** Reads a chart. */
        GRAPH,
        /** Says which fault made the curves. */
        FAULT,
        /** Writes a test plan. */
        PLAN,
        /** Splits the gain of pulls that are made for this variant. */
        SPLIT;

        /** True if the answer is one or more letters, not a number. */
        public boolean isLettered() {
            return this == CHOICE || this == SEVERAL || this == ORDER || this == FAULT;
        }

        /** True if the answers are numbers. */
        public boolean isNumeric() {
            return !isLettered() && this != PLAN;
        }
    }

    public Template {
        givens = List.copyOf(givens);
        asks = List.copyOf(asks);
        mistakes = List.copyOf(mistakes);
        hints = List.copyOf(hints);
    }

    /** A problem that asks for numbers that are worked out. */
    public Template(
            String id,
            String title,
            String skill,
            int level,
            Kind kind,
            List<Given> givens,
            Chain chain,
            List<Ask> asks,
            List<Mistake> mistakes,
            boolean strict,
            String prompt,
            List<String> hints,
            String why,
            String fingerprint) {
        this(
                id,
                title,
                skill,
                level,
                kind,
                givens,
                chain,
                asks,
                mistakes,
                strict,
                prompt,
                hints,
                why,
                new Task.Work(),
                fingerprint);
    }

    public Optional<Given> given(String name) {
        return givens.stream().filter(given -> given.name().equals(name)).findFirst();
    }

    /** The ids of all mistakes that a verdict may name, but for options missed. */
    public List<String> mistakeIds() {
        if (task instanceof Task.Judge judge) {
            return judge.statements().stream().map(Task.Statement::id).toList();
        }
        if (task instanceof Task.Arrange arrange) {
            return arrange.rules().stream().map(Task.Rule::mistake).toList();
        }
        if (task instanceof Task.Rank rank) {
            return Stream.concat(
                            rank.misranks().stream().map(Task.Misrank::id),
                            Stream.of(Orders.MISRANKED))
                    .toList();
        }
        if (task instanceof Task.Read read) {
            return read.misreadings().stream().map(Misreading::id).toList();
        }
        if (task instanceof Task.Diagnose diagnose) {
            return diagnose.faults().stream().map(Task.Fault::id).toList();
        }
        if (task instanceof Task.Devise) {
            return PlanWants.MISTAKES;
        }
        return mistakes.stream().map(Mistake::id).toList();
    }

    /** The same with another title, and other words for its mistakes. */
    Template worded(String itsTitle, List<Mistake> itsMistakes) {
        return new Template(
                id,
                itsTitle,
                skill,
                level,
                kind,
                givens,
                chain,
                asks,
                itsMistakes,
                strict,
                prompt,
                hints,
                why,
                task,
                fingerprint);
    }
}
