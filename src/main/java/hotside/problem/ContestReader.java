// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.Channel;
import hotside.cell.Rig;
import hotside.cell.RigException;
import hotside.content.Fields;
import hotside.content.Findings;
import hotside.content.Place;
import hotside.content.ScalarNode;
import hotside.trial.PlanText;
import hotside.unit.Quantity;
import hotside.unit.Units;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads what a problem has compared in the cell, by which plan, and what makes a plan right. */
final class ContestReader {
    private static final Pattern LETTER = Pattern.compile("[A-F]");
    private static final int FEWEST_PARTS = 2;
    private static final Set<Channel> USUAL_LOG =
            EnumSet.of(
                    Channel.BOOST,
                    Channel.TURBINE_INLET_PRESSURE,
                    Channel.TURBINE_OUTLET_PRESSURE,
                    Channel.AMBIENT_TEMPERATURE);

    private final Fields fields;
    private final Findings findings;
    private final ChartReader charts;
    private final List<Given> givens;

    ContestReader(Fields fields, ChartReader charts, List<Given> givens) {
        this.fields = fields;
        this.findings = fields.findings();
        this.charts = charts;
        this.givens = givens;
    }

    /** A plan that the learner writes. */
    Task devise() {
        Optional<Contest> contest = contest();
        Set<String> letters = letters(contest);
        List<String> model = lines(letters);
        Fields right = fields.map("right");
        PlanWants wants = wants(right, letters);
        right.noOthers();
        return contest.<Task>map(c -> new Task.Devise(c, model, wants)).orElse(new Task.Work());
    }

    /** A comparison that was made by the plan of the file. */
    Task split() {
        Optional<Contest> contest = contest();
        Set<String> letters = letters(contest);
        List<String> plan = lines(letters);
        for (Given given : givens) {
            given.means()
                    .filter(
                            means ->
                                    !letters.isEmpty()
                                            && !letters.contains(means.part())
                                            && !means.isOfAll())
                    .ifPresent(
                            means ->
                                    findings.add(
                                            fields.place("givens"),
                                            given.name() + " are the means of " + means.part(),
                                            "one of " + String.join(", ", letters) + ", or all",
                                            ""));
        }
        if (givens.stream().noneMatch(given -> given.means().isPresent())) {
            findings.add(
                    fields.place("givens"),
                    "no given holds means of the pulls",
                    "such as powerA: {means: A, of: power, steps: 0.1 kW}",
                    "");
        }
        return contest.<Task>map(c -> new Task.Split(c, plan)).orElse(new Task.Work());
    }

    private static Set<String> letters(Optional<Contest> contest) {
        return contest.map(c -> c.parts().keySet()).orElse(Set.of());
    }

    private Optional<Contest> contest() {
        Fields trial = fields.map("trial");
        Optional<Rig> rig = charts.rig(trial);
        RigChange shared =
                rig.map(r -> charts.change(trial, "set", r, false))
                        .orElseGet(() -> ChartReader.skipped(trial));
        Map<String, Contest.Entry> parts = new LinkedHashMap<>();
        Fields map = trial.map("parts");
        for (String letter : map.names()) {
            Fields part = map.map(letter);
            if (!LETTER.matcher(letter).matches() || letter.charAt(0) != 'A' + parts.size()) {
                findings.add(
                        map.keyPlace(letter),
                        "a part is called \"" + letter + "\"",
                        "A, B … F, in this order",
                        "");
            }
            String say = part.text("say");
            RigChange change =
                    rig.map(r -> charts.change(part, "set", r, false))
                            .orElseGet(() -> ChartReader.skipped(part));
            part.noOthers();
            parts.put(letter, new Contest.Entry(say, change));
        }
        if (parts.size() < FEWEST_PARTS && trial.has("parts")) {
            findings.add(trial.place("parts"), parts.size() + " parts", "A and B at least", "");
        }
        Optional<double[]> band = trial.scalar("band").flatMap(this::band);
        trial.noOthers();
        return rig.isPresent() && band.isPresent() && parts.size() >= FEWEST_PARTS
                ? Optional.of(new Contest(rig.get(), shared, parts, band.get()[0], band.get()[1]))
                : Optional.empty();
    }

    private Optional<double[]> band(ScalarNode node) {
        try {
            return Optional.of(PlanText.band(node.text()));
        } catch (RigException e) {
            findings.add(node, e.what(), e.expected(), "");
            return Optional.empty();
        }
    }

    /** One text for each line of a plan; a given may stand for one. */
    private List<String> lines(Set<String> letters) {
        Fields plan = fields.map("plan");
        List<String> lines = new ArrayList<>();
        for (PlanLine line : PlanLine.values()) {
            Optional<ScalarNode> node = plan.scalar(line.id());
            String text = node.map(n -> n.text().strip()).orElse("");
            node.filter(n -> !isGiven(text) && !letters.isEmpty())
                    .flatMap(
                            n ->
                                    PlanDraft.trouble(
                                            line, text, letters, hotside.unit.UnitSystem.SI_SHOP))
                    .ifPresent(
                            what ->
                                    findings.add(
                                            node.get(), what.replaceFirst("\\.$", ""), "", ""));
            lines.add(text);
        }
        plan.noOthers();
        return lines;
    }

    private boolean isGiven(String text) {
        return givens.stream().anyMatch(given -> given.name().equals(text));
    }

    private PlanWants wants(Fields right, Set<String> letters) {
        List<String> pair = right.optionalWords("compare");
        boolean sound = pair.isEmpty() || pair.size() == 2 && letters.containsAll(pair);
        if (!sound && !letters.isEmpty()) {
            findings.add(
                    right.place("compare"),
                    "\"" + String.join(" ", pair) + "\" is no pair of parts",
                    "two letters out of " + String.join(", ", letters) + ", such as [A, B]",
                    "");
        }
        String boost = right.oneOf("boost", PlanWants.Boost.ids(), PlanWants.Boost.HELD.id());
        Optional<String> sees = amount(right, "sees", Quantity.POWER);
        Optional<String> time = amount(right, "time", Quantity.TIME);
        Set<Channel> log = EnumSet.noneOf(Channel.class);
        for (ScalarNode name : right.optionalScalars("log")) {
            charts.channel(name, Map.of()).ifPresent(log::add);
        }
        return new PlanWants(
                sound && pair.size() == 2 ? pair.get(0) : "A",
                sound && pair.size() == 2 ? pair.get(1) : "B",
                PlanWants.Boost.valueOf(boost.toUpperCase(java.util.Locale.ROOT)),
                sees,
                time,
                right.has("log") ? log : USUAL_LOG);
    }

    private Optional<String> amount(Fields right, String key, Quantity quantity) {
        Optional<ScalarNode> node = right.optionalScalar(key);
        if (node.isEmpty()) {
            return Optional.empty();
        }
        String text = node.get().text().strip();
        Place place = node.get().place();
        Optional<Given> given =
                givens.stream().filter(g -> g.name().equals(text) && !g.isRow()).findFirst();
        boolean fits =
                given.map(g -> g.quantity() == quantity)
                        .orElseGet(
                                () ->
                                        Literal.value(text, quantity, Units.STANDARD_ATMOSPHERE)
                                                .filter(v -> v > 0)
                                                .isPresent());
        if (!fits) {
            findings.add(
                    place,
                    "\"" + text + "\" is not " + Literal.a(quantity),
                    Literal.a(quantity) + " with its unit, or a given that is one",
                    "");
            return Optional.empty();
        }
        return Optional.of(text);
    }
}
