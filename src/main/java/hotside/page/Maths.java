// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.speech.Language;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * TeX as MathML, the one form of a formula for screen, paper and export. Each formula carries its
 * plain text in {@code alttext}.
 *
 * <p>Safe to share between threads; make one and pass it on, because the engine inside takes half a
 * second to start, which happens at the first formula that is in no book or at {@link #warmUp}.
 * Formulas set before come from a memory of the last {@value #REMEMBERED}.
 */
public final class Maths {
    private static final int REMEMBERED = 2_000;

    private static final Pattern DECIMAL = Pattern.compile("(<mn>\\d+)\\.(\\d+</mn>)");

    private final FormulaBook book;
    private final Katex katex = new Katex();
    private final Map<String, String> inline = remembering();
    private final Map<String, String> line = remembering();
    private final Map<String, String> block = remembering();
    private final Map<String, String> plain = remembering();
    private final Map<String, MathTemplate> templates = remembering();

    /** Takes the formulas that come with the program from its book. */
    public Maths() {
        this(FormulaBook.shipped());
    }

    Maths(FormulaBook book) {
        this.book = book;
    }

    /** Starts the engine where there is no book; for a thread that runs while nobody waits. */
    public void warmUp() {
        if (book.isEmpty()) {
            katex.start();
        }
    }

    /**
     * A formula in a line of text.
     *
     * @throws MathsException if the TeX cannot be set; the message is for its writer
     */
    public String inline(String tex) {
        return remembered(inline, tex, t -> withText(set(t, false)));
    }

    /**
     * A formula in a line of text which, if it is long, may run on in the next line: several {@code
     * math} elements with spaces between, each but the first beginning with an operator.
     *
     * @throws MathsException if the TeX cannot be set; the message is for its writer
     */
    public String line(String tex) {
        return remembered(
                line,
                tex,
                t ->
                        MathLine.isLong(plain(t))
                                ? MathLine.pieces(set(t, false)).stream()
                                        .map(Maths::withText)
                                        .collect(Collectors.joining(" "))
                                : inline(t));
    }

    /**
     * A formula on a line of its own.
     *
     * @throws MathsException if the TeX cannot be set; the message is for its writer
     */
    public String block(String tex) {
        return remembered(block, tex, t -> withText(set(t, true)));
    }

    /** The formula as one line of plain text, such as {@code F = (π/4) d_s² (p_u − p_d)}. */
    public String plain(String tex) {
        return remembered(plain, tex, t -> MathText.of(inline(t)));
    }

    /**
     * A formula with places for values, marked {@code @name}.
     *
     * @throws MathsException if the TeX cannot be set
     */
    public MathTemplate template(String tex) {
        return remembered(templates, tex, t -> new MathTemplate(t, marked -> set(marked, false)));
    }

    private String set(String tex, boolean display) {
        return marked(book.formula(tex, display, () -> bare(katex.render(tex, display))));
    }

    /** TeX is written with a point; a reader sees the decimal mark of the language. */
    private static String marked(String mathml) {
        char mark = Language.spoken().decimalMark();
        return mark == '.' ? mathml : DECIMAL.matcher(mathml).replaceAll("$1" + mark + "$2");
    }

    /** Puts plain text into the opening tag. */
    static String withText(String mathml, String plain) {
        return "<math alttext=\"" + Xml.escape(plain) + "\"" + mathml.substring("<math".length());
    }

    private static String withText(String mathml) {
        return withText(mathml, MathText.of(mathml));
    }

    /**
     * The math element alone: without KaTeX's span, and without the TeX that some readers show. The
     * dot of a rate is a full stop, because the high dot would float a whole line over its letter
     * where a font has no table for formulas.
     */
    private static String bare(String html) {
        String math = html.substring(html.indexOf("<math"), html.lastIndexOf("</math>"));
        int annotation = math.lastIndexOf("<annotation");
        return math.substring(0, annotation)
                        .replaceFirst("<semantics>", "")
                        .replace("<mo>˙</mo>", "<mo>.</mo>")
                + "</math>";
    }

    /** Looks up without holding the engine, so a page in memory never waits for one being set. */
    private static <T> T remembered(Map<String, T> memory, String tex, Function<String, T> make) {
        String key = Language.spoken().decimalMark() + tex;
        T known = memory.get(key);
        if (known == null) {
            known = make.apply(tex);
            memory.put(key, known);
        }
        return known;
    }

    private static <T> Map<String, T> remembering() {
        return Collections.synchronizedMap(
                new LinkedHashMap<>(64, 0.75f, true) {
                    private static final long serialVersionUID = 1;

                    @Override
                    protected boolean removeEldestEntry(Map.Entry<String, T> eldest) {
                        return size() > REMEMBERED;
                    }
                });
    }
}
