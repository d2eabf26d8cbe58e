// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFile;
import hotside.content.ContentReader;
import hotside.content.Finding;
import hotside.content.Node;
import hotside.unit.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GivenReaderTest {
    private static ContentFile file(String written) {
        return ContentReader.read("g.md", "---\ng: " + written + "\n---\n");
    }

    private static Node node(ContentFile file) {
        return file.front().get("g").orElseThrow();
    }

    private static Given read(String written, Quantity quantity) {
        ContentFile file = file(written);
        Optional<Given> given = new GivenReader(file.findings()).read("g", node(file), quantity);
        assertEquals(List.of(), file.findings().list());
        return given.orElseThrow();
    }

    private static List<Finding> findings(String written, Quantity quantity) {
        ContentFile file = file(written);
        assertEquals(
                Optional.empty(), new GivenReader(file.findings()).read("g", node(file), quantity));
        return file.findings().list();
    }

    private static String values(Grid grid) {
        return grid.values().stream()
                        .map(java.math.BigDecimal::toPlainString)
                        .collect(Collectors.joining(" "))
                + " "
                + grid.scale().label();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    38 to 44 by 2 mm            | LENGTH              | 38 40 42 44 mm
                    38 to 43 by 2 mm            | LENGTH              | 38 40 42 mm
                    -2 to 0 by 0.5 kPa          | PRESSURE_DIFFERENCE | -2.0 -1.5 -1.0 -0.5 0.0 kPa
                    −2 to −1 by 0.5 kPa         | PRESSURE_DIFFERENCE | -2.0 -1.5 -1.0 kPa
                    60 to 70 by 5 kPa gauge     | PRESSURE            | 60 65 70 kPa gauge
                    60 to 70 by 5 kPa           | PRESSURE            | 60 65 70 kPa abs
                    one of 38 44.5 46 mm        | LENGTH              | 38 44.5 46 mm
                    one of 1.2 1.3              | RATIO               | 1.2 1.3 ''
                    98.5 kPa                    | PRESSURE            | 98.5 kPa abs
                    1e3 Pa                      | PRESSURE_DIFFERENCE | 1000 Pa
                    85 %                        | PERCENTAGE          | 85 %
                    4                           | COUNT               | 4 ''
                    """)
    void gridsAreWrittenInWords(String written, Quantity quantity, String values) {
        assertEquals(values.replace("''", ""), values(read(written, quantity).si()));
    }

    @Test
    void aUsShopMayHaveAGridOfItsOwn() {
        Given given = read("{si: 60 to 70 by 5 mm, us: 2.5 to 3 by 0.25 in}", Quantity.LENGTH);
        assertEquals("60 65 70 mm", values(given.si()));
        assertEquals("2.50 2.75 3.00 in", values(given.us().orElseThrow()));
        assertFalse(given.isRow());
    }

    @Test
    void readingsAreDescribedOrWrittenOut() {
        Given drawn =
                read(
                        "{readings: 4, around: 240 to 260 by 10 kW, within: 1.5, steps: 0.1}",
                        Quantity.POWER);
        assertEquals(4, drawn.readings());
        assertTrue(drawn.isRow() && !drawn.isFixedRow());
        Given fixed = read("149.6 150.9 −1.5 kW", Quantity.POWER);
        assertTrue(fixed.isRow() && fixed.isFixedRow());
        assertEquals("149.6 150.9 -1.5 kW", values(fixed.si()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    38 to 50 by 2 parsec | 2:18 | unknown unit "parsec" for a length
                    38 to 50 by 2        | 2:17 | the unit is missing
                    12.5 kPa             | 2:9  | unknown unit "kPa" for a length
                    50 to 38 by 2 mm     | 2:4  | this grid has no values
                    38 to 50 by 0 mm     | 2:4  | this grid has no values
                    38 to 50 by -1 mm    | 2:4  | this grid has no values
                    0 to 50 by 0.001 mm  | 2:4  | this grid has too many values
                    a few mm             | 2:4  | "a few mm" is no given
                    [38, 40]             | 2:4  | g is a list that is no given
                    {us: 3 in}           | 2:4  | g is a map that is no given
                    {si: 3 mm, su: 1 in} | 2:15 | unknown key "su"
                    {si: [3], us: 1 in}  | 2:9  | "si" is a list
                    {si: 3 mm, us: [1]}  | 2:19 | "us" is a list
                    """)
    void whatIsNoGivenIsSaid(String written, String place, String what) {
        ContentFile file = file(written);
        new GivenReader(file.findings()).read("g", node(file), Quantity.LENGTH);
        Finding finding = file.findings().list().get(0);
        assertEquals(what, finding.what());
        assertEquals(place, finding.place().toString());
    }

    @Test
    void anUnknownUnitIsShownWithTheUnitsThatWouldDo() {
        assertEquals(
                """
                g.md:2:18: unknown unit "parsec" for a length
                     2 | g: 38 to 50 by 2 parsec
                                          ^
                  expected: a number and a unit: m, mm, cm, µm, in, ft, thou"""
                        .strip(),
                findings("38 to 50 by 2 parsec", Quantity.LENGTH).get(0).text());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    {readings: 1, around: 240 kW, within: 1.5, steps: 0.1}
                    {readings: 51, around: 240 kW, within: 1.5, steps: 0.1}
                    {readings: 2.5, around: 240 kW, within: 1.5, steps: 0.1}
                    {readings: 4, around: 240 kW, within: 0.05, steps: 0.1}
                    {readings: 4, around: 240 kW, within: 1e9, steps: 0.1}
                    {readings: 4, around: 240 kW, within: 1, steps: 0}
                    """)
    void readingsThatCannotBeDrawnAreRefused(String written) {
        Finding finding = findings(written, Quantity.POWER).get(0);
        assertEquals("g: these readings cannot be drawn", finding.what());
        assertEquals(
                "2 to 50 readings, steps above 0, within of one to 1000 steps", finding.expected());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    {readings: 4, around: 240 kW, within: 1.5}             | "steps" is missing
                    {readings: four, around: 240 kW, within: 1, steps: 1}  | "four" is no number
                    {readings: 4, around: [240], within: 1, steps: 1}      | "around" is a list
                    """)
    void readingsWantAllTheirKeys(String written, String what) {
        assertEquals(what, findings(written, Quantity.POWER).get(0).what());
    }

    /** Numbers that nobody means cost neither memory nor time. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    1e999999999 mm
                    0 to 1e999999999 by 1 mm
                    1e-999999999 to 1 by 1 mm
                    {readings: 4, around: 1 mm, within: 1e999999999, steps: 1}
                    99999999999999999999999999999999999999999999 mm
                    """)
    void monstersAreNoNumbers(String written) {
        assertFalse(findings(written, Quantity.LENGTH).isEmpty());
    }

    @Test
    void aGivenIsShort() {
        String row = "1.5 ".repeat(100_000) + "kW";
        assertEquals("g is 400002 characters long", findings(row, Quantity.POWER).get(0).what());
        assertFalse(GivenReader.isRow(node(file(row))));
        assertEquals(Optional.empty(), GivenReader.measuredIn(node(file(row))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    250 ft³/min          | VOLUME_FLOW
                    250 ft3/min          | VOLUME_FLOW
                    38 to 50 by 2 mm     | LENGTH
                    one of 1 2 3 kW      | POWER
                    149.6 150.9 kW       | POWER
                    80 kPa gauge         | GAUGE_PRESSURE
                    80 kPa abs           | PRESSURE
                    80 kPa               | PRESSURE_DIFFERENCE
                    {si: 5 N, us: 1 lbf} | FORCE
                    7 torr               | PRESSURE_DIFFERENCE
                    """)
    void theUnitSaysWhatIsMeasured(String written, Quantity quantity) {
        assertEquals(Optional.of(quantity), GivenReader.measuredIn(node(file(written))));
    }

    @ParameterizedTest
    @CsvSource({"1.5", "many", "[5 N]"})
    void whereThereIsNoUnitNothingIsSaid(String written) {
        assertEquals(Optional.empty(), GivenReader.measuredIn(node(file(written))));
    }
}
