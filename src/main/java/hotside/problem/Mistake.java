// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.unit.Numbers;
import java.util.Optional;

/**
 * A mistake that learners make in a problem: one slip at one place of its chain.
 *
 * @param slip what is done wrong
 * @param at the place where the value is spoilt: a given or {@code use.slot}
 * @param with the place of another value that the slip needs, if it does
 * @param factor a number that the slip needs, 1 otherwise
 * @param ifText in place of the slip's own wording after "what you would get if"
 * @param checkText in place of the slip's own advice after "check"
 * @param world what the world would look like if the wrong number were true; {@code {value}} stands
 *     for it
 */
public record Mistake(
        Slips slip,
        String at,
        Optional<String> with,
        double factor,
        Optional<String> ifText,
        Optional<String> checkText,
        Optional<String> world)
        implements NamedMistake {

    /**
     * How verdicts and records call it: the slip and the place, such as {@code
     * gauge-as-absolute@push.upstream}, and what else tells it from its like: {@code
     * taken-instead@push.downstream=p4}, {@code factor@push.force=2}.
     */
    @Override
    public String id() {
        String more =
                slip.needsOther() && with.isPresent()
                        ? "=" + with.get()
                        : slip.needsWords() ? "=" + Numbers.plain(factor) : "";
        return slip.id() + "@" + at + more;
    }

    /** The same where another language than that of its own words is spoken: they are quoted. */
    Mistake quoted() {
        return new Mistake(
                slip,
                at,
                with,
                factor,
                ifText.map(text -> ProblemWords.of("mistake.quoted-if", text)),
                checkText.map(text -> ProblemWords.of("mistake.quoted-check", text)),
                world);
    }
}
