// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFile;
import hotside.content.ContentReader;
import hotside.content.Finding;
import hotside.relation.Chain;
import hotside.unit.Quantity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChainReaderTest {
    private static final String GIVENS =
            """
            givens:
              seat: 44 mm
              p3: 80 kPa gauge
              pulls: 150.2 151.3 kW
            """;

    private static ContentFile file(String work) {
        return ContentReader.read("work.md", "---\n" + GIVENS + "work:\n" + work + "---\nText.\n");
    }

    private static Chain chain(ContentFile file, double ambient) {
        return ChainReader.read(
                ChainReader.map(file.fields(), "work"),
                ChainReader.map(file.fields(), "givens"),
                ambient,
                file.findings());
    }

    private static Chain good(String work) {
        ContentFile file = file(work);
        Chain chain = chain(file, 100e3);
        assertEquals(List.of(), file.findings().list());
        return chain;
    }

    private static List<Finding> bad(String work) {
        ContentFile file = file(work);
        chain(file, 100e3);
        return file.findings().list();
    }

    private static void assertFinds(String work, String text) {
        List<Finding> findings = bad(work);
        assertEquals(1, findings.size(), findings.toString());
        assertEquals(text.stripTrailing(), findings.get(0).text());
    }

    private static Chain.Feed feed(Chain chain, String use, String slot) {
        return chain.uses().stream()
                .filter(u -> u.name().equals(use))
                .findFirst()
                .orElseThrow()
                .feeds()
                .get(slot);
    }

    @Test
    void slotsAreFedByGivensEarlierResultsAndFixedValues() {
        Chain chain =
                good(
                        """
                          push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: 20 kPa gauge}
                          back: {relation: valve-force, solve: seatDiameter, force: push.force, upstream: p3, downstream: push.downstream}
                        """);
        assertEquals(new Chain.From("seat"), feed(chain, "push", "seatDiameter"));
        assertEquals(new Chain.From("push.force"), feed(chain, "back", "force"));
        Chain.Fixed fixed = (Chain.Fixed) feed(chain, "push", "downstream");
        assertEquals(120e3, (Double) fixed.value(), 1e-6, "gauge on top of the air around");
        assertEquals(Optional.of("seatDiameter"), chain.uses().get(1).solveFor());
    }

    @Test
    void wordsAndRowsFeedTheirSlots() {
        Chain chain =
                good(
                        """
                          cool: {relation: cooler-effectiveness, conductance: 100 W/K, airFlow: 0.1 kg/s, coolantFlow: 0.5 kg/s, arrangement: crossflow}
                          s: {relation: mean-spread, sample: pulls}
                          t: {relation: mean-spread, sample: [1.5, 2.5]}
                        """);
        assertEquals(new Chain.Fixed("crossflow"), feed(chain, "cool", "arrangement"));
        assertEquals(new Chain.From("pulls"), feed(chain, "s", "sample"));
        assertEquals(new Chain.Fixed(List.of(1.5, 2.5)), feed(chain, "t", "sample"));
    }

    @Test
    void readingsOfPowerMakeAMeanThatIsAPower() {
        Chain chain = good("  s: {relation: mean-spread, sample: pulls}\n");
        assertEquals(Optional.of(Quantity.POWER), chain.quantityAt("s.mean"));
    }

    @Test
    void theFirstSlotFedSaysWhatAGivenMeasures() {
        Chain chain =
                good(
                        "  push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: 1 bar}\n");
        assertEquals(Optional.of("upstream"), ChainReader.fedBy(chain, "p3").map(s -> s.name()));
        assertEquals(Optional.empty(), ChainReader.fedBy(chain, "pulls"));
    }

    @Test
    void anUnknownRelationIsNamedWithItsNeighbours() {
        assertFinds(
                "  push: {relation: valve-froce, seatDiameter: seat}\n",
                """
                work.md:7:20: unknown relation "valve-froce"
                     7 |   push: {relation: valve-froce, seatDiameter: seat}
                                            ^
                  expected: one of valve-force, gate-flow, fanno-flow, spring-force, gate-share, sae-j1349 … (the command "relations" lists all)
                  to mend:  write "valve-force"
                """);
    }

    @Test
    void aUseNamesARelation() {
        assertFinds(
                "  push: {seatDiameter: seat}\n",
                """
                work.md:7:9: push names no relation
                     7 |   push: {seatDiameter: seat}
                                 ^
                  expected: relation: and the id of one
                """);
        assertFinds(
                "  push: valve-force\n",
                """
                work.md:7:9: push is text
                     7 |   push: valve-force
                                 ^
                  expected: a map such as {relation: valve-force, seatDiameter: seat}
                """);
    }

    @Test
    void aUseHasAName() {
        assertFinds(
                "  Push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: 1 bar}\n",
                """
                work.md:7:3: "Push" is no name
                     7 |   Push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: 1 bar}
                           ^
                  expected: a name of letters and digits that begins with a small letter
                """);
    }

    @Test
    void aMisspeltSlotIsOneFinding() {
        assertFinds(
                "  push: {relation: valve-force, seatDiametre: seat, upstream: p3, downstream: 1 bar}\n",
                """
                work.md:7:33: valve-force has no slot "seatDiametre" to feed
                     7 |   push: {relation: valve-force, seatDiametre: seat, upstream: p3, downstream: 1 bar}
                                                         ^
                  expected: one of seatDiameter, upstream, downstream
                  to mend:  write "seatDiameter"
                """);
    }

    @Test
    void everyInputIsFed() {
        assertFinds(
                "  push: {relation: valve-force, seatDiameter: seat, upstream: p3}\n",
                """
                work.md:7:9: push leaves downstream of valve-force unfed
                     7 |   push: {relation: valve-force, seatDiameter: seat, upstream: p3}
                                 ^
                  expected: downstream: pressure behind the valve
                """);
    }

    @Test
    void onlyWhatIsKnownAlreadyCanFeed() {
        assertFinds(
                "  push: {relation: valve-force, seatDiameter: seat, upstream: p33, downstream: 1 bar}\n",
                """
                work.md:7:63: nothing is called "p33" before this line
                     7 |   push: {relation: valve-force, seatDiameter: seat, upstream: p33, downstream: 1 bar}
                                                                                       ^
                  expected: one of seat, p3, pulls
                  to mend:  write "p3"
                """);
        List<Finding> later =
                bad(
                        """
                          one: {relation: torque-power, torque: 300 N·m, speed: two.speed}
                          two: {relation: torque-power, torque: 300 N·m, speed: 4000 rev/min}
                        """);
        assertEquals("nothing is called \"two.speed\" before this line", later.get(0).what());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    98.5 furlong | "98.5 furlong" is no value for downstream
                    98.5         | "98.5" is no value for downstream
                    98.5 MPa     | 98.5 MPa is outside the range of downstream
                    push.force   | nothing is called "push.force" before this line
                    pulls        | pulls is a row of readings
                    [1 bar]      | downstream is a list
                    []           | downstream is an empty list
                    {a: b}       | downstream is a map
                    """)
    void aNumberIsFedByOneValueOfItsKind(String value, String what) {
        List<Finding> findings =
                bad(
                        "  push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: "
                                + value
                                + "}\n");
        assertEquals(1, findings.size(), findings.toString());
        assertEquals(what, findings.get(0).what());
        assertEquals("7:79", findings.get(0).place().toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    seat       | seat is one number
                    12.5       | sample is one value
                    [1.5, x]   | not a reading
                    []         | sample is an empty list
                    """)
    void aRowIsFedByReadings(String value, String what) {
        List<Finding> findings = bad("  s: {relation: mean-spread, sample: " + value + "}\n");
        assertEquals(1, findings.size(), findings.toString());
        assertEquals(what, findings.get(0).what());
    }

    @Test
    void anEarlierResultOfAnotherKindDoesNotFit() {
        List<Finding> findings =
                bad(
                        """
                          shaft: {relation: torque-power, torque: 300 N·m, speed: 4000 rev/min}
                          push: {relation: valve-force, seatDiameter: shaft.power, upstream: p3, downstream: 1 bar}
                        """);
        assertEquals(
                "shaft.power is a power, but seatDiameter wants a length", findings.get(0).what());
    }

    @Test
    void aWordFeedsNoNumber() {
        List<Finding> findings =
                bad(
                        """
                          f: {relation: sae-j1349, drypressure: 99 kPa, temperature: 298 K, boosted: no}
                          g: {relation: exhaust-gas, lambda: f.boosted, temperature: 900 K}
                        """);
        assertEquals("f.boosted is a word", findings.get(0).what());
        assertEquals("one number", findings.get(0).expected());
    }

    @Test
    void aChoiceIsOneOfItsWords() {
        List<Finding> findings =
                bad(
                        "  f: {relation: sae-j1349, drypressure: 99 kPa, temperature: 298 K, boosted: maybe}\n");
        assertEquals("\"maybe\" is no choice", findings.get(0).what());
        assertEquals("one of no, yes", findings.get(0).expected());
    }

    @Test
    void solvingNamesAnInputAndFeedsOneOutput() {
        assertFinds(
                "  b: {relation: valve-force, solve: force, seatDiameter: seat, upstream: p3, downstream: 1 bar}\n",
                """
                work.md:7:37: solve must name an input of valve-force
                     7 |   b: {relation: valve-force, solve: force, seatDiameter: seat, upstream: p3, downstream: 1 bar}
                                                             ^
                  expected: one of seatDiameter, upstream, downstream
                """);
        List<Finding> none =
                bad(
                        "  b: {relation: valve-force, solve: seatDiameter, upstream: p3, downstream: 1 bar}\n");
        assertEquals("b solves for seatDiameter from 0 outputs", none.get(0).what());
        assertEquals("exactly one output that is known, out of force", none.get(0).expected());
        List<Finding> both =
                bad(
                        "  b: {relation: valve-force, solve: seatDiameter, seatDiameter: seat, force: 90 N, upstream: p3, downstream: 1 bar}\n");
        assertEquals(
                List.of("b solves for seatDiameter and feeds it too"),
                both.stream().map(Finding::what).toList());
    }

    @Test
    void whereTheAirIsDrawnNoFixedValueMayHoldIt() {
        ContentFile file =
                file(
                        "  push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: 5 kPa gauge}\n");
        chain(file, Double.NaN);
        assertEquals(
                """
                work.md:7:79: 5 kPa gauge hangs on the air around, which is drawn
                     7 |   push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: 5 kPa gauge}
                                                                                                       ^
                  expected: an absolute value
                  to mend:  make it a given"""
                        .indent(0)
                        .strip(),
                file.findings().list().get(0).text());
        ContentFile absolute =
                file(
                        "  push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: 105 kPa}\n");
        chain(absolute, Double.NaN);
        assertEquals(List.of(), absolute.findings().list());
    }

    @Test
    void aGivenOfTwoKindsIsRefused() {
        ContentFile file =
                file(
                        """
                          push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: 1 bar}
                          cup: {relation: diaphragm-force, signalPressure: p3, diaphragmDiameter: 60 mm}
                        """);
        Chain chain = chain(file, 100e3);
        ChainReader.refuseMixedUse(
                "p3", new hotside.content.Place(4, 3), chain, Quantity.PRESSURE, file.findings());
        assertEquals(
                "p3 feeds an absolute pressure and, in cup.signalPressure, a gauge pressure",
                file.findings().list().get(0).what());
    }

    @Test
    void aChainHasAnEnd() {
        StringBuilder work = new StringBuilder();
        for (int i = 0; i < 45; i++) {
            work.append("  t")
                    .append(i)
                    .append(": {relation: torque-power, torque: 300 N·m, speed: 50 1/s}\n");
        }
        List<Finding> findings = bad(work.toString());
        assertTrue(findings.size() == 5, findings.toString());
        assertEquals("more than 40 relations are worked", findings.get(0).what());
    }
}
