// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Where a person's record lies: in the place that the platform keeps for a program's data. */
public final class RecordFolder {
    /** System property that names another folder. */
    public static final String PROPERTY = "hotside.data";

    private RecordFolder() {}

    /** The folder for the person who runs the program; it need not exist yet. */
    public static Path usual() {
        return of(
                System.getProperty(PROPERTY),
                System.getProperty("os.name"),
                Path.of(System.getProperty("user.home")),
                System.getenv());
    }

    static Path of(String named, String platform, Path home, Map<String, String> environment) {
        if (named != null && !named.isBlank()) {
            return Path.of(named);
        }
        String os = platform.toLowerCase(Locale.ROOT);
        if (os.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Hotside");
        }
        if (os.startsWith("windows")) {
            return given(environment, "APPDATA", home.resolve("AppData").resolve("Roaming"))
                    .resolve("Hotside");
        }
        Path share = given(environment, "XDG_DATA_HOME", home.resolve(".local").resolve("share"));
        // The XDG Base Directory Specification has relative paths ignored.
        return (share.isAbsolute() ? share : home.resolve(".local").resolve("share"))
                .resolve("hotside");
    }

    private static Path given(Map<String, String> environment, String name, Path otherwise) {
        String value = environment.get(name);
        return value == null || value.isBlank() ? otherwise : Path.of(value);
    }
}
