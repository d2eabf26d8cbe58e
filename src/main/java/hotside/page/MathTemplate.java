// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A formula set once, with places for values: TeX in which {@code @name} marks a place. Filling it
 * is string work of microseconds, so a calculator can show its working at every move of a slider.
 * Immutable.
 */
public final class MathTemplate {
    /**
     * Where a value goes.
     *
     * @param name after the {@code @}
     * @param raised true if a power follows
     */
    public record Place(String name, boolean raised) {}

    private static final Pattern NAME = Pattern.compile("@([A-Za-z][A-Za-z0-9]*)(\\s*\\^)?");

    /** While KaTeX sets the formula, the Hangul syllable number n stands for place n. */
    private static final char FIRST_MARKER = '가';

    private static final char LAST_MARKER = '힣';

    /** Brackets in plain text that vanish if one thing is put between them. */
    static final char MAYBE_OPEN = '⟮';

    static final char MAYBE_CLOSE = '⟯';

    private static final Pattern MAYBE = Pattern.compile("⟮([^⟮⟯]*)⟯");

    private static final Pattern LONE_MARKER = Pattern.compile("<mi(?: [^<>]*)?>([가-힣])</mi>");

    /** Text between places, one more than there are places, and which place comes after each. */
    private record Form(List<String> between, List<Integer> order) {
        static Form of(String marked) {
            List<String> between = new ArrayList<>();
            List<Integer> order = new ArrayList<>();
            int from = 0;
            for (int i = 0; i < marked.length(); i++) {
                if (isMarker(marked.charAt(i))) {
                    between.add(marked.substring(from, i));
                    order.add(marked.charAt(i) - FIRST_MARKER);
                    from = i + 1;
                }
            }
            between.add(marked.substring(from));
            return new Form(between, order);
        }

        String filled(MathPiece[] pieces, Function<MathPiece, String> kind) {
            StringBuilder out = new StringBuilder(1024);
            for (int i = 0; i < order.size(); i++) {
                out.append(between.get(i)).append(kind.apply(pieces[order.get(i)]));
            }
            return out.append(between.get(order.size())).toString();
        }
    }

    /** A formula, or a piece of one that may start a line, as markup and as plain text. */
    private record Part(Form markup, Form text) {
        static Part of(String mathml) {
            String markup = LONE_MARKER.matcher(mathml).replaceAll("$1");
            return new Part(Form.of(markup), Form.of(MathText.of(mathml)));
        }

        String mathml(MathPiece[] pieces) {
            return Maths.withText(markup.filled(pieces, MathPiece::mathml), plain(pieces));
        }

        String plain(MathPiece[] pieces) {
            return MAYBE.matcher(text.filled(pieces, MathPiece::plain))
                    .replaceAll(m -> Matcher.quoteReplacement(MathText.enclosed(m.group(1))));
        }
    }

    private final List<Place> places;
    private final Part whole;
    private final List<Part> parts;

    /**
     * @param tex with places
     * @param setting sets TeX as MathML
     */
    MathTemplate(String tex, Function<String, String> setting) {
        if (tex.chars().anyMatch(c -> isMarker((char) c))) {
            throw new MathsException("a formula with places cannot hold Hangul", 0);
        }
        List<Place> found = new ArrayList<>();
        String mathml = setting.apply(mark(tex, found));
        places = List.copyOf(found);
        whole = Part.of(mathml);
        parts = MathLine.pieces(mathml).stream().map(Part::of).toList();
    }

    /** The places, in the order of the TeX. */
    public List<Place> places() {
        return places;
    }

    /** The formula in MathML with each place filled. */
    public String fill(Function<Place, MathPiece> values) {
        return whole.mathml(pieces(values));
    }

    /** As {@link #fill}, in several elements if it is long; see {@link Maths#line}. */
    public String fillLine(Function<Place, MathPiece> values) {
        MathPiece[] pieces = pieces(values);
        return MathLine.isLong(whole.plain(pieces))
                ? parts.stream().map(part -> part.mathml(pieces)).collect(Collectors.joining(" "))
                : whole.mathml(pieces);
    }

    /** The formula as plain text with each place filled. */
    public String plain(Function<Place, MathPiece> values) {
        return whole.plain(pieces(values));
    }

    static boolean isMarker(char c) {
        return c >= FIRST_MARKER && c <= LAST_MARKER;
    }

    private MathPiece[] pieces(Function<Place, MathPiece> values) {
        return places.stream().map(values).toArray(MathPiece[]::new);
    }

    private static String mark(String tex, List<Place> found) {
        Matcher matcher = NAME.matcher(tex);
        StringBuilder out = new StringBuilder();
        while (matcher.find()) {
            boolean raised = matcher.group(2) != null;
            char marker = (char) (FIRST_MARKER + found.size());
            found.add(new Place(matcher.group(1), raised));
            matcher.appendReplacement(out, "{\\\\mathord{" + marker + "}}" + (raised ? "^" : ""));
        }
        return matcher.appendTail(out).toString();
    }
}
