// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.logging.FileHandler;
import java.util.logging.Formatter;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;

/**
 * What the program did, for whoever mends it. Nothing a person typed is in it: places and classes
 * only, never a name, an answer, a file or the message of an exception.
 */
final class DeskLog implements AutoCloseable {
    /** Bytes a file; a full one makes way for the next. */
    static final int LIMIT = 200_000;

    static final int FILES = 3;

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss").withZone(ZoneOffset.UTC);

    private final Logger logger;

    private DeskLog(Logger logger) {
        this.logger = logger;
    }

    /** Where log and crash reports lie. */
    static Path folder(Path data) {
        return data.resolve("log");
    }

    /** Opens the log in the person's folder; where that cannot be written, nothing is logged. */
    static DeskLog open(Path data) {
        return open(data, LIMIT);
    }

    static DeskLog open(Path data, int limit) {
        Logger logger = Logger.getAnonymousLogger();
        logger.setUseParentHandlers(false);
        logger.setLevel(Level.INFO);
        try {
            Files.createDirectories(folder(data));
            // In a pattern, % has a meaning of its own.
            String pattern =
                    folder(data).toAbsolutePath().toString().replace("%", "%%") + "/hotside-%g.log";
            FileHandler file = new FileHandler(pattern, limit, FILES, true);
            file.setEncoding("UTF-8");
            file.setFormatter(new Lines());
            logger.addHandler(file);
        } catch (IOException e) {
            logger.setLevel(Level.OFF);
        }
        return new DeskLog(logger);
    }

    /**
     * Writes a line.
     *
     * @param what happened; nothing a person typed
     */
    void note(String what) {
        logger.info(what);
    }

    @Override
    public void close() {
        for (var handler : logger.getHandlers()) {
            handler.close();
            logger.removeHandler(handler);
        }
    }

    private static final class Lines extends Formatter {
        @Override
        public String format(LogRecord entry) {
            return TIME.format(entry.getInstant()) + "Z " + entry.getMessage() + "\n";
        }
    }
}
