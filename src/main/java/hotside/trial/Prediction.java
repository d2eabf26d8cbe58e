// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

import hotside.unit.Shown;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What somebody expects of a part before the first pull.
 *
 * @param guesses for each thing watched
 */
public record Prediction(Map<Watched, Guess> guesses) {
    /** A guess within this factor of the truth has the size right. */
    private static final double ROUGH = 2;

    /**
     * A guess.
     *
     * @param direction which way it goes
     * @param size by how much, SI, without a sign; empty if not said, or if it stays
     */
    public record Guess(Watched.Direction direction, OptionalDouble size) {}

    public Prediction {
        guesses = Collections.unmodifiableMap(new EnumMap<>(guesses));
    }

    /** What came of each guess. */
    public List<Remark> against(Truth truth, UnitSystem system) {
        List<Remark> remarks = new ArrayList<>();
        guesses.forEach((watched, guess) -> remarks.add(judge(watched, guess, truth, system)));
        return remarks;
    }

    private static Remark judge(Watched watched, Guess guess, Truth truth, UnitSystem system) {
        double by = watched.change(truth);
        String size = Shown.of(Math.abs(by), watched.quantity(), system, 3).text();
        Watched.Direction way = watched.direction(truth);
        String change = TrialWords.of("fact." + way.id(), size);
        // The log reads a tap in the wall; beside it the truth would look like a mistake.
        String fact =
                watched == Watched.TURBINE_OUTLET
                        ? change + " " + TrialWords.of("fact.total")
                        : change;
        String said = "expected." + guess.direction().id();
        String plain = TrialWords.of(said);
        String sized =
                guess.size().isPresent()
                        ? TrialWords.of(
                                said + ".by",
                                Shown.of(guess.size().getAsDouble(), watched.quantity(), system, 3)
                                        .text())
                        : plain;
        if (guess.direction() != way) {
            return Remark.mend(watched.topic(), sized + " " + fact);
        }
        if (way == Watched.Direction.STAYS || guess.size().isEmpty()) {
            return Remark.good(watched.topic(), plain + " " + fact);
        }
        double ratio = guess.size().getAsDouble() / Math.abs(by);
        if (ratio > ROUGH || ratio < 1 / ROUGH) {
            return Remark.mend(
                    watched.topic(), sized + " " + TrialWords.of("expected.size-off") + " " + fact);
        }
        return Remark.good(watched.topic(), sized + " " + fact);
    }
}
