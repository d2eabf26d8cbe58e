// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/**
 * One answer to one question, with all that is needed to mark it again.
 *
 * @param problem id of the problem
 * @param seed of the variant, as text so that no digit is lost
 * @param generator version of the number generator that made the variant
 * @param fingerprint of the problem's template, which shows whether it was edited since
 * @param unitSystem in which the variant was shown
 * @param ask which of the problem's questions, from 0
 * @param answer as typed
 * @param verdict kind of verdict
 * @param mistake id of the mistake that the answer matches; null if none
 * @param correct whether the answer was right
 * @param hints how many hints had been read
 * @param seconds from the question to the answer
 * @param time when it was given, to the millisecond
 * @param lesson id of the lesson that it was given in; null if in practice
 * @param way how the problem was set
 */
public record Attempt(
        String problem,
        String seed,
        String generator,
        String fingerprint,
        String unitSystem,
        int ask,
        String answer,
        String verdict,
        String mistake,
        boolean correct,
        int hints,
        double seconds,
        Instant time,
        String lesson,
        Way way) {

    /** How a problem was set. */
    public enum Way {
        /** With nothing shown. */
        FULL,
        /** Below a full example. */
        WORKED,
        /** Below an example with its last step left out. */
        FADED,
        /** In a test: no help, verdicts at the end. */
        TEST,
        /** Once more with the same numbers: proves nothing. */
        AGAIN;

        /** How it is written in the record. */
        String id() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Way of(Stage stage) {
            return valueOf(stage.name());
        }

        Stage stage() {
            return switch (this) {
                case WORKED -> Stage.WORKED;
                case FADED -> Stage.FADED;
                default -> Stage.FULL;
            };
        }
    }

    public Attempt {
        if (ask < 0 || hints < 0 || !(seconds >= 0) || Double.isInfinite(seconds)) {
            throw new IllegalArgumentException(
                    "ask " + ask + ", hints " + hints + ", seconds " + seconds + ": 0 or above");
        }
        time = time.truncatedTo(ChronoUnit.MILLIS);
    }

    /** An answer to a problem with nothing shown beforehand. */
    public Attempt(
            String problem,
            String seed,
            String generator,
            String fingerprint,
            String unitSystem,
            int ask,
            String answer,
            String verdict,
            String mistake,
            boolean correct,
            int hints,
            double seconds,
            Instant time,
            String lesson) {
        this(
                problem,
                seed,
                generator,
                fingerprint,
                unitSystem,
                ask,
                answer,
                verdict,
                mistake,
                correct,
                hints,
                seconds,
                time,
                lesson,
                Way.FULL);
    }
}
