// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.unit.Quantity;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Relations of school algebra, whose roots anybody can check. */
class SolverTest {
    private static final Slot X = Slot.number("x", "x", Quantity.LENGTH, "the unknown");

    private static Relation curve(Slot x, DoubleUnaryOperator function) {
        return Relation.named("curve", "A curve", "Algebra")
                .says("A curve.")
                .tex("y = f(x)")
                .input(x)
                .input(Slot.number("a", "a", Quantity.RATIO, "a factor").range(0.5, 10).orElse(1))
                .input(Slot.choice("side", "which side", "left", "right").orElse("left"))
                .output("y", "y", Quantity.RATIO, "height")
                .by(w -> w.out("y", "", w.in("a") * function.applyAsDouble(w.in("x")), "Height."));
    }

    private static double solve(Relation relation, double target) {
        return Solver.solveFor(relation, "x", "y", target, Values.NONE);
    }

    private static String complaint(Relation relation, double target) {
        return assertThrows(RelationException.class, () -> solve(relation, target)).getMessage();
    }

    @Test
    void theOneRootIsFoundToNearlyAllDigits() {
        assertEquals(Math.sqrt(2), solve(curve(X.range(0, 10), x -> x * x), 2), 1e-12);
    }

    @Property(tries = 300, seed = "20261125")
    void whatTheCurveGivesLeadsBack(@ForAll @DoubleRange(min = 0.01, max = 99) double x) {
        Relation cubic = curve(X.range(0, 100), t -> t * t * t + t);
        assertEquals(x, solve(cubic, cubic.value("y", Values.of("x", x))), 1e-11 * x);
    }

    @Test
    void aRootAtAnEndOfTheRangeIsFound() {
        Relation square = curve(X.range(0.2, 3), x -> x * x);
        assertEquals(3, solve(square, 9), 0);
        assertEquals(0.2, solve(square, 0.2 * 0.2), 1e-15);
    }

    @Test
    void otherInputsAreHeldAndAValueForTheUnknownIsIgnored() {
        Relation line = curve(X.range(0, 10), x -> x);
        Values others = Values.of("a", 4, "x", 9);
        assertEquals(2.5, Solver.solveFor(line, "x", "y", 10, others), 1e-12);
    }

    @Test
    void aTargetOfZeroIsReachedWhereTheOutputChangesSign() {
        // x³ − 2 is zero at the cube root of two, where no double makes it exactly zero.
        assertEquals(Math.cbrt(2), solve(curve(X.range(0, 10), x -> x * x * x - 2), 0), 1e-12);
    }

    @Test
    void severalRootsAreListed() {
        assertEquals(
                "curve: more than one x gives y = 4: −2.0000 m, 2.0000 m",
                complaint(curve(X.range(-3, 3), x -> x * x), 4));
    }

    @Test
    void threeRootsAreListedToo() {
        assertEquals(
                "curve: more than one x gives y = 0: 1.0000 m, 2.0000 m, 3.0000 m",
                complaint(curve(X.range(0.1, 5), x -> (x - 1) * (x - 2) * (x - 3)), 0));
    }

    @Test
    void noRootIsSaidWithWhatThereIs() {
        assertEquals(
                "curve: no x in [1.0, 3.0] m gives y = 20; it goes from 1.0000 to 9.0000",
                complaint(curve(X.range(1, 3), x -> x * x), 20));
    }

    @Test
    void aJumpIsNoRoot() {
        assertEquals(
                "curve: no x in [0.0, 2.0] m gives y = 2; it goes from 0 to 5.0000",
                complaint(curve(X.range(0, 2), x -> x < 1 ? x : x + 3), 2));
    }

    @Test
    void aJumpAcrossZeroIsNoRoot() {
        assertTrue(
                complaint(curve(X.range(-1, 2), x -> x < 0.3 ? -1 : 1), 0)
                        .startsWith("curve: no x in [-1.0, 2.0] m gives y = 0"));
    }

    @Test
    void aPoleIsNoRoot() {
        assertTrue(
                complaint(curve(X.range(-1, 2), x -> 1 / (x - 0.3)), 0)
                        .startsWith("curve: no x in [-1.0, 2.0] m gives y = 0"));
    }

    @Test
    void aFlatStretchCannotBeTurnedRound() {
        assertTrue(
                complaint(curve(X.range(0, 10), x -> Math.min(x, 4)), 4)
                        .matches(
                                "curve: x cannot be told from y = 4: every value from about 4\\.\\d+ m on gives it"));
    }

    @Test
    void aStretchOfZeroCannotBeTurnedRound() {
        assertTrue(
                complaint(curve(X.range(0, 10), x -> Math.max(0, x - 4)), 0)
                        .startsWith(
                                "curve: x cannot be told from y = 0: every value from about 0"));
    }

    @Test
    void whereTheRelationHasNoResultNothingIsSought() {
        assertEquals(
                "curve: no x in [1.0, 2.0] m gives y = 1; the relation has no result there",
                complaint(curve(X.range(1, 2), x -> Double.NaN), 1));
    }

    @Test
    void aRootIsFoundBesideAStretchWithoutResult() {
        assertEquals(1.25, solve(curve(X.range(-2, 2), x -> Math.sqrt(x - 1)), 0.5), 1e-12);
    }

    @Test
    void anExcludedEndIsNotTried() {
        assertEquals(0.5, solve(curve(X.above(0, 1), x -> 1 / x), 2), 1e-12);
    }

    @Test
    void anUnboundedSlotIsSearchedWhereItIsUsual() {
        Slot open = X.range(0, Double.MAX_VALUE).usual(0, 5, "Beyond it bends.");
        Relation line = curve(open, x -> x);
        assertEquals(4.5, solve(line, 4.5), 1e-12);
        assertEquals(
                "curve: no x in [0.0, 5.0] m gives y = 6; it goes from 0 to 5.0000",
                complaint(line, 6));
    }

    @Test
    void aSlotWithoutAnyBoundCannotBeSearched() {
        assertEquals("curve: x has no bounded range to look in", complaint(curve(X, x -> x), 6));
    }

    @Test
    void aWordCannotBeSolvedFor() {
        Relation line = curve(X.range(0, 1), x -> x);
        var e =
                assertThrows(
                        RelationException.class,
                        () -> Solver.solveFor(line, "side", "y", 1, Values.of("x", 1)));
        assertEquals("curve: \"side\" is not an input to solve for", e.getMessage());
    }

    @Test
    void anUnknownOutputIsRefused() {
        Relation line = curve(X.range(0, 1), x -> x);
        var e =
                assertThrows(
                        RelationException.class,
                        () -> Solver.solveFor(line, "x", "z", 1, Values.NONE));
        assertEquals("curve: \"z\" is not an output", e.getMessage());
    }

    @Test
    void aBadOtherInputIsTheComplaintNotTheMissingRoot() {
        Relation line = curve(X.range(0, 1), x -> x);
        var e =
                assertThrows(
                        RelationException.class,
                        () -> Solver.solveFor(line, "x", "y", 1, Values.of("a", 99)));
        assertEquals("curve: a = 99.0 is outside [0.5, 10.0]", e.getMessage());
        var choice =
                assertThrows(
                        RelationException.class,
                        () -> Solver.solveFor(line, "x", "y", 1, Values.of("side", "middle")));
        assertEquals(
                "curve: side = middle is not what is expected: one of left, right",
                choice.getMessage());
    }

    private static double astray(Relation relation, double target, Values others, double right) {
        return Solver.solveAstray(relation, "x", "y", target, others, right);
    }

    @Test
    void whoWentAstrayFindsTheRootNextToTheRightOne() {
        Relation parabola = curve(X.range(-10, 10), x -> x * x);
        assertEquals(2, astray(parabola, 4, Values.NONE, 3), 1e-12);
        assertEquals(-2, astray(parabola, 4, Values.NONE, -0.5), 1e-12);
        assertEquals(3, astray(parabola, 9, Values.NONE, 3), 0, "nothing changed");
    }

    @Test
    void whoWentAstrayMayHaveOtherInputsOutsideTheirRanges() {
        Relation line = curve(X.range(0, 10), x -> x);
        assertEquals(0.1, astray(line, 10, Values.of("a", 100), 2.5), 1e-13);
    }

    @Test
    void whoWentAstrayStillFindsNothingWhereNothingIs() {
        Relation parabola = curve(X.range(-10, 10), x -> x * x);
        Relation flat = curve(X.range(0, 10), x -> 3);
        Relation step = curve(X.range(0, 10), x -> x < 5 ? 0 : 1);
        assertThrows(RelationException.class, () -> astray(parabola, -1, Values.NONE, 2));
        assertThrows(RelationException.class, () -> astray(flat, 4, Values.NONE, 2));
        assertThrows(RelationException.class, () -> astray(step, 0.5, Values.NONE, 2));
    }

    @Property(tries = 300, seed = "20261125")
    void whereThereIsOneRootThePlaceToStartFromDoesNotMatter(
            @ForAll @DoubleRange(min = 0.01, max = 99) double x,
            @ForAll @DoubleRange(min = 0.01, max = 99) double start) {
        Relation cubic = curve(X.range(0, 100), t -> t * t * t + t);
        double target = cubic.value("y", Values.of("x", x));
        assertEquals(x, astray(cubic, target, Values.NONE, start), 1e-11 * x);
    }
}
