// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SpreadTest {
    @Test
    void labelsWithRoomStayWhereTheyWish() {
        assertArrayEquals(new double[] {10, 50}, apart(new double[] {10, 50}, 10, 10), 1e-9);
    }

    @Test
    void touchingLabelsGiveWayByTheSame() {
        assertArrayEquals(new double[] {45, 55}, apart(new double[] {50, 50}, 10, 10), 1e-9);
    }

    @Test
    void labelsStayInsideTheEdge() {
        assertArrayEquals(new double[] {95, 85}, apart(new double[] {99, 98}, 10, 10), 1e-9);
    }

    @Property(seed = "20261125")
    void noLabelCoversAnotherOrLeavesTheRoom(
            @ForAll @Size(min = 1, max = 9)
                    List<@DoubleRange(min = -50, max = 150) Double> wishes) {
        double[] wished = wishes.stream().mapToDouble(Double::doubleValue).toArray();
        double[] heights = IntStream.range(0, wished.length).mapToDouble(i -> 8 + i % 3).toArray();
        double[] centres = Spread.apart(wished, heights, 0, 100);
        Integer[] order = IntStream.range(0, wished.length).boxed().toArray(Integer[]::new);
        Arrays.sort(order, (a, b) -> Double.compare(centres[a], centres[b]));
        double free = -1e-9;
        for (int i : order) {
            assertTrue(centres[i] - heights[i] / 2 >= free, "overlap at " + centres[i]);
            free = centres[i] + heights[i] / 2 - 1e-9;
        }
        assertTrue(free <= 100 + 1e-9, "beyond the edge: " + free);
    }

    private static double[] apart(double[] wished, double... heights) {
        return Spread.apart(wished, heights, 0, 100);
    }
}
