// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RatioSlipsTest {
    private static final Slips.Surroundings NOWHERE =
            new Slips.Surroundings(101_325, Double.NaN, 1);

    /** A compressor that doubles the pressure raises it by one inlet pressure: plain arithmetic. */
    @Test
    void aRatioTakenAsARiseLosesItsOne() {
        assertEquals(1.0, Slips.ONE_LEFT_OUT.spoil(2.0, NOWHERE), 1e-15);
    }

    /** Three quarters of the way gone leave one quarter: plain arithmetic. */
    @Test
    void aShareTakenForItsRestIsWhatIsMissingToOne() {
        assertEquals(0.25, Slips.REST_FOR_SHARE.spoil(0.75, NOWHERE), 1e-15);
    }
}
