// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.relation.Values;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Which orders of an order problem are right, and how many. */
final class Orders {
    /** What is recorded where an order by value is wrong and no known idea explains it. */
    static final String MISRANKED = "misranked";

    /** Values closer together than this, relatively, have no order that anybody can tell. */
    private static final double CLOSE = 0.02;

    private Orders() {}

    /**
     * The items' ids in the order of their values.
     *
     * @param values one place for each item
     * @param falling true if the largest comes first
     * @throws Variants.Unsound if two values are too close to each other
     */
    static List<String> ranked(
            List<Task.Ranked> items, List<String> values, boolean falling, Values run) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> run.number(values.get(i))));
        for (int i = 1; i < order.size(); i++) {
            double less = run.number(values.get(order.get(i - 1)));
            double more = run.number(values.get(order.get(i)));
            if (more - less <= CLOSE * Math.max(Math.abs(more), Math.abs(less))) {
                throw new Variants.Unsound(
                        values.get(order.get(i - 1))
                                + " and "
                                + values.get(order.get(i))
                                + " are too close to be put into order");
            }
        }
        if (falling) {
            Collections.reverse(order);
        }
        return order.stream().map(i -> items.get(i).id()).toList();
    }

    /** The items' ids as they belong. */
    static List<String> right(Task.Rank task, Values run) {
        List<String> values = task.items().stream().map(Task.Ranked::value).toList();
        return ranked(task.items(), values, task.falling(), run);
    }

    /**
     * The items' ids as they would stand by a wrong idea.
     *
     * @throws Variants.Unsound if that idea has no order here
     */
    static List<String> wrong(Task.Rank task, Task.Misrank misrank, Values run) {
        return ranked(task.items(), misrank.values(), misrank.falling(), run);
    }

    /** The share of all orders of so many items that one of them is. */
    static double shareOfOne(int items) {
        double all = 1;
        for (int i = 2; i <= items; i++) {
            all *= i;
        }
        return 1 / all;
    }

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
        for (int placed = 0; placed < 1 << n; placed++) {
            for (int i = 0; i < n; i++) {
                boolean free = (placed & 1 << i) == 0 && (before[i] & ~placed) == 0;
                if (free) {
                    ways[placed | 1 << i] += ways[placed];
                }
            }
        }
        return ways[(1 << n) - 1] * shareOfOne(n);
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
