// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import java.util.List;

/**
 * A relation worked out for some inputs.
 *
 * @param relation which
 * @param in all inputs, optional ones filled in
 * @param out all outputs, in the relation's order
 * @param steps the working, in order; each output is the value of one step, the last step is an
 *     output
 * @param cautions what weakens the result; empty when all is well
 */
public record Worked(
        Relation relation, Values in, Values out, List<Step> steps, List<Caution> cautions) {
    public Worked {
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
    }
}
