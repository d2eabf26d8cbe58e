// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.RigException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Marks a test plan line by line; what it is worth only the whole plan tells. */
final class PlanMarker {
    private PlanMarker() {}

    static List<Optional<Verdict>> mark(Variant variant, List<String> answers) {
        Task.Devise task = (Task.Devise) variant.template().task();
        Set<String> letters = task.contest().parts().keySet();
        List<Optional<Verdict>> verdicts = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        for (PlanLine line : PlanLine.values()) {
            String text = line.ordinal() < answers.size() ? answers.get(line.ordinal()) : "";
            lines.add(text);
            verdicts.add(
                    text.isBlank()
                            ? Optional.empty()
                            : PlanDraft.trouble(line, text, letters, variant.system())
                                    .map(what -> said(Verdict.Kind.UNREADABLE, what))
                                    .or(PlanMarker::waits));
        }
        boolean whole = verdicts.stream().allMatch(v -> v.equals(waits()));
        return whole ? judged(variant, PlanDraft.read(lines, letters, variant.system())) : verdicts;
    }

    private static Optional<Verdict> waits() {
        return Optional.of(said(Verdict.Kind.ASK, ProblemWords.of("plan.waits")));
    }

    private static Verdict said(Verdict.Kind kind, String feedback) {
        return new Verdict(kind, Optional.empty(), Double.NaN, feedback);
    }

    private static List<Optional<Verdict>> judged(Variant variant, PlanDraft draft) {
        try {
            PlanJudge judge = PlanJudge.of(variant, draft);
            List<Optional<Verdict>> verdicts = new ArrayList<>();
            for (PlanLine line : PlanLine.values()) {
                verdicts.add(Optional.of(on(line, judge)));
            }
            return verdicts;
        } catch (RigException e) {
            Verdict trouble = said(Verdict.Kind.UNREADABLE, PlanDraft.sentence(e));
            return java.util.Collections.nCopies(PlanLine.values().length, Optional.of(trouble));
        }
    }

    private static Verdict on(PlanLine line, PlanJudge judge) {
        List<PlanJudge.Fault> its =
                judge.faults().stream().filter(fault -> fault.line() == line).toList();
        if (!its.isEmpty()) {
            String text = its.stream().map(PlanJudge.Fault::text).collect(Collectors.joining(" "));
            return new Verdict(
                    Verdict.Kind.MISTAKE, Optional.of(its.get(0).id()), Double.NaN, text);
        }
        // Of parts that are not those of the question nothing more can be said.
        String good = judge.good(line);
        return good.isEmpty()
                ? said(Verdict.Kind.ASK, ProblemWords.of("plan.more-once-asked"))
                : said(Verdict.Kind.RIGHT, good.strip());
    }
}
