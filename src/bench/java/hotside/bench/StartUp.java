// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

import hotside.desk.DeskOpening;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** From the start of the process until the first lesson stands on the screen. */
final class StartUp {
    private static final int RUNS = 5;
    private static final double AIM_SECONDS = 1.5;

    private StartUp() {}

    static List<Measure> measure(JarRun jar) throws IOException {
        try (Scratch scratch = new Scratch()) {
            open(jar, scratch.folder()); // unpacks native libraries, starts the record
            List<JarRun.Told> runs = new ArrayList<>();
            for (int i = 0; i < RUNS; i++) {
                runs.add(open(jar, scratch.folder()));
            }
            return told(runs);
        }
    }

    private static JarRun.Told open(JarRun jar, Path record) throws IOException {
        return jar.run(DeskOpening.class, List.of("-Dhotside.data=" + record));
    }

    private static List<Measure> told(List<JarRun.Told> runs) {
        double[] all = times(runs, DeskOpening.PAINTED);
        List<Measure> told = new ArrayList<>();
        told.add(
                Measure.atMost(
                                "JVM start to first lesson painted, median of " + RUNS,
                                Samples.median(all),
                                AIM_SECONDS,
                                "%.2f s")
                        .also(
                                String.format(
                                        Locale.ROOT,
                                        " (%.2f to %.2f)",
                                        Samples.share(all, 0.01),
                                        Samples.share(all, 1))));
        for (String mark : DeskOpening.MARKS) {
            double after = Samples.median(times(runs, mark));
            told.add(Measure.told("    " + mark.replace('-', ' ') + " after", after, "%.2f s"));
        }
        return told;
    }

    private static double[] times(List<JarRun.Told> runs, String mark) {
        return runs.stream().mapToDouble(run -> run.after().get(mark)).toArray();
    }
}
