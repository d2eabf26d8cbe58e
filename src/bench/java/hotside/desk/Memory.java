// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What the whole process holds in memory, what is not the Java heap with it. */
final class Memory {
    private static final long MEGABYTE = 1 << 20;
    private static final Path STATUS = Path.of("/proc/self/status");

    private Memory() {}

    /** NaN where the system does not say. */
    static double residentMegabytes() throws IOException {
        if (!Files.exists(STATUS)) {
            return Double.NaN;
        }
        return Files.readAllLines(STATUS).stream()
                        .filter(line -> line.startsWith("VmRSS:"))
                        .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) * 1024)
                        .findFirst()
                        .orElse(Double.NaN)
                / MEGABYTE;
    }
}
