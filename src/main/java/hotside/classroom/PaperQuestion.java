// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One of a paper's questions.
 *
 * @param slot index of the problem
 * @param ask index of the question in it
 */
public record PaperQuestion(int slot, int ask) {
    private static final Pattern FIELD = Pattern.compile("paper-(\\d{1,3})-(\\d{1,3})");

    /** All questions of a set, in the order of the paper. */
    public static List<PaperQuestion> all(Regrader regrader) {
        List<PaperQuestion> questions = new ArrayList<>();
        for (int slot = 0; slot < regrader.set().items().size(); slot++) {
            for (int ask = 0; ask < regrader.template(slot).asks().size(); ask++) {
                questions.add(new PaperQuestion(slot, ask));
            }
        }
        return questions;
    }

    /** Its number as the paper has it: {@code 3}, or {@code 3.2} where a problem asks more. */
    public String number(Regrader regrader) {
        return (slot + 1) + (regrader.template(slot).asks().size() > 1 ? "." + (ask + 1) : "");
    }

    /** Name of its field. */
    public String field() {
        return "paper-" + slot + "-" + ask;
    }

    /** The question whose field bears this name. */
    public static Optional<PaperQuestion> of(String field) {
        Matcher matcher = FIELD.matcher(field);
        return matcher.matches()
                ? Optional.of(
                        new PaperQuestion(
                                Integer.parseInt(matcher.group(1)),
                                Integer.parseInt(matcher.group(2))))
                : Optional.empty();
    }
}
