// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.content.Fields;
import hotside.content.ListNode;
import hotside.content.MapNode;
import hotside.content.Node;
import hotside.content.ScalarNode;
import hotside.relation.Slot;
import hotside.unit.Quantity;
import java.util.Optional;
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

    /**
     * What a given measures by the value of a rig that it sets: five kelvin an hour are no
     * temperature.
     *
     * @param fields the head of a problem file
     * @param unit what it measures by its unit
     */
    static Optional<Quantity> measured(Fields fields, String given, Optional<Quantity> unit) {
        return Stream.of("trial", "chart", "faults")
                .flatMap(key -> fields.optionalNode(key).stream())
                .flatMap(node -> paths(node, given))
                .flatMap(path -> ChartReader.slot(path).stream())
                .map(Slot::quantity)
                .filter(quantity -> isDifferenceOf(quantity, unit))
                .findFirst();
    }

    private static boolean isDifferenceOf(Quantity quantity, Optional<Quantity> unit) {
        return quantity == Quantity.TEMPERATURE_DIFFERENCE
                        && unit.equals(Optional.of(Quantity.TEMPERATURE))
                || quantity == Quantity.PRESSURE_DIFFERENCE
                        && unit.equals(Optional.of(Quantity.PRESSURE));
    }

    /** Keys anywhere in a node whose value is this word. */
    private static Stream<String> paths(Node node, String word) {
        if (node instanceof ListNode list) {
            return list.items().stream().flatMap(item -> paths(item, word));
        }
        if (!(node instanceof MapNode map)) {
            return Stream.empty();
        }
        return map.entries().entrySet().stream()
                .flatMap(
                        entry ->
                                entry.getValue().value() instanceof ScalarNode scalar
                                        ? Stream.of(entry.getKey())
                                                .filter(k -> scalar.text().strip().equals(word))
                                        : paths(entry.getValue().value(), word));
    }

    private static Stream<RigChange> changes(Task task) {
        if (task instanceof Task.Diagnose diagnose) {
            return Stream.concat(
                    planned(diagnose.chart()), diagnose.faults().stream().map(Task.Fault::change));
        }
        if (task instanceof Task.Devise devise) {
            return changes(devise.contest());
        }
        if (task instanceof Task.Split split) {
            return changes(split.contest());
        }
        return task instanceof Task.Read read && read.chart() instanceof ChartPlan.Pulls pulls
                ? planned(pulls)
                : Stream.empty();
    }

    private static Stream<RigChange> changes(Contest contest) {
        return Stream.concat(
                Stream.of(contest.shared()),
                contest.parts().values().stream().map(Contest.Entry::change));
    }

    private static Stream<RigChange> planned(ChartPlan.Pulls pulls) {
        return pulls.pulls().values().stream().map(ChartPlan.Planned::change);
    }
}
