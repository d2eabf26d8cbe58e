// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.relation.Chain;
import hotside.relation.Values;
import hotside.unit.UnitSystem;
import java.util.List;
import java.util.Map;

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
        List<Slipped> slips) {

    public Variant {
        shown = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(shown));
        answers = List.copyOf(answers);
        slips = List.copyOf(slips);
    }

    /**
     * The right answer to one ask.
     *
     * @param value SI
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
    public record Slipped(Mistake mistake, int ask, double value) {}
}
