// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import hotside.unit.Dimension;
import hotside.unit.Units;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class GainSplitTest {
    private static final double HP = Units.bySymbol(Dimension.POWER, "hp").factor();
    private static final double PSI = Units.bySymbol(Dimension.PRESSURE, "psi").factor();

    private static Values split(double gain, double boostChange, double worth) {
        return Values.of(
                "gain",
                gain,
                "gainUncertainty",
                1500.0,
                "boostChange",
                boostChange,
                "boostChangeUncertainty",
                300.0,
                "worth",
                worth,
                "worthUncertainty",
                0.3);
    }

    @Test
    void leavesThirtyFiveToFortyHorsepowerOfAGainThatCameWithBoost() {
        // common practice, no source: 62 hp with 0.8 psi more at about 30 hp/psi
        // is some 24 to 26 hp of boost and 35 to 40 hp of exhaust
        Values out = GainSplit.RELATION.solve(split(62 * HP, 0.8 * PSI, 30 * HP / PSI));
        double boost = out.number("boostPart") / HP;
        double exhaust = out.number("exhaustPart") / HP;
        assertTrue(boost >= 23.99 && boost <= 26, "boost part " + boost);
        assertTrue(exhaust >= 35 && exhaust <= 40, "exhaust part " + exhaust);
    }

    @Test
    void carriesUncertaintiesByTheLawOfPropagation() {
        // By hand: 30 kW gain (1 kW); 5 kPa (0.2 kPa) at 3 kW/kPa (0.5): boost part 15 kW,
        // u = sqrt(0.6^2 + 2.5^2) = 2.570992 kW; exhaust part 15 kW, u = sqrt(1 + 6.61) = 2.758623
        // kW;
        // expected 8 kW (2 kW): 7 kW unexplained, u = sqrt(7.61 + 4) = 3.407345 kW.
        // Factor 1.959964, the 97.5 % point of the normal distribution (any table).
        Values out =
                GainSplit.RELATION.solve(
                        Values.of(
                                "gain", 30e3,
                                "gainUncertainty", 1e3,
                                "boostChange", 5e3,
                                "boostChangeUncertainty", 200.0,
                                "worth", 3.0,
                                "worthUncertainty", 0.5,
                                "expectedAtEqualBoost", 8e3,
                                "expectedAtEqualBoostUncertainty", 2e3));
        assertEquals(15e3, out.number("boostPart"), 1e-9);
        assertEquals(1.959964 * 2570.992, out.number("boostPartHalfWidth"), 5e-3);
        assertEquals(15e3, out.number("exhaustPart"), 1e-9);
        assertEquals(15e3 - 1.959964 * 2758.623, out.number("exhaustPartLow"), 5e-3);
        assertEquals(15e3 + 1.959964 * 2758.623, out.number("exhaustPartHigh"), 5e-3);
        assertEquals(7e3, out.number("unexplained"), 1e-9);
        assertEquals(1.959964 * 3407.345, out.number("unexplainedHalfWidth"), 5e-3);
    }

    @Test
    void givesTheWholeGainToThePartWhenBoostIsKnownNotToHaveMoved() {
        Values out =
                GainSplit.RELATION.solve(split(20e3, 0, 3).with("boostChangeUncertainty", 0.0));
        assertEquals(20e3, out.number("exhaustPart"), 0.0);
        assertEquals(0, out.number("boostPartHalfWidth"), 0.0);
        assertEquals(1.959964 * 1500, out.number("exhaustPartHalfWidth"), 2e-3);
    }

    @Test
    void findsTheWorthOfBoostThatWouldLeaveNothingForThePart() {
        double worth =
                Solver.solveFor(GainSplit.RELATION, "worth", "exhaustPart", 0, split(20e3, 5e3, 3));
        assertEquals(4, worth, 1e-9);
    }

    @Test
    void staysFiniteForAConfidenceNextToOne() {
        Values out =
                GainSplit.RELATION.solve(
                        split(20e3, 5e3, 3).with("confidence", Math.nextDown(1.0)));
        // erfc(z / sqrt 2) / 2 = 2^-54 at z = 8.292361, solved with the C library's erfc
        double u = Math.sqrt(1500.0 * 1500 + 900 * 900 + 1500 * 1500);
        assertEquals(8.292361, out.number("exhaustPartHalfWidth") / u, 1e-6);
    }

    @Test
    void cautionsWhenFirstOrderPropagationIsTooNarrow() {
        assertFalse(
                GainSplit.RELATION.work(GainSplit.RELATION.typical()).cautions().stream()
                        .anyMatch(c -> c.about().equals("boostPart")));
        assertTrue(
                GainSplit.RELATION
                        .work(split(20e3, 100, 0.1).with("worthUncertainty", 2.0))
                        .cautions()
                        .stream()
                        .anyMatch(c -> c.about().equals("boostPart")));
    }

    @Test
    void refusesAConfidenceOfOne() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                GainSplit.RELATION.solve(
                                        split(20e3, 5e3, 3).with("confidence", 1.0)));
        assertEquals("gain-split: confidence = 1.0 is outside (0.0, 1.0)", e.getMessage());
    }

    @Property(seed = "20261125")
    void partsAddUpToTheGain(
            @ForAll @DoubleRange(min = -1e5, max = 1e5) double gain,
            @ForAll @DoubleRange(min = -3e4, max = 3e4) double boostChange,
            @ForAll @DoubleRange(min = 0, max = 8) double worth) {
        Values out = GainSplit.RELATION.solve(split(gain, boostChange, worth));
        assertEquals(gain, out.number("boostPart") + out.number("exhaustPart"), 1e-9);
    }

    @Property(seed = "20261125")
    void mirroredTestGivesTheMirroredSplitWithTheSameInterval(
            @ForAll @DoubleRange(min = -1e5, max = 1e5) double gain,
            @ForAll @DoubleRange(min = -3e4, max = 3e4) double boostChange) {
        Values out = GainSplit.RELATION.solve(split(gain, boostChange, 3));
        Values mirrored = GainSplit.RELATION.solve(split(-gain, -boostChange, 3));
        assertEquals(out.number("exhaustPart"), -mirrored.number("exhaustPart"), 0.0);
        assertEquals(
                out.number("exhaustPartHalfWidth"), mirrored.number("exhaustPartHalfWidth"), 0.0);
    }

    @Property(seed = "20261125")
    void moreBoostMovedMeansAWiderIntervalForThePart(
            @ForAll @DoubleRange(min = 0, max = 3e4) double boostChange) {
        Values less = GainSplit.RELATION.solve(split(2e4, boostChange, 3));
        Values more = GainSplit.RELATION.solve(split(2e4, boostChange + 100, 3));
        assertTrue(more.number("exhaustPartHalfWidth") > less.number("exhaustPartHalfWidth"));
    }
}
