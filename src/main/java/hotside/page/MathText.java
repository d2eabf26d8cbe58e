// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * MathML as one line of plain text, {@code F = (π/4) d_s² (p_u − p_d)}: for terminals, for the
 * plain reading view and as the text that stands for a formula where it cannot be drawn.
 */
final class MathText {
    private static final String SPACED = "=+−-±∓×·÷<>≤≥≠≈≡∼∝→⇒↔⇔∈∣∥⋅∗≪≫";
    private static final String HIGH_FROM = "0123456789+−=()ni";
    private static final String HIGH_TO = "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻⁼⁽⁾ⁿⁱ";
    private static final String LOW_FROM = "0123456789+−=()";
    private static final String LOW_TO = "₀₁₂₃₄₅₆₇₈₉₊₋₌₍₎";
    private static final Map<String, String> ACCENTS =
            Map.of(
                    "¯", "\u0304", "ˉ", "\u0304", "‾", "\u0304", ".", "\u0307", "¨", "\u0308", "^",
                    "\u0302", "~", "\u0303", "⃗", "\u20D7", "→", "\u20D7");

    private MathText() {}

    /** The text of well-formed MathML. */
    static String of(String mathml) {
        return Normalizer.normalize(row(Xml.parse(mathml)), Normalizer.Form.NFC).strip();
    }

    private static String text(Element e) {
        return switch (e.getTagName()) {
            case "mfrac" -> operand(child(e, 0)) + "/" + operand(child(e, 1));
            case "msqrt" -> "√" + enclosed(row(e));
            case "mroot" -> high(text(child(e, 1))) + "√" + operand(child(e, 0));
            case "msup" -> base(child(e, 0)) + high(text(child(e, 1)));
            case "msub" -> text(child(e, 0)) + low(text(child(e, 1)));
            case "msubsup", "munderover" ->
                    text(child(e, 0)) + low(text(child(e, 1))) + high(text(child(e, 2)));
            case "munder" -> text(child(e, 0)) + low(text(child(e, 1)));
            case "mover" -> over(e);
            case "mtable" -> joined(e, "; ");
            case "mtr" -> joined(e, " ");
            case "mspace" -> " ";
            case "mphantom", "annotation", "none", "mprescripts" -> "";
            case "mi", "mn", "mo", "mtext", "ms" -> token(e);
            default -> row(e);
        };
    }

    private static String token(Element e) {
        String text = e.getTextContent().replaceAll("[\u2061-\u2064]", "").replace('∗', '*');
        return e.getTagName().equals("mtext")
                ? text.replaceAll("[\\s\u00A0\u2000-\u200A]+", " ")
                : text;
    }

    private static String over(Element e) {
        String mark = text(child(e, 1)).strip();
        String base = text(child(e, 0));
        String accent = ACCENTS.get(mark);
        return accent == null
                ? base + high(mark)
                : base.length() == 1 ? base + accent : "(" + base + ")" + accent;
    }

    /** An element with its text, which is made once: making it again at each level doubles. */
    private record Part(Element element, String text) {
        boolean is(String tag) {
            return element.getTagName().equals(tag);
        }

        /** Large fractions come wrapped in their style. */
        boolean isFraction() {
            return is("mfrac")
                    || is("mstyle")
                            && children(element).size() == 1
                            && children(element).get(0).getTagName().equals("mfrac");
        }

        boolean isOperator() {
            return is("mo") && !text.isBlank() && (SPACED + ",;").contains(text.strip());
        }

        boolean isInfix() {
            return "infix".equals(element.getAttribute("form"));
        }

        boolean isBracket() {
            return is("mo") && "()[]|".contains(text);
        }

        /** A letter of a word or unit, or the Δ of a difference: it clings to the next. */
        boolean clingsTo(Part next) {
            boolean letters = isUpright() && next.isUpright();
            return letters || text.equals("Δ") && !next.text.startsWith("(");
        }

        private boolean isUpright() {
            return is("mi") && "normal".equals(element.getAttribute("mathvariant"));
        }
    }

    /** Children one after the other, with the spaces that a reader expects. */
    private static String row(Element e) {
        List<Part> parts =
                children(e).stream()
                        .map(child -> new Part(child, text(child)))
                        .filter(part -> !part.text.isEmpty())
                        .toList();
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            if (part.isOperator()) {
                operator(line, part);
            } else {
                String whole = isFactor(parts, i) ? "(" + part.text + ")" : part.text;
                // A fraction put in brackets still needs the gap that it would have without.
                boolean clings = i > 0 && parts.get(i - 1).clingsTo(part);
                line.append(!clings && needsGap(line, part.text) ? " " : "").append(whole);
            }
        }
        return line.toString().replaceAll(" {2,}", " ");
    }

    /** A fraction with something to be multiplied beside it: {@code (π/4) d²}. */
    private static boolean isFactor(List<Part> parts, int i) {
        return parts.get(i).isFraction() && (isOperand(parts, i, 1) || isOperand(parts, i, -1));
    }

    private static boolean isOperand(List<Part> parts, int from, int step) {
        int i = from + step;
        while (i >= 0 && i < parts.size() && parts.get(i).text.isBlank()) {
            i += step;
        }
        return i >= 0
                && i < parts.size()
                && !parts.get(i).isOperator()
                && !parts.get(i).isBracket();
    }

    private static void operator(StringBuilder line, Part part) {
        String text = part.text.strip();
        boolean mayBeSign = "+-−±∓".contains(text) && !part.isInfix();
        if (",;".contains(text)) {
            line.append(text).append(' ');
        } else if (mayBeSign && isSignPlace(line)) {
            line.append(text);
        } else {
            line.append(' ').append(text).append(' ');
        }
    }

    /** Two things side by side are multiplied; brackets need no gap inside. */
    private static boolean needsGap(StringBuilder line, String next) {
        if (line.isEmpty() || line.charAt(line.length() - 1) == ' ' || next.startsWith(" ")) {
            return false;
        }
        char before = line.charAt(line.length() - 1);
        char after = next.charAt(0);
        boolean operandBefore = isWordly(before) || ")]|⟯".indexOf(before) >= 0;
        boolean operandAfter = isWordly(after) || "√∑∏∫⟮".indexOf(after) >= 0;
        boolean bothDigits = Character.isDigit(before) && Character.isDigit(after);
        return operandBefore && operandAfter && !bothDigits
                || before == ')' && after == '('
                || HIGH_TO.indexOf(before) >= 0 && after == '(';
    }

    private static boolean isWordly(char c) {
        return Character.isLetterOrDigit(c)
                || Character.getType(c) == Character.NON_SPACING_MARK
                || HIGH_TO.indexOf(c) >= 0
                || LOW_TO.indexOf(c) >= 0;
    }

    /** True where an operator would be a sign: at the start, or after another one. */
    private static boolean isSignPlace(StringBuilder line) {
        String text = line.toString().stripTrailing();
        return text.isEmpty() || (SPACED + "(,[").indexOf(text.charAt(text.length() - 1)) >= 0;
    }

    /** What is raised; a place fills itself with brackets where it must. */
    private static String base(Element e) {
        String text = text(e);
        return text.length() == 1 ? text : enclosed(text);
    }

    private static String operand(Element e) {
        return enclosed(text(e));
    }

    /** In brackets unless it is one thing; around a place, that is settled when it is filled. */
    static String enclosed(String text) {
        String bare = text.strip();
        if (bare.length() == 1 && MathTemplate.isMarker(bare.charAt(0))) {
            return MathTemplate.MAYBE_OPEN + bare + MathTemplate.MAYBE_CLOSE;
        }
        return bare.length() <= 1 || isOneThing(bare) ? bare : "(" + bare + ")";
    }

    private static boolean isOneThing(String text) {
        String inner = text.startsWith("√") ? text.substring(1) : text;
        return isBracketed(inner)
                || inner.length() == 3 && inner.charAt(0) == MathTemplate.MAYBE_OPEN
                || inner.chars()
                        .allMatch(
                                c ->
                                        isWordly((char) c) && !MathTemplate.isMarker((char) c)
                                                || "_.°".indexOf(c) >= 0);
    }

    /** True if the first bracket closes at the end. */
    private static boolean isBracketed(String text) {
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            depth += text.charAt(i) == '(' ? 1 : text.charAt(i) == ')' ? -1 : 0;
            if (depth <= 0) {
                return i > 0 && i == text.length() - 1;
            }
        }
        return false;
    }

    private static String high(String text) {
        String raised = mapped(text, HIGH_FROM, HIGH_TO);
        return raised != null ? raised : text.equals("′") ? text : "^" + enclosed(text);
    }

    private static String low(String text) {
        String lowered = mapped(text, LOW_FROM, LOW_TO);
        if (lowered == null && text.matches("\\p{L}( [\\p{L}\\d])+")) {
            return low(text.replace(" ", "")); // one name, not a product of its letters
        }
        return lowered != null ? lowered : "_" + enclosed(text);
    }

    private static String mapped(String text, String from, String to) {
        StringBuilder out = new StringBuilder();
        for (char c : text.replace(" ", "").toCharArray()) {
            int at = from.indexOf(c);
            if (at < 0) {
                return null;
            }
            out.append(to.charAt(at));
        }
        return out.toString();
    }

    private static String joined(Element e, String between) {
        return String.join(between, children(e).stream().map(MathText::text).toList());
    }

    private static Element child(Element e, int index) {
        return children(e).get(index);
    }

    private static List<Element> children(Element e) {
        List<Element> list = new ArrayList<>();
        for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
            if (n instanceof Element element) {
                list.add(element);
            }
        }
        return list;
    }
}
