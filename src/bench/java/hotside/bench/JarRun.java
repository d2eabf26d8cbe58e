// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

/** Runs a main class on the packaged jar in a fresh JVM and reads what it tells. */
final class JarRun {
    /** What a run told, by name, and when it told it: seconds from the start of its process. */
    record Told(Map<String, Double> value, Map<String, Double> after) {
        double get(String name) throws IOException {
            Double told = value.get(name);
            if (told == null) {
                throw new IOException("the run did not tell " + name);
            }
            return told;
        }
    }

    private final Path program;
    private final Path bench;

    /**
     * @param build holds {@code hotside.jar}; what measures is put into a jar beside it, since the
     *     JVM lays out no classes of folders
     */
    JarRun(Path build) throws IOException {
        this.program = build.resolve("hotside.jar");
        this.bench = build.resolve("bench.jar");
        Path classes = build.resolve("test-classes");
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(bench));
                Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = classes.relativize(file).toString().replace('\\', '/');
                out.putNextEntry(new ZipEntry(name));
                Files.copy(file, out);
                out.closeEntry();
            }
        }
    }

    /**
     * @param main the class to run
     * @param options for the JVM
     * @return its lines of the form {@code name value}
     * @throws IOException if it ends badly, with the end of what it complained of
     */
    Told run(Class<?> main, List<String> options) throws IOException {
        Path complaints = Files.createTempFile("hotside-bench", ".txt");
        try {
            long start = System.nanoTime();
            Process process =
                    new ProcessBuilder(command(main, options))
                            .redirectError(complaints.toFile())
                            .start();
            Told told = new Told(new LinkedHashMap<>(), new LinkedHashMap<>());
            try (BufferedReader lines = process.inputReader()) {
                for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                    String[] words = line.split(" ");
                    told.value.put(words[0], Double.valueOf(words[1]));
                    told.after.put(words[0], (System.nanoTime() - start) / 1e9);
                }
            }
            if (process.waitFor() != 0) {
                throw new IOException(last(Files.readAllLines(complaints)));
            }
            return told;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        } finally {
            Files.delete(complaints);
        }
    }

    private List<String> command(Class<?> main, List<String> options) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.add("-cp");
        command.add(program + File.pathSeparator + bench);
        command.add(main.getName());
        return command;
    }

    private static String last(List<String> lines) {
        return String.join(" | ", lines.subList(Math.max(0, lines.size() - 3), lines.size()));
    }
}
