// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.learner.OwnContent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Opens the desk, with a folder of one's own content if wanted. */
@Command(
        name = "desk",
        description = {
            "Opens the desk. With --content, lessons and problems of a folder of your own stand beside",
            "the shipped ones and are shown anew whenever a file is saved."
        },
        mixinStandardHelpOptions = true)
final class DeskCommand implements Callable<Integer> {
    private final Consumer<Optional<Path>> desk;

    @Option(
            names = "--content",
            paramLabel = "DIR",
            description = "holds the folders lessons and problems, or one of them")
    private Path content;

    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "a problem set or a hand-in to open in the class place")
    private Path file;

    DeskCommand(Consumer<Optional<Path>> desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        if (content != null) {
            if (!Files.isDirectory(content)) {
                throw new UsageException("There is no folder " + content + ".");
            }
            System.setProperty(OwnContent.PROPERTY, content.toAbsolutePath().toString());
        }
        if (file != null && !Files.isRegularFile(file)) {
            throw new UsageException("There is no file " + file + ".");
        }
        desk.accept(Optional.ofNullable(file));
        return CommandLineDoor.FINE;
    }
}
