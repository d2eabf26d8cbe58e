// SPDX-License-Identifier: Apache-2.0
package hotside.statistics.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SplitMix64Test {
    /** Published outputs for seed 1234567: Rosetta Code, "Pseudo-random numbers/Splitmix64". */
    @Test
    void givesThePublishedNumbers() {
        SplitMix64 random = new SplitMix64(1234567);
        List<String> drawn =
                Stream.generate(random::next).limit(5).map(Long::toUnsignedString).toList();
        assertEquals(
                List.of(
                        "6457827717110365317",
                        "3203168211198807973",
                        "9817491932198370423",
                        "4593380528125082431",
                        "16408922859458223821"),
                drawn);
    }

    /** Half of the first output above, 3228913858555182658, has the last digit 8. */
    @Test
    void wholeNumbersAreTheRemainderOfTheUpperBits() {
        assertEquals(8, new SplitMix64(1234567).below(10));
    }

    @Property(tries = 500, seed = "20261125")
    void wholeNumbersStayBelowTheirBound(@ForAll long seed, @ForAll @IntRange(min = 1) int bound) {
        int drawn = new SplitMix64(seed).below(bound);
        assertTrue(drawn >= 0 && drawn < bound);
    }

    @Test
    void everyWholeNumberIsDrawnAboutEquallyOften() {
        SplitMix64 random = new SplitMix64(7);
        int[] counts = new int[6];
        for (int i = 0; i < 60_000; i++) {
            counts[random.below(6)]++;
        }
        // Five standard deviations of a binomial count: sqrt(60000 · 1/6 · 5/6) = 91.
        for (int count : counts) {
            assertEquals(10_000, count, 5 * 91);
        }
    }
}
