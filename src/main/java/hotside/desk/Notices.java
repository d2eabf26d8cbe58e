// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.page.HelpPage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Which program this is, and what it is made of. */
final class Notices {
    /** Written while the program is packed, see pom.xml. */
    static final String LIST = "/hotside/notices/THIRD-PARTY.txt";

    private Notices() {}

    /**
     * @param data the folder of the person who runs the program
     */
    static HelpPage.About about(Path data) {
        return new HelpPage.About(
                version(),
                System.getProperty("java.version"),
                System.getProperty("javafx.version", "?"),
                data.toAbsolutePath().toString(),
                DeskLog.folder(data).toAbsolutePath().toString(),
                libraries(Notices.class.getResourceAsStream(LIST)));
    }

    /** The version of a packed program. */
    static Optional<String> version() {
        return Optional.ofNullable(Notices.class.getPackage().getImplementationVersion());
    }

    /** The lines of the list that name a library; none if there is no list. */
    static List<String> libraries(InputStream list) {
        if (list == null) {
            return List.of();
        }
        try (list) {
            return new String(list.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(String::strip)
                    .filter(line -> line.startsWith("("))
                    .sorted(String.CASE_INSENSITIVE_ORDER)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
