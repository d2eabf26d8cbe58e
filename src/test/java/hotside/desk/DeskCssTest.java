// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.page.Contrast;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Colours of the desk around the page, by the contrast ratio of WCAG 2.2: 1.4.3 (text, 4.5:1) and
 * 1.4.11 (edges of fields and focus, 3:1).
 */
class DeskCssTest {
    private static final String DESK = read("/hotside/desk/desk.css");
    private static final String PAGE = read("/hotside/page/page.css");
    private static final List<Map<String, String>> THEMES =
            List.of(
                    colours(DESK, ".desk {", "-([a-z-]+): (#[0-9a-f]{6});"),
                    colours(DESK, ".desk.dark {", "-([a-z-]+): (#[0-9a-f]{6});"));

    @ParameterizedTest(name = "{0} on {1} at least {2}:1")
    @CsvSource({
        "ink, paper, 4.5",
        "ink, field, 4.5",
        "ink, chosen, 4.5",
        "ink, card, 4.5",
        "quiet, paper, 4.5",
        "quiet, field, 4.5",
        "accent, paper, 4.5",
        "accent-ink, accent, 4.5",
        "field-edge, paper, 3",
        "field-edge, field, 3",
        "focus, paper, 3",
        "focus, field, 3",
        "focus, chosen, 3",
        "accent, chosen, 3"
    })
    void canBeToldApartInBothThemes(String colour, String ground, double atLeast) {
        for (Map<String, String> theme : THEMES) {
            double ratio = Contrast.of(theme.get(colour), theme.get(ground));
            assertTrue(ratio >= atLeast, theme.get("paper") + ": " + ratio);
        }
    }

    @Test
    void deskAndPageAreOneSheet() {
        List<String> roots = List.of(":root {", ":root[data-theme=\"dark\"] {");
        for (int i = 0; i < 2; i++) {
            Map<String, String> page =
                    colours(PAGE, roots.get(i), "--([a-z0-9-]+): (#[0-9a-f]{6});");
            for (String name :
                    List.of("paper", "card", "field", "ink", "quiet", "field-edge", "focus")) {
                assertEquals(page.get(name), THEMES.get(i).get(name), name);
            }
            assertEquals(page.get("link"), THEMES.get(i).get("accent"));
            Settings settings = Settings.USUAL.dark(i == 1);
            assertEquals(page.get("paper"), settings.paper(), "beside the page's scroll bar");
        }
    }

    @Test
    void nothingMoves() {
        for (String word : List.of("transition", "animat", "-fx-cursor: wait")) {
            assertFalse(DESK.contains(word), word);
        }
    }

    private static Map<String, String> colours(String css, String block, String form) {
        int from = css.indexOf(block);
        Matcher matcher =
                Pattern.compile(form).matcher(css.substring(from, css.indexOf('}', from)));
        Map<String, String> map = new HashMap<>();
        while (matcher.find()) {
            map.put(matcher.group(1), matcher.group(2));
        }
        return map;
    }

    private static String read(String name) {
        try (InputStream in = DeskCssTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
