// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

import hotside.unit.UnitSystem;
import java.util.List;

/**
 * All that is to be said once the truth may be told.
 *
 * @param prediction what came of each guess
 * @param plan what the plan was worth
 * @param conclusion whether it covers the truth, and whether the pulls allow it
 */
public record Judgement(List<Remark> prediction, List<Remark> plan, List<Remark> conclusion) {
    public Judgement {
        prediction = List.copyOf(prediction);
        plan = List.copyOf(plan);
        conclusion = List.copyOf(conclusion);
    }

    /** Judges the second part of a plan against the first. */
    public static Judgement of(
            Plan plan, Prediction prediction, Conclusion conclusion, UnitSystem system) {
        Appraisal appraisal = Appraisal.of(plan, 1, system);
        return new Judgement(
                prediction.against(appraisal.truth(), system),
                appraisal.remarks(),
                conclusion.against(appraisal, system));
    }
}
