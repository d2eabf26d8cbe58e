// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.apache.commons.csv.CSVFormat;

/**
 * Answers as a table for a spreadsheet: RFC 4180, UTF-8, a decimal point. A text that a spreadsheet
 * would take for a formula gets an apostrophe in front; a number is left as it is.
 */
public final class AttemptCsv {
    private static final String FORMULA_STARTS = "=+-@\t\r";

    private static final Object[] HEADER = {
        "time",
        "problem",
        "seed",
        "units",
        "question",
        "answer",
        "verdict",
        "mistake",
        "right",
        "hints",
        "seconds",
        "lesson",
        "way"
    };

    private AttemptCsv() {}

    /** Writes a header and a line for each answer. The writer is flushed, not closed. */
    public static void write(List<Attempt> attempts, Writer out) throws IOException {
        line(out, HEADER);
        for (Attempt a : attempts) {
            line(
                    out,
                    a.time(),
                    safe(a.problem()),
                    safe(a.seed()),
                    safe(a.unitSystem()),
                    a.ask() + 1,
                    safe(a.answer()),
                    safe(a.verdict()),
                    safe(a.mistake()),
                    a.correct(),
                    a.hints(),
                    a.seconds(),
                    safe(a.lesson()),
                    a.way().id());
        }
        out.flush();
    }

    private static void line(Writer out, Object... cells) throws IOException {
        out.write(CSVFormat.RFC4180.format(cells));
        out.write("\r\n");
    }

    /** The text as it may stand in a cell; empty for null. */
    static String safe(String text) {
        if (text == null || text.isEmpty()) {
            return "";
        }
        boolean formula = FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
        return formula && !text.matches("[+-]?\\d+(\\.\\d+)?([eE][+-]?\\d+)?") ? "'" + text : text;
    }
}
