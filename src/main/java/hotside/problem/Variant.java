// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.relation.Chain;
import hotside.relation.Values;
import hotside.unit.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;

/**
 * A problem with its numbers.
 *
 * @param template the problem
 * @param seed what it was drawn from
 * @param system the shop whose units it speaks
 * @param givens by name, SI
 * @param shown each given as the text prints it, with unit
 * @param ambient absolute pressure of the air around, Pa
 * @param run the chain worked out
 * @param answers one for each ask, in order
 * @param slips what each recognised mistake gives, for each ask
 * @param lettered what is to be chosen or put into order, in the order shown; empty where numbers
 *     are asked for
 * @param figures the charts that belong to it
 */
public record Variant(
        Template template,
        long seed,
        UnitSystem system,
        Values givens,
        Map<String, String> shown,
        double ambient,
        Chain.Run run,
        List<Answer> answers,
        List<Slipped> slips,
        List<Lettered> lettered,
        List<Figure> figures) {

    public Variant {
        shown = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(shown));
        answers = List.copyOf(answers);
        slips = List.copyOf(slips);
        lettered = List.copyOf(lettered);
        figures = List.copyOf(figures);
    }

    /** A text of the template with its values filled in. */
    String filled(String text) {
        return TemplateReader.GIVEN_IN_TEXT
                .matcher(text)
                .replaceAll(
                        match ->
                                Matcher.quoteReplacement(
                                        shown.getOrDefault(match.group(1), match.group())));
    }

    /** How far from this number an answer to an ask may lie, SI. */
    double tolerance(int ask, double value) {
        return template.task() instanceof Task.Read
                ? answers.get(ask).band()
                : template.asks().get(ask).tolerance().band(value);
    }

    /**
     * The right answer to one ask.
     *
     * @param value SI; NaN where no number is asked for
     * @param band half width of what is accepted, SI
     */
    public record Answer(double value, double band) {
        public double low() {
            return value - band;
        }

        public double high() {
            return value + band;
        }
    }

    /**
     * What a mistake gives.
     *
     * @param mistake which
     * @param ask the ask's index
     * @param value SI
     */
    public record Slipped(NamedMistake mistake, int ask, double value) {}
}
