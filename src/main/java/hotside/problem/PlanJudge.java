// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.Channel;
import hotside.statistics.OrderBalance;
import hotside.trial.Appraisal;
import hotside.trial.Plan;
import hotside.trial.Remark;
import hotside.unit.Quantity;
import hotside.unit.Shown;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Judges a drafted plan by the truth of the cell: what is wrong with which of its lines. */
final class PlanJudge {
    /**
     * Something wrong.
     *
     * @param line where it is put right
     * @param id of the mistake
     * @param text whole sentences
     */
    record Fault(PlanLine line, String id, String text) {}

    private final Task.Devise task;
    private final Variant variant;
    private final PlanDraft draft;
    private final List<Fault> faults = new ArrayList<>();
    private final Map<PlanLine, String> good = new EnumMap<>(PlanLine.class);

    private PlanJudge(Variant variant, PlanDraft draft) {
        this.task = (Task.Devise) variant.template().task();
        this.variant = variant;
        this.draft = draft;
    }

    /**
     * @throws hotside.cell.RigException if the plan cannot be run
     */
    static PlanJudge of(Variant variant, PlanDraft draft) {
        PlanJudge judge = new PlanJudge(variant, draft);
        judge.time();
        if (judge.comparesWhatIsAsked()) {
            judge.byTruth();
        }
        return judge;
    }

    /** The plan that the file holds for right. */
    static PlanDraft model(Variant variant) {
        Task.Devise task = (Task.Devise) variant.template().task();
        return PlanDraft.read(
                model(task, variant), task.contest().parts().keySet(), variant.system());
    }

    /** Its lines with the variant's numbers. */
    static List<String> model(Task.Devise task, Variant variant) {
        return task.model().stream()
                .map(line -> variant.shown().getOrDefault(line, PlanDraft.spoken(line)))
                .toList();
    }

    List<Fault> faults() {
        return List.copyOf(faults);
    }

    /** What is well about a line, or nothing. */
    String good(PlanLine line) {
        return good.getOrDefault(line, "");
    }

    private void add(PlanLine line, String id, String text) {
        faults.add(new Fault(line, id, text));
    }

    private void time() {
        double all = (draft.warmUp() + draft.order().length()) * draft.interval();
        String takes = ProblemWords.of("plan.takes", Math.round(all / 60));
        Optional<Double> most = task.wants().time().map(t -> number(t, Quantity.TIME));
        if (most.isPresent() && all > most.get() * (1 + 1e-9)) {
            add(
                    PlanLine.INTERVAL,
                    "takes-too-long",
                    takes + " " + ProblemWords.of("plan.time", Math.round(most.get() / 60)));
        }
        good.put(PlanLine.INTERVAL, takes);
    }

    private double number(String text, Quantity quantity) {
        return ChartReader.value(text, quantity, variant.givens(), variant.ambient());
    }

    /** False if the order holds other parts than those that the question is about. */
    private boolean comparesWhatIsAsked() {
        Set<String> used = used();
        PlanWants wants = task.wants();
        if (used.contains(wants.before()) && used.contains(wants.after())) {
            return true;
        }
        if (used.size() < 2) {
            add(
                    PlanLine.ORDER,
                    "nothing-compared",
                    ProblemWords.of("plan.nothing-compared", String.join("", used)));
            return false;
        }
        List<String> letters = List.copyOf(used);
        Plan plan = task.contest().plan(draft, letters, variant.givens());
        int last = letters.size() - 1;
        List<String> changes = plan.changesInWords(last);
        String pair = ProblemWords.of("plan.against", letters.get(last), letters.get(0));
        String asked = ProblemWords.of("plan.against", wants.after(), wants.before());
        add(
                PlanLine.ORDER,
                changes.size() > 1 ? "two-changes" : "wrong-parts",
                changes.size() > 1
                        ? ProblemWords.of(
                                "plan.two-changes",
                                pair,
                                String.join(ProblemWords.of("plan.and"), changes),
                                asked)
                        : ProblemWords.of("plan.wrong-parts", asked, pair));
        return false;
    }

    private Set<String> used() {
        return draft.order()
                .chars()
                .sorted()
                .mapToObj(c -> String.valueOf((char) c))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private Appraisal appraisal(PlanDraft of) {
        Set<String> letters = new LinkedHashSet<>();
        letters.add(task.wants().before());
        letters.add(task.wants().after());
        of.order().chars().sorted().forEach(c -> letters.add(String.valueOf((char) c)));
        letters.removeIf(letter -> of.order().indexOf(letter.charAt(0)) < 0);
        Plan plan = task.contest().plan(of, List.copyOf(letters), variant.givens());
        return Appraisal.of(plan, 1, variant.system());
    }

    private void byTruth() {
        Appraisal appraisal = appraisal(draft);
        repeats(appraisal);
        Remark order = remark(appraisal, "order");
        if (order.kind() == Remark.Kind.MEND) {
            blame(order);
        }
        said(PlanLine.ORDER, order);
        good.put(PlanLine.WARM_UP, ProblemWords.of("plan.settled"));
        boost(remark(appraisal, "boost"));
        log();
        Remark change = remark(appraisal, "one change");
        if (change.kind() == Remark.Kind.MEND) {
            add(PlanLine.ORDER, "two-changes", change.text());
        }
    }

    private void said(PlanLine line, Remark remark) {
        if (remark.kind() != Remark.Kind.MEND) {
            good.merge(line, remark.text(), (a, b) -> a + " " + b);
        }
    }

    private static Remark remark(Appraisal appraisal, String topic) {
        return appraisal.remarks().stream()
                .filter(r -> r.topic().equals(topic))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("nothing is said of " + topic));
    }

    private void repeats(Appraisal appraisal) {
        Remark remark = remark(appraisal, "repeats");
        double resolution = appraisal.resolution();
        Optional<Double> sees = task.wants().sees().map(s -> number(s, Quantity.POWER));
        if (sees.isEmpty() || Double.isInfinite(resolution)) {
            if (remark.kind() == Remark.Kind.MEND) {
                add(PlanLine.ORDER, "too-few-pulls", remark.text());
            }
            said(PlanLine.ORDER, remark);
            return;
        }
        String text =
                ProblemWords.of(
                        "plan.sees",
                        shown(appraisal.scatter()),
                        shown(resolution),
                        shown(sees.get()));
        if (resolution > sees.get()) {
            add(PlanLine.ORDER, "too-few-pulls", text + " " + ProblemWords.of("plan.more-pulls"));
        } else {
            good.put(PlanLine.ORDER, text);
        }
    }

    private String shown(double watts) {
        return Shown.of(watts, Quantity.POWER, variant.system(), 3).text();
    }

    /** The line is to blame whose change alone would mend it; one that is unsound first. */
    private void blame(Remark remark) {
        PlanDraft model = model(variant);
        PlanDraft warm =
                new PlanDraft(
                        draft.order(),
                        Math.max(draft.warmUp(), model.warmUp()),
                        draft.interval(),
                        draft.hold(),
                        draft.log());
        PlanDraft turned =
                new PlanDraft(
                        model.order(), draft.warmUp(), draft.interval(), draft.hold(), draft.log());
        PlanDraft apart =
                new PlanDraft(
                        draft.order(),
                        draft.warmUp(),
                        Math.max(draft.interval(), model.interval()),
                        draft.hold(),
                        draft.log());
        if (isStraight() && warm.warmUp() > draft.warmUp() && isFair(warm)) {
            add(PlanLine.WARM_UP, "cold-cell", remark.text());
        } else if (isStraight() && apart.interval() > draft.interval() && isFair(apart)) {
            add(PlanLine.INTERVAL, "pulls-too-close", remark.text());
        } else if (!isStraight() || isFair(turned)) {
            add(PlanLine.ORDER, "order-lets-drift-in", remark.text());
        } else {
            add(PlanLine.WARM_UP, "cold-cell", remark.text());
        }
    }

    /** True if a steady drift falls out of the order. */
    private boolean isStraight() {
        String pair =
                draft.order()
                        .replaceAll("[^" + task.wants().before() + task.wants().after() + "]", "")
                        .replace(task.wants().before().charAt(0), '0')
                        .replace(task.wants().after().charAt(0), '1')
                        .replace('0', 'A')
                        .replace('1', 'B');
        return OrderBalance.of(pair).driftBias() == 0;
    }

    private boolean isFair(PlanDraft other) {
        return remark(appraisal(other), "order").kind() != Remark.Kind.MEND;
    }

    private void boost(Remark remark) {
        boolean held = draft.hold().isPresent();
        boolean logged = draft.log().contains(Channel.BOOST);
        boolean enough =
                remark.kind() != Remark.Kind.MEND
                        || switch (task.wants().boost()) {
                            case HELD -> false;
                            case LOGGED -> !held && logged;
                            case FREE -> true;
                        };
        if (enough) {
            good.put(PlanLine.HOLD, remark.text());
        } else {
            add(PlanLine.HOLD, held ? "boost-out-of-reach" : "boost-left-free", remark.text());
        }
    }

    private void log() {
        List<String> missing =
                task.wants().log().stream()
                        .filter(channel -> !draft.log().contains(channel))
                        .sorted()
                        .map(Channel::words)
                        .toList();
        if (missing.isEmpty()) {
            good.put(PlanLine.LOG, ProblemWords.of("plan.logged"));
        } else {
            add(
                    PlanLine.LOG,
                    "not-logged",
                    ProblemWords.of(
                            missing.size() == 1 ? "plan.not-logged.one" : "plan.not-logged.many",
                            String.join(", ", missing)));
        }
    }
}
