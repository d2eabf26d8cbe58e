// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Relation;
import hotside.statistics.reading.ChartExaggeration;
import hotside.statistics.reading.ResolutionLimit;
import hotside.statistics.reading.SensorLag;
import hotside.statistics.reading.SmoothingBias;
import hotside.statistics.reading.SweepInertia;
import java.util.List;

/** The one list of statistical relations, in teaching order. */
public final class StatisticsRelations {
    public static final List<Relation> ALL =
            List.of(
                    // Test design
                    MeanSpread.RELATION,
                    MeanInterval.RELATION,
                    PairedGain.RELATION,
                    WelchGain.RELATION,
                    RunsNeeded.RELATION,
                    OrderBalance.RELATION,
                    BracketDrift.RELATION,
                    OneWayParts.RELATION,
                    CombinedUncertainty.RELATION,
                    GainSplit.RELATION,
                    GainSplitRegression.RELATION,
                    // Reading curves
                    ChartExaggeration.RELATION,
                    ResolutionLimit.RELATION,
                    SensorLag.RELATION,
                    SmoothingBias.RELATION,
                    SweepInertia.RELATION);

    private StatisticsRelations() {}
}
