// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.problem.Marker;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.problem.Verdict;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A learner at work on a set: what may be answered, and what may be told when. */
public final class AtWork {
    private final ProblemSet set;
    private final Draft draft;
    private final Regrader regrader;

    public AtWork(Draft draft, Regrader regrader) {
        this.set = regrader.set();
        this.draft = draft;
        this.regrader = regrader;
    }

    public Draft draft() {
        return draft;
    }

    /** The learner's own variant. */
    public Variant variant(int slot) {
        return regrader.variant(draft.learner(), slot);
    }

    /** True if the learner may be told now how answers were. */
    public boolean tells(Instant now) {
        return set.rules().feedback() == ProblemSet.Feedback.NOW
                || set.rules().due().map(due -> !now.isBefore(due)).orElse(true);
    }

    /** How many tries a problem has left; nothing if there is no limit. */
    public OptionalInt triesLeft(int slot) {
        int tries = set.rules().tries();
        return tries == 0 || set.rules().feedback() != ProblemSet.Feedback.NOW
                ? OptionalInt.empty()
                : OptionalInt.of(Math.max(0, tries - regrader.mark(draft, slot).tries()));
    }

    /**
     * Keeps answers, on the disk before this returns, and says what may be said of them now.
     *
     * @throws IllegalStateException if no try is left
     */
    public List<Optional<Verdict>> answer(int slot, List<String> answers, Instant now)
            throws IOException {
        OptionalInt left = triesLeft(slot);
        if (left.isPresent() && left.getAsInt() == 0) {
            throw new IllegalStateException(ClassWords.of("work.no-tries", (slot + 1)));
        }
        draft.answer(slot, answers, now);
        return told(slot, now);
    }

    /** What may be said now of the latest answers to a problem. */
    public List<Optional<Verdict>> told(int slot, Instant now) {
        List<String> answers = draft.answers(slot).orElse(List.of());
        return tells(now)
                ? Marker.mark(variant(slot), answers, draft.habit())
                : questions(slot, answers);
    }

    /**
     * Questions about units and spelling. They are asked of the same problem with other numbers, so
     * that they give nothing away.
     */
    private List<Optional<Verdict>> questions(int slot, List<String> answers) {
        Variant other =
                Variants.draw(
                        variant(slot).template(),
                        set.seed(draft.learner(), slot) + 1,
                        set.rules().units());
        return Marker.mark(other, answers, draft.habit()).stream()
                .map(v -> v.filter(AtWork::isQuestion))
                .toList();
    }

    private static boolean isQuestion(Verdict verdict) {
        return verdict.kind() == Verdict.Kind.ASK || verdict.kind() == Verdict.Kind.UNREADABLE;
    }

    /** The next hint of a problem, which is noted; nothing if there is none or hints are off. */
    public Optional<String> hint(int slot, Instant now) throws IOException {
        List<String> hints = set.rules().hints() ? variant(slot).template().hints() : List.of();
        int read = rung(slot);
        if (read >= hints.size()) {
            return Optional.empty();
        }
        draft.hint(slot, read + 1, now);
        return Optional.of(hints.get(read));
    }

    /** How many hints of a problem were read. */
    public int rung(int slot) {
        return draft.entries().stream()
                .filter(e -> e.slot() == slot)
                .mapToInt(e -> e instanceof Entry.Hinted hinted ? hinted.rung() : 0)
                .max()
                .orElse(0);
    }

    /** What stands in the answer fields of a problem, one text for each ask. */
    public List<String> typed(int slot) {
        int asks = variant(slot).template().asks().size();
        List<String> typed = new ArrayList<>(draft.fields(slot).orElse(List.of()));
        typed.addAll(Collections.nCopies(Math.max(0, asks - typed.size()), ""));
        return typed.subList(0, asks);
    }

    /** Problems with an ask that is not answered, by index. */
    public List<Integer> open() {
        List<Integer> open = new ArrayList<>();
        for (int slot = 0; slot < set.items().size(); slot++) {
            if (typed(slot).stream().anyMatch(String::isBlank)) {
                open.add(slot);
            }
        }
        return open;
    }

    /**
     * Hands in. What was typed and not yet given as an answer is given now, where a try is left.
     *
     * @return the receipt, which the instructor sees too
     */
    public String handIn(Path to, SigningKey key, Instant now) throws IOException {
        for (int slot = 0; slot < set.items().size(); slot++) {
            Optional<List<String>> fields = draft.fields(slot);
            boolean waiting = fields.isPresent() && !fields.equals(draft.answers(slot));
            if (waiting && triesLeft(slot).orElse(1) > 0) {
                draft.answer(slot, fields.get(), now);
            }
        }
        return draft.handIn(to, key, now);
    }
}
