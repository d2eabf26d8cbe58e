// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.nio.file.Path;
import java.util.Optional;

/** Answers for the person. */
final class FakeChooser implements Chooser {
    Optional<Path> file = Optional.empty();
    boolean yes;
    String asked = "";
    String suggested = "";

    @Override
    public Optional<Path> save(String name) {
        suggested = name;
        return file;
    }

    @Override
    public Optional<Path> open(String ending) {
        return file;
    }

    @Override
    public boolean confirm(String title, String question) {
        asked = question;
        return yes;
    }
}
