// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HelpPageTest {
    @Test
    void namesVersionsFoldersAndEveryLibrary() {
        String html = page(Optional.of("1.2"), List.of("(MIT) <zlib>"));
        for (String said :
                List.of(
                        "<kbd>F1</kbd>",
                        "<td>Opens this</td>",
                        "<dd>1.2</dd>",
                        "<dd>17</dd>",
                        "<dd>21</dd>",
                        "<dd>/data</dd>",
                        "<dd>/data/log</dd>",
                        "<li>(MIT) &lt;zlib&gt;</li>")) {
            assertTrue(html.contains(said), said);
        }
        assertFalse(html.contains("mvn package"));
    }

    @Test
    void anUnpackedProgramSaysHowItsListOfLicencesIsHad() {
        String html = page(Optional.empty(), List.of());
        assertTrue(html.contains("mvn package"), html);
        assertFalse(html.contains("<li>"), html);
    }

    private static String page(Optional<String> version, List<String> libraries) {
        return HelpPage.html(
                List.of(new HelpPage.Key("F1", "Opens this")),
                new HelpPage.About(version, "17", "21", "/data", "/data/log", libraries));
    }
}
