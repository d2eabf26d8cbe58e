// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ShownTest {
    private static final double AMBIENT = 100_000;

    @Test
    void pressureSaysWhatItIsCountedFrom() {
        assertEquals(
                "85.0 kPa gauge",
                Shown.of(85e3, Quantity.GAUGE_PRESSURE, UnitSystem.SI_SHOP, 3).text());
        assertEquals(
                "186 kPa abs", Shown.of(186e3, Quantity.PRESSURE, UnitSystem.SI_SHOP, 3).text());
        // 1 psi = 6894.757 Pa (NIST SP 811)
        assertEquals(
                "1.000 psi",
                Shown.of(6894.757, Quantity.PRESSURE_DIFFERENCE, UnitSystem.US_SHOP, 4).text());
    }

    @Test
    void absolutePressureCanBeShownOnAGauge() {
        Scale gauge = Scale.of(Quantity.PRESSURE, "bar gauge");
        Shown shown = Shown.of(220e3, Quantity.PRESSURE, gauge, AMBIENT, 3, DecimalHabit.POINT);
        assertEquals("1.20 bar gauge", shown.text());
    }

    @Test
    void decimalMarkIsTheReaders() {
        Scale scale = Quantity.LENGTH.shown(UnitSystem.SI_SHOP);
        assertEquals(
                "46,5 mm",
                Shown.of(0.0465, Quantity.LENGTH, scale, AMBIENT, 3, DecimalHabit.COMMA).text());
        assertEquals(
                "46.5 mm",
                Shown.of(0.0465, Quantity.LENGTH, scale, AMBIENT, 3, DecimalHabit.UNKNOWN).text());
    }

    @Test
    void percentAngleAndPureNumber() {
        assertEquals("85.0 %", Shown.of(0.85, Quantity.PERCENTAGE, UnitSystem.SI_SHOP, 3).text());
        assertEquals("45.0°", Shown.of(Math.PI / 4, Quantity.ANGLE, UnitSystem.US_SHOP, 3).text());
        assertEquals("1.80", Shown.of(1.8, Quantity.RATIO, UnitSystem.SI_SHOP, 3).text());
        assertEquals("20 °C", Shown.of(293.15, Quantity.TEMPERATURE, UnitSystem.SI_SHOP, 2).text());
    }

    @Test
    void flagsAreWordsAndCountsAreWhole() {
        assertEquals("yes", Shown.of(1, Quantity.FLAG, UnitSystem.SI_SHOP, 3).text());
        assertEquals("no", Shown.of(0, Quantity.FLAG, UnitSystem.SI_SHOP, 3).text());
        assertEquals("12", Shown.of(12, Quantity.COUNT, UnitSystem.SI_SHOP, 4).text());
        assertEquals("1234", Shown.of(1234, Quantity.COUNT, UnitSystem.SI_SHOP, 2).text());
    }

    @Test
    void whatIsNoNumberHasNoUnit() {
        assertEquals(
                "not a number", Shown.of(Double.NaN, Quantity.FORCE, UnitSystem.SI_SHOP, 3).text());
        assertEquals(
                "infinite",
                Shown.of(Double.POSITIVE_INFINITY, Quantity.COUNT, UnitSystem.SI_SHOP, 3).text());
    }

    @Property(seed = "20261125")
    void whatIsShownCanBeTypedBackWhateverTheQuantityAndMark(
            @ForAll Quantity quantity,
            @ForAll UnitSystem system,
            @ForAll DecimalHabit habit,
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        if (quantity == Quantity.FLAG || quantity == Quantity.COUNT) {
            return;
        }
        Scale scale = quantity.shown(system);
        double si = scale.toSi(value, quantity, AMBIENT);
        String text = Shown.of(si, quantity, scale, AMBIENT, 6, habit).text();
        DecimalHabit reader = habit == DecimalHabit.UNKNOWN ? DecimalHabit.POINT : habit;
        var read =
                assertInstanceOf(
                        Typed.Understood.class,
                        Typed.read(text, new Expected(quantity, scale, AMBIENT, reader)),
                        text);
        double tolerance = 6e-6 * (Math.abs(value) + 1e-9);
        assertEquals(value, read.asTyped(), tolerance + 1e-9 * AMBIENT, text);
        assertEquals(scale, read.scale());
    }
}
