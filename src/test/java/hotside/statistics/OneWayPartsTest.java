// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Values;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.stat.inference.OneWayAnova;
import org.junit.jupiter.api.Test;

class OneWayPartsTest {
    /** R's dataset PlantGrowth (Dobson 1983), from memory; its F and sums below confirm it. */
    private static final double[] CONTROL = {
        4.17, 5.58, 5.18, 6.11, 4.50, 4.61, 5.17, 4.53, 5.33, 5.14
    };

    private static final double[] FIRST = {
        4.81, 4.17, 4.41, 3.59, 5.87, 3.83, 6.03, 4.89, 4.32, 4.69
    };
    private static final double[] SECOND = {
        6.31, 5.12, 5.54, 5.50, 5.37, 5.29, 4.92, 6.15, 5.80, 5.26
    };

    @Test
    void agreesWithTheCertifiedTableOfSiRstv() {
        // NIST StRD, SiRstv.dat: five instruments, five readings each; certified values
        var table =
                OneWayParts.of(
                        new double[] {196.3052, 196.1240, 196.1890, 196.2569, 196.3403},
                        new double[] {196.3042, 196.3825, 196.1669, 196.3257, 196.0422},
                        new double[] {196.1303, 196.2005, 196.2889, 196.0343, 196.1811},
                        new double[] {196.2795, 196.1748, 196.1494, 196.1485, 195.9885},
                        new double[] {196.2119, 196.1051, 196.1850, 196.0052, 196.2090});
        assertNineDigits(5.11462616e-2, table.betweenSquares());
        assertNineDigits(2.1663656e-1, table.withinSquares());
        assertNineDigits(1.18046237440255, table.fRatio());
        assertNineDigits(0.104076068334656, table.sd());
        double rSquared = table.betweenSquares() / (table.betweenSquares() + table.withinSquares());
        assertNineDigits(0.190999039051129, rSquared);
    }

    private static void assertNineDigits(double certified, double value) {
        assertEquals(certified, value, 1e-9 * certified);
    }

    @Test
    void agreesWithTukeyOfAnotherProgram() {
        // R 4.2.2, TukeyHSD(aov(weight ~ group, PlantGrowth))
        var table = OneWayParts.of(CONTROL, FIRST, SECOND);
        assertEquals(4.84609, table.fRatio(), 5e-6);
        assertEquals(0.01591, table.p(), 5e-6);
        assertEquals(3.76634, table.betweenSquares(), 5e-6);
        assertEquals(10.49209, table.withinSquares(), 5e-6);
        assertEquals(-0.371, table.pair(0, 1).difference(), 1e-12);
        assertEquals(0.390871144, table.pair(0, 1).p(), 1e-7);
        assertEquals(0.494, table.pair(0, 2).difference(), 1e-12);
        assertEquals(0.197995991, table.pair(0, 2).p(), 1e-7);
        var widest = table.pair(1, 2);
        assertEquals(0.012006424, widest.p(), 1e-7);
        assertEquals(0.173783949, widest.difference() - widest.halfWidth(0.95), 1e-6);
        assertEquals(1.556216051, widest.difference() + widest.halfWidth(0.95), 1e-6);
        assertEquals(3, table.pairs().size());
    }

    private static Values in(String parts, double... readings) {
        return Values.of("readings", Arrays.stream(readings).boxed().toList(), "parts", parts);
    }

    @Test
    void reportsTheFarthestPairUnlessToldWhich() {
        Values in = in("ABC CBA ABC", 10, 12, 15, 16, 13, 9, 11, 11, 14);
        Values farthest = OneWayParts.RELATION.solve(in);
        assertEquals(5, farthest.number("difference"), 1e-12);
        Values told = OneWayParts.RELATION.solve(in.with("pair", "CB"));
        assertEquals(-3, told.number("difference"), 1e-12);
        assertEquals(farthest.number("halfWidth"), told.number("halfWidth"), 1e-12);
    }

    @Test
    void saysWhatIsWrongWithThePair() {
        Values in = in("AABBCC", 1, 2, 3, 4, 5, 6).with("pair", "AD");
        var e = assertThrows(RelationException.class, () -> OneWayParts.RELATION.solve(in));
        assertEquals(
                "one-way-parts: pair \"AD\" must be two different parts out of ABC, or extremes",
                e.getMessage());
    }

    @Test
    void refusesWhatShowsNoSpread() {
        assertSlot("parts", in("ABC", 1, 2, 3));
        assertSlot("parts", in("AAA", 1, 2, 3));
        assertSlot("parts", in("AABB", 1, 2, 3));
        assertSlot("readings", in("AABBCC", 1, 1, 2, 2, 3, 3));
    }

    private static void assertSlot(String slot, Values in) {
        var e = assertThrows(RelationException.class, () -> OneWayParts.RELATION.solve(in));
        assertEquals(slot, e.slot());
    }

    @Test
    void cautionsThatTwoPartsNeedNoMoreThanStudent() {
        var worked = OneWayParts.RELATION.work(in("AABB", 1, 2, 3, 5));
        assertTrue(worked.cautions().stream().anyMatch(c -> c.about().equals("parts")));
    }

    @Property(seed = "20261125")
    void agreesWithAnotherLibrary(
            @ForAll @Size(4) List<@DoubleRange(min = 240, max = 260) Double> aList,
            @ForAll @Size(3) List<@DoubleRange(min = 240, max = 260) Double> bList,
            @ForAll @Size(5) List<@DoubleRange(min = 240, max = 260) Double> cList) {
        double[] a = array(aList);
        double[] b = array(bList);
        double[] c = array(cList);
        var table = OneWayParts.of(a, b, c);
        if (table.sd() > 1e-3) {
            var other = new OneWayAnova();
            // the other library subtracts large squares, which costs it about six digits
            assertEquals(
                    other.anovaFValue(List.of(a, b, c)),
                    table.fRatio(),
                    1e-5 * (1 + table.fRatio()));
            assertEquals(other.anovaPValue(List.of(a, b, c)), table.p(), 1e-5);
        }
    }

    @Property(tries = 40, seed = "20261125")
    void ofTwoPartsIsStudentsTSquared(
            @ForAll @Size(4) List<@DoubleRange(min = 240, max = 260) Double> aList) {
        double[] a = array(aList);
        double[] b = {248.0, 252.5, 251.0};
        var table = OneWayParts.of(a, b);
        Estimate gain = WelchGain.pooled(MeanSpread.of(a), MeanSpread.of(b));
        assertEquals(gain.t() * gain.t(), table.fRatio(), 1e-8 * (1 + table.fRatio()));
        assertEquals(gain.p(), table.p(), 1e-8);
        assertEquals(gain.p(), table.pair(0, 1).p(), 1e-8);
        assertEquals(
                gain.halfWidth(0.95),
                table.pair(0, 1).halfWidth(0.95),
                1e-7 * gain.halfWidth(0.95));
    }

    @Property(tries = 40, seed = "20261125")
    void shiftingAllReadingsChangesNothing(
            @ForAll @DoubleRange(min = -200, max = 200) double shift) {
        var plain = OneWayParts.of(CONTROL, FIRST, SECOND);
        var shifted = OneWayParts.of(plus(CONTROL, shift), plus(FIRST, shift), plus(SECOND, shift));
        assertEquals(plain.fRatio(), shifted.fRatio(), 1e-8);
        assertEquals(plain.pair(1, 2).difference(), shifted.pair(1, 2).difference(), 1e-10);
    }

    private static double[] plus(double[] x, double shift) {
        return Arrays.stream(x).map(v -> v + shift).toArray();
    }

    private static double[] array(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
