// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Writes CSV by RFC 4180 that no spreadsheet takes for formulas (CWE-1236): a text that begins like
 * one gets a quote mark before it; a number stays a number.
 */
public final class CsvText {
    private static final String DANGEROUS = "=+-@\t\r\n|%";
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?([eE][-+]?\\d+)?");

    private final Appendable out;

    public CsvText(Appendable out) {
        this.out = out;
    }

    /** Writes one row and its CRLF. */
    public void row(List<?> cells) {
        try {
            for (int i = 0; i < cells.size(); i++) {
                out.append(i == 0 ? "" : ",").append(cell(String.valueOf(cells.get(i))));
            }
            out.append("\r\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String cell(String text) {
        String safe = guarded(text);
        boolean quoted =
                !safe.equals(text) || safe.chars().anyMatch(c -> ",\"\r\n".indexOf(c) >= 0);
        return quoted ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }

    static String guarded(String text) {
        String seen = text.stripLeading();
        boolean dangerous =
                !text.isEmpty() && DANGEROUS.indexOf(text.charAt(0)) >= 0
                        || !seen.isEmpty() && DANGEROUS.indexOf(seen.charAt(0)) >= 0
                        || text.startsWith("'");
        return dangerous && !NUMBER.matcher(text).matches() ? "'" + text : text;
    }

    /** Takes back what {@link #guarded} put before a text. */
    static String unguarded(String text) {
        return text.startsWith("'") && !guarded(text.substring(1)).equals(text.substring(1))
                ? text.substring(1)
                : text;
    }
}
