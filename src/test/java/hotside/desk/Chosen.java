// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Dialogs that are answered at once. */
record Chosen(List<Path> files, Optional<Path> folder) implements Chooser {
    static final Chosen NOTHING = new Chosen(List.of(), Optional.empty());

    @Override
    public List<Path> files(String title) {
        return files;
    }

    @Override
    public Optional<Path> folder(String title) {
        return folder;
    }

    @Override
    public Optional<Path> save(String title, String name) {
        return folder.map(f -> f.resolve(name));
    }
}
