// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotside.relation.Values;
import hotside.unit.Quantity;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConditionTest {
    private static final Values VALUES =
            Values.of(Map.of("small.drop", 8_000.0, "large.drop", 3_000.0, "n", 5.0));

    private static final Map<String, Quantity> QUANTITIES =
            Map.of(
                    "small.drop", Quantity.PRESSURE_DIFFERENCE,
                    "large.drop", Quantity.PRESSURE_DIFFERENCE,
                    "mass", Quantity.MASS_FLOW,
                    "n", Quantity.COUNT);

    private static Condition read(String text) throws Condition.Unreadable {
        return Condition.read(text, place -> Optional.ofNullable(QUANTITIES.get(place)));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "small.drop > large.drop, true",
        "small.drop < large.drop, false",
        "large.drop > 2.5 kPa, true",
        "3.5 kPa >= large.drop, true",
        "large.drop > 2.5 kPa and small.drop < 7 kPa, false",
        "large.drop > 2.5 kPa and small.drop < 9 kPa, true",
        "n >= 5, true",
        "n > 5, false",
        "n <= 4, false",
    })
    void comparisonsAreTrueOrNot(String text, boolean expected) throws Condition.Unreadable {
        assertEquals(Optional.of(expected), read(text).holds(VALUES, 100e3));
    }

    @Test
    void valuesHalfAPercentApartAreTooCloseToCall() throws Condition.Unreadable {
        assertEquals(Optional.empty(), read("large.drop > 3.01 kPa").holds(VALUES, 100e3));
        assertEquals(Optional.of(false), read("large.drop > 3.02 kPa").holds(VALUES, 100e3));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    small.drop | "small.drop" compares nothing
                    small.drop = large.drop | "small.drop = large.drop" compares nothing
                    8 kPa > 3 kPa | neither "8 kPa" nor "3 kPa" is a value of this problem
                    small.drop > mass | small.drop is a pressure difference, but mass is a mass flow
                    small.drop > 3 kg/s | "3 kg/s" is no value
                    """)
    void whatCannotBeComparedIsSaid(String text, String what) {
        var e = assertThrows(Condition.Unreadable.class, () -> read(text));
        assertEquals(what, e.getMessage());
    }
}
