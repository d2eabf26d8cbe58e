// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import java.util.stream.Stream;

/** Which givens only change the rigs behind a chart: the curves tell them, not the text. */
final class ChartSettings {
    private ChartSettings() {}

    /** True if a given sets something on a rig of the task. */
    static boolean use(Task task, String given) {
        return changes(task)
                .filter(RigChange.Settings.class::isInstance)
                .map(RigChange.Settings.class::cast)
                .anyMatch(settings -> settings.values().containsValue(given));
    }

    private static Stream<RigChange> changes(Task task) {
        if (task instanceof Task.Diagnose diagnose) {
            return Stream.concat(
                    planned(diagnose.chart()), diagnose.faults().stream().map(Task.Fault::change));
        }
        return task instanceof Task.Read read && read.chart() instanceof ChartPlan.Pulls pulls
                ? planned(pulls)
                : Stream.empty();
    }

    private static Stream<RigChange> planned(ChartPlan.Pulls pulls) {
        return pulls.pulls().values().stream().map(ChartPlan.Planned::change);
    }
}
