// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.page.Html;
import hotside.page.PaperSheet;
import hotside.problem.Answers;
import hotside.problem.Ask;
import hotside.problem.Marker;
import hotside.problem.Variant;
import hotside.problem.Verdict;
import hotside.unit.DecimalHabit;
import hotside.unit.Quantity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * One variant, its numbers frozen, as a QTI 3.0 assessment item: a text entry for each ask, the
 * unit printed beside it. Each entry is marked by itself; that an answer follows rightly from a
 * wrong earlier one, a QTI player cannot work out.
 */
final class QtiItem {
    static final String NAMESPACE = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";

    /** Slips closer than this, relatively, give one number. */
    private static final double TWINS = 1e-6;

    private final String id;
    private final Variant variant;
    private final PaperSheet sheet;
    private final String pictures;
    private final QtiText text = new QtiText();

    /**
     * @param id of the item, an XML name
     * @param pictures markup that shows the variant's charts
     */
    QtiItem(String id, Variant variant, PaperSheet sheet, String pictures) {
        this.id = id;
        this.variant = variant;
        this.sheet = sheet;
        this.pictures = pictures;
    }

    String xml() {
        String processing = processing();
        StringBuilder out = new StringBuilder(QtiText.head(id, variant));
        for (int i = 0; i < asks(); i++) {
            out.append(
                    "<qti-response-declaration identifier=\""
                            + response(i)
                            + "\" cardinality=\"single\" base-type=\"float\"><qti-correct-response><qti-value>"
                            + shown(i, variant.answers().get(i).value())
                            + "</qti-value></qti-correct-response></qti-response-declaration>\n");
        }
        return out.append(QtiText.outcomes(asks()))
                .append(body())
                .append(processing)
                .append(text.tail())
                .toString();
    }

    private String body() {
        StringBuilder out = new StringBuilder("<qti-item-body><div>");
        out.append(sheet.prompt(variant)).append("</div>\n").append(pictures);
        for (int i = 0; i < asks(); i++) {
            Ask ask = ask(i);
            String label = ask.scale(variant.system()).label();
            out.append("<p>")
                    .append(Html.escape(ask.phrase()))
                    .append(": <qti-text-entry-interaction response-identifier=\"")
                    .append(response(i))
                    .append("\" expected-length=\"12\"/> ")
                    .append(Html.escape(label))
                    .append("</p>\n");
        }
        return out.append("</qti-item-body>\n").toString();
    }

    private String processing() {
        StringBuilder out = new StringBuilder("<qti-response-processing>\n");
        for (int i = 0; i < asks(); i++) {
            out.append("<qti-response-condition>\n<qti-response-if><qti-is-null>")
                    .append(variable(i))
                    .append("</qti-is-null>")
                    .append(text.feedback("blank-" + (i + 1), ClassWords.of("export.no-number")))
                    .append("</qti-response-if>\n<qti-response-else-if>")
                    .append(
                            equal(
                                    i,
                                    variant.answers().get(i).band(),
                                    "<qti-correct identifier=\"" + response(i) + "\"/>"))
                    .append(QtiText.POINT)
                    .append(
                            text.feedback(
                                    "right-" + (i + 1),
                                    ClassWords.of("export.right", Answers.told(variant, i))))
                    .append("</qti-response-else-if>\n");
            slips(i, out);
            out.append("<qti-response-else>")
                    .append(text.feedback("wrong-" + (i + 1), ClassWords.of("export.wrong-number")))
                    .append("</qti-response-else>\n</qti-response-condition>\n");
        }
        return out.append("</qti-response-processing>\n").toString();
    }

    private void slips(int ask, StringBuilder out) {
        int number = 0;
        for (Variant.Slipped slip : variant.slips()) {
            String told = ask == slip.ask() ? told(slip) : "";
            if (!told.isEmpty()) {
                number++;
                out.append("<qti-response-else-if>")
                        .append(
                                equal(
                                        ask,
                                        apart(slip, band(ask, slip.value())),
                                        "<qti-base-value base-type=\"float\">"
                                                + shown(ask, slip.value())
                                                + "</qti-base-value>"))
                        .append(text.feedback("slip-" + (ask + 1) + "-" + number, told))
                        .append("</qti-response-else-if>\n");
            }
        }
    }

    /**
     * A player takes the first that fits, the tutor the nearest: so none reaches half-way to
     * another.
     */
    private double apart(Variant.Slipped slip, double band) {
        return variant.slips().stream()
                .filter(other -> other.ask() == slip.ask())
                .mapToDouble(other -> Math.abs(other.value() - slip.value()))
                .filter(distance -> distance > TWINS * Math.abs(slip.value()))
                .map(distance -> distance / 2)
                .reduce(band, Math::min);
    }

    /** What the tutor says to the number of a slip; empty if it does not take it for one. */
    private String told(Variant.Slipped slip) {
        List<String> answers = new ArrayList<>(Collections.nCopies(slip.ask() + 1, ""));
        answers.set(slip.ask(), Answers.told(variant, slip.ask(), slip.value()));
        return Marker.mark(variant, answers, DecimalHabit.spoken())
                .get(slip.ask())
                .filter(v -> v.kind() == Verdict.Kind.MISTAKE)
                .map(Verdict::feedback)
                .orElse("");
    }

    /** Absolute, because a relative band would lie about the answer given and not the right one. */
    private String equal(int ask, double band, String other) {
        double value = variant.answers().get(ask).value();
        double half = Math.abs(number(ask, value + band) - number(ask, value));
        return "<qti-equal tolerance-mode=\"absolute\" tolerance=\""
                + half
                + " "
                + half
                + "\">"
                + variable(ask)
                + other
                + "</qti-equal>";
    }

    private static String variable(int ask) {
        return "<qti-variable identifier=\"" + response(ask) + "\"/>";
    }

    private static String response(int ask) {
        return "RESPONSE" + (ask + 1);
    }

    private String shown(int ask, double si) {
        return String.valueOf(number(ask, si));
    }

    private double number(int ask, double si) {
        Quantity quantity = ask(ask).quantity();
        return ask(ask).scale(variant.system()).fromSi(si, quantity, variant.ambient());
    }

    private double band(int ask, double value) {
        return variant.figures().isEmpty()
                ? ask(ask).tolerance().band(value)
                : variant.answers().get(ask).band();
    }

    private Ask ask(int i) {
        return variant.template().asks().get(i);
    }

    private int asks() {
        return variant.template().asks().size();
    }
}
