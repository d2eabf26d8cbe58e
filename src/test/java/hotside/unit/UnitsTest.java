// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitsTest {
    // NIST Special Publication 811 (2008), appendix B.8: factors printed to seven digits.
    @ParameterizedTest
    @CsvSource({
        "PRESSURE, psi, 6.894757E+03",
        "PRESSURE, inHg, 3.386389E+03",
        "PRESSURE, inH₂O, 2.490889E+02",
        "PRESSURE, mmHg, 1.333224E+02",
        "PRESSURE, mmH₂O, 9.80665E+00",
        "PRESSURE, kgf/cm², 9.80665E+04",
        "PRESSURE, atm, 1.01325E+05",
        "PRESSURE, bar, 1.0E+05",
        "PRESSURE, mbar, 1.0E+02",
        "LENGTH, in, 2.54E-02",
        "LENGTH, ft, 3.048E-01",
        "LENGTH, thou, 2.54E-05",
        "AREA, in², 6.4516E-04",
        "AREA, ft², 9.290304E-02",
        "VOLUME, in³, 1.638706E-05",
        "VOLUME, ft³, 2.831685E-02",
        "MASS_FLOW, lb/min, 7.559873E-03",
        "MASS_FLOW, lb/h, 1.259979E-04",
        "VOLUME_FLOW, ft³/min, 4.719474E-04",
        "DENSITY, lb/ft³, 1.601846E+01",
        "VELOCITY, km/h, 2.777778E-01",
        "VELOCITY, mph, 4.4704E-01",
        "VELOCITY, ft/s, 3.048E-01",
        "POWER, hp, 7.456999E+02",
        "POWER, PS, 7.354988E+02",
        "TORQUE, lbf·ft, 1.355818E+00",
        "TORQUE, lbf·in, 1.129848E-01",
        "TORQUE, kgf·m, 9.80665E+00",
        "FORCE, lbf, 4.448222E+00",
        "FORCE, kgf, 9.80665E+00",
        "SPRING_RATE, lbf/in, 1.751268E+02",
        "ENERGY, Btu, 1.055056E+03",
        "ENERGY, ft·lbf, 1.355818E+00",
        "ENERGY, kWh, 3.6E+06",
        "SPECIFIC_ENERGY, Btu/lb, 2.326E+03",
        "SPECIFIC_HEAT, Btu/(lb·°F), 4.1868E+03",
        "HEAT_TRANSFER, Btu/(h·ft²·°F), 5.678263E+00",
        "FUEL_PER_ENERGY, lb/(hp·h), 1.689659E-07",
        "INERTIA, lb·ft², 4.214011E-02",
        "VISCOSITY, mPa·s, 1.0E-03",
        "ANGLE, °, 1.745329E-02"
    })
    void factorsAgreeWithTheStandardTable(Dimension dimension, String symbol, double factor) {
        assertEquals(factor, Units.bySymbol(dimension, symbol).factor(), 1e-6 * factor, symbol);
    }

    @Test
    void exactDefinitionsHoldToTheLastDigits() {
        // From g0 = 9.80665 m/s², inch 0.0254 m, pound 0.45359237 kg, worked out independently.
        assertExact(745.6998715823, Dimension.POWER, "hp");
        assertExact(735.49875, Dimension.POWER, "PS");
        assertExact(6894.757293168, Dimension.PRESSURE, "psi");
        assertExact(3386.388640341, Dimension.PRESSURE, "inHg");
        assertExact(249.08891, Dimension.PRESSURE, "inH₂O");
        assertExact(1.3558179483314, Dimension.TORQUE, "lbf·ft");
    }

    private static void assertExact(double expected, Dimension dimension, String symbol) {
        assertEquals(expected, Units.bySymbol(dimension, symbol).factor(), 2e-13 * expected);
    }

    @Test
    void powerAndTorqueMeetWhereTheTradeKnows() {
        // hp = lbf·ft × rpm / 5252.113122 (33000 / 2π) and kW = N·m × rpm / 9549.296586 (60000 /
        // 2π)
        double oneRevPerMinute =
                Units.bySymbol(Dimension.ROTATION, "rev/min").factor() * 2 * Math.PI;
        double lbfFt = Units.bySymbol(Dimension.TORQUE, "lbf·ft").factor();
        double hp = Units.bySymbol(Dimension.POWER, "hp").factor();
        assertEquals(5252.113122, hp / (lbfFt * oneRevPerMinute), 1e-6);
        assertEquals(9549.296586, 1000 / oneRevPerMinute, 1e-6);
    }

    // The fixed points of the scales; absolute zero is −459.67 °F (exact).
    @ParameterizedTest
    @CsvSource({
        "°C, 0, 273.15",
        "°C, 100, 373.15",
        "°F, 32, 273.15",
        "°F, 212, 373.15",
        "°F, -40, 233.15",
        "°F, -459.67, 0",
        "°R, 491.67, 273.15",
        "K, 300, 300"
    })
    void temperaturesMeetAtTheFixedPoints(String symbol, double reading, double kelvin) {
        Scale scale = new Scale(Units.bySymbol(Dimension.TEMPERATURE, symbol), Reference.NONE);
        assertEquals(kelvin, scale.toSi(reading, Quantity.TEMPERATURE, 0), 1e-10);
    }

    @Test
    void aTemperatureDifferenceHasNoZero() {
        Scale fahrenheit = Quantity.TEMPERATURE_DIFFERENCE.shown(UnitSystem.US_SHOP);
        assertEquals(10, fahrenheit.toSi(18, Quantity.TEMPERATURE_DIFFERENCE, 101_325), 1e-12);
    }

    @Test
    void theQuantitysSiUnitHasFactorOne() {
        for (Quantity quantity : Quantity.values()) {
            assertEquals(1.0, quantity.si().factor(), quantity.name());
            assertEquals(0.0, quantity.si().offset(), quantity.name());
        }
    }

    @Test
    void noSpellingMeansTwoUnitsOfOneDimension() {
        Map<String, Unit> seen = new HashMap<>();
        for (Unit unit : Units.all()) {
            assertTrue(unit.factor() > 0, unit.symbol());
            assertFalse(unit.name().isBlank(), unit.symbol());
            String dimension = unit.dimension() + " ";
            assertEquals(null, seen.put(dimension + unit.symbol(), unit), unit.symbol());
            for (String alias : unit.aliases()) {
                assertEquals(null, seen.put(dimension + alias, unit), alias);
                assertEquals(Optional.of(unit), Units.find(unit.dimension(), alias), alias);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "PRESSURE, KPA, kPa",
        "PRESSURE, Psi, psi",
        "PRESSURE, in hg, inHg",
        "TORQUE, ft*lb, lbf·ft",
        "TORQUE, lb·ft, lbf·ft",
        "TORQUE, N-m, N·m",
        "MASS_FLOW, kg per s, kg/s",
        "AREA, MM², ",
        "AREA, mm^2, mm²",
        "SPECIFIC_HEAT, J/kg·K, J/(kg·K)",
        "FUEL_PER_ENERGY, g/kW·h, g/kWh",
        "PRESSURE, mpa, ",
        "PRESSURE, MPA, MPa",
        "PRESSURE, Mbar, "
    })
    void otherSpellingsAreTakenUnlessTheyCouldBeAThousandTimesOff(
            Dimension dimension, String spelling, String symbol) {
        assertEquals(
                Optional.ofNullable(symbol),
                Units.find(dimension, spelling).map(Unit::symbol),
                spelling);
    }

    @Test
    void anUnknownSymbolIsTheProgrammersError() {
        var e =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> Units.bySymbol(Dimension.LENGTH, "psi"));
        assertEquals("no unit psi for LENGTH", e.getMessage());
    }

    @Property(seed = "20261125")
    void everyUnitOfEveryQuantityGoesThereAndBack(
            @ForAll("readings") Reading reading,
            @ForAll @DoubleRange(min = 60_000, max = 110_000) double ambient) {
        double si = reading.scale.toSi(reading.value, reading.quantity, ambient);
        double back = reading.scale.fromSi(si, reading.quantity, ambient);
        double offset = Math.max(ambient, Units.ZERO_CELSIUS) / reading.scale.unit().factor();
        assertEquals(
                reading.value, back, 1e-14 * (Math.abs(reading.value) + offset), reading::toString);
    }

    @Property(seed = "20261125")
    void everyLabelIsUnderstoodAsTheScaleThatWroteIt(@ForAll("readings") Reading reading) {
        assertEquals(reading.scale, Scale.of(reading.quantity, reading.scale.label()));
    }

    record Reading(Quantity quantity, Scale scale, double value) {}

    @Provide
    Arbitrary<Reading> readings() {
        List<Reading> scales =
                Arrays.stream(Quantity.values())
                        .flatMap(
                                q ->
                                        Units.of(q.dimension()).stream()
                                                .filter(
                                                        u ->
                                                                q != Quantity.PERCENTAGE
                                                                        || u.factor() < 1)
                                                .flatMap(
                                                        u ->
                                                                references(q).stream()
                                                                        .map(
                                                                                r ->
                                                                                        new Reading(
                                                                                                q,
                                                                                                new Scale(
                                                                                                        u,
                                                                                                        r),
                                                                                                0))))
                        .toList();
        return Combinators.combine(Arbitraries.of(scales), Arbitraries.doubles().between(-1e6, 1e6))
                .as((r, value) -> new Reading(r.quantity, r.scale, value));
    }

    private static List<Reference> references(Quantity quantity) {
        return switch (quantity) {
            case PRESSURE, GAUGE_PRESSURE -> List.of(Reference.ABSOLUTE, Reference.GAUGE);
            default -> List.of(Reference.NONE);
        };
    }

    @Test
    void aNumberOfPercentMeasuresAPercentage() {
        assertEquals(Optional.of(Quantity.PERCENTAGE), Units.quantityOf("%"));
    }
}
