// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.physics.engine.PumpingLoss;
import hotside.statistics.CombinedUncertainty;
import hotside.statistics.CombinedUncertainty.Combined;
import hotside.statistics.CombinedUncertainty.Term;
import hotside.statistics.GainSplit;
import java.util.List;
import java.util.Optional;

/**
 * A gain split by a worth of boost that is taken from elsewhere: what belongs to the change of
 * boost, what does not, and what of that less pumping work explains. Errors of gain and boost count
 * as independent; where power scatters along with boost, the intervals are too wide rather than too
 * narrow.
 *
 * @param worth of boost
 * @param boost the gain that belongs to boost, W
 * @param boostError its uncertainty, and how well that is known
 * @param exhaust the rest, W
 * @param exhaustError its uncertainty
 * @param pumping what the change of exhaust pressure saves in pumping; empty if it was not measured
 *     or the displacement is not known
 * @param scatterKnown false if the pulls were not repeated: then the uncertainties hold the doubt
 *     about the worth alone
 */
public record WorthSplit(
        Worth worth,
        GainSplit.Part boost,
        Combined boostError,
        double exhaust,
        Combined exhaustError,
        Optional<Pumping> pumping,
        boolean scatterKnown) {

    static WorthSplit of(
            Difference gain, Difference boost, Worth worth, Optional<Pumping> pumping) {
        GainSplit.Part part =
                GainSplit.boostPart(
                        boost.value(), boost.knownError(), worth.value(), worth.uncertainty());
        Term byChange = new Term(boost.knownError(), worth.value(), boost.freedom());
        Term byWorth = new Term(worth.uncertainty(), boost.value(), Double.POSITIVE_INFINITY);
        Term byGain = new Term(gain.knownError(), 1, gain.freedom());
        return new WorthSplit(
                worth,
                part,
                CombinedUncertainty.of(List.of(byChange, byWorth)),
                gain.value() - part.value(),
                CombinedUncertainty.of(List.of(byGain, byChange, byWorth)),
                pumping,
                gain.estimate().isPresent() && boost.estimate().isPresent());
    }

    /**
     * Pumping work saved by a change of exhaust pressure, the manifold pressure held the same.
     *
     * @param from the pressure that was measured. Where it is the one after the turbine, the piston
     *     is taken to feel as much; at a held boost it feels more
     * @param power W, positive if the change helps
     */
    public record Pumping(Channel from, double power) {
        /**
         * @param displacement m³
         * @param speed turns per second
         */
        static Pumping of(Channel from, Difference pressure, double displacement, double speed) {
            return new Pumping(
                    from,
                    PumpingLoss.power(pressure.before(), 0, displacement, speed)
                            - PumpingLoss.power(pressure.after(), 0, displacement, speed));
        }
    }

    /** What neither boost nor pumping explains, W; the exhaust part where pumping is not known. */
    public double unexplained() {
        return exhaust - pumping.map(Pumping::power).orElse(0.0);
    }
}
