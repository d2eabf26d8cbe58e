// SPDX-License-Identifier: Apache-2.0
package hotside.statistics.draw;

/**
 * The generator that problems and readings are drawn with, frozen: a seed gives the same numbers on
 * every machine and in every later version.
 *
 * <p>Source: Steele, Lea and Flood, Fast Splittable Pseudorandom Number Generators, OOPSLA 2014;
 * the constants are those of the public-domain splitmix64.c.
 */
public final class SplitMix64 {
    private long state;

    public SplitMix64(long seed) {
        state = seed;
    }

    /** The next 64 bits. */
    public long next() {
        state += 0x9E3779B97F4A7C15L;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /**
     * A whole number from 0 up to but not including {@code bound}, each equally likely.
     *
     * @param bound above 0
     */
    public int below(int bound) {
        long limit = Long.MAX_VALUE - Long.MAX_VALUE % bound;
        long draw;
        do {
            draw = next() >>> 1;
        } while (draw >= limit);
        return (int) (draw % bound);
    }
}
