// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class OrdersTest {
    private static Task.Arrange task(String items, String... rules) {
        return new Task.Arrange(
                Arrays.stream(items.split("")).map(i -> new Task.Item(i, i)).toList(),
                Arrays.stream(rules)
                        .map(r -> r.split("<"))
                        .map(r -> new Task.Rule(r[0], r[1], r[1] + "-before-" + r[0], "so it is"))
                        .toList());
    }

    @Test
    void withoutRulesEveryOrderIsRight() {
        assertEquals(1.0, Orders.share(task("abcd")));
    }

    @Test
    void aChainLeavesOneOrderOfAll() {
        assertEquals(1.0 / 24, Orders.share(task("abcd", "a<b", "b<c", "c<d")));
    }

    /** Two chains of two interleave in 4!/(2!·2!) ways; any text on combinatorics. */
    @Test
    void independentChainsInterleave() {
        assertEquals(6.0 / 24, Orders.share(task("abcd", "a<b", "c<d")));
    }

    @Test
    void rulesThatAreBrokenComeInTheirOwnOrder() {
        Task.Arrange task = task("abc", "a<b", "b<c", "a<c");
        assertEquals(
                List.of("b-before-a", "c-before-a"),
                Orders.broken(task, List.of("b", "c", "a")).stream()
                        .map(Task.Rule::mistake)
                        .toList());
        assertEquals(List.of(), Orders.broken(task, List.of("a", "b", "c")));
    }
}
