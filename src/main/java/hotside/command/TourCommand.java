// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.ToIntBiFunction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Drives the real screens through the main job and takes pictures. */
@Command(
        name = "tour",
        description = "Pictures of every screen, without a display.",
        mixinStandardHelpOptions = true)
final class TourCommand implements Callable<Integer> {
    private final ToIntBiFunction<Path, Boolean> guide;

    @Option(
            names = "--to",
            required = true,
            paramLabel = "DIR",
            description = "where the pictures go")
    private Path to;

    @Option(names = "--whole", description = "every lesson from top to bottom, not its head alone")
    private boolean whole;

    TourCommand(ToIntBiFunction<Path, Boolean> guide) {
        this.guide = guide;
    }

    @Override
    public Integer call() {
        return guide.applyAsInt(to, whole);
    }
}
