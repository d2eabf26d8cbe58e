// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Relation;
import java.util.List;

/** The one list of statistical relations, in teaching order. */
public final class StatisticsRelations {
    public static final List<Relation> ALL =
            List.of(
                    // Test design
                    MeanInterval.RELATION, GainSplit.RELATION);

    private StatisticsRelations() {}
}
