// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lets a long formula run on in the next line. Browsers and paper do not break inside a {@code
 * math} element, so the formula becomes several, each but the first beginning with the operator
 * before which it was cut.
 */
final class MathLine {
    /** A formula of fewer characters fits in any line. */
    private static final int SHORT = 24;

    private static final int SHORTEST_PIECE = 6;

    private static final Set<String> BREAKS =
            Set.of("=", "≈", "≤", "≥", "<", ">", "+", "−", "±", "×");
    private static final Pattern WHOLE =
            Pattern.compile("<math([^>]*)><mrow>(.*)</mrow></math>", Pattern.DOTALL);
    private static final Pattern TAG = Pattern.compile("<(/?)([a-z]+)[^>]*?(/?)>");
    private static final Pattern OPERATOR = Pattern.compile("<mo(?: [^>]*)?>([^<]*)</mo>");

    private MathLine() {}

    /** The formula in pieces; itself alone where there is nowhere to cut. */
    static List<String> pieces(String mathml) {
        Matcher whole = WHOLE.matcher(mathml);
        if (!whole.matches()) {
            return List.of(mathml);
        }
        return cut(whole.group(2)).stream()
                .map(piece -> "<math" + whole.group(1) + "><mrow>" + piece + "</mrow></math>")
                .toList();
    }

    /** True if a formula with this plain text may need more than a line. */
    static boolean isLong(String plain) {
        return plain.length() >= SHORT;
    }

    /** Cuts before operators that stand between operands on the outermost level. */
    private static List<String> cut(String row) {
        List<String> pieces = new ArrayList<>();
        Matcher tag = TAG.matcher(row);
        int depth = 0;
        int from = 0;
        boolean operandBefore = false;
        while (tag.find()) {
            boolean closes = !tag.group(1).isEmpty();
            if (depth == 0 && !closes) {
                Matcher operator = OPERATOR.matcher(row).region(tag.start(), row.length());
                boolean isBreak = operator.lookingAt() && BREAKS.contains(operator.group(1));
                if (isBreak && operandBefore && isWorthALine(row.substring(from, tag.start()))) {
                    pieces.add(row.substring(from, tag.start()));
                    from = tag.start();
                }
                operandBefore = !operator.lookingAt() || ")]".contains(operator.group(1));
            }
            depth += closes ? -1 : tag.group(3).isEmpty() ? 1 : 0;
        }
        pieces.add(row.substring(from));
        return pieces.stream().map(MathLine::asInfix).toList();
    }

    /** A letter alone would look lost at the end of a line; a place will hold a number. */
    private static boolean isWorthALine(String piece) {
        String text = piece.replaceAll("<[^>]*>", "");
        return text.length() >= SHORTEST_PIECE
                || text.chars().anyMatch(c -> MathTemplate.isMarker((char) c));
    }

    /**
     * At the head of a row an operator would be taken for a sign and lose its space; the one before
     * it is the space between the pieces.
     */
    private static String asInfix(String piece) {
        Matcher operator = OPERATOR.matcher(piece);
        return operator.lookingAt() && BREAKS.contains(operator.group(1))
                ? "<mo form=\"infix\" lspace=\"0em\">"
                        + operator.group(1)
                        + "</mo>"
                        + piece.substring(operator.end())
                : piece;
    }
}
