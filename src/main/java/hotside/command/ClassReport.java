// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.ClassResult;
import hotside.classroom.Discrimination;
import hotside.classroom.Fairness;
import hotside.classroom.ItemAnalysis;
import hotside.classroom.MarkedHandIn;
import hotside.classroom.MarkedItem;
import hotside.classroom.MistakeCount;
import hotside.classroom.ProblemSet;
import hotside.classroom.Roster;
import hotside.classroom.TeachAgain;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What a class did, for the terminal and for other programs. */
final class ClassReport {
    private ClassReport() {}

    static void print(ClassResult result, PrintWriter out) {
        ProblemSet set = result.regrader().set();
        out.println(set.title() + ": " + result.marked().size() + " marked.");
        if (!result.aside().isEmpty()) {
            out.println("\nSet aside:");
            result.aside()
                    .forEach(
                            a ->
                                    out.println(
                                            "  "
                                                    + a.source()
                                                    + (a.learner().isEmpty()
                                                            ? ""
                                                            : " (" + a.learner() + ")")
                                                    + ": "
                                                    + a.reason().word()
                                                    + ": "
                                                    + a.why()));
        }
        if (result.marked().isEmpty()) {
            return;
        }
        out.println();
        marks(result, out);
        out.println();
        items(result, out);
        mistakes(result, out);
        again(result, out);
        out.println(
                "\nThe seals show changes made after handing in. They cannot show who did the work, when, or with whose help.");
    }

    private static void marks(ClassResult result, PrintWriter out) {
        int slots = result.regrader().set().items().size();
        List<List<String>> rows = new ArrayList<>();
        List<String> head = new ArrayList<>(List.of("learner", "name"));
        for (int i = 0; i < slots; i++) {
            head.add(String.valueOf(i + 1));
        }
        head.addAll(List.of("points", "remarks"));
        rows.add(head);
        for (Roster.Learner learner : result.roster().all()) {
            Optional<MarkedHandIn> in = result.of(learner.id());
            List<String> row = new ArrayList<>(List.of(learner.id(), learner.name()));
            for (int i = 0; i < slots; i++) {
                int slot = i;
                row.add(
                        in.map(
                                        m ->
                                                number(m.items().get(slot).reached())
                                                        + star(m.items().get(slot)))
                                .orElse("-"));
            }
            row.add(in.map(m -> number(m.reached())).orElse("-"));
            row.add(
                    in.map(m -> String.join("; ", remarks(result, m)))
                            .orElse(nothing(result, learner)));
            rows.add(row);
        }
        TextTable.print(rows, out);
    }

    private static String nothing(ClassResult result, Roster.Learner learner) {
        return result.aside(learner)
                .map(a -> "nothing to mark; " + a.source() + " was set aside")
                .orElse("nothing to mark");
    }

    private static String star(MarkedItem item) {
        return item.byHand().isPresent() ? "*" : "";
    }

    private static List<String> remarks(ClassResult result, MarkedHandIn in) {
        List<String> remarks = new ArrayList<>();
        result.byHand(in).forEach(told -> remarks.add("* " + told));
        remarks.addAll(result.remarks(in));
        return remarks;
    }

    private static void items(ClassResult result, PrintWriter out) {
        ItemAnalysis analysis = result.analysis();
        List<List<String>> rows = new ArrayList<>();
        rows.add(
                List.of(
                        "problem",
                        "",
                        "share right",
                        "tells apart",
                        "minutes",
                        "tries",
                        "look at"));
        for (int i = 0; i < analysis.items().size(); i++) {
            ItemAnalysis.Item item = analysis.items().get(i);
            rows.add(
                    List.of(
                            String.valueOf(i + 1),
                            result.regrader().template(i).title(),
                            result.isSmall()
                                    ? soFar(result.full(i), analysis.learners())
                                    : percent(item.difficulty()) + plusMinus(item.standardError()),
                            told(item.discrimination()),
                            number(result.medianMinutes(i)),
                            number(result.medianTries(i)),
                            flags(item) + fairness(result, i)));
        }
        TextTable.print(rows, out);
        if (analysis.reliability().isPresent()) {
            double alpha = analysis.reliability().getAsDouble();
            out.println(
                    String.format(
                            Locale.ROOT,
                            "Reliability (alpha) %.2f; a total is uncertain by %.1f points.%s",
                            alpha,
                            analysis.error().getAsDouble(),
                            alpha < ItemAnalysis.RANKING
                                    ? " Do not rank learners by this set."
                                    : ""));
        } else {
            out.println(
                    "Reliability is not told: it needs ten learners, two problems and marks that differ.");
        }
    }

    private static String plusMinus(double error) {
        return Double.isFinite(error) ? String.format(Locale.ROOT, " ± %.0f %%", 100 * error) : "";
    }

    private static String told(Discrimination d) {
        return switch (d.trust()) {
            case NOT_DEFINED -> "not defined";
            case TOO_FEW -> "too few learners";
            case ROUGH ->
                    String.format(
                            Locale.ROOT,
                            "roughly %.2f (%.2f to %.2f)",
                            d.value(),
                            d.low(),
                            d.high());
            case FAIR ->
                    String.format(Locale.ROOT, "%.2f (%.2f to %.2f)", d.value(), d.low(), d.high());
        };
    }

    private static String flags(ItemAnalysis.Item item) {
        return String.join(
                ", ",
                item.flags().stream()
                        .map(
                                f ->
                                        switch (f) {
                                            case HARD -> "very hard";
                                            case EASY -> "very easy";
                                            case CHECK_THE_KEY -> "check the problem";
                                            case WEAK -> "tells little";
                                        })
                        .toList());
    }

    private static String fairness(ClassResult result, int slot) {
        if (result.regrader().set().rules().numbers() == ProblemSet.Numbers.SAME) {
            return "";
        }
        Fairness fairness = Fairness.of(result.marked(), slot);
        if (fairness.chance().isEmpty() || fairness.chance().getAsDouble() > 0.01) {
            return "";
        }
        return String.format(
                Locale.ROOT,
                " small numbers %.0f %% right, large %.0f %%",
                100 * fairness.low().share(),
                100 * fairness.high().share());
    }

    private static void mistakes(ClassResult result, PrintWriter out) {
        if (result.mistakes().isEmpty()) {
            return;
        }
        out.println("\nMistakes:");
        for (MistakeCount count : result.mistakes()) {
            out.println(
                    "  problem "
                            + (count.slot() + 1)
                            + ": "
                            + (result.isSmall()
                                    ? soFar(count.count(), count.answered())
                                    : count.count()
                                            + " of "
                                            + count.answered()
                                            + " ("
                                            + percent(count.share())
                                            + ")")
                            + " "
                            + (count.mistake().isEmpty()
                                    ? "like no known mistake"
                                    : count.mistake())
                            + ", as "
                            + String.join(
                                    "; ",
                                    count.examples().stream()
                                            .map(e -> e.learner() + ": " + shown(e.answer()))
                                            .toList()));
            if (!count.feedback().isEmpty()) {
                out.println("      told: " + count.feedback());
            }
        }
    }

    private static String shown(String answer) {
        return hotside.content.Visible.cut(answer, 40);
    }

    private static String soFar(int count, int of) {
        return "so far " + count + " of " + of;
    }

    private static void again(ClassResult result, PrintWriter out) {
        boolean small = result.isSmall();
        if (small) {
            out.println(
                    "\n"
                            + result.marked().size()
                            + " handed in: of fewer than ten, shares and indices say nothing of the class.");
        }
        if (result.again().isEmpty()) {
            out.println(small ? "Nothing to look at so far." : "\nNothing has to be taught again.");
            return;
        }
        out.println(small ? "To look at so far:" : "\nTeach again:");
        for (TeachAgain again : result.again()) {
            out.println(
                    "  "
                            + again.skill()
                            + (small
                                    ? ": "
                                            + soFar(again.falling(), again.learners())
                                            + " below three fifths of its points"
                                    : ": the class reached "
                                            + percent(again.share())
                                            + "; "
                                            + again.falling()
                                            + " of "
                                            + again.learners()
                                            + " below three fifths")
                            + (again.mistakes().isEmpty()
                                    ? ""
                                    : "; often: "
                                            + String.join(
                                                    ", ",
                                                    again.mistakes().stream()
                                                            .map(MistakeCount::mistake)
                                                            .distinct()
                                                            .toList())));
        }
    }

    private static List<Object> byHand(MarkedHandIn in) {
        List<Object> set = new ArrayList<>();
        for (int i = 0; i < in.items().size(); i++) {
            MarkedItem item = in.items().get(i);
            if (item.byHand().isPresent()) {
                set.add(
                        Json.object(
                                "problem", i + 1,
                                "points", item.reached(),
                                "workedOut", item.worked(),
                                "reason", item.byHand().get().reason()));
            }
        }
        return set;
    }

    static Map<String, Object> object(ClassResult result) {
        List<Object> marks = new ArrayList<>();
        for (MarkedHandIn in : result.marked()) {
            marks.add(
                    Json.object(
                            "learner", in.learner(),
                            "source", in.source(),
                            "receipt", in.receipt(),
                            "key", in.fingerprint(),
                            "points", in.reached(),
                            "problems", in.items().stream().map(i -> i.reached()).toList(),
                            "byHand", byHand(in),
                            "remarks", result.remarks(in)));
        }
        return Json.object(
                "set", result.regrader().set().id(),
                "edition", result.regrader().set().edition(),
                "of", result.regrader().set().points(),
                "marked", marks,
                "aside",
                        result.aside().stream()
                                .map(
                                        a ->
                                                Json.object(
                                                        "source", a.source(),
                                                        "learner", a.learner(),
                                                        "reason", a.reason().word(),
                                                        "why", a.why()))
                                .toList(),
                "problems", items(result),
                "reliability", boxed(result.analysis().reliability().orElse(Double.NaN)),
                "standardError", boxed(result.analysis().error().orElse(Double.NaN)),
                "mistakes",
                        result.mistakes().stream()
                                .map(
                                        m ->
                                                Json.object(
                                                        "problem",
                                                        m.slot() + 1,
                                                        "mistake",
                                                        m.mistake().isEmpty() ? null : m.mistake(),
                                                        "count",
                                                        m.count(),
                                                        "of",
                                                        m.answered(),
                                                        "share",
                                                        told(result, m.share())))
                                .toList(),
                "teachAgain",
                        result.again().stream()
                                .map(
                                        a ->
                                                Json.object(
                                                        "skill", a.skill(),
                                                        "below", a.falling(),
                                                        "of", a.learners(),
                                                        "share", told(result, a.share())))
                                .toList());
    }

    private static List<Object> items(ClassResult result) {
        List<Object> items = new ArrayList<>();
        for (int i = 0; i < result.analysis().items().size(); i++) {
            ItemAnalysis.Item item = result.analysis().items().get(i);
            items.add(
                    Json.object(
                            "problem", result.regrader().template(i).id(),
                            "allPoints", result.full(i),
                            "of", result.marked().size(),
                            "difficulty", told(result, item.difficulty()),
                            "discrimination", boxed(item.discrimination().value()),
                            "low", boxed(item.discrimination().low()),
                            "high", boxed(item.discrimination().high())));
        }
        return items;
    }

    /** Of a few learners no share is told, but how many of how many. */
    private static Double told(ClassResult result, double share) {
        return result.isSmall() ? null : boxed(share);
    }

    /** JSON has no word for what is not a number. */
    private static Double boxed(double value) {
        return Double.isFinite(value) ? Double.valueOf(value) : null;
    }

    private static String percent(double share) {
        return Double.isFinite(share) ? String.format(Locale.ROOT, "%.0f %%", 100 * share) : "-";
    }

    private static String number(double value) {
        if (!Double.isFinite(value)) {
            return "-";
        }
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceAll("\\.?0+$", "");
    }
}
