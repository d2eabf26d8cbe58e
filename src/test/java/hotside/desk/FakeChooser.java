// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Answers for the person. */
final class FakeChooser implements Chooser, Consent {
    Optional<Path> file = Optional.empty();
    boolean yes;
    String asked = "";
    String suggested = "";

    @Override
    public List<Path> files(String title) {
        return file.stream().toList();
    }

    @Override
    public Optional<Path> folder(String title) {
        return Optional.empty();
    }

    @Override
    public Optional<Path> save(String title, String name) {
        suggested = name;
        return file;
    }

    @Override
    public boolean to(String title, String question) {
        asked = question;
        return yes;
    }
}
