// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

// The rule: A. T. Corbett, J. R. Anderson, Knowledge tracing (1995), equations from memory. The
// expected numbers were worked with them on paper, to three places.
class TracingTest {
    private static final double HALF_A_THOUSANDTH = 0.0005;

    @Test
    void twoRightNumbersInARowReadAsKnown() {
        double once = Tracing.NUMBER.right(Tracing.START);
        assertEquals(0.845, once, HALF_A_THOUSANDTH);
        assertEquals(0.991, Tracing.NUMBER.right(once), HALF_A_THOUSANDTH);
    }

    @Test
    void aChoiceOfFourTakesThree() {
        double once = Tracing.CHOICE.right(Tracing.START);
        double twice = Tracing.CHOICE.right(once);
        assertEquals(0.553, once, HALF_A_THOUSANDTH);
        assertEquals(0.844, twice, HALF_A_THOUSANDTH);
        assertEquals(0.958, Tracing.CHOICE.right(twice), HALF_A_THOUSANDTH);
    }

    @ParameterizedTest
    @CsvSource({"NUMBER, 0.168", "CHOICE, 0.173", "ORDER, 0.168"})
    void manyWrongAnswersLeadToTheLowestBelief(String kind, double lowest) {
        Tracing tracing = byName(kind);
        assertEquals(lowest, tracing.lowest(), HALF_A_THOUSANDTH);
        double belief = 0.999;
        for (int i = 0; i < 200; i++) {
            belief = tracing.wrong(belief);
        }
        assertEquals(tracing.lowest(), belief, 1e-12);
    }

    @Test
    void aWrongAnswerNeverRaisesABeliefAboveTheStart() {
        for (Tracing tracing : List.of(Tracing.NUMBER, Tracing.CHOICE, Tracing.ORDER)) {
            for (double belief = Tracing.START; belief < 1; belief += 0.01) {
                assertTrue(tracing.wrong(belief) < belief, "from " + belief);
                assertTrue(tracing.right(belief) > belief, "from " + belief);
            }
        }
    }

    @Test
    void numbersThatContradictThemselvesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Tracing(0.15, 0.6, 0.5));
        assertThrows(IllegalArgumentException.class, () -> new Tracing(0.3, 0.05, 0.1));
        assertThrows(IllegalArgumentException.class, () -> new Tracing(0, 0.05, 0.1));
        assertThrows(IllegalArgumentException.class, () -> new Tracing(Double.NaN, 0.05, 0.1));
    }

    @Test
    void aKindThatIsNotKnownIsANumber() {
        assertSame(Tracing.NUMBER, Tracing.of("steps"));
        assertSame(Tracing.NUMBER, Tracing.of("of-tomorrow"));
        assertSame(Tracing.CHOICE, Tracing.of("choice"));
        assertSame(Tracing.ORDER, Tracing.of("graph"));
    }

    private static Tracing byName(String name) {
        return switch (name) {
            case "NUMBER" -> Tracing.NUMBER;
            case "CHOICE" -> Tracing.CHOICE;
            default -> Tracing.ORDER;
        };
    }
}
