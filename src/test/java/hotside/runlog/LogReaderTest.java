// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.speech.Language;
import hotside.unit.DecimalHabit;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.Iterator;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Formats row by row. All logs are invented. */
class LogReaderTest {
    private static final double KW = 1e3;

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '!',
            textBlock =
                    """
            comma, decimal point          ! Speed [rpm],Power [kW]|3000,150.5|3600,180.25
            semicolon, decimal comma      ! Speed [rpm];Power [kW]|3000;150,5|3600;180,25
            semicolon, decimal point      ! Speed [rpm];Power [kW]|3000;150.5|3600;180.25
            decimal comma in quotes       ! Speed [rpm],Power [kW]|"3000","150,5"|"3600","180,25"
            quoted names                  ! "Speed [rpm]","Power [kW]"|3000,150.5|3600,180.25
            blanks about cells            ! Speed [rpm] , Power [kW]| 3000 , 150.5| 3600 , 180.25
            grouped thousands             ! Speed [rpm];Power [kW]|3.000;150,50|3.600;180,25
            exponents                     ! Speed [rpm],Power [kW]|3e3,1.505E2|3.6e+3,18025e-2
            units in round brackets       ! RPM,Power (kW)|3000,150.5|3600,180.25
            units after a comma           ! "Speed, rpm","Power, kW"|3000,150.5|3600,180.25
            units after an underscore     ! engine_speed_rpm,power_kW|3000,150.5|3600,180.25
            a row of units                ! Speed,Power|rpm,kW|3000,150.5|3600,180.25
            a row of units in brackets    ! Speed,Power|[1/min],[kW]|3000,150.5|3600,180.25
            units for names               ! rpm,kW|3000,150.5|3600,180.25
            other languages               ! Drehzahl [U/min];Leistung [kW]|3000;150,5|3600;180,25
            watts                         ! Speed [rpm],Power [W]|3000,150500|3600,180250
            turns a second                ! Speed [1/s],Power [kW]|50,150.5|60,180.25
            words above the names         ! Invented bench, cell 2|Operator,none|Speed [rpm],Power [kW]|3000,150.5|3600,180.25
            blank rows                    ! Speed [rpm],Power [kW]||3000,150.5||3600,180.25|
            """)
    void readsSpeedAndPower(String format, String text) {
        LogReading reading = Logs.read(text.replace('|', '\n'));
        assertEquals(List.of(), Logs.texts(reading));
        assertArrayEquals(new double[] {50, 60}, Logs.column(reading, Channel.SPEED), 1e-12);
        assertArrayEquals(
                new double[] {150.5 * KW, 180.25 * KW}, Logs.column(reading, Channel.POWER), 1e-9);
    }

    @ParameterizedTest(name = "line ends {0}")
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void readsTabsWithAnyLineEnds(String end) {
        LogReading reading =
                Logs.read(String.join(end, "Speed [rpm]\tPower [kW]", "3000\t150,5", "3600\t180"));
        assertEquals(List.of(), Logs.texts(reading));
        assertArrayEquals(
                new double[] {150.5 * KW, 180 * KW}, Logs.column(reading, Channel.POWER), 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE"})
    void takesAByteOrderMarkForWhatItIs(String charset) {
        String text = "\uFEFFSpeed [rpm];Exhaust temperature [°C]\n3000;700\n3600;800\n";
        LogReading reading = Logs.read(text.getBytes(Charset.forName(charset)), ReadOptions.PLAIN);
        assertEquals(List.of(), Logs.texts(reading));
        assertArrayEquals(
                new double[] {973.15, 1073.15},
                Logs.column(reading, Channel.EXHAUST_TEMPERATURE),
                1e-9);
    }

    @Test
    void readsOldOneByteTextAndSaysSo() {
        byte[] bytes =
                "Speed [rpm];EGT [°C]\n3000;700\n3600;800\n".getBytes(StandardCharsets.ISO_8859_1);
        LogReading reading = Logs.read(bytes, ReadOptions.PLAIN);
        assertEquals(List.of(), Logs.texts(reading));
        assertEquals(
                List.of("The file is not UTF-8; it was read as windows-1252."), reading.notes());
        assertEquals(973.15, Logs.column(reading, Channel.EXHAUST_TEMPERATURE)[0], 1e-9);
    }

    /** Factors of units: NIST SP 811, appendix B. */
    @ParameterizedTest(name = "{0} {2} is {3} in SI")
    @CsvSource(
            textBlock =
                    """
            Power [hp],                  power,                   100,  74569.99
            Power [PS],                  power,                   100,  73549.875
            Torque [lb-ft],              torque,                  100,  135.58179
            Boost (psi),                 manifold-pressure,       10,   170272.6
            Boost [bar abs],             manifold-pressure,       1.8,  180000
            MAP [kPa],                   manifold-pressure,       180,  180000
            MAP [kPa gauge],             manifold-pressure,       80,   181325
            Boost (gauge) [kPa],         manifold-pressure,       80,   181325
            Ladedruck [bar rel],         manifold-pressure,       0.8,  181325
            P3 [psig],                   turbine-inlet-pressure,  10,   170272.6
            Pre-turbine pressure [kPa],  turbine-inlet-pressure,  100,  201325
            p4 abs [kPa],                turbine-outlet-pressure, 108,  108000
            Post-turbine (mbar),         turbine-outlet-pressure, 70,   108325
            IAT [°F],                    charge-temperature,      104,  313.15
            Lambda [-],                  lambda,                  0.85, 0.85
            Lambda,                      lambda,                  0.85, 0.85
            AFR,                         air-fuel-ratio,          12.5, 12.5
            Time [ms],                   time,                    1500, 1.5
            Time,                        time,                    1.5,  1.5
            """)
    void turnsEveryUnitIntoSi(String header, String channel, String cell, double si) {
        LogReading reading = Logs.read("rpm," + header + "\n3000," + cell + "\n3600," + cell);
        assertEquals(List.of(), Logs.texts(reading));
        double[] column = Logs.column(reading, Channel.byId(channel).orElseThrow());
        assertEquals(si, column[0], 1e-6 * Math.abs(si));
    }

    @Test
    void countsGaugeReadingsFromTheAmbientItIsTold() {
        LogReading reading =
                Logs.read("rpm,Boost [kPa]\n3000,80\n3600,80", ReadOptions.PLAIN.withAmbient(95e3));
        assertEquals(175e3, Logs.column(reading, Channel.MANIFOLD_PRESSURE)[0], 1e-9);
        assertEquals(
                List.of(
                        "\"Boost [kPa]\" was read as kPa gauge: the file does not say gauge or absolute. Differences"
                                + " between parts do not depend on it."),
                reading.notes());
    }

    @Test
    void leavesAGapForAnEmptyCellWithoutAWord() {
        LogReading reading = Logs.read("rpm,Power [kW]\n3000,\n3600,n/a\n4200,NaN\n4800,170");
        assertEquals(List.of(), Logs.texts(reading));
        assertArrayEquals(
                new double[] {Double.NaN, Double.NaN, Double.NaN, 170e3},
                Logs.column(reading, Channel.POWER),
                0);
    }

    @Test
    void tellsOfACellThatIsNoNumber() {
        LogReading reading = Logs.read("rpm,Power [kW]\n3000,150\n3600,15x0\n4200,170");
        assertEquals(
                List.of(
                        """
                        invented.csv:3:6: "15x0" in column "Power [kW]" is no number; it is a gap
                             3 | 3600,15x0
                                      ^
                          expected: a number such as 12.5, or an empty cell"""),
                Logs.texts(reading));
        assertArrayEquals(
                new double[] {150e3, Double.NaN, 170e3}, Logs.column(reading, Channel.POWER), 0);
    }

    @Test
    void tellsOfRowsTooShortAndTooLong() {
        LogReading reading = Logs.read("rpm,Power [kW]\n3000,150\n3600\n4200,170,9\n4800,180");
        assertEquals(
                List.of(
                        """
                        invented.csv:3:1: this row has 1 cells, the row of names 2; the missing ones are gaps
                             3 | 3600
                                 ^""",
                        """
                        invented.csv:4:10: this row has more cells than the 2 of the row of names; the rest is not kept
                             4 | 4200,170,9
                                          ^
                          expected: one cell for each name
                          to mend:  where commas are decimal marks, put semicolons between the cells"""),
                Logs.texts(reading));
        assertEquals(4, reading.log().orElseThrow().rows());
    }

    @Test
    void keepsAnUnknownColumnAndSaysSo() {
        LogReading reading = Logs.read("rpm,Pwoer [kW],Power [kW]\n3000,7,150\n3600,8,160");
        assertEquals(
                List.of(
                        """
                        invented.csv:1:5: unknown column "Pwoer [kW]"; it is kept but not used
                             1 | rpm,Pwoer [kW],Power [kW]
                                     ^
                          expected: a name such as speed, power, torque, boost, p3, p4, lambda or time; "power" is known
                          to mend:  if it matters, say what it is: --map "Pwoer [kW]=power kW\""""),
                Logs.texts(reading));
        assertArrayEquals(new double[] {7, 8}, Logs.column(reading, Channel.UNKNOWN), 0);
    }

    @Test
    void asksForAMissingUnitInsteadOfGuessingIt() {
        LogReading reading = Logs.read("rpm,Power\n3000,150\n3600,160");
        assertEquals(
                List.of(
                        """
                        invented.csv:1:5: column "Power" has no unit; it is kept but not used
                             1 | rpm,Power
                                     ^
                          expected: a unit in the name or in a row under it, such as "Power [kW]"
                          to mend:  add the unit, or say what it is: --map "Power=power kW\""""),
                Logs.texts(reading));
        assertEquals(-1, reading.log().orElseThrow().indexOf(Channel.POWER));
    }

    @Test
    void refusesAUnitOfSomethingElse() {
        LogReading reading = Logs.read("rpm,Power [psi]\n3000,150\n3600,160");
        assertEquals(
                "invented.csv:1:5: column \"Power [psi]\" has \"psi\", which is no unit of power; it is kept but not"
                        + " used",
                reading.findings().get(0).oneLine());
    }

    @Test
    void readsWhatAMappingSays() {
        List<Mapping> maps =
                List.of(Mapping.parse("Ch1=speed rpm"), Mapping.parse("Ch7=p3 psi gauge"));
        LogReading reading =
                Logs.read("Ch1,Ch7\n3000,10\n3600,10", ReadOptions.PLAIN.withMappings(maps));
        assertEquals(List.of(), Logs.texts(reading));
        assertEquals(50, Logs.column(reading, Channel.SPEED)[0], 1e-12);
        // 10 psi above 101 325 Pa; 1 psi = 6894.757 Pa, NIST SP 811
        assertEquals(170272.6, Logs.column(reading, Channel.TURBINE_INLET_PRESSURE)[0], 0.1);
    }

    @Test
    void letsAMappingTakeAChannelFromAColumnThatBearsItsName() {
        LogReading reading =
                Logs.read(
                        "rpm,Power [kW],Corrected\n3000,150,155\n3600,160,165",
                        ReadOptions.PLAIN.withMappings(
                                List.of(Mapping.parse("Corrected=power kW"))));
        assertArrayEquals(new double[] {155e3, 165e3}, Logs.column(reading, Channel.POWER), 1e-9);
        assertEquals(1, reading.findings().size());
    }

    @Test
    void numbersColumnsThatHaveNoNames() {
        LogReading reading =
                Logs.read(
                        "3000,150\n3600,160",
                        ReadOptions.PLAIN.withMappings(
                                List.of(
                                        Mapping.parse("column 1=speed rpm"),
                                        Mapping.parse("column 2=power kW"))));
        assertEquals(
                List.of(
                        """
                        invented.csv:1:1: there is no row of names above the numbers
                          expected: a row such as "Speed [rpm],Power [kW]"
                          to mend:  add one, or say what the columns are: --map "column 1=speed rpm\""""),
                Logs.texts(reading));
        assertArrayEquals(new double[] {150e3, 160e3}, Logs.column(reading, Channel.POWER), 1e-9);
    }

    @Test
    void saysWhenACommaCouldBeEither() {
        String text = "rpm;Power [W]\n3,000;150,500\n3,600;160,500";
        assertEquals(
                "invented.csv:1:1: a comma in this file could be a decimal mark or stand between thousands; it was read as"
                        + " a decimal mark",
                Logs.read(text).findings().get(0).oneLine());
        LogReading told = Logs.read(text, ReadOptions.PLAIN.withHabit(DecimalHabit.POINT));
        assertEquals(List.of(), Logs.texts(told));
        assertEquals(150_500, Logs.column(told, Channel.POWER)[0], 0);
    }

    @Test
    void countsFurtherFindingsOfAKind() {
        StringBuilder text = new StringBuilder("rpm,Power [kW]\n3000,150\n3010,151\n3020,152\n");
        for (int i = 1; i <= 20; i++) {
            text.append(3020 + 10 * i).append(",bad\n");
        }
        LogReading reading = Logs.read(text.toString());
        assertEquals(6, reading.findings().size());
        assertEquals(
                "invented.csv:24:1: 15 more cells in \"Power [kW]\" that are no numbers, the last in this line",
                reading.findings().get(5).oneLine());
    }

    @Test
    void losesOneRowToAForgottenQuote() {
        LogReading reading = Logs.read("rpm,Power [kW]\n3000,150\n3600,\"160\n4200,170");
        assertTrue(
                reading.findings().get(0).what().startsWith("this quote is not closed"),
                () -> Logs.texts(reading).toString());
        assertEquals(170e3, Logs.column(reading, Channel.POWER)[2], 1e-9);
    }

    @Test
    void findsNothingInNothing() {
        assertEquals(
                List.of(
                        """
                        invented.csv:1:1: there is nothing to read in this file
                          expected: a row of names and rows of numbers, at least two columns
                          to mend:  export the log as CSV text"""),
                Logs.texts(Logs.read("")));
    }

    @Test
    void saysThatALogWithoutSpeedHasNone() {
        LogReading reading = Logs.read("Time [s],Power [kW]\n1,150\n2,160");
        assertEquals(
                "invented.csv:1:1: there is no column for engine speed",
                reading.findings().get(0).oneLine());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "just some words",
                "a,b,c\nd,e,f",
                "\0\0\0\0",
                "rpm,Power [kW]\n\0\0,\0",
                "\"\"\"\"\"",
                ";;;;\n;;;",
                "rpm,Power [kW]\n1e999,-1e999\nInfinity,NaN"
            })
    void turnsRubbishIntoFindings(String rubbish) {
        assertTrue(!Logs.read(rubbish).findings().isEmpty());
    }

    @Test
    void refusesAMillionColumns() {
        String row = "1,".repeat(1_000_000);
        String names = "rpm,".repeat(1_000_000);
        LogReading reading = Logs.read(names + "\n" + row + "\n" + row);
        assertTrue(reading.log().isEmpty());
        assertEquals(1, reading.findings().size());
    }

    @Test
    void leavesOutARowAsLongAsAFile() {
        String text = "rpm,Power [kW]\n3000,150\n" + "9".repeat(600_000) + "\n3600,160\n4200,170\n";
        LogReading reading = Logs.read(text);
        assertEquals(
                "invented.csv:3:1: this row is longer than 262144 characters; it is left out",
                reading.findings().get(0).oneLine());
        assertEquals(3, reading.log().orElseThrow().rows());
    }

    @Test
    void tellsOfNulCharacters() {
        LogReading reading = Logs.read("rpm,Power [kW]\n3000,150\n3600,1\u00006\n4200,170");
        assertEquals(
                "invented.csv:1:1: the file holds NUL characters",
                reading.findings().get(0).oneLine());
        assertEquals(
                "invented.csv:3:6: \"1␀6\" in column \"Power [kW]\" is no number; it is a gap",
                reading.findings().get(1).oneLine());
    }

    @Test
    void stopsWhereALogHoldsMoreThanMayBe() throws IOException {
        String text = "rpm,Power [kW]\n3000,150\n3600,160\n4200,170\n";
        LogReading reading =
                new LogReader(ReadOptions.PLAIN, 4)
                        .read("invented.csv", new ByteArrayInputStream(text.getBytes(UTF_8)));
        assertEquals(
                "invented.csv:4:1: reading stopped here: a log may hold 4 readings",
                reading.findings().get(0).oneLine());
        assertEquals(2, reading.log().orElseThrow().rows());
    }

    /** The rows are made while they are read: nothing holds the text. */
    @Test
    void streamsALongLog() throws IOException {
        int rows = 200_000;
        InputStream head = new ByteArrayInputStream("rpm,Power [kW]\n".getBytes(UTF_8));
        Iterator<InputStream> lines =
                IntStream.range(0, rows)
                        .mapToObj(i -> (3000 + (i % 1000)) + ",1.5\n")
                        .<InputStream>map(l -> new ByteArrayInputStream(l.getBytes(UTF_8)))
                        .iterator();
        Enumeration<InputStream> all =
                new Enumeration<>() {
                    private boolean begun;

                    @Override
                    public boolean hasMoreElements() {
                        return !begun || lines.hasNext();
                    }

                    @Override
                    public InputStream nextElement() {
                        InputStream next = begun ? lines.next() : head;
                        begun = true;
                        return next;
                    }
                };
        LogReading reading =
                new LogReader(ReadOptions.PLAIN).read("long.csv", new SequenceInputStream(all));
        assertEquals(List.of(), reading.findings());
        RunLog log = reading.log().orElseThrow();
        assertEquals(rows, log.rows());
        assertEquals(rows / 1000, log.pulls().size());
        assertEquals(1500, log.pulls().get(99).values(Channel.POWER)[999], 1e-9);
    }

    @Property(tries = 500, seed = "20261125")
    void endsOnAnyText(@ForAll("nearlyLogs") String text) {
        LogReading reading = Logs.read(text);
        assertTrue(reading.log().isPresent() || !reading.findings().isEmpty());
        reading.log().ifPresent(LogReaderTest::pullsAreInside);
    }

    private static void pullsAreInside(RunLog log) {
        for (Pull pull : log.pulls()) {
            assertTrue(0 <= pull.from() && pull.from() <= pull.to() && pull.to() <= log.rows());
        }
    }

    @Provide
    Arbitrary<String> nearlyLogs() {
        Arbitrary<String> pieces =
                Arbitraries.of(
                        "rpm",
                        "Power [kW]",
                        "run",
                        "Boost (psi)",
                        "3000",
                        "4500,5",
                        "1e9",
                        "-7",
                        ",",
                        ",",
                        ";",
                        "\t",
                        "\n",
                        "\n",
                        "\r\n",
                        "\"",
                        "\0",
                        "[",
                        ")",
                        " ",
                        "°C",
                        "\uFEFF",
                        "\uD800",
                        "NaN",
                        "=",
                        "kW");
        return pieces.list().ofMaxSize(60).map(list -> String.join("", list));
    }

    @Property(tries = 200, seed = "20261125")
    void endsOnAnyBytes(@ForAll byte[] bytes) {
        LogReading reading = Logs.read(bytes, ReadOptions.PLAIN);
        assertTrue(reading.log().isPresent() || !reading.findings().isEmpty());
    }

    /** Files and what the program writes stay as they are; only what people are told is German. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Speed [rpm];Power [kW];boost;moon;Power2 [kW]|3000;15,0;x;a;1|3200;oops;;b|3400;17;1;c;2;3",
                "3000,150|3600,180",
                "",
                "a,b|c,d",
                "Operator: none|Time [s],Speed [rpm],Power [kW],power [W]|0,3000,1,1|2,3600,2,1|1,4000,3,1|3,3500,2,1|4,3000,2,1",
                "Torque [N],Power [kW]|3000,150|3500,160"
            })
    void aGermanDeskIsToldInGerman(String text) {
        Language.speak(Language.GERMAN);
        try {
            LogReading reading = Logs.read(text.replace('|', '\n'));
            List<String> said = new ArrayList<>(reading.notes());
            reading.findings()
                    .forEach(f -> said.add(f.what() + " " + f.expected() + " " + f.mend()));
            assertFalse(said.isEmpty());
            for (String each : said) {
                assertFalse(each.matches("(?s).*\\b(the|of|and|is|with|to|row)\\b.*"), each);
            }
            reading.findings().forEach(f -> assertFalse(f.text().contains("expected"), f.text()));
        } finally {
            Language.speak(Language.ENGLISH);
        }
    }
}
