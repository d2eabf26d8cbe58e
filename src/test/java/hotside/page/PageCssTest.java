// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Colours of the page, by the contrast ratio of WCAG 2.2: success criteria 1.4.3 (text, 4.5:1) and
 * 1.4.11 (edges of controls, focus and graphics, 3:1).
 */
class PageCssTest {
    private static final double TEXT = 4.5;
    private static final double EDGE = 3.0;
    private static final String CSS = read();
    private static final Map<String, String> LIGHT = colours(":root {");
    private static final Map<String, String> DARK = colours(":root[data-theme=\"dark\"] {");

    static Stream<Arguments> pairs() {
        List<String[]> text = new ArrayList<>();
        for (String on : List.of("paper", "card", "field", "code", "selected")) {
            text.add(new String[] {"ink", on});
        }
        for (String on : List.of("paper", "card", "field")) {
            text.add(new String[] {"quiet", on});
        }
        for (String tint : List.of("note", "caution", "right", "wrong", "ask")) {
            text.add(new String[] {"ink", tint});
            text.add(new String[] {"quiet", tint});
            text.add(new String[] {"link", tint});
            text.add(new String[] {tint + "-ink", tint});
            text.add(new String[] {tint + "-ink", "card"});
        }
        text.add(new String[] {"link", "paper"});
        text.add(new String[] {"link", "card"});
        text.add(new String[] {"button-ink", "button"});
        text.add(new String[] {"primary-ink", "primary"});
        for (int i = 1; i <= 6; i++) {
            text.add(new String[] {"curve-" + i, "paper"});
            text.add(new String[] {"curve-" + i, "card"});
        }
        List<String[]> edges = new ArrayList<>();
        for (String on : List.of("paper", "card", "field", "button")) {
            edges.add(new String[] {"field-edge", on});
            edges.add(new String[] {"focus", on});
        }
        for (String on : List.of("paper", "card")) {
            edges.add(new String[] {"primary", on});
            edges.add(new String[] {"temper-edge", on});
        }
        edges.add(new String[] {"temper-edge", "note"});
        // The calendar: numbers, quiet beside and full upon a shade; the thickness of its edge.
        text.add(new String[] {"ink", "selected"});
        edges.add(new String[] {"link", "selected"});
        // The bar of work under way, against its ground; its frame.
        edges.add(new String[] {"primary", "rule"});
        edges.add(new String[] {"field-edge", "paper"});
        // Drawings: their lines are those of charts, their dashes and names are quiet.
        for (String on : List.of("paper", "card")) {
            edges.add(new String[] {"quiet", on});
            for (String line : List.of("curve-1", "curve-2", "curve-3", "curve-5", "ink")) {
                edges.add(new String[] {line, on});
            }
        }
        // Words inside fields, and on the tint of a wrong or right answer, stand at 4.5:1 above.
        edges.add(new String[] {"field-edge", "ask"});
        edges.add(new String[] {"focus", "selected"});
        return Stream.concat(
                text.stream().map(p -> Arguments.of(p[0], p[1], TEXT)),
                edges.stream().map(p -> Arguments.of(p[0], p[1], EDGE)));
    }

    @ParameterizedTest(name = "{0} on {1} at least {2}:1")
    @MethodSource("pairs")
    void canBeToldApartInBothThemes(String colour, String ground, double atLeast) {
        for (Map<String, String> theme : List.of(LIGHT, DARK)) {
            double ratio = Contrast.of(theme.get(colour), theme.get(ground));
            assertTrue(ratio >= atLeast, (theme == LIGHT ? "light " : "dark ") + ratio);
        }
    }

    /** Printed ratios: black on white 21:1 by definition; #767676 on white 4.54:1 (W3C, G18). */
    @ParameterizedTest
    @CsvSource({"'#000000', '#ffffff', 21.0", "'#767676', '#ffffff', 4.54"})
    void contrastIsComputedAsPublished(String a, String b, double printed) {
        assertEquals(printed, Contrast.of(a, b), 0.005);
    }

    /**
     * Straw is lighter than a card: what tells it from the card is its edge, with a word beside.
     */
    @Test
    void everyTemperColourIsToldFromItsGroundByItselfOrByItsEdge() {
        for (Map<String, String> theme : List.of(LIGHT, DARK)) {
            for (String steel : List.of("straw", "bronze", "violet", "blue")) {
                for (String on : List.of("paper", "card")) {
                    double alone = Contrast.of(theme.get("temper-" + steel), theme.get(on));
                    double edge = Contrast.of(theme.get("temper-edge"), theme.get(on));
                    assertTrue(Math.max(alone, edge) >= EDGE, steel + " on " + on);
                }
            }
        }
        String bar = CSS.substring(CSS.indexOf(".temper .bar {"));
        assertTrue(bar.substring(0, bar.indexOf('}')).contains("var(--temper-edge)"));
    }

    /** No colour of its own in a rule: all are named above, where the tests see them. */
    @Test
    void coloursAreOnlyNamedInTheThemes() {
        String rules = CSS.substring(CSS.indexOf("\n}", CSS.indexOf("data-theme=\"dark\"] {")));
        String screen = rules.contains("@media print") ? rules.split("@media print")[0] : rules;
        Matcher colour =
                Pattern.compile("[^%](#[0-9a-f]{3,8})\\b|rgba?\\([^)]*\\)").matcher(screen);
        List<String> found = new ArrayList<>();
        while (colour.find()) {
            found.add(colour.group().strip());
        }
        assertEquals(List.of(), found);
    }

    @Test
    void theDarkThemeChangesEveryColourButTheStrawOfSteel() {
        TreeSet<String> same = new TreeSet<>(LIGHT.keySet());
        same.removeIf(name -> !LIGHT.get(name).equals(DARK.get(name)));
        assertEquals(new TreeSet<>(List.of("temper-straw")), same);
        assertEquals(LIGHT.keySet(), DARK.keySet());
    }

    @Test
    void everyColourAndIconUsedIsThere() {
        TreeSet<String> used = new TreeSet<>();
        Matcher uses = Pattern.compile("var\\(--([a-z0-9-]+)").matcher(CSS);
        while (uses.find()) {
            used.add(uses.group(1));
        }
        used.removeIf(name -> Pattern.compile("--" + name + ":").matcher(CSS).find());
        assertEquals(new TreeSet<String>(), used);
    }

    @Test
    void nothingMovesAndNothingIsFetched() {
        for (String word :
                List.of("animation", "transition", "blink", "@import", "http:", "https:")) {
            String css = CSS.replace("http://www.w3.org/2000/svg", "");
            assertFalse(css.contains(word), word);
        }
    }

    @Test
    void chartsOnPaperHaveTheColoursOfTheLightTheme() {
        for (int i = 0; i < Chart.COLOURS.size(); i++) {
            assertEquals(LIGHT.get("curve-" + (i + 1)), Chart.COLOURS.get(i));
            assertTrue(Contrast.of(Chart.COLOURS.get(i), Chart.PAPER) >= TEXT);
        }
    }

    private static Map<String, String> colours(String block) {
        int from = CSS.indexOf(block);
        Matcher matcher =
                Pattern.compile("--([a-z0-9-]+): (#[0-9a-f]{6});")
                        .matcher(CSS.substring(from, CSS.indexOf("\n}", from)));
        Map<String, String> map = new HashMap<>();
        while (matcher.find()) {
            map.put(matcher.group(1), matcher.group(2));
        }
        return map;
    }

    private static String read() {
        try (InputStream in = PageCssTest.class.getResourceAsStream("page.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
