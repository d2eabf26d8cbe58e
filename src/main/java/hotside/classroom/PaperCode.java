// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.content.Visible;
import hotside.page.Words;
import java.util.List;
import java.util.Optional;

/**
 * A code as somebody typed it off a paper. It has no check digit and needs none: of 32⁸ codes a
 * class has a few hundred, so a slip of the finger leads to no paper at all, and nearly always to
 * the one that was meant.
 *
 * @param whose the learner whose paper bears it, or who has it for an id
 * @param meant the only learner whose code is one slip away, if the code itself is nobody's
 * @param said what to tell if it is nobody's; empty if it is somebody's
 */
public record PaperCode(
        Optional<Roster.Learner> whose, Optional<Roster.Learner> meant, String said) {
    private static final int LETTERS = 8;
    private static final int LONGEST_SHOWN = 30;

    /** Reads a code in any case, with or without its hyphen. */
    public static PaperCode read(ProblemSet set, Roster roster, String typed) {
        Optional<Roster.Learner> whose = PaperAnswers.whose(set, roster, typed);
        if (whose.isPresent()) {
            return new PaperCode(whose, Optional.empty(), "");
        }
        String code = Hashes.readable(typed);
        String shown = Visible.cut(typed.strip(), LONGEST_SHOWN);
        List<Roster.Learner> near =
                roster.all().stream()
                        .filter(l -> isOneSlip(code, set.paperCode(l.id()).replace("-", "")))
                        .toList();
        if (near.size() == 1) {
            Roster.Learner meant = near.get(0);
            return new PaperCode(
                    Optional.empty(),
                    Optional.of(meant),
                    Words.of("class.paper-like", shown, set.paperCode(meant.id()), meant.shown()));
        }
        return new PaperCode(
                Optional.empty(),
                Optional.empty(),
                code.length() == LETTERS
                        ? Words.of("class.paper-unknown", shown, set.title())
                        : Words.of("class.paper-length", shown, LETTERS, code.length()));
    }

    /** One letter wrong, too few or too many, or two neighbours swapped. */
    static boolean isOneSlip(String typed, String code) {
        if (typed.length() == code.length()) {
            int first = firstDifference(typed, code);
            return typed.substring(first + 1).equals(code.substring(first + 1))
                    || first + 2 <= code.length()
                            && typed.charAt(first) == code.charAt(first + 1)
                            && typed.charAt(first + 1) == code.charAt(first)
                            && typed.substring(first + 2).equals(code.substring(first + 2));
        }
        String longer = typed.length() > code.length() ? typed : code;
        String shorter = typed.length() > code.length() ? code : typed;
        int first = firstDifference(longer, shorter);
        return longer.length() == shorter.length() + 1
                && longer.substring(first + 1).equals(shorter.substring(first));
    }

    private static int firstDifference(String one, String other) {
        int at = 0;
        while (at < one.length() - 1 && at < other.length() && one.charAt(at) == other.charAt(at)) {
            at++;
        }
        return at;
    }
}
