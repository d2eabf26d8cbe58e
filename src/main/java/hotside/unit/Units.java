// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The table of units.
 *
 * <p>Factors are exact where the unit is defined exactly (NIST Special Publication 811, appendix
 * B.8): inch 0.0254 m, pound 0.45359237 kg, standard gravity 9.80665 m/s². Inches of mercury and of
 * water are the conventional ones at 0 °C and 4 °C; the conventions differ in the fifth digit.
 */
public final class Units {
    /** Standard atmosphere, Pa (exact). Used as ambient where nobody said otherwise. */
    public static final double STANDARD_ATMOSPHERE = 101_325;

    /** Kelvin at 0 °C (exact). The one place where this offset is written. */
    public static final double ZERO_CELSIUS = 273.15;

    /** What files write behind a unit of temperature to say by how much one changed. */
    public static final String DIFFERENCE = " difference";

    private static final double INCH = 0.0254;
    private static final double FOOT = 0.3048;
    private static final double POUND = 0.45359237;
    private static final double GRAVITY = 9.80665;
    private static final double POUND_FORCE = POUND * GRAVITY;
    private static final double PSI = POUND_FORCE / (INCH * INCH);
    private static final double HORSEPOWER = 550 * FOOT * POUND_FORCE;
    private static final double METRIC_HORSEPOWER = 75 * GRAVITY;
    private static final double BTU = 1055.05585262;
    private static final double FAHRENHEIT = 5.0 / 9.0;

    private static final List<Unit> ALL = new ArrayList<>();
    private static final Map<Dimension, Map<String, Unit>> BY_SPELLING = new HashMap<>();
    private static final Map<Dimension, Map<String, Unit>> BY_LOOSE_SPELLING = new HashMap<>();

    static {
        unit(Dimension.PRESSURE, "Pa", "pascal", 1, "pascals");
        unit(Dimension.PRESSURE, "kPa", "kilopascal", 1e3, "kpa", "KPa", "kilopascals");
        unit(Dimension.PRESSURE, "MPa", "megapascal", 1e6, "megapascals");
        unit(Dimension.PRESSURE, "bar", "bar", 1e5, "bars");
        unit(Dimension.PRESSURE, "mbar", "millibar", 100, "hPa", "millibars");
        unit(
                Dimension.PRESSURE,
                "psi",
                "pound-force per square inch",
                PSI,
                "PSI",
                "lbf/in²",
                "lbf/in2");
        unit(
                Dimension.PRESSURE,
                "inHg",
                "inch of mercury",
                3386.388640341,
                "inhg",
                "in Hg",
                "in.Hg",
                "\"Hg");
        unit(
                Dimension.PRESSURE,
                "mmHg",
                "millimetre of mercury",
                133.322387415,
                "mmhg",
                "mm Hg",
                "Torr",
                "torr");
        unit(
                Dimension.PRESSURE,
                "inH₂O",
                "inch of water",
                249.08891,
                "inH2O",
                "inh2o",
                "in H2O",
                "inWC");
        unit(
                Dimension.PRESSURE,
                "mmH₂O",
                "millimetre of water",
                GRAVITY,
                "mmH2O",
                "mm H2O",
                "mmWC");
        unit(
                Dimension.PRESSURE,
                "kgf/cm²",
                "kilogram-force per square centimetre",
                GRAVITY * 1e4,
                "kgf/cm2",
                "kg/cm²",
                "kg/cm2");
        unit(Dimension.PRESSURE, "atm", "standard atmosphere", STANDARD_ATMOSPHERE, "atmospheres");

        unit(Dimension.TEMPERATURE, "K", "kelvin", 1, "kelvins", "°K", "degK");
        temperature("°C", "degree Celsius", 1, ZERO_CELSIUS, "C", "degC", "deg C", "celsius");
        temperature(
                "°F",
                "degree Fahrenheit",
                FAHRENHEIT,
                ZERO_CELSIUS - 32 * FAHRENHEIT,
                "F",
                "degF",
                "deg F",
                "fahrenheit");
        temperature("°R", "degree Rankine", FAHRENHEIT, 0, "R", "degR", "rankine");

        unit(Dimension.LENGTH, "m", "metre", 1, "metres", "meter", "meters");
        unit(
                Dimension.LENGTH,
                "mm",
                "millimetre",
                1e-3,
                "millimetres",
                "millimeter",
                "millimeters");
        unit(
                Dimension.LENGTH,
                "cm",
                "centimetre",
                1e-2,
                "centimetres",
                "centimeter",
                "centimeters");
        unit(Dimension.LENGTH, "µm", "micrometre", 1e-6, "um", "μm", "micron", "microns");
        unit(Dimension.LENGTH, "in", "inch", INCH, "inch", "inches", "\"", "″");
        unit(Dimension.LENGTH, "ft", "foot", FOOT, "foot", "feet", "'", "′");
        unit(Dimension.LENGTH, "thou", "thousandth of an inch", INCH / 1000, "thousandths", "mil");

        unit(Dimension.AREA, "m²", "square metre", 1, "m2", "m^2");
        unit(Dimension.AREA, "cm²", "square centimetre", 1e-4, "cm2", "cm^2");
        unit(Dimension.AREA, "mm²", "square millimetre", 1e-6, "mm2", "mm^2");
        unit(Dimension.AREA, "in²", "square inch", INCH * INCH, "in2", "in^2", "sq in");
        unit(Dimension.AREA, "ft²", "square foot", FOOT * FOOT, "ft2", "ft^2", "sq ft");

        unit(Dimension.VOLUME, "m³", "cubic metre", 1, "m3", "m^3");
        unit(Dimension.VOLUME, "L", "litre", 1e-3, "l", "litre", "litres", "liter", "liters");
        unit(Dimension.VOLUME, "cm³", "cubic centimetre", 1e-6, "cm3", "cm^3", "cc", "ccm", "mL");
        unit(
                Dimension.VOLUME,
                "in³",
                "cubic inch",
                INCH * INCH * INCH,
                "in3",
                "in^3",
                "cu in",
                "cid");
        unit(Dimension.VOLUME, "ft³", "cubic foot", FOOT * FOOT * FOOT, "ft3", "ft^3", "cu ft");

        unit(Dimension.MASS_FLOW, "kg/s", "kilogram per second", 1);
        unit(Dimension.MASS_FLOW, "g/s", "gram per second", 1e-3);
        unit(Dimension.MASS_FLOW, "kg/min", "kilogram per minute", 1.0 / 60);
        unit(Dimension.MASS_FLOW, "kg/h", "kilogram per hour", 1.0 / 3600, "kg/hr");
        unit(
                Dimension.MASS_FLOW,
                "lb/min",
                "pound per minute",
                POUND / 60,
                "lbs/min",
                "lbm/min",
                "#/min");
        unit(Dimension.MASS_FLOW, "lb/h", "pound per hour", POUND / 3600, "lb/hr", "lbs/hr", "pph");

        unit(Dimension.VOLUME_FLOW, "m³/s", "cubic metre per second", 1, "m3/s", "m^3/s");
        unit(Dimension.VOLUME_FLOW, "L/s", "litre per second", 1e-3, "l/s");
        unit(Dimension.VOLUME_FLOW, "L/min", "litre per minute", 1e-3 / 60, "lpm");
        unit(
                Dimension.VOLUME_FLOW,
                "cm³/min",
                "cubic centimetre per minute",
                1e-6 / 60,
                "cm3/min",
                "cc/min",
                "mL/min");
        unit(
                Dimension.VOLUME_FLOW,
                "m³/min",
                "cubic metre per minute",
                1.0 / 60,
                "m3/min",
                "m^3/min");
        unit(Dimension.VOLUME_FLOW, "m³/h", "cubic metre per hour", 1.0 / 3600, "m3/h", "m^3/h");
        unit(
                Dimension.VOLUME_FLOW,
                "ft³/min",
                "cubic foot per minute",
                FOOT * FOOT * FOOT / 60,
                "ft3/min",
                "cfm",
                "CFM");

        unit(Dimension.DENSITY, "kg/m³", "kilogram per cubic metre", 1, "kg/m3", "kg/m^3");
        unit(Dimension.DENSITY, "g/cm³", "gram per cubic centimetre", 1000, "g/cm3", "g/cc");
        unit(Dimension.DENSITY, "g/L", "gram per litre", 1, "g/l");
        unit(
                Dimension.DENSITY,
                "lb/ft³",
                "pound per cubic foot",
                POUND / (FOOT * FOOT * FOOT),
                "lb/ft3",
                "lb/ft^3");

        unit(Dimension.VELOCITY, "m/s", "metre per second", 1);
        unit(Dimension.VELOCITY, "km/h", "kilometre per hour", 1 / 3.6, "kph", "kmh");
        unit(Dimension.VELOCITY, "ft/s", "foot per second", FOOT, "fps");
        unit(Dimension.VELOCITY, "mph", "mile per hour", 0.44704, "mi/h", "MPH", "miles/hour");

        unit(Dimension.POWER, "W", "watt", 1, "watts");
        unit(Dimension.POWER, "kW", "kilowatt", 1e3, "kw", "KW", "kilowatts");
        unit(Dimension.POWER, "hp", "mechanical horsepower", HORSEPOWER, "HP", "bhp", "horsepower");
        unit(
                Dimension.POWER,
                "PS",
                "metric horsepower",
                METRIC_HORSEPOWER,
                "ps",
                "cv",
                "ch",
                "metric hp");

        unit(Dimension.TORQUE, "N·m", "newton metre", 1, "Nm", "N m", "N.m", "nm");
        unit(
                Dimension.TORQUE,
                "lbf·ft",
                "pound-force foot",
                POUND_FORCE * FOOT,
                "lbf ft",
                "lb-ft",
                "lb ft",
                "ft-lb",
                "ft lb",
                "ft-lbf",
                "lbf-ft",
                "lbft",
                "ftlb");
        unit(
                Dimension.TORQUE,
                "lbf·in",
                "pound-force inch",
                POUND_FORCE * INCH,
                "lb-in",
                "lbf-in",
                "in-lb",
                "in-lbf");
        unit(Dimension.TORQUE, "kgf·m", "kilogram-force metre", GRAVITY, "kgf m", "kg-m", "mkg");

        unit(Dimension.ROTATION, "1/s", "turn per second", 1, "rev/s", "Hz", "rps", "s⁻¹", "s^-1");
        unit(
                Dimension.ROTATION,
                "rev/min",
                "turn per minute",
                1.0 / 60,
                "rpm",
                "RPM",
                "r/min",
                "1/min",
                "min⁻¹",
                "min^-1",
                "U/min");
        unit(Dimension.ROTATION, "rad/s", "radian per second", 1 / (2 * Math.PI));

        unit(Dimension.FORCE, "N", "newton", 1, "newtons");
        unit(Dimension.FORCE, "kN", "kilonewton", 1e3);
        unit(Dimension.FORCE, "kgf", "kilogram-force", GRAVITY, "kp");
        unit(Dimension.FORCE, "lbf", "pound-force", POUND_FORCE, "lb", "lbs", "pounds");

        unit(Dimension.SPRING_RATE, "N/m", "newton per metre", 1);
        unit(Dimension.SPRING_RATE, "N/mm", "newton per millimetre", 1e3);
        unit(
                Dimension.SPRING_RATE,
                "lbf/in",
                "pound-force per inch",
                POUND_FORCE / INCH,
                "lb/in",
                "lbs/in");
        unit(
                Dimension.SPRING_RATE,
                "kgf/mm",
                "kilogram-force per millimetre",
                GRAVITY * 1e3,
                "kg/mm");

        unit(Dimension.ENERGY, "J", "joule", 1, "joules");
        unit(Dimension.ENERGY, "kJ", "kilojoule", 1e3, "kj");
        unit(Dimension.ENERGY, "MJ", "megajoule", 1e6);
        unit(Dimension.ENERGY, "kWh", "kilowatt-hour", 3.6e6, "kW·h", "kwh");
        unit(Dimension.ENERGY, "Btu", "British thermal unit", BTU, "BTU", "btu");
        unit(
                Dimension.ENERGY,
                "ft·lbf",
                "foot pound-force",
                FOOT * POUND_FORCE,
                "ft-lbf",
                "ft lbf",
                "ft-lb");

        unit(Dimension.TIME, "s", "second", 1, "sec", "seconds");
        unit(Dimension.TIME, "ms", "millisecond", 1e-3);
        unit(Dimension.TIME, "min", "minute", 60, "minutes");
        unit(Dimension.TIME, "h", "hour", 3600, "hr", "hours");

        unit(Dimension.RATIO, "1", "one", 1);
        unit(Dimension.RATIO, "%", "percent", 0.01, "percent", "pct", "Prozent");

        unit(Dimension.SPECIFIC_ENERGY, "J/kg", "joule per kilogram", 1);
        unit(Dimension.SPECIFIC_ENERGY, "kJ/kg", "kilojoule per kilogram", 1e3);
        unit(Dimension.SPECIFIC_ENERGY, "MJ/kg", "megajoule per kilogram", 1e6);
        unit(
                Dimension.SPECIFIC_ENERGY,
                "Btu/lb",
                "British thermal unit per pound",
                BTU / POUND,
                "btu/lb");

        unit(
                Dimension.SPECIFIC_HEAT,
                "J/(kg·K)",
                "joule per kilogram and kelvin",
                1,
                "J/kgK",
                "J/kg/K",
                "J/(kg K)");
        unit(
                Dimension.SPECIFIC_HEAT,
                "kJ/(kg·K)",
                "kilojoule per kilogram and kelvin",
                1e3,
                "kJ/kgK",
                "kJ/kg/K",
                "kJ/(kg K)");
        unit(
                Dimension.SPECIFIC_HEAT,
                "Btu/(lb·°F)",
                "British thermal unit per pound and degree",
                BTU / POUND / FAHRENHEIT,
                "Btu/lb/F");

        unit(Dimension.MOLAR_MASS, "kg/mol", "kilogram per mole", 1);
        unit(Dimension.MOLAR_MASS, "g/mol", "gram per mole", 1e-3, "kg/kmol", "lb/lbmol");

        unit(Dimension.VISCOSITY, "Pa·s", "pascal second", 1, "Pa s", "Pas");
        unit(Dimension.VISCOSITY, "µPa·s", "micropascal second", 1e-6, "uPa s", "μPa·s", "uPas");

        unit(Dimension.VISCOSITY, "mPa·s", "millipascal second", 1e-3, "mPa s", "cP");

        unit(Dimension.FUEL_PER_ENERGY, "kg/J", "kilogram per joule", 1);
        unit(
                Dimension.FUEL_PER_ENERGY,
                "g/kWh",
                "gram per kilowatt-hour",
                1e-3 / 3.6e6,
                "g/(kWh)",
                "g/kW/h");
        unit(Dimension.FUEL_PER_ENERGY, "kg/kWh", "kilogram per kilowatt-hour", 1 / 3.6e6);
        unit(
                Dimension.FUEL_PER_ENERGY,
                "lb/(hp·h)",
                "pound per horsepower-hour",
                POUND / HORSEPOWER / 3600,
                "lb/hp/h",
                "lb/hp/hr",
                "lb/hph",
                "lb/hp·h");

        unit(Dimension.CONDUCTANCE, "W/K", "watt per kelvin", 1);
        unit(
                Dimension.CONDUCTANCE,
                "Btu/(h·°F)",
                "British thermal unit per hour and degree",
                BTU / 3600 / FAHRENHEIT,
                "Btu/h/F");

        unit(
                Dimension.HEAT_TRANSFER,
                "W/(m²·K)",
                "watt per square metre and kelvin",
                1,
                "W/m2K",
                "W/m²K",
                "W/m2/K");
        unit(
                Dimension.HEAT_TRANSFER,
                "Btu/(h·ft²·°F)",
                "British thermal unit per hour, square foot and degree",
                BTU / 3600 / (FOOT * FOOT) / FAHRENHEIT,
                "Btu/h/ft2/F");

        unit(Dimension.INERTIA, "kg·m²", "kilogram metre squared", 1, "kg m2", "kgm2", "kg·m2");
        unit(Dimension.INERTIA, "kg·cm²", "kilogram centimetre squared", 1e-4, "kg cm2", "kgcm2");
        unit(Dimension.INERTIA, "kg·mm²", "kilogram millimetre squared", 1e-6, "kg mm2", "kgmm2");
        unit(
                Dimension.INERTIA,
                "lb·ft²",
                "pound foot squared",
                POUND * FOOT * FOOT,
                "lb ft2",
                "lbft2");

        unit(Dimension.ANGLE, "rad", "radian", 1, "radians");
        unit(Dimension.ANGLE, "°", "degree", Math.PI / 180, "deg", "degrees");

        unit(Dimension.POWER_PER_PRESSURE, "W/Pa", "watt per pascal", 1);
        unit(Dimension.POWER_PER_PRESSURE, "kW/kPa", "kilowatt per kilopascal", 1, "kw/kpa");
        unit(
                Dimension.POWER_PER_PRESSURE,
                "hp/psi",
                "horsepower per psi",
                HORSEPOWER / PSI,
                "HP/psi");

        unit(Dimension.ROTATION_RATE, "1/s²", "turn per second squared", 1, "1/s2", "rev/s²");
        unit(
                Dimension.ROTATION_RATE,
                "rev/min/s",
                "turn per minute and second",
                1.0 / 60,
                "rpm/s",
                "(rev/min)/s");

        unit(Dimension.NONE, "1", "one", 1);
    }

    private Units() {}

    /** All units, in the order of the table. */
    public static List<Unit> all() {
        return List.copyOf(ALL);
    }

    /** The units of one dimension, in the order of the table. */
    public static List<Unit> of(Dimension dimension) {
        return ALL.stream().filter(unit -> unit.dimension() == dimension).toList();
    }

    /**
     * The unit of this symbol.
     *
     * @throws IllegalArgumentException if the table has none; programmers only, people go through
     *     {@link #find}
     */
    public static Unit bySymbol(Dimension dimension, String symbol) {
        Unit unit = BY_SPELLING.getOrDefault(dimension, Map.of()).get(symbol);
        if (unit == null) {
            throw new IllegalArgumentException("no unit " + symbol + " for " + dimension);
        }
        return unit;
    }

    /**
     * The unit that a person means by this spelling, if the dimension has one. Beside the spellings
     * of the table it takes other capitals, {@code ^2} for {@code ²}, and a space, point, hyphen or
     * nothing for {@code ·}. A leading {@code m} is never taken for {@code M}, nor the reverse:
     * that would be a factor of 10⁹.
     */
    public static Optional<Unit> find(Dimension dimension, String spelling) {
        Map<String, Unit> spellings = BY_SPELLING.getOrDefault(dimension, Map.of());
        Unit exact = spellings.get(spelling);
        return exact != null
                ? Optional.of(exact)
                : Optional.ofNullable(
                        BY_LOOSE_SPELLING.getOrDefault(dimension, Map.of()).get(loose(spelling)));
    }

    private static String loose(String spelling) {
        String bare =
                spelling.replaceAll("\\s+per\\s+", "/")
                        .replaceAll("[\\s.·⋅*()^°_-]", "")
                        .replace('²', '2')
                        .replace('³', '3')
                        .replace('₂', '2')
                        .replace('μ', 'µ');
        if (bare.isEmpty()) {
            return spelling;
        }
        char first = Character.toLowerCase(bare.charAt(0)) == 'm' ? bare.charAt(0) : 0;
        String lower = bare.toLowerCase(Locale.ROOT);
        return first == 0 ? lower : first + lower.substring(1);
    }

    /**
     * What a value in this unit most likely measures: the first quantity of the first dimension
     * that has the spelling. A pressure without a mark is taken as a difference, which has no zero
     * to get wrong, and a number of percent as a percentage.
     *
     * @param spelling a unit, for pressures with or without {@code gauge} or {@code abs} after it
     */
    public static Optional<Quantity> quantityOf(String spelling) {
        String word = spelling.strip();
        boolean gauge = word.endsWith(" gauge");
        boolean absolute = word.endsWith(" abs");
        String bare = gauge || absolute ? word.substring(0, word.lastIndexOf(' ')).strip() : word;
        if (find(Dimension.PRESSURE, bare).isPresent()) {
            return Optional.of(
                    gauge
                            ? Quantity.GAUGE_PRESSURE
                            : absolute ? Quantity.PRESSURE : Quantity.PRESSURE_DIFFERENCE);
        }
        if (bare.equals("%")) {
            return Optional.of(Quantity.PERCENTAGE);
        }
        if (bare.endsWith(DIFFERENCE)) {
            return find(Dimension.TEMPERATURE, bare.substring(0, bare.lastIndexOf(' ')).strip())
                    .map(unit -> Quantity.TEMPERATURE_DIFFERENCE);
        }
        return Arrays.stream(Quantity.values())
                .filter(quantity -> find(quantity.dimension(), bare).isPresent())
                .findFirst();
    }

    private static void unit(
            Dimension dimension, String symbol, String name, double factor, String... aliases) {
        add(new Unit(symbol, name, dimension, factor, 0, Arrays.asList(aliases)));
    }

    private static void temperature(
            String symbol, String name, double factor, double offset, String... aliases) {
        add(new Unit(symbol, name, Dimension.TEMPERATURE, factor, offset, Arrays.asList(aliases)));
    }

    private static void add(Unit unit) {
        ALL.add(unit);
        register(unit.symbol(), unit);
        unit.aliases().forEach(alias -> register(alias, unit));
    }

    private static void register(String spelling, Unit unit) {
        Unit exact = spellings(BY_SPELLING, unit).put(spelling, unit);
        Unit loose = spellings(BY_LOOSE_SPELLING, unit).put(loose(spelling), unit);
        if (exact != null || loose != null && loose != unit) {
            throw new IllegalStateException("two units are spelt " + spelling);
        }
    }

    private static Map<String, Unit> spellings(Map<Dimension, Map<String, Unit>> all, Unit unit) {
        return all.computeIfAbsent(unit.dimension(), d -> new LinkedHashMap<>());
    }
}
