// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.physics.duct.EquivalentDiameter.Shape;
import hotside.physics.duct.EquivalentDiameter.State;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class EquivalentDiameterTest {
    @Test
    void twoEqualPipesAreByDefinition() {
        State s = EquivalentDiameter.of(Shape.TWIN, 0.05, 0.05);
        assertEquals(Math.sqrt(2) * 0.05, s.areaDiameter(), 1e-15);
        assertEquals(0.05, s.hydraulicDiameter(), 1e-15);
        assertEquals(Math.pow(2, 0.4) * 0.05, s.sameDropDiameter(), 1e-15); // 2 · d^2.5 = D^2.5
    }

    @Test
    void perimeterOfAnEllipseAgreesWithTheEllipticIntegral() {
        // half axes 2 and 1: 4 · 2 · E(m = 0.75), E = 1.211056028 (Abramowitz and Stegun table
        // 17.1)
        assertEquals(8 * 1.211056028, EquivalentDiameter.of(Shape.ELLIPSE, 4, 2).perimeter(), 1e-8);
    }

    @Test
    void aFlatLineHasItsLengthTwice() {
        assertEquals(2, EquivalentDiameter.of(Shape.ELLIPSE, 1, 1e-9).perimeter(), 1e-6);
    }

    @Test
    void aFlatOvalIsTwoHalfCirclesAndARectangle() {
        State s = EquivalentDiameter.of(Shape.FLAT_OVAL, 0.09, 0.05);
        assertEquals(Math.PI / 4 * 0.0025 + 0.05 * 0.04, s.area(), 1e-15);
        assertEquals(Math.PI * 0.05 + 0.08, s.perimeter(), 1e-15);
    }

    @ParameterizedTest
    @EnumSource(
            value = Shape.class,
            names = {"ELLIPSE", "FLAT_OVAL"})
    void aRoundOvalIsItself(Shape shape) {
        State s = EquivalentDiameter.of(shape, 0.07, 0.07);
        assertEquals(0.07, s.areaDiameter(), 1e-15);
        assertEquals(0.07, s.hydraulicDiameter(), 1e-15);
        assertEquals(0.07, s.sameDropDiameter(), 1e-15);
    }

    @Property(seed = "20261125")
    void theOrderOfTheSizesDoesNotMatter(
            @ForAll Shape shape,
            @ForAll @Scale(7) @DoubleRange(min = 0.02, max = 0.2) double a,
            @ForAll @Scale(7) @DoubleRange(min = 0.02, max = 0.2) double b) {
        assertEquals(
                EquivalentDiameter.of(shape, a, b).sameDropDiameter(),
                EquivalentDiameter.of(shape, b, a).sameDropDiameter(),
                1e-15);
    }

    @Property(seed = "20261125")
    void noShapeBeatsTheRoundPipeOfItsArea(
            @ForAll Shape shape,
            @ForAll @Scale(7) @DoubleRange(min = 0.02, max = 0.2) double a,
            @ForAll @Scale(7) @DoubleRange(min = 0.02, max = 0.2) double b) {
        State s = EquivalentDiameter.of(shape, a, b);
        assertTrue(s.hydraulicDiameter() <= s.areaDiameter() * (1 + 1e-12));
        assertTrue(s.sameDropDiameter() <= s.areaDiameter() * (1 + 1e-12));
    }

    @Property(seed = "20261125")
    void twiceTheSizeIsTwiceTheBore(
            @ForAll Shape shape, @ForAll @Scale(7) @DoubleRange(min = 0.02, max = 0.2) double a) {
        State one = EquivalentDiameter.of(shape, a, 0.06);
        State two = EquivalentDiameter.of(shape, 2 * a, 0.12);
        assertEquals(2 * one.sameDropDiameter(), two.sameDropDiameter(), 1e-13);
        assertEquals(2 * one.hydraulicDiameter(), two.hydraulicDiameter(), 1e-13);
    }

    /** Darcy and Weisbach with one factor for each pipe, the flow split until the drops agree. */
    @Test
    void twinPipesOfTheSameDropCarryTheFlowOfTheOneInTheirPlace() {
        State s = EquivalentDiameter.of(Shape.TWIN, 0.06, 0.05);
        double ratio = Math.pow(0.06 / 0.05, 2.5); // flow at equal drop goes as d^2.5
        double first = ratio / (1 + ratio);
        double dropFirst = first * first / Math.pow(0.06, 5);
        double dropOne = 1 / Math.pow(s.sameDropDiameter(), 5);
        assertEquals(dropOne, dropFirst, 1e-9 * dropOne);
    }

    @Test
    void findsTheSecondPipeForABore() {
        Values in = Values.of("shape", "twin", "sizeA", 0.05);
        double second =
                Solver.solveFor(
                        EquivalentDiameter.RELATION,
                        "sizeB",
                        "areaDiameter",
                        Math.sqrt(2) * 0.05,
                        in);
        assertEquals(0.05, second, 1e-9);
    }
}
