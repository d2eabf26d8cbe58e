// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.Disturbance;
import hotside.cell.Rig;
import hotside.content.Fields;
import hotside.content.Findings;
import hotside.content.Nearest;
import hotside.content.Place;
import hotside.content.ScalarNode;
import hotside.relation.Chain;
import hotside.relation.Slot;
import hotside.unit.Quantity;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads what only some kinds have: statements, items, charts, plans. */
final class TaskReader {
    /** A task with what is asked in it. */
    record Asked(Task task, List<Ask> asks) {}

    static final String PLACE = "answer";

    private static final Pattern ID = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*+");
    private static final int LONGEST = 400;
    private static final int MOST_LETTERS = 8;

    /** An order that one try in so many hits by luck asks for nothing. */
    private static final int LUCK = 6;

    private final Fields fields;
    private final Findings findings;
    private final Chain chain;
    private final List<Given> givens;

    TaskReader(Fields fields, Chain chain, List<Given> givens) {
        this.fields = fields;
        this.findings = fields.findings();
        this.chain = chain;
        this.givens = givens;
    }

    /** True if a problem of this kind asks for no number of the working. */
    static boolean reads(Template.Kind kind, Fields fields) {
        return switch (kind) {
            case NUMBER, STEPS, SPLIT -> false;
            case CHOICE -> fields.has("options");
            default -> true;
        };
    }

    Asked read(Template.Kind kind) {
        return switch (kind) {
            case ORDER -> new Asked(order(), List.of(lettered()));
            case GRAPH -> graph();
            case FAULT -> new Asked(diagnose(), List.of(lettered()));
            case PLAN -> new Asked(contests().devise(), PlanLine.asks());
            default -> new Asked(judge(kind == Template.Kind.SEVERAL), List.of(lettered()));
        };
    }

    /** The pulls behind a problem that is worked like any other. */
    Task split() {
        return contests().split();
    }

    private ContestReader contests() {
        return new ContestReader(fields, new ChartReader(chain, givens, findings), givens);
    }

    /** The one question of a problem that is answered by letters. */
    private Ask lettered() {
        Optional<Fields> ask = only();
        String phrase = ask.map(a -> a.text("say")).orElse("");
        ask.ifPresent(Fields::noOthers);
        return ask(phrase, Quantity.FLAG);
    }

    private static Ask ask(String phrase, Quantity quantity) {
        return new Ask(
                PLACE,
                phrase,
                quantity,
                quantity.shown(UnitSystem.SI_SHOP),
                quantity.shown(UnitSystem.US_SHOP),
                Ask.Tolerance.USUAL);
    }

    private Optional<Fields> only() {
        List<Fields> asks = fields.maps("ask");
        if (asks.size() > 1) {
            findings.add(
                    fields.place("ask"),
                    "a problem of this kind asks " + asks.size() + " things",
                    "one",
                    "make several problems of it");
            asks.forEach(Fields::names);
        }
        return asks.size() == 1 ? Optional.of(asks.get(0)) : Optional.empty();
    }

    private Task.Judge judge(boolean several) {
        List<Fields> options = fields.maps("options");
        refuseCount("options", options.size(), several ? 2 : 3);
        List<Task.Statement> statements = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Fields option : options) {
            String say = text(option, "say");
            String because = text(option, "because");
            String id = id(option, "mistake", "option-" + (statements.size() + 1), ids);
            Condition holds = holds(option);
            option.noOthers();
            statements.add(new Task.Statement(id, say, holds, because));
        }
        refuseFixedAnswers(several, statements);
        return new Task.Judge(several, statements);
    }

    /** Statements that hold whatever the numbers are can be counted before any are drawn. */
    private void refuseFixedAnswers(boolean several, List<Task.Statement> statements) {
        long always = statements.stream().filter(s -> s.holds().equals(Condition.ALWAYS)).count();
        long never = statements.stream().filter(s -> s.holds().equals(Condition.never())).count();
        boolean none = !statements.isEmpty() && never == statements.size();
        boolean fault = several ? none || always == statements.size() : none || always > 1;
        if (fault) {
            findings.add(
                    fields.keyPlace("options"),
                    always + " of the " + statements.size() + " options hold",
                    several ? "at least one that holds and one that does not" : "exactly one",
                    several ? "" : "if several hold, write kind: several");
        }
    }

    private Condition holds(Fields option) {
        Optional<ScalarNode> when = option.optionalScalar("when");
        Optional<String> flag = option.optionalText("holds");
        if (when.isPresent() == flag.isPresent()) {
            findings.add(
                    option.place(),
                    flag.isPresent()
                            ? "an option with both holds and when"
                            : "an option that says neither whether nor when it holds",
                    "holds: yes, holds: no, or when: and a comparison such as \"small.drop > large.drop\"",
                    "");
            return Condition.ALWAYS;
        }
        if (flag.isPresent()) {
            return option.flag("holds", true) ? Condition.ALWAYS : Condition.never();
        }
        try {
            return Condition.read(when.get().text(), this::quantity);
        } catch (Condition.Unreadable e) {
            findings.add(when.get(), e.getMessage(), e.expected(), "");
            return Condition.ALWAYS;
        }
    }

    private Optional<Quantity> quantity(String place) {
        return givens.stream()
                .filter(given -> given.name().equals(place) && !given.isRow())
                .map(Given::quantity)
                .findFirst()
                .or(
                        () ->
                                chain.slotAt(place)
                                        .filter(slot -> slot.kind() == Slot.Kind.NUMBER)
                                        .map(Slot::quantity));
    }

    /** An order is told by rules, or by values of which the least or the most comes first. */
    private Task order() {
        if (!fields.has("first")) {
            return arrange();
        }
        List<String> places = new ArrayList<>(givens.stream().map(Given::name).toList());
        places.addAll(TemplateReader.places(chain));
        Task.Rank rank = new RankReader(fields, this::quantity, places).read();
        refuseCount("items", rank.items().size(), 3);
        return rank;
    }

    private Task.Arrange arrange() {
        Fields map = fields.map("items");
        List<Task.Item> items = new ArrayList<>();
        for (String id : map.names()) {
            items.add(new Task.Item(id, text(map, id)));
        }
        refuseCount("items", items.size(), 3);
        List<String> ids = items.stream().map(Task.Item::id).toList();
        List<Task.Rule> rules = new ArrayList<>();
        Set<String> mistakes = new HashSet<>();
        for (Fields rule : fields.maps("rules")) {
            List<ScalarNode> pair = rule.scalars("before");
            String because = text(rule, "because");
            boolean sound = pair.size() == 2 || pair.isEmpty();
            if (!sound) {
                findings.add(
                        rule.place("before"),
                        pair.size() + " items in a rule",
                        "two, the earlier first: before: [warm-up, first-pull]",
                        "");
            }
            for (ScalarNode item : pair) {
                sound &= isKnown(item, ids);
            }
            String earlier = pair.size() == 2 ? pair.get(0).text().strip() : "";
            String later = pair.size() == 2 ? pair.get(1).text().strip() : "";
            String id = id(rule, "mistake", later + "-before-" + earlier, mistakes);
            rule.noOthers();
            if (sound && pair.size() == 2) {
                refuseAgainstTheFile(rule, ids, earlier, later);
                rules.add(new Task.Rule(earlier, later, id, because));
            }
        }
        Task.Arrange task = new Task.Arrange(items, rules);
        if (findings.isEmpty() && Orders.share(task) > 1.0 / LUCK) {
            findings.add(
                    fields.keyPlace("rules"),
                    "one of " + Math.round(1 / Orders.share(task)) + " orders is right",
                    "at most one in " + LUCK + ", or it is right by luck",
                    "add rules, or items");
        }
        return task;
    }

    private boolean isKnown(ScalarNode item, List<String> ids) {
        String id = item.text().strip();
        if (ids.contains(id)) {
            return true;
        }
        findings.add(
                item,
                "no item is called \"" + id + "\"",
                "one of " + String.join(", ", ids),
                Nearest.to(id, ids).map(near -> "write \"" + near + "\"").orElse(""));
        return false;
    }

    private void refuseAgainstTheFile(Fields rule, List<String> ids, String first, String then) {
        if (ids.indexOf(first) >= ids.indexOf(then)) {
            findings.add(
                    rule.place("before"),
                    "in the list of items " + first + " does not stand before " + then,
                    "items listed in an order that keeps all rules",
                    "move the item, or turn the rule");
        }
    }

    private Asked graph() {
        ChartReader reader = new ChartReader(chain, givens, findings);
        Optional<ChartPlan> chart = fields.optionalMap("chart").flatMap(reader::read);
        if (chart.isEmpty()) {
            fields.map("chart").names();
            fields.maps("ask").forEach(Fields::names);
            fields.optionalMaps("mistakes").forEach(Fields::names);
            return new Asked(new Task.Work(), List.of());
        }
        Optional<Fields> ask = only();
        Optional<ChartReader.ReadingAsked> asked = ask.flatMap(a -> reader.reading(a, chart.get()));
        List<Misreading> misreadings =
                asked.map(
                                a ->
                                        reader.misreadings(
                                                fields.optionalMaps("mistakes"),
                                                chart.get(),
                                                a.reading()))
                        .orElseGet(
                                () -> {
                                    fields.optionalMaps("mistakes").forEach(Fields::names);
                                    return List.of();
                                });
        return asked.map(
                        a ->
                                new Asked(
                                        new Task.Read(chart.get(), a.reading(), misreadings),
                                        List.of(a.ask())))
                .orElse(new Asked(new Task.Work(), List.of()));
    }

    private Task diagnose() {
        ChartReader reader = new ChartReader(chain, givens, findings);
        Optional<ChartPlan.Pulls> chart =
                fields.optionalMap("chart")
                        .flatMap(reader::read)
                        .filter(ChartPlan.Pulls.class::isInstance)
                        .map(ChartPlan.Pulls.class::cast);
        if (!fields.has("chart")) {
            fields.map("chart");
        } else if (chart.isEmpty() && findings.isEmpty()) {
            findings.add(
                    fields.place("chart"), "a fault shows in pulls only", "pulls: and a map", "");
        }
        String pull = fields.text("pull");
        chart.ifPresent(c -> refuseUnknownPull(pull, c));
        List<Fields> list = fields.maps("faults");
        refuseCount("faults", list.size(), 3);
        List<Task.Fault> faults = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        Optional<ChartPlan.Planned> planned = chart.map(c -> c.pulls().get(pull));
        for (Fields fault : list) {
            Optional<Disturbance> named =
                    fault.optionalScalar("disturbance").flatMap(this::disturbance);
            String id = id(fault, "id", named.map(Disturbance::id).orElse(""), ids);
            String say =
                    fault.has("say") || named.isEmpty() ? text(fault, "say") : named.get().words();
            String trace = text(fault, "trace");
            Optional<RigChange> change =
                    planned.map(
                            p ->
                                    fault.has("disturbance")
                                            ? named.<RigChange>map(
                                                            d -> disturbed(fault, d, p.rig()))
                                                    .orElse(new RigChange.Settings(Map.of()))
                                            : reader.change(fault, "set", p.rig(), true));
            if (change.isEmpty()) {
                fault.names();
            }
            fault.noOthers();
            change.ifPresent(c -> faults.add(new Task.Fault(id, say, c, trace)));
        }
        return chart.<Task>map(c -> new Task.Diagnose(c, pull, faults)).orElse(new Task.Work());
    }

    private Optional<Disturbance> disturbance(ScalarNode node) {
        String id = node.text().strip();
        Optional<Disturbance> named = Disturbance.find(id);
        if (named.isEmpty()) {
            List<String> known = Arrays.stream(Disturbance.values()).map(Disturbance::id).toList();
            findings.add(
                    node,
                    "there is no disturbance \"" + id + "\"",
                    "one of " + String.join(", ", known),
                    Nearest.to(id, known).map(near -> "write \"" + near + "\"").orElse(""));
        }
        return named;
    }

    private RigChange disturbed(Fields fault, Disturbance disturbance, Rig rig) {
        if (!disturbance.possible(rig)) {
            findings.add(
                    fault.place("disturbance"),
                    rig.id() + " cannot have this",
                    "a rig in which " + disturbance.words() + " can be",
                    "");
        }
        return new RigChange.Disturbed(disturbance);
    }

    private void refuseUnknownPull(String pull, ChartPlan.Pulls chart) {
        if (!pull.isEmpty() && !chart.pulls().containsKey(pull)) {
            List<String> known = List.copyOf(chart.pulls().keySet());
            findings.add(
                    fields.place("pull"),
                    "no pull is called \"" + pull + "\"",
                    "one of " + String.join(", ", known),
                    Nearest.to(pull, known).map(near -> "write \"" + near + "\"").orElse(""));
        }
    }

    private String text(Fields from, String key) {
        String text = from.text(key).strip().replaceAll("\\s+", " ");
        Place place = from.place(key);
        if (text.length() > LONGEST) {
            findings.add(
                    place,
                    key + " is " + text.length() + " characters long",
                    "at most " + LONGEST,
                    "");
        }
        return text;
    }

    private String id(Fields from, String key, String otherwise, Set<String> taken) {
        Optional<String> written =
                otherwise.isEmpty() ? Optional.of(from.text(key)) : from.optionalText(key);
        String id = written.orElse(otherwise).strip();
        if (written.isPresent()
                && !id.isEmpty()
                && !(id.length() <= 60 && ID.matcher(id).matches())) {
            findings.add(
                    from.place(key),
                    key + " \"" + id + "\" has the wrong form",
                    "lower case words joined by hyphens",
                    "");
        }
        if (!taken.add(id) && !id.isEmpty()) {
            findings.add(from.place(key), "\"" + id + "\" a second time", "a name of its own", "");
        }
        return id;
    }

    private void refuseCount(String key, int count, int least) {
        if (count > 0 && (count < least || count > MOST_LETTERS)) {
            findings.add(
                    fields.keyPlace(key), count + " " + key, least + " to " + MOST_LETTERS, "");
        }
    }

    /** All texts of a task in which values may stand, by what they are. */
    static Map<String, String> texts(Task task) {
        Map<String, String> texts = new LinkedHashMap<>();
        if (task instanceof Task.Judge judge) {
            judge.statements()
                    .forEach(
                            s -> {
                                texts.put("the option \"" + s.say() + "\"", s.say());
                                texts.put("because of \"" + s.say() + "\"", s.because());
                            });
        } else if (task instanceof Task.Arrange arrange) {
            arrange.items().forEach(i -> texts.put("the item " + i.id(), i.say()));
            arrange.rules().forEach(r -> texts.put("because of " + r.mistake(), r.because()));
        } else if (task instanceof Task.Rank rank) {
            rank.items().forEach(i -> texts.put("the item " + i.id(), i.say()));
            rank.misranks().forEach(m -> texts.put("because of " + m.id(), m.because()));
        } else if (task instanceof Task.Diagnose diagnose) {
            diagnose.faults()
                    .forEach(
                            f -> {
                                texts.put("the fault " + f.id(), f.say());
                                texts.put("the trace of " + f.id(), f.trace());
                            });
        }
        return texts;
    }
}
