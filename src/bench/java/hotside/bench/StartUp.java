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
    private static final double AIM_SECONDS = 1.2;

    private static final double AIM_PACKAGED_SECONDS = 1.0;

    private StartUp() {}

    /**
     * @param options as the program is started with by Maven and as a package
     */
    static List<Measure> measure(JarRun jar, List<String> options) throws IOException {
        try (Scratch scratch = new Scratch()) {
            Path record = scratch.folder();
            List<Measure> told = new ArrayList<>();
            told.addAll(
                    whole("JVM start to first lesson painted", AIM_SECONDS, jar, record, options));
            Path layout = record.resolve("classes.jsa");
            // What is said while they are laid out would stand among what is told.
            open(
                    jar,
                    record,
                    with(with(options, "-XX:ArchiveClassesAtExit=" + layout), "-Xlog:disable"));
            told.addAll(
                    whole(
                            "The same packaged, with its classes laid out",
                            AIM_PACKAGED_SECONDS,
                            jar,
                            record,
                            with(options, "-XX:SharedArchiveFile=" + layout)));
            List<JarRun.Told> plain = runs(jar, record, List.of());
            told.add(
                    Measure.told(
                            "The same by java -jar, without options",
                            Samples.median(times(plain, DeskOpening.PAINTED)),
                            "%.2f s"));
            return told;
        }
    }

    private static List<String> with(List<String> options, String another) {
        List<String> all = new ArrayList<>(options);
        all.add(another);
        return all;
    }

    private static List<JarRun.Told> runs(JarRun jar, Path record, List<String> options)
            throws IOException {
        open(jar, record, options); // unpacks native libraries, starts the record
        List<JarRun.Told> runs = new ArrayList<>();
        for (int i = 0; i < RUNS; i++) {
            runs.add(open(jar, record, options));
        }
        return runs;
    }

    private static JarRun.Told open(JarRun jar, Path record, List<String> options)
            throws IOException {
        return jar.run(DeskOpening.class, with(options, "-Dhotside.data=" + record));
    }

    private static List<Measure> whole(
            String what, double aim, JarRun jar, Path record, List<String> options)
            throws IOException {
        List<JarRun.Told> runs = runs(jar, record, options);
        double[] all = times(runs, DeskOpening.PAINTED);
        List<Measure> told = new ArrayList<>();
        told.add(
                Measure.atMost(what + ", median of " + RUNS, Samples.median(all), aim, "%.2f s")
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
