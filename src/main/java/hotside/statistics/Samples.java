// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.stat.StatUtils;

/** What the relations ask of the readings they are given. */
final class Samples {
    private Samples() {}

    /** A slot for readings in whatever unit they were taken. */
    static Slot slot(String name, String symbol, String meaning, Double... typical) {
        return Slot.numbers(name, symbol, Quantity.AS_MEASURED, meaning).typical(List.of(typical));
    }

    /** The readings in a slot, refused if there are not two. */
    static double[] two(Working w, String relation, String slot) {
        double[] x = w.readings(slot);
        if (x.length < 2) {
            throw refuse(relation, slot, "holds one reading; two at least show a spread");
        }
        return x;
    }

    static void sameLength(
            String relation, String slot, double[] x, String otherSlot, double[] other) {
        if (x.length != other.length) {
            throw refuse(
                    relation,
                    slot,
                    "holds "
                            + x.length
                            + " and "
                            + otherSlot
                            + " "
                            + other.length
                            + "; both need one for each run");
        }
    }

    static RelationException refuse(String relation, String slot, String what) {
        return new RelationException(slot, relation + ": " + slot + " " + what);
    }

    /** Warns if readings that should scatter do not. */
    static void cautionIfAlike(Working w, String slot, double[] x) {
        w.caution(
                alike(x),
                slot,
                () ->
                        "the readings are all alike: that is the step of the display, not the spread of the"
                                + " bench, so the interval is too narrow");
    }

    static boolean alike(double[] x) {
        return Arrays.stream(x).allMatch(v -> v == x[0]);
    }

    /** The mean; of readings that are all alike, that reading to the last digit. */
    static double mean(double[] x) {
        return alike(x) ? x[0] : StatUtils.mean(x);
    }

    /** Standard deviation of single readings, n − 1 in the divisor. */
    static double sd(double[] x) {
        return alike(x) ? 0 : Math.sqrt(StatUtils.variance(x));
    }
}
