// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Part;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * What a prediction shows just now. Immutable.
 *
 * @param id the card's id in the page
 * @param part what is foretold
 * @param ways which way the learner says that each quantity goes
 * @param extents about how far
 * @param running true from the order to run until the cell has answered
 * @param answer what the cell said
 * @param fault why it could not answer; empty if it could
 */
public record PredictState(
        String id,
        Part.Prediction part,
        List<Optional<CellAnswer.Way>> ways,
        List<Optional<CellAnswer.Extent>> extents,
        boolean running,
        Optional<CellAnswer> answer,
        String fault) {
    public PredictState {
        ways = List.copyOf(ways);
        extents = List.copyOf(extents);
    }

    /** Nothing foretold yet. */
    public static PredictState fresh(String id, Part.Prediction part) {
        int count = part.watched().size();
        return new PredictState(
                id,
                part,
                Collections.nCopies(count, Optional.empty()),
                Collections.nCopies(count, Optional.empty()),
                false,
                Optional.empty(),
                "");
    }

    /** With another direction for one quantity. */
    public PredictState way(int index, Optional<CellAnswer.Way> way) {
        List<Optional<CellAnswer.Way>> others = new ArrayList<>(ways);
        others.set(index, way);
        return new PredictState(id, part, others, extents, running, answer, fault);
    }

    /** With another size for one quantity. */
    public PredictState extent(int index, Optional<CellAnswer.Extent> extent) {
        List<Optional<CellAnswer.Extent>> others = new ArrayList<>(extents);
        others.set(index, extent);
        return new PredictState(id, part, ways, others, running, answer, fault);
    }

    /** Sent to the cell. */
    public PredictState started() {
        return new PredictState(id, part, ways, extents, true, Optional.empty(), "");
    }

    public PredictState answered(CellAnswer said) {
        return new PredictState(id, part, ways, extents, false, Optional.of(said), "");
    }

    public PredictState failed(String why) {
        return new PredictState(id, part, ways, extents, false, Optional.empty(), why);
    }

    /** True if everything is foretold, so that the cell may run. */
    public boolean complete() {
        for (int i = 0; i < ways.size(); i++) {
            boolean sized =
                    ways.get(i).equals(Optional.of(CellAnswer.Way.STAYS))
                            || extents.get(i).isPresent();
            if (ways.get(i).isEmpty() || !sized) {
                return false;
            }
        }
        return true;
    }
}
