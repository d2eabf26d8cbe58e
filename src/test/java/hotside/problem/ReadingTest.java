// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotside.unit.Quantity;
import hotside.unit.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Readings of curves simple enough to be read by head. */
class ReadingTest {
    private static final double NONE = Double.NaN;

    /** Up from 100 to 300, down to 200; and a level line at 250 that begins lower. */
    private static final Figure FIGURE =
            new Figure(
                    axis(Quantity.ROTATION, AxisMarks.covering(1000, 5000, false, 4)),
                    axis(Quantity.TORQUE, AxisMarks.covering(100, 300, false, 4)),
                    List.of(
                            curve(
                                    "a",
                                    List.of(1000.0, 3000.0, 5000.0),
                                    List.of(100.0, 300.0, 200.0)),
                            curve("b", List.of(1000.0, 5000.0), List.of(240.0, 240.0))));

    private static Figure.Axis axis(Quantity quantity, AxisMarks marks) {
        return new Figure.Axis(
                quantity.words(), quantity, quantity.shown(UnitSystem.SI_SHOP), marks);
    }

    private static Figure.Curve curve(String id, List<Double> xs, List<Double> ys) {
        return new Figure.Curve(
                id, id, Quantity.TORQUE, Quantity.TORQUE.shown(UnitSystem.SI_SHOP), xs, ys);
    }

    private static Reading reading(Reading.Sort sort) {
        return new Reading(
                sort,
                "a",
                sort.comparesTwo() ? Optional.of("b") : Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static double read(Reading.Sort sort, double at, double from, double to) {
        return reading(sort).value(FIGURE, new Reading.Place(at, from, to));
    }

    private static double misread(
            Misreading.Sort slip, Reading.Sort sort, double at, double from, double to) {
        return new Misreading(
                        slip,
                        slip == Misreading.Sort.OTHER_CURVE ? Optional.of("b") : Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())
                .value(reading(sort), FIGURE, new Reading.Place(at, from, to));
    }

    @Test
    void pointsAreReadAlongStraightLines() {
        assertEquals(200, read(Reading.Sort.VALUE, 2000, NONE, NONE), 1e-9);
        assertEquals(300, read(Reading.Sort.PEAK, NONE, NONE, NONE), 1e-9);
        assertEquals(3000, read(Reading.Sort.PEAK_PLACE, NONE, NONE, NONE), 1e-9);
        assertEquals(2500, read(Reading.Sort.REACHES, 250, NONE, NONE), 1e-9);
    }

    /** The triangle under the curve: half of 100 and 300 on the way up. */
    @Test
    void aBandIsReadByItsMean() {
        assertEquals(200, read(Reading.Sort.MEAN, NONE, 1000, 3000), 1e-9);
        assertEquals(225, read(Reading.Sort.MEAN, NONE, 1000, 5000), 1e-9);
        assertEquals(-40, read(Reading.Sort.DIFFERENCE, NONE, 1000, 3000), 1e-9);
    }

    @Test
    void twoCurvesAreCompared() {
        assertEquals(60, read(Reading.Sort.DIFFERENCE, 3000, NONE, NONE), 1e-9);
        assertEquals(25, read(Reading.Sort.CHANGE, 3000, NONE, NONE), 1e-9);
    }

    @Test
    void aCrossingThatIsNotTheOnlyOneIsNotAskedFor() {
        var e =
                assertThrows(
                        Reading.Unclear.class, () -> read(Reading.Sort.CROSSING, NONE, NONE, NONE));
        assertEquals("the curves cross more than once", e.getMessage());
    }

    /** On the way up only: 240 of 100 to 300 is reached after seven tenths of 2000. */
    @Test
    void aSingleCrossingIsFound() {
        Figure.Curve up = curve("a", List.of(1000.0, 3000.0), List.of(100.0, 300.0));
        Figure figure = new Figure(FIGURE.x(), FIGURE.y(), List.of(up, FIGURE.curves().get(1)));
        assertEquals(2400, reading(Reading.Sort.CROSSING).value(figure, place(NONE)), 1e-6);
    }

    @Test
    void eachWayToMisreadHasItsNumber() {
        assertEquals(
                240, misread(Misreading.Sort.OTHER_CURVE, Reading.Sort.VALUE, 2000, NONE, NONE));
        // 180 at 1800, the marks stand at 150 and 200.
        assertEquals(
                200, misread(Misreading.Sort.NEAREST_MARK, Reading.Sort.VALUE, 1800, NONE, NONE));
        assertEquals(
                300, misread(Misreading.Sort.PEAK_FOR_MEAN, Reading.Sort.MEAN, NONE, 1000, 4000));
        assertEquals(
                225, misread(Misreading.Sort.WHOLE_FOR_BAND, Reading.Sort.MEAN, NONE, 1000, 3000));
        assertEquals(
                5000,
                misread(Misreading.Sort.END_FOR_PEAK, Reading.Sort.PEAK_PLACE, NONE, NONE, NONE));
        // 60 over 240; the axis begins at 100, so that 140 of it can be seen.
        assertEquals(
                100 * 60 / 140.0,
                misread(Misreading.Sort.BY_HEIGHT, Reading.Sort.CHANGE, 3000, NONE, NONE),
                1e-9);
        assertEquals(
                20,
                misread(Misreading.Sort.WRONG_BASE, Reading.Sort.CHANGE, 3000, NONE, NONE),
                1e-9);
        assertEquals(
                60,
                misread(Misreading.Sort.POINTS_FOR_PERCENT, Reading.Sort.CHANGE, 3000, NONE, NONE),
                1e-9);
    }

    /** Half a minor division; five to a step of one or five, four to a step of two. */
    @Test
    void theEyeReadsHalfASmallDivision() {
        assertEquals(5, reading(Reading.Sort.VALUE).band(FIGURE, place(2000)), 1e-9);
        assertEquals(100, reading(Reading.Sort.REACHES).band(FIGURE, place(250)), 1e-9);
        assertEquals(4, AxisMarks.covering(0, 100, true, 5).parts());
        assertEquals(5, AxisMarks.covering(0, 100, true, 2).parts());
    }

    @Test
    void aCurveThatEndsBeforeThePlaceIsNotDrawnOn() {
        assertThrows(Reading.Unclear.class, () -> read(Reading.Sort.VALUE, 5100, NONE, NONE));
    }

    private static Reading.Place place(double at) {
        return new Reading.Place(at, NONE, NONE);
    }
}
