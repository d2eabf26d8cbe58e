// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

class NormalTailTest {
    @Property(seed = "20261125")
    void agreesWithTheErrorFunctionOfAnotherLibrary(
            @ForAll @DoubleRange(min = -9, max = 30) double z) {
        double expected = Erf.erfc(z / Math.sqrt(2)) / 2;
        assertEquals(expected, NormalTail.above(z), 1e-8 * expected + 1e-300);
        assertEquals(expected, NormalTail.above(z), 3e-15);
    }

    @Test
    void isHalfInTheMiddleAndNothingFarOut() {
        assertEquals(0.5, NormalTail.above(0), 1e-15);
        assertEquals(0, NormalTail.above(1e6), 0.0);
        assertEquals(1, NormalTail.above(-1e6), 0.0);
        assertEquals(0, NormalTail.above(Double.POSITIVE_INFINITY), 0.0);
    }
}
