// SPDX-License-Identifier: Apache-2.0
package hotside.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Step;
import hotside.relation.StepTex;
import hotside.relation.Values;
import hotside.relation.Worked;
import hotside.unit.Quantity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every relation promises, whatever its physics. */
class RelationContractTest {
    static Stream<Relation> relations() {
        return Catalogue.all().stream();
    }

    @ParameterizedTest
    @MethodSource("relations")
    void cardIsComplete(Relation relation) {
        assertTrue(relation.id().matches("[a-z0-9]+(-[a-z0-9]+)*"), "id in lower case and hyphens");
        assertFalse(relation.title().isBlank(), "title");
        assertTrue(relation.says().endsWith("."), "says: a whole sentence");
        assertFalse(relation.tex().isBlank(), "the law in TeX");
        assertFalse(relation.assumptions().isEmpty(), "assumptions");
        assertFalse(relation.sources().isEmpty(), "sources");
        assertFalse(relation.outputs().isEmpty(), "outputs");
        Set<String> names = new HashSet<>();
        for (Slot slot : allSlots(relation)) {
            assertTrue(
                    slot.name().matches("[a-z][A-Za-z0-9]*"), slot.name() + ": name in camel case");
            assertTrue(names.add(slot.name()), slot.name() + ": named once");
            assertFalse(slot.meaning().isBlank(), slot.name() + ": meaning");
            assertFalse(slot.meaning().endsWith("."), slot.name() + ": meaning is a phrase");
            assertFalse(
                    slot.quantity() == Quantity.FLAG && slot.meaning().startsWith("1 if"),
                    slot.name() + ": a flag is shown as yes or no, so its meaning is a question");
            // Units such as mmH2O and kPa apart, a small letter before a capital is a slot's name.
            assertFalse(
                    slot.meaning().matches(".*\\b[a-z]{3,}[A-Z].*"),
                    slot.name() + ": words, not a name of the code: " + slot.meaning());
        }
    }

    @ParameterizedTest
    @MethodSource("relations")
    void everyInputHasASensibleStart(Relation relation) {
        for (Slot slot : relation.inputs()) {
            assertTrue(slot.typical() != null, slot.name() + ": typical value");
            if (slot.kind() == Slot.Kind.NUMBER) {
                double typical = (Double) slot.typical();
                assertTrue(slot.admits(typical), slot.name() + ": typical in range");
                assertTrue(
                        typical >= slot.usualMin() && typical <= slot.usualMax(),
                        slot.name() + ": typical is usual");
                assertTrue(
                        slot.usualMax() - slot.usualMin() < 1e12,
                        slot.name() + ": a range that a slider can run");
            }
        }
        Worked worked = relation.work(relation.typical());
        assertEquals(List.of(), worked.cautions(), "a typical case needs no caution");
    }

    @ParameterizedTest
    @MethodSource("relations")
    void stepsLeadToEveryOutputAndEndAtOne(Relation relation) {
        Worked worked = relation.work(relation.typical());
        List<Step> steps = worked.steps();
        assertTrue(steps.get(steps.size() - 1).output(), "the last step is a result");
        for (Slot output : relation.outputs()) {
            Step step =
                    steps.stream()
                            .filter(s -> s.name().equals(output.name()))
                            .findFirst()
                            .orElseThrow();
            assertEquals(worked.out().number(output.name()), step.value(), 0.0, output.name());
        }
        assertEquals(
                worked.out(), relation.solve(relation.typical()), "fast and explaining path agree");
        StepTex tex = new StepTex(worked);
        for (Step step : steps) {
            assertFalse(tex.whole(step).contains("@"), step.name() + ": every @name is known");
            assertTrue(step.text().endsWith("."), step.name() + ": a whole sentence");
        }
    }

    /**
     * Corners and random places of the whole range: a finite result or a message, never a silent
     * NaN.
     */
    @ParameterizedTest
    @MethodSource("relations")
    void inRangeGivesANumberOrSaysWhyNot(Relation relation) {
        SplittableRandom random = new SplittableRandom(20261125);
        int worked = 0;
        int tried = 0;
        for (int i = 0; i < 400; i++) {
            Values in = draw(relation, random, i % 4 == 0);
            tried++;
            try {
                Values out = relation.solve(in);
                out.asMap()
                        .values()
                        .forEach(
                                v ->
                                        assertTrue(
                                                Double.isFinite((Double) v),
                                                () -> relation + " " + in));
                worked++;
            } catch (RelationException e) {
                assertTrue(e.getMessage().startsWith(relation.id() + ":"), e.getMessage());
            }
        }
        assertTrue(
                worked > tried / 20,
                "works in " + worked + " of " + tried + " places of its range");
    }

    @ParameterizedTest
    @MethodSource("relations")
    void outsideTheRangeIsRefusedAndOutsideTheUsualIsCautioned(Relation relation) {
        for (Slot slot : relation.inputs()) {
            if (slot.kind() != Slot.Kind.NUMBER) {
                continue;
            }
            for (double bad :
                    List.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY)) {
                var e =
                        assertThrows(
                                RelationException.class,
                                () -> relation.work(relation.typical().with(slot.name(), bad)));
                assertEquals(slot.name(), e.slot());
            }
            if (slot.max() < Double.MAX_VALUE) {
                double beyond = slot.max() + Math.max(1e-6, Math.abs(slot.max()) * 0.01);
                assertThrows(
                        RelationException.class,
                        () -> relation.work(relation.typical().with(slot.name(), beyond)));
            }
            if (slot.usualMax() < slot.max()) {
                double unusual =
                        Math.min(
                                slot.max() == Double.MAX_VALUE
                                        ? slot.usualMax() * 1.01
                                        : slot.max(),
                                slot.usualMax() * 1.01 + 1e-9);
                if (slot.admits(unusual)) {
                    assertCautionedOrRefused(relation, slot, unusual);
                }
            }
            if (slot.usualMin() > slot.min()) {
                double unusual =
                        Math.max(
                                slot.min(),
                                slot.usualMin() - Math.abs(slot.usualMin()) * 0.01 - 1e-9);
                if (slot.admits(unusual)) {
                    assertCautionedOrRefused(relation, slot, unusual);
                }
            }
        }
    }

    private static void assertCautionedOrRefused(Relation relation, Slot slot, double value) {
        try {
            Worked worked = relation.work(relation.typical().with(slot.name(), value));
            assertTrue(
                    worked.cautions().stream().anyMatch(c -> c.about().equals(slot.name())),
                    slot.name() + " = " + value + " gives a caution");
        } catch (RelationException e) {
            assertTrue(e.getMessage().startsWith(relation.id() + ":"), e.getMessage());
        }
    }

    private static Values draw(Relation relation, SplittableRandom random, boolean corner) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (Slot slot : relation.inputs()) {
            map.put(
                    slot.name(),
                    switch (slot.kind()) {
                        case NUMBER -> number(slot, random, corner);
                        case NUMBERS -> readings(slot, random);
                        case CHOICE -> slot.choices().get(random.nextInt(slot.choices().size()));
                        case TEXT -> slot.typical();
                    });
        }
        return Values.of(map);
    }

    private static List<Double> readings(Slot slot, SplittableRandom random) {
        List<?> typical = (List<?>) slot.typical();
        List<Double> out = new ArrayList<>();
        for (Object value : typical) {
            out.add((Double) value * (0.9 + 0.2 * random.nextDouble()));
        }
        return out;
    }

    private static double number(Slot slot, SplittableRandom random, boolean corner) {
        double low = slot.min() == -Double.MAX_VALUE ? slot.usualMin() : slot.min();
        double high = slot.max() == Double.MAX_VALUE ? slot.usualMax() : slot.max();
        double u = corner ? random.nextInt(2) : random.nextDouble();
        double value = low + (high - low) * u;
        if (!slot.admits(value)) {
            double in = 1e-9 * (high - low);
            value = u < 0.5 ? low + in : high - in;
        }
        return slot.quantity() == Quantity.COUNT ? Math.rint(value) : value;
    }

    private static List<Slot> allSlots(Relation relation) {
        List<Slot> all = new ArrayList<>(relation.inputs());
        all.addAll(relation.outputs());
        return all;
    }
}
