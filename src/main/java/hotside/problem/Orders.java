// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import java.util.List;

/** How many orders keep the rules of an order problem. */
final class Orders {
    private Orders() {}

    /** The share of all orders that keep every rule: what pure luck hits. */
    static double share(Task.Arrange task) {
        int n = task.items().size();
        List<String> ids = task.items().stream().map(Task.Item::id).toList();
        int[] before = new int[n];
        for (Task.Rule rule : task.rules()) {
            before[ids.indexOf(rule.then())] |= 1 << ids.indexOf(rule.first());
        }
        // Ways to place a set of items first, each after all that must stand before it.
        double[] ways = new double[1 << n];
        ways[0] = 1;
        double all = 1;
        for (int placed = 0; placed < 1 << n; placed++) {
            for (int i = 0; i < n; i++) {
                boolean free = (placed & 1 << i) == 0 && (before[i] & ~placed) == 0;
                if (free) {
                    ways[placed | 1 << i] += ways[placed];
                }
            }
        }
        for (int i = 2; i <= n; i++) {
            all *= i;
        }
        return ways[(1 << n) - 1] / all;
    }

    /**
     * The rules that an order breaks, in the order of the file.
     *
     * @param ids the items as the learner put them
     */
    static List<Task.Rule> broken(Task.Arrange task, List<String> ids) {
        return task.rules().stream()
                .filter(rule -> ids.indexOf(rule.first()) > ids.indexOf(rule.then()))
                .toList();
    }
}
