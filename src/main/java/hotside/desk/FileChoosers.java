// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** The system's own dialogs. */
final class FileChoosers implements Chooser {
    private final Supplier<Window> owner;

    FileChoosers(Supplier<Window> owner) {
        this.owner = owner;
    }

    @Override
    public List<Path> files(String title) {
        List<File> files = chooser(title).showOpenMultipleDialog(owner.get());
        return files == null ? List.of() : files.stream().map(File::toPath).toList();
    }

    @Override
    public Optional<Path> folder(String title) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        return Optional.ofNullable(chooser.showDialog(owner.get())).map(File::toPath);
    }

    @Override
    public Optional<Path> save(String title, String name) {
        FileChooser chooser = chooser(title);
        chooser.setInitialFileName(name);
        return Optional.ofNullable(chooser.showSaveDialog(owner.get())).map(File::toPath);
    }

    private static FileChooser chooser(String title) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        return chooser;
    }
}
