// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.learner.OwnContent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Opens the desk, with a folder of one's own content if wanted. */
@Command(
        name = "desk",
        description = {
            "Opens the desk. With --content, lessons and problems of a folder of your own stand beside",
            "the shipped ones and are shown anew whenever a file is saved."
        },
        mixinStandardHelpOptions = true)
final class DeskCommand implements Callable<Integer> {
    private final Runnable desk;

    @Option(
            names = "--content",
            paramLabel = "DIR",
            description = "holds the folders lessons and problems, or one of them")
    private Path content;

    DeskCommand(Runnable desk) {
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
        desk.run();
        return CommandLineDoor.FINE;
    }
}
