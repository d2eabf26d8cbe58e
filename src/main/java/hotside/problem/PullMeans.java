// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The means of a trial's pulls, as they are worked with.
 *
 * @param heads what each column holds, with its unit; the first two are the pull and its part
 * @param rows one for each pull, in the order in which they were made
 */
public record PullMeans(List<String> heads, List<List<String>> rows) {
    private static final String BETWEEN = "; ";
    private static final char BEFORE_UNIT = '\u00a0';

    public PullMeans {
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** The table of a variant; empty where its problem has no pulls. */
    public static Optional<PullMeans> of(Variant variant) {
        if (!(variant.template().task() instanceof Task.Split split)) {
            return Optional.empty();
        }
        Map<String, List<Given>> columns = new LinkedHashMap<>();
        for (Given given : variant.template().givens()) {
            given.means()
                    .ifPresent(
                            means ->
                                    columns.computeIfAbsent(
                                                    means.channel().words(),
                                                    name -> new ArrayList<>())
                                            .add(given));
        }
        String order = split.plan().get(PlanLine.ORDER.ordinal()).replaceAll("[^A-Z]", "");
        List<String> heads =
                new ArrayList<>(
                        List.of(
                                ProblemWords.of("plan.pull-column"),
                                ProblemWords.of("plan.part-column")));
        columns.forEach((name, givens) -> heads.add(name + ", " + unit(variant, givens)));
        List<List<String>> rows = new ArrayList<>();
        Map<Character, Integer> made = new LinkedHashMap<>();
        for (int i = 0; i < order.length(); i++) {
            char letter = order.charAt(i);
            int which = made.merge(letter, 1, Integer::sum) - 1;
            List<String> row =
                    new ArrayList<>(List.of(String.valueOf(i + 1), String.valueOf(letter)));
            int pull = i;
            columns.values().forEach(givens -> row.add(cell(variant, givens, letter, which, pull)));
            rows.add(row);
        }
        return Optional.of(new PullMeans(heads, rows));
    }

    private static String unit(Variant variant, List<Given> givens) {
        Set<String> units =
                givens.stream()
                        .map(given -> variant.shown().get(given.name()))
                        .map(
                                shown ->
                                        shown.substring(shown.indexOf(BEFORE_UNIT) + 1)
                                                .replace(BEFORE_UNIT, ' '))
                        .collect(Collectors.toCollection(LinkedHashSet::new));
        return String.join(", ", units);
    }

    private static String cell(
            Variant variant, List<Given> givens, char letter, int which, int pull) {
        return givens.stream()
                .filter(given -> given.means().orElseThrow().holds(letter))
                .map(
                        given ->
                                numbers(variant.shown().get(given.name()))
                                        .get(given.means().orElseThrow().isOfAll() ? pull : which))
                .findFirst()
                .orElse("");
    }

    private static List<String> numbers(String shown) {
        String bare = shown.substring(0, shown.indexOf(BEFORE_UNIT));
        return Arrays.asList(bare.split(BETWEEN));
    }
}
