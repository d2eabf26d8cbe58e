// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.problem.Marker;
import hotside.problem.NoVariantException;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.problem.Verdict;
import hotside.unit.DecimalHabit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Marks work on one set from seeds and raw answers. Each variant is drawn once; those that all
 * learners share are kept. Safe for several threads.
 */
public final class Regrader {
    private static final int LONGEST_MINUTES = 20;

    private final ProblemSet set;
    private final List<Template> templates;
    private final Map<Integer, Variant> shared = new ConcurrentHashMap<>();

    /**
     * @throws RefusedException if this program cannot mark the set
     */
    public Regrader(ProblemSet set, ProblemBank bank) {
        this.set = set;
        this.templates = SetCheck.templates(set, bank);
    }

    public ProblemSet set() {
        return set;
    }

    /** The template of an item. */
    public Template template(int slot) {
        return templates.get(slot);
    }

    /**
     * A learner's variant of an item.
     *
     * @throws RefusedException {@link Reason#UNMARKABLE} if its seed gives no sound numbers
     */
    public Variant variant(String learner, int slot) {
        return set.rules().numbers() == ProblemSet.Numbers.SAME
                ? shared.computeIfAbsent(slot, s -> draw(learner, s))
                : draw(learner, slot);
    }

    private Variant draw(String learner, int slot) {
        try {
            return Variants.draw(templates.get(slot), set.seed(learner, slot), set.rules().units());
        } catch (NoVariantException e) {
            throw new RefusedException(
                    Reason.UNMARKABLE, ClassWords.of("set.no-numbers", (slot + 1), e.getMessage()));
        }
    }

    /** Marks a hand-in of this set. */
    MarkedHandIn mark(String source, HandIn in) {
        List<MarkedItem> items = new ArrayList<>();
        List<String> remarks = new ArrayList<>(remarks(in));
        double[] minutes = minutes(in);
        for (int slot = 0; slot < templates.size(); slot++) {
            int at = slot;
            List<Entry> entries = in.entries().stream().filter(e -> e.slot() == at).toList();
            items.add(item(slot, in.learner(), in.habit(), entries, minutes[slot], remarks));
        }
        return new MarkedHandIn(
                source,
                in.learner(),
                in.started(),
                in.finished(),
                in.key().fingerprint(),
                in.receipt(),
                items,
                remarks);
    }

    /** Marks what a draft holds for one item so far. */
    MarkedItem mark(Draft draft, int slot) {
        List<Entry> entries = draft.entries().stream().filter(e -> e.slot() == slot).toList();
        return item(slot, draft.learner(), draft.habit(), entries, 0, new ArrayList<>());
    }

    /** Marks answers that were typed in from paper, the same way. */
    public MarkedHandIn mark(
            String source,
            String learner,
            Map<Integer, List<String>> answers,
            DecimalHabit habit,
            Instant now) {
        List<MarkedItem> items = new ArrayList<>();
        for (int slot = 0; slot < templates.size(); slot++) {
            Entry entry = new Entry.Answered(now, slot, answers.getOrDefault(slot, List.of()));
            items.add(item(slot, learner, habit, List.of(entry), 0, new ArrayList<>()));
        }
        return new MarkedHandIn(source, learner, now, now, "", "", items, List.of());
    }

    /** From one thing done to the next counts for the next; a pause is no work. */
    private double[] minutes(HandIn in) {
        double[] minutes = new double[templates.size()];
        Instant last = in.started();
        for (Entry entry : in.entries()) {
            double gap = Duration.between(last, entry.at()).toSeconds() / 60.0;
            if (entry.slot() < minutes.length) {
                minutes[entry.slot()] += Math.max(0, Math.min(gap, LONGEST_MINUTES));
            }
            last = entry.at();
        }
        return minutes;
    }

    private List<String> remarks(HandIn in) {
        List<String> remarks = new ArrayList<>();
        Instant last = in.started();
        boolean back = false;
        for (Entry entry : in.entries()) {
            back |= entry.at().isBefore(last);
            last = entry.at();
        }
        if (back || in.finished().isBefore(last)) {
            remarks.add(ClassWords.of("remark.clock"));
        }
        if (in.entries().stream().anyMatch(e -> e.slot() >= set.items().size())) {
            remarks.add(ClassWords.of("remark.no-such"));
        }
        if (!set.rules().hints()
                && in.entries().stream().anyMatch(Entry.Hinted.class::isInstance)) {
            remarks.add(ClassWords.of("remark.hints"));
        }
        return remarks;
    }

    private MarkedItem item(
            int slot,
            String learner,
            DecimalHabit habit,
            List<Entry> entries,
            double minutes,
            List<String> remarks) {
        Variant variant = variant(learner, slot);
        Tries tries = new Tries(variant, habit);
        int rung = 0;
        for (Entry entry : entries) {
            if (entry instanceof Entry.Hinted hinted) {
                rung = Math.max(rung, hinted.rung());
            }
        }
        if (limited()) {
            entries.forEach(e -> tries.take(e, set.rules().tries()));
            if (tries.beyond) {
                remarks.add(ClassWords.of("remark.last-try", (slot + 1)));
            }
        } else {
            entries.stream()
                    .filter(Entry.Answered.class::isInstance)
                    .reduce((a, b) -> b)
                    .ifPresent(last -> tries.take(last, Integer.MAX_VALUE));
            tries.counted = (int) entries.stream().filter(Entry.Answered.class::isInstance).count();
        }
        return new MarkedItem(
                tries.answers,
                tries.verdicts,
                tries.counted,
                rung,
                minutes,
                set.items().get(slot).points(),
                variant.answers().stream().map(Variant.Answer::value).toList(),
                Optional.empty());
    }

    private boolean limited() {
        return set.rules().tries() > 0 && set.rules().feedback() == ProblemSet.Feedback.NOW;
    }

    /** Goes through a problem's answers in the order in which they were given. */
    private static final class Tries {
        private final Variant variant;
        private final DecimalHabit habit;
        private List<String> answers;
        private List<Optional<Verdict>> verdicts;
        private int counted;
        private boolean beyond;

        Tries(Variant variant, DecimalHabit habit) {
            this.variant = variant;
            this.habit = habit;
            int asks = variant.template().asks().size();
            answers = Collections.nCopies(asks, "");
            verdicts = Collections.nCopies(asks, Optional.empty());
        }

        void take(Entry entry, int most) {
            if (!(entry instanceof Entry.Answered answered)
                    || answered.answers().stream().allMatch(String::isBlank)) {
                return;
            }
            List<String> given = fitted(answered.answers());
            if (given.equals(answers)) {
                return;
            }
            if (counted >= most) {
                beyond = true;
                return;
            }
            answers = given;
            verdicts = Marker.mark(variant, given, habit);
            if (verdicts.stream().anyMatch(v -> v.map(x -> x.kind().counts()).orElse(false))) {
                counted++;
            }
        }

        private List<String> fitted(List<String> given) {
            List<String> fitted = new ArrayList<>();
            for (int i = 0; i < answers.size(); i++) {
                fitted.add(i < given.size() ? given.get(i) : "");
            }
            return fitted;
        }
    }
}
