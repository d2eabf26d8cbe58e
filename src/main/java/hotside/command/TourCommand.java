// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.command.CommandLineDoor.TourLength;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.ToIntBiFunction;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Drives the real screens through the main job and takes pictures. */
@Command(
        name = "tour",
        description = "Pictures of every screen, without a display.",
        mixinStandardHelpOptions = true)
final class TourCommand implements Callable<Integer> {
    private final ToIntBiFunction<Path, TourLength> guide;

    @Option(
            names = "--to",
            required = true,
            paramLabel = "DIR",
            description = "where the pictures go")
    private Path to;

    @ArgGroup(exclusive = true)
    private Length length = new Length();

    private static final class Length {
        @Option(
                names = "--first",
                description = "one lesson only: shows in seconds whether the desk can open here")
        private boolean first;

        @Option(
                names = "--whole",
                description = "every lesson from top to bottom, not its head alone")
        private boolean whole;

        private TourLength told() {
            return first ? TourLength.FIRST : whole ? TourLength.WHOLE : TourLength.PLACES;
        }
    }

    TourCommand(ToIntBiFunction<Path, TourLength> guide) {
        this.guide = guide;
    }

    @Override
    public Integer call() {
        return guide.applyAsInt(to, length.told());
    }
}
