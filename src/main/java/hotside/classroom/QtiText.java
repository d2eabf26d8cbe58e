// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.page.Html;
import hotside.problem.Variant;
import hotside.speech.Language;
import java.util.LinkedHashMap;
import java.util.Map;

/** What all exported items have in common: head, outcomes, feedback. */
final class QtiText {
    /** Adds a point to the score. */
    static final String POINT =
            "<qti-set-outcome-value identifier=\"SCORE\"><qti-sum><qti-variable identifier=\"SCORE\"/><qti-base-value"
                    + " base-type=\"float\">1</qti-base-value></qti-sum></qti-set-outcome-value>";

    private final Map<String, String> feedback = new LinkedHashMap<>();

    static String head(String id, Variant variant) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<qti-assessment-item xmlns=\""
                + QtiItem.NAMESPACE
                + "\" identifier=\""
                + id
                + "\" title=\""
                + Html.escape(variant.template().title())
                + "\" label=\"seed "
                + Long.toUnsignedString(variant.seed())
                + "\" xml:lang=\""
                + Language.spoken().code()
                + "\" adaptive=\"false\" time-dependent=\"false\">\n";
    }

    static String outcomes(int most) {
        return outcome("SCORE", "float", "single", "0")
                + outcome("MAXSCORE", "float", "single", String.valueOf(most))
                + outcome("FEEDBACK", "identifier", "multiple", "");
    }

    private static String outcome(String name, String type, String cardinality, String value) {
        String start =
                "<qti-outcome-declaration identifier=\""
                        + name
                        + "\" cardinality=\""
                        + cardinality
                        + "\" base-type=\""
                        + type
                        + "\"";
        return value.isEmpty()
                ? start + "/>\n"
                : start
                        + "><qti-default-value><qti-value>"
                        + value
                        + "</qti-value></qti-default-value></qti-outcome-declaration>\n";
    }

    /**
     * Shows a text.
     *
     * @param name unique in the item
     */
    String feedback(String name, String text) {
        feedback.put(name, text);
        return "<qti-set-outcome-value identifier=\"FEEDBACK\"><qti-multiple><qti-variable identifier=\"FEEDBACK\"/><qti-base-value base-type=\"identifier\">"
                + name
                + "</qti-base-value></qti-multiple></qti-set-outcome-value>";
    }

    /** The texts, and the end of the item. */
    String tail() {
        StringBuilder out = new StringBuilder();
        feedback.forEach(
                (name, text) ->
                        out.append(
                                "<qti-modal-feedback outcome-identifier=\"FEEDBACK\" identifier=\""
                                        + name
                                        + "\" show-hide=\"show\"><qti-content-body><p>"
                                        + Html.escape(text)
                                        + "</p></qti-content-body></qti-modal-feedback>\n"));
        return out.append("</qti-assessment-item>\n").toString();
    }
}
