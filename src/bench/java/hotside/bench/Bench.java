// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

/** Measures everything and prints the table. It judges by the aims and never fails the build. */
public final class Bench {
    private final List<Measure> measures = new ArrayList<>();

    private Bench() {}

    /**
     * @param args the build's folder, with {@code hotside.jar} and {@code test-classes}; and the
     *     file of options that the desk is started with
     */
    public static void main(String[] args) throws Exception {
        JarRun jar = new JarRun(Path.of(args[0]));
        List<String> options = List.of("@" + args[1]);
        Bench bench = new Bench();
        bench.take("the start of the desk", () -> StartUp.measure(jar, options));
        bench.take("page turns and memory", () -> PageTurns.measure(jar, options));
        bench.take("an hour of use", () -> Hour.measure(jar, options));
        bench.take("tables", () -> TableRows.measure(jar));
        bench.take("variants", () -> VariantRate.measure(jar));
        bench.take("a long record", () -> LongRecord.measure(jar));
        bench.take("marking", () -> MarkingTime.measure(jar));
        bench.take("single calls", CallTimes::measure);
        bench.print(new PrintStream(System.out, true, StandardCharsets.UTF_8));
    }

    private void take(String what, Callable<List<Measure>> measuring) throws Exception {
        System.err.println("Measuring " + what + " ...");
        try {
            measures.addAll(measuring.call());
        } catch (IOException e) {
            measures.add(new Measure(what, "failed: " + e.getMessage(), "", "NO"));
        }
    }

    private void print(PrintStream out) {
        Measure head = new Measure("What", "Measured", "Aim", "Met");
        int what = head.what().length();
        int measured = head.measured().length();
        int aim = head.aim().length();
        for (Measure m : measures) {
            what = Math.max(what, m.what().length());
            measured = Math.max(measured, m.measured().length());
            aim = Math.max(aim, m.aim().length());
        }
        String line = "%-" + what + "s  %-" + measured + "s  %-" + aim + "s  %s";
        row(out, line, head);
        row(out, line, new Measure("-".repeat(what), "-".repeat(measured), "-".repeat(aim), "---"));
        measures.forEach(m -> row(out, line, m));
    }

    private static void row(PrintStream out, String line, Measure m) {
        out.println(String.format(line, m.what(), m.measured(), m.aim(), m.met()).stripTrailing());
    }
}
