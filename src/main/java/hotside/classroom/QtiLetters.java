// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.page.Html;
import hotside.page.PaperSheet;
import hotside.problem.Answers;
import hotside.problem.Lettered;
import hotside.problem.Marker;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Verdict;
import hotside.unit.DecimalHabit;
import java.util.ArrayList;
import java.util.List;

/**
 * A variant whose answer is letters, as a QTI 3.0 item: a choice or an order. What is right is
 * asked of the tutor's own marker; each wrong choice of one has the tutor's own words.
 */
final class QtiLetters {
    /** So many orders are tried at most, and so many right ones listed. */
    private static final int MOST_ITEMS = 7;

    private static final int MOST_RIGHT = 60;
    private static final String RESPONSE = "RESPONSE1";

    private final String id;
    private final Variant variant;
    private final PaperSheet sheet;
    private final String pictures;
    private final QtiText text = new QtiText();

    QtiLetters(String id, Variant variant, PaperSheet sheet, String pictures) {
        this.id = id;
        this.variant = variant;
        this.sheet = sheet;
        this.pictures = pictures;
    }

    /** False for an order with so many right ones that a player could not be told them all. */
    static boolean fits(Variant variant) {
        return variant.template().kind() != Template.Kind.ORDER
                || variant.lettered().size() <= MOST_ITEMS && orders(variant).size() <= MOST_RIGHT;
    }

    String xml() {
        String processing = processing();
        StringBuilder out = new StringBuilder(QtiText.head(id, variant));
        out.append("<qti-response-declaration identifier=\"" + RESPONSE + "\" cardinality=\"")
                .append(cardinality())
                .append("\" base-type=\"identifier\"><qti-correct-response>");
        for (String letter : Answers.key(variant, 0).split(" ")) {
            out.append("<qti-value>").append(letter).append("</qti-value>");
        }
        out.append("</qti-correct-response></qti-response-declaration>\n")
                .append(QtiText.outcomes(1));
        return out.append(body()).append(processing).append(text.tail()).toString();
    }

    private String cardinality() {
        return switch (variant.template().kind()) {
            case ORDER -> "ordered";
            case SEVERAL -> "multiple";
            default -> "single";
        };
    }

    private String body() {
        boolean order = variant.template().kind() == Template.Kind.ORDER;
        String interaction = order ? "qti-order-interaction" : "qti-choice-interaction";
        StringBuilder out = new StringBuilder("<qti-item-body><div>");
        out.append(sheet.prompt(variant)).append("</div>\n").append(pictures);
        out.append(
                "<" + interaction + " response-identifier=\"" + RESPONSE + "\" shuffle=\"false\"");
        if (!order) {
            boolean several = variant.template().kind() == Template.Kind.SEVERAL;
            out.append(" max-choices=\"").append(several ? 0 : 1).append("\"");
        }
        out.append("><qti-prompt>")
                .append(Html.escape(variant.template().asks().get(0).phrase()))
                .append("</qti-prompt>\n");
        for (Lettered option : variant.lettered()) {
            out.append("<qti-simple-choice identifier=\"")
                    .append(option.letter())
                    .append("\">")
                    .append(Html.escape(option.text()))
                    .append("</qti-simple-choice>\n");
        }
        return out.append("</" + interaction + "></qti-item-body>\n").toString();
    }

    private String processing() {
        StringBuilder out = new StringBuilder("<qti-response-processing>\n");
        out.append("<qti-response-condition>\n<qti-response-if><qti-is-null>")
                .append(variable())
                .append("</qti-is-null>")
                .append(text.feedback("blank-1", ClassWords.of("export.nothing")))
                .append("</qti-response-if>\n");
        String right = text.feedback("right-1", said(Answers.key(variant, 0)));
        if (variant.template().kind() == Template.Kind.ORDER) {
            orders(variant).forEach(order -> branch(out, ordered(order), QtiText.POINT + right));
        } else {
            branch(out, "<qti-correct identifier=\"" + RESPONSE + "\"/>", QtiText.POINT + right);
        }
        if (cardinality().equals("single")) {
            variant.lettered().stream().filter(o -> !o.right()).forEach(o -> wrong(out, o));
        }
        out.append("<qti-response-else>")
                .append(text.feedback("wrong-1", ClassWords.of("export.wrong")))
                .append("</qti-response-else>\n</qti-response-condition>\n");
        return out.append("</qti-response-processing>\n").toString();
    }

    private void wrong(StringBuilder out, Lettered option) {
        branch(
                out,
                value(option.letter()),
                text.feedback("slip-1-" + option.letter(), said(option.letter())));
    }

    private static void branch(StringBuilder out, String other, String then) {
        out.append("<qti-response-else-if><qti-match>")
                .append(variable())
                .append(other)
                .append("</qti-match>")
                .append(then)
                .append("</qti-response-else-if>\n");
    }

    private static String ordered(List<String> letters) {
        StringBuilder out = new StringBuilder("<qti-ordered>");
        letters.forEach(letter -> out.append(value(letter)));
        return out.append("</qti-ordered>").toString();
    }

    private static String value(String letter) {
        return "<qti-base-value base-type=\"identifier\">" + letter + "</qti-base-value>";
    }

    private static String variable() {
        return "<qti-variable identifier=\"" + RESPONSE + "\"/>";
    }

    private String said(String answer) {
        return verdict(variant, answer).feedback();
    }

    private static Verdict verdict(Variant variant, String answer) {
        return Marker.mark(variant, List.of(answer), DecimalHabit.POINT).get(0).orElseThrow();
    }

    /** Every order that the tutor marks right. */
    private static List<List<String>> orders(Variant variant) {
        List<List<String>> right = new ArrayList<>();
        List<String> letters = variant.lettered().stream().map(Lettered::letter).toList();
        permute(variant, new ArrayList<>(), new ArrayList<>(letters), right);
        return right;
    }

    private static void permute(
            Variant variant, List<String> begun, List<String> left, List<List<String>> right) {
        if (right.size() > MOST_RIGHT) {
            return;
        }
        if (left.isEmpty()
                && verdict(variant, String.join(" ", begun)).kind() == Verdict.Kind.RIGHT) {
            right.add(List.copyOf(begun));
        }
        for (String next : List.copyOf(left)) {
            List<String> more = new ArrayList<>(begun);
            List<String> less = new ArrayList<>(left);
            more.add(next);
            less.remove(next);
            permute(variant, more, less, right);
        }
    }
}
