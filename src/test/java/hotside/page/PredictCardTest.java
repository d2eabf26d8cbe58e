// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PredictCardTest {
    /** What the solver of the cell leaves is no change; what a table could show is one. */
    @ParameterizedTest
    @CsvSource({"4e-12, 0", "-8.7e-13, 0", "0.00005, 0", "-0.248, −25", "0.0012, +0.12"})
    void aChangeIsToldAsFarAsItCanBeSeen(double change, String told) {
        assertEquals(told + "\u00a0%", PredictCard.percent(change));
    }
}
