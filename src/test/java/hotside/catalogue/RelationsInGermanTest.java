// SPDX-License-Identifier: Apache-2.0
package hotside.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.Caution;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Step;
import hotside.relation.Values;
import hotside.relation.Worked;
import hotside.speech.Language;
import hotside.statistics.draw.SplitMix64;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What relations say in German when they are worked, warn or refuse. */
class RelationsInGermanTest {
    private static final int ROUNDS = 600;

    /** Words that an English sentence can hardly do without and a German one never has. */
    private static final Pattern ENGLISH =
            Pattern.compile(
                    "(?<![\\w-])(the|of|and|is|are|with|to|from|than|its|must|expected)(?![\\w-])");

    /** Steps of one German sentence that holds in both cases. */
    private static final Set<String> FOR_ALL_CASES =
            Set.of(
                    "exhaust-gas.carbonDioxide",
                    "exhaust-gas.water",
                    "bleed-signal.restrictorRatio",
                    "bleed-signal.bleedRatio",
                    "welch-gain.standardError");

    @AfterEach
    void speakEnglish() {
        Language.speak(Language.ENGLISH);
    }

    @ParameterizedTest
    @MethodSource("hotside.catalogue.Catalogue#all")
    void nothingOfItIsEnglish(Relation relation) {
        Set<String> english = new TreeSet<>();
        Map<String, Set<String>> steps = new HashMap<>();
        Map<String, Set<String>> german = new HashMap<>();
        for (Values inputs : samples(relation)) {
            Language.speak(Language.ENGLISH);
            List<String> meant = steps(relation, inputs, steps);
            Language.speak(Language.GERMAN);
            List<String> said = steps(relation, inputs, german);
            assertEquals(meant.size(), said.size());
            said.stream().filter(text -> ENGLISH.matcher(text).find()).forEach(english::add);
        }
        assertEquals(Set.of(), english);
        steps.forEach(
                (name, sentences) ->
                        assertTrue(
                                german.get(name).size() == sentences.size()
                                        || FOR_ALL_CASES.contains(relation.id() + "." + name),
                                name + " has cases that German does not tell apart: " + sentences));
    }

    /** What is said, and the sentences of each step. */
    private static List<String> steps(
            Relation relation, Values inputs, Map<String, Set<String>> sentences) {
        List<String> said = new ArrayList<>();
        try {
            Worked worked = relation.work(inputs);
            for (Step step : worked.steps()) {
                said.add(step.text());
                sentences
                        .computeIfAbsent(step.name(), n -> new TreeSet<>())
                        .add(step.text().replaceAll("\\d+", "#"));
            }
            worked.cautions().stream().map(Caution::text).forEach(said::add);
        } catch (RelationException e) {
            said.add(e.getMessage());
        }
        return said;
    }

    /** Usual inputs, and inputs anywhere in their ranges and a little beyond. */
    private static List<Values> samples(Relation relation) {
        SplitMix64 random = new SplitMix64(20261125);
        List<Values> all = new ArrayList<>();
        for (int i = 0; i < ROUNDS; i++) {
            Values inputs = relation.typical();
            for (Slot slot : relation.inputs()) {
                if (random.below(3) == 0) {
                    inputs = inputs.with(slot.name(), value(slot, random));
                }
            }
            all.add(inputs);
        }
        return all;
    }

    private static Object value(Slot slot, SplitMix64 random) {
        return switch (slot.kind()) {
            case NUMBER -> number(slot, random);
            case CHOICE -> slot.choices().get(random.below(slot.choices().size()));
            case NUMBERS -> {
                List<Double> readings = new ArrayList<>(readings(slot));
                yield random.below(2) == 0 ? readings : readings.subList(0, 1);
            }
            default -> slot.typical();
        };
    }

    @SuppressWarnings("unchecked")
    private static List<Double> readings(Slot slot) {
        return (List<Double>) slot.typical();
    }

    private static double number(Slot slot, SplitMix64 random) {
        double low = Math.max(slot.min(), -1e7);
        double high = Math.min(slot.max(), 1e7);
        double share = random.below(1 << 20) / (double) (1 << 20);
        return switch (random.below(8)) {
            case 0 -> low;
            case 1 -> low <= 0 && high >= 0 ? 0 : high;
            case 2 -> high + 1;
            case 3, 4 -> low + (high - low) * share * share;
            default -> slot.usualMin() + (slot.usualMax() - slot.usualMin()) * share;
        };
    }

    @Test
    void aRefusalKeepsItsNumbersWithADecimalComma() {
        Relation gate = Catalogue.find("gate-flow").orElseThrow();
        Values backwards = gate.typical().with("downstream", 300_000.5).with("upstream", 200_000.0);
        Language.speak(Language.GERMAN);
        String said = assertRefused(gate, backwards);
        assertTrue(
                said.startsWith(
                        "gate-flow: downstream = 300000,5 Pa liegt über upstream = 200000 Pa"),
                said);
        Values outside = gate.typical().with("seatDiameter", -0.5);
        assertTrue(
                assertRefused(gate, outside)
                        .contains("seatDiameter = -0,5 liegt außerhalb von (0,0; "),
                assertRefused(gate, outside));
    }

    private static String assertRefused(Relation relation, Values inputs) {
        return org.junit.jupiter.api.Assertions.assertThrows(
                        RelationException.class, () -> relation.work(inputs))
                .getMessage();
    }
}
