// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.Supplier;

/**
 * Formulas that are already set. One book is made when the program is packed ({@link FormulaPress})
 * and lies beside its jar, so that the desk opens without a script engine; whatever is not in it is
 * set as ever. Tests run without the book.
 */
final class FormulaBook {
    private static final String RESOURCE = "/hotside/formulas.txt";

    /** Stands for the end of a line inside a formula; a formula that has one itself is left out. */
    private static final char LINE_END = '\u21B5';

    private final Map<String, String> mathml;
    private final boolean open;

    private FormulaBook(Map<String, String> mathml, boolean open) {
        this.mathml = mathml;
        this.open = open;
    }

    /** A book that writes down every formula it is asked for. */
    static FormulaBook open() {
        return new FormulaBook(new ConcurrentSkipListMap<>(), true);
    }

    /** The book that lies beside the program; an empty one if there is none. */
    static FormulaBook shipped() {
        return Shipped.BOOK;
    }

    /** A book as {@link #write} wrote it. */
    static FormulaBook read(Reader text) throws IOException {
        Map<String, String> mathml = new HashMap<>();
        BufferedReader lines = new BufferedReader(text);
        for (String key = lines.readLine(); key != null; key = lines.readLine()) {
            String set = lines.readLine();
            if (set == null) {
                throw new IOException("the book of formulas breaks off");
            }
            mathml.put(key.replace(LINE_END, '\n'), set.replace(LINE_END, '\n'));
        }
        return new FormulaBook(mathml, false);
    }

    /** Each formula on one line and its MathML on the next, in the order of the alphabet. */
    void write(Writer out) throws IOException {
        for (Map.Entry<String, String> entry : mathml.entrySet()) {
            if ((entry.getKey() + entry.getValue()).indexOf(LINE_END) < 0) {
                out.write(entry.getKey().replace('\n', LINE_END) + "\n");
                out.write(entry.getValue().replace('\n', LINE_END) + "\n");
            }
        }
    }

    boolean isEmpty() {
        return mathml.isEmpty();
    }

    /** The formula in MathML, from the book or else by {@code setting}. */
    String formula(String tex, boolean display, Supplier<String> setting) {
        String key = (display ? "block " : "inline ") + tex;
        return Optional.ofNullable(mathml.get(key)).orElseGet(() -> noted(key, setting.get()));
    }

    private String noted(String key, String set) {
        if (open) {
            mathml.put(key, set);
        }
        return set;
    }

    /** Read once, when first asked for. */
    private static final class Shipped {
        static final FormulaBook BOOK = book();

        private static FormulaBook book() {
            try (InputStream in = FormulaBook.class.getResourceAsStream(RESOURCE)) {
                return in == null
                        ? new FormulaBook(Map.of(), false)
                        : read(new InputStreamReader(in, StandardCharsets.UTF_8));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
