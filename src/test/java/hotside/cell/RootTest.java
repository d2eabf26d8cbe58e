// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RootTest {
    @Test
    void findsTheSquareRootOfTwo() {
        double root = Root.between(x -> x * x - 2, 0, -2, 5, 23, 1e-13);
        assertEquals(Math.sqrt(2), root, 1e-12);
    }

    /** Flat for most of the way and then steep: where straight interpolation crawls. */
    @Test
    void isNotHeldUpByAFlatStretch() {
        int[] asked = {0};
        double root =
                Root.between(
                        x -> {
                            asked[0]++;
                            return Math.pow(x, 19) - 1e-3;
                        },
                        0,
                        -1e-3,
                        10,
                        1e19,
                        1e-12);
        assertEquals(Math.pow(1e-3, 1.0 / 19), root, 1e-11);
        assertTrue(asked[0] < 80, "asked " + asked[0]);
    }

    @Test
    void takesAnEndThatIsARoot() {
        assertEquals(3, Root.between(x -> x - 3, 1, -2, 3, 0, 1e-9));
    }

    @Test
    void looksBothWaysFromAGuess() {
        for (double guess : new double[] {0.1, 0.5, 1, 9}) {
            assertEquals(
                    Math.log(3),
                    Root.rising(x -> Math.exp(x) - 3, guess, 0.01, 0, 10, 1e-12),
                    1e-11);
        }
    }
}
