// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.cell.Rig;
import hotside.cell.Stock;
import hotside.page.TestCellPage;
import hotside.trial.Plan;
import hotside.trial.PlanText;
import hotside.trial.Trial;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Logs to play with: an invented comparison of two pipes, with all that makes such logs hard to
 * read.
 */
final class SampleTrial {
    private static final long SEED = 4711;

    private SampleTrial() {}

    /** Three pulls with each of two pipes behind a bled, vented gate. */
    static Trial run() {
        Stock stock = Stock.shipped();
        Rig rig = stock.rig("eight-vented-bleed").orElseThrow();
        return Trial.run(
                new Plan(
                        List.of(
                                PlanText.contestant(rig, stock, "pipe-76"),
                                PlanText.contestant(rig, stock, "pipe-102")),
                        "ABBAAB",
                        1,
                        600,
                        OptionalDouble.empty(),
                        EnumSet.copyOf(TestCellPage.LOGGABLE),
                        4000 / 60.0,
                        6000 / 60.0),
                SEED);
    }
}
