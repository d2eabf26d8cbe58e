// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.unit.Quantity;
import hotside.unit.Scale;
import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GridTest {
    private static final Scale PURE = Quantity.RATIO.siScale();

    @ParameterizedTest
    @CsvSource({
        "0.1, 0.3, 0.100, 0.300, 0.005",
        "15, 70, 15, 70, 1",
        "0, 2000, 0, 2000, 50",
        "1.2, 1.41, 1.200, 1.410, 0.005",
        "-60, 60, -60, 60, 2",
    })
    void aNaturalGridHasRoundStepsAndReachesItsEnds(
            double low, double high, BigDecimal first, BigDecimal last, BigDecimal step) {
        List<BigDecimal> values = Grid.natural(low, high, PURE).values();
        assertEquals(0, first.compareTo(values.get(0)), values.get(0).toString());
        BigDecimal end = values.get(values.size() - 1);
        assertEquals(0, last.compareTo(end), end.toString());
        assertEquals(0, step.compareTo(values.get(1).subtract(values.get(0))));
    }

    @Property(tries = 300, seed = "20261125")
    void aNaturalGridHasAFewDozenPlacesInsideItsRange(
            @ForAll @DoubleRange(min = 0.01, max = 1000) double low,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double width) {
        List<BigDecimal> values = Grid.natural(low, low + width, PURE).values();
        assertTrue(values.size() >= 25 && values.size() <= 72, "places: " + values.size());
        double slack = 1e-9 * (low + width);
        assertTrue(values.get(0).doubleValue() >= low - slack);
        assertTrue(values.get(values.size() - 1).doubleValue() <= low + width + slack);
    }

    @ParameterizedTest
    @CsvSource({"2, 12, 11", "0, 1, 2", "1, 101, 50"})
    void countsAreWhole(double low, double high, int places) {
        List<BigDecimal> values = Grid.whole(low, high, PURE).values();
        assertEquals(places, values.size());
        values.forEach(v -> assertEquals(0, v.stripTrailingZeros().scale() > 0 ? 1 : 0));
    }
}
