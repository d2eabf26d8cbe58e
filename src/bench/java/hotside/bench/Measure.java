// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

import java.util.Locale;

/**
 * One line of the table.
 *
 * @param what what was measured
 * @param measured the result, with its unit
 * @param aim what it should be; empty where nothing was aimed at
 * @param met yes, no, or empty
 */
record Measure(String what, String measured, String aim, String met) {
    private static final String NO_AIM = "";

    /** A result that should be small. */
    static Measure atMost(String what, double value, double aim, String format) {
        return judged(what, value, "at most " + told(format, aim), value <= aim, format);
    }

    /** A result that should be large. */
    static Measure atLeast(String what, double value, double aim, String format) {
        return judged(what, value, "at least " + told(format, aim), value >= aim, format);
    }

    /** A result that explains another. */
    static Measure told(String what, double value, String format) {
        return told(what, told(format, value));
    }

    /** A result that explains another. */
    static Measure told(String what, String result) {
        return new Measure(what, result, NO_AIM, NO_AIM);
    }

    /** The same with more said of the result. */
    Measure also(String more) {
        return new Measure(what, measured + more, aim, met);
    }

    private static Measure judged(
            String what, double value, String aim, boolean met, String format) {
        return new Measure(what, told(format, value), aim, met ? "yes" : "NO");
    }

    private static String told(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
