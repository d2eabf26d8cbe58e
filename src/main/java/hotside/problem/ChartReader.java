// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.Channel;
import hotside.cell.Rig;
import hotside.cell.RigException;
import hotside.cell.Sensor;
import hotside.cell.Stock;
import hotside.content.Fields;
import hotside.content.Findings;
import hotside.content.Nearest;
import hotside.content.Place;
import hotside.content.ScalarNode;
import hotside.relation.Chain;
import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.relation.Values;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads how a problem's chart is made, and what is read off it. */
final class ChartReader {
    private static final int MOST_CURVES = 6;

    /** What is asked, and how it is read. */
    record ReadingAsked(Reading reading, Ask ask) {}

    /** The rigs that come with the program, read once. */
    private static final class Shelf {
        static final Stock STOCK = Stock.shipped();
    }

    private final Chain chain;
    private final List<Given> givens;
    private final Findings findings;

    ChartReader(Chain chain, List<Given> givens, Findings findings) {
        this.chain = chain;
        this.givens = givens;
        this.findings = findings;
    }

    Optional<ChartPlan> read(Fields chart) {
        Optional<ChartPlan> plan =
                chart.has("pulls")
                        ? pulls(chart).map(p -> p)
                        : chart.has("uses") ? curves(chart).map(c -> c) : neither(chart);
        chart.noOthers();
        return plan;
    }

    private Optional<ChartPlan> neither(Fields chart) {
        chart.names();
        findings.add(
                chart.place(),
                "a chart of nothing",
                "pulls: (of the test cell) or uses: (of the work)",
                "");
        return Optional.empty();
    }

    private Optional<ChartPlan> pulls(Fields chart) {
        Fields map = chart.map("pulls");
        Map<String, ChartPlan.Planned> pulls = new LinkedHashMap<>();
        boolean sound = true;
        for (String name : map.names()) {
            Fields pull = map.map(name);
            Optional<Rig> rig = rig(pull);
            String say = pull.optionalText("say").orElse("");
            RigChange change =
                    rig.map(r -> change(pull, "set", r, false)).orElseGet(() -> skipped(pull));
            pull.noOthers();
            sound &= rig.isPresent();
            rig.ifPresent(r -> pulls.put(name, new ChartPlan.Planned(say, r, change)));
        }
        if (pulls.size() > 1 && pulls.values().stream().anyMatch(p -> p.say().isEmpty())) {
            findings.add(chart.place("pulls"), "pulls without names", "say: for each pull", "");
        }
        List<Channel> show = new ArrayList<>();
        for (ScalarNode word : chart.scalars("show")) {
            channel(word, pulls).ifPresent(show::add);
        }
        Channel over =
                chart.optionalScalar("over")
                        .flatMap(word -> channel(word, pulls))
                        .orElse(Channel.ENGINE_SPEED);
        boolean together = chart.flag("together", show.size() == 1);
        boolean fromZero = chart.flag("zero", false);
        int curves = pulls.size() * (together ? show.size() : 1);
        if (curves > MOST_CURVES) {
            findings.add(
                    chart.place(),
                    curves + " curves in one chart",
                    "at most " + MOST_CURVES,
                    "write together: no, or show less");
        }
        return sound && !pulls.isEmpty() && !show.isEmpty()
                ? Optional.of(new ChartPlan.Pulls(pulls, show, over, together, fromZero))
                : Optional.empty();
    }

    static RigChange skipped(Fields pull) {
        pull.optionalMap("set").ifPresent(Fields::names);
        return new RigChange.Settings(Map.of());
    }

    /** A value that some rig of the stock has, by its path. */
    static Optional<Slot> slot(String path) {
        return Shelf.STOCK.rigs().stream().flatMap(rig -> rig.slot(path).stream()).findFirst();
    }

    Optional<Rig> rig(Fields pull) {
        Optional<ScalarNode> id = pull.scalar("rig");
        if (id.isEmpty()) {
            return Optional.empty();
        }
        Optional<Rig> rig = Shelf.STOCK.rig(id.get().text().strip());
        if (rig.isEmpty()) {
            List<String> known = Shelf.STOCK.rigs().stream().map(Rig::id).toList();
            unknown(id.get(), "rig", known);
        }
        return rig;
    }

    private void unknown(ScalarNode node, String what, List<String> known) {
        String word = node.text().strip();
        findings.add(
                node,
                "there is no " + what + " \"" + word + "\"",
                "one of " + String.join(", ", Nearest.sorted(word, known)),
                Nearest.to(word, known).map(near -> "write \"" + near + "\"").orElse(""));
    }

    Optional<Channel> channel(ScalarNode word, Map<String, ChartPlan.Planned> pulls) {
        Optional<Channel> channel = Channel.of(word.text().strip());
        if (channel.isEmpty()) {
            List<String> labels = Arrays.stream(Channel.values()).map(Channel::label).toList();
            unknown(word, "channel", labels);
            return channel;
        }
        boolean read =
                pulls.values().stream().allMatch(planned -> isRead(planned.rig(), channel.get()));
        if (!read) {
            findings.add(
                    word,
                    "a rig of this chart has no sensor for " + channel.get().label(),
                    "a channel that every rig reads",
                    "");
        }
        return channel.filter(c -> read);
    }

    /** Power is worked from torque and speed where no sensor reads it. */
    private static boolean isRead(Rig rig, Channel channel) {
        List<Channel> sensors = rig.sensors().stream().map(Sensor::channel).toList();
        return sensors.contains(channel)
                || channel == Channel.POWER
                        && sensors.containsAll(List.of(Channel.TORQUE, Channel.ENGINE_SPEED));
    }

    /**
     * What is set on a rig.
     *
     * @param needed true if something must be
     */
    RigChange change(Fields from, String key, Rig rig, boolean needed) {
        Optional<Fields> set = needed ? Optional.of(from.map(key)) : from.optionalMap(key);
        Map<String, String> values = new LinkedHashMap<>();
        set.ifPresent(
                fields -> {
                    for (String path : fields.names()) {
                        fields.scalar(path)
                                .filter(node -> isSettable(rig, path, node, fields.keyPlace(path)))
                                .ifPresent(node -> values.put(path, node.text().strip()));
                    }
                });
        return new RigChange.Settings(values);
    }

    private boolean isSettable(Rig rig, String path, ScalarNode node, Place keyPlace) {
        String text = node.text().strip();
        Optional<Given> given = given(text);
        Optional<Slot> slot = rig.slot(path);
        if (given.isPresent()
                && slot.isPresent()
                && !ChainReader.fits(given.get().quantity(), slot.get().quantity())) {
            findings.add(
                    node,
                    text
                            + " is "
                            + Literal.a(given.get().quantity())
                            + ", but "
                            + path
                            + " wants "
                            + Literal.a(slot.get().quantity()),
                    "a value of the same kind",
                    "");
            return false;
        }
        try {
            if (given.isPresent()) {
                rig.value(path);
            } else {
                rig.with(path, text);
            }
            return true;
        } catch (RigException e) {
            findings.add(slot.isPresent() ? node.place() : keyPlace, e.what(), e.expected(), "");
            return false;
        }
    }

    private Optional<Given> given(String name) {
        return givens.stream().filter(g -> g.name().equals(name)).findFirst();
    }

    private Optional<ChartPlan> curves(Fields chart) {
        Fields map = chart.map("uses");
        Map<String, String> uses = new LinkedHashMap<>();
        for (String name : map.names()) {
            uses.put(name, map.text(name));
        }
        Optional<ScalarNode> show = chart.scalar("show");
        Optional<ScalarNode> over = chart.scalar("over");
        Optional<Slot> output = show.flatMap(node -> slot(uses, node, chart));
        Optional<Slot> along = over.flatMap(node -> slot(uses, node, chart));
        Optional<Double> from = along.flatMap(slot -> literal(chart, "from", slot));
        Optional<Double> to = along.flatMap(slot -> literal(chart, "to", slot));
        boolean fromZero = chart.flag("zero", false);
        chart.names();
        if (uses.isEmpty() || output.isEmpty() || from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        if (!(from.get() < to.get())) {
            findings.add(chart.place("to"), "the curves end where they begin", "to above from", "");
            return Optional.empty();
        }
        return Optional.of(
                new ChartPlan.Curves(
                        uses,
                        output.get().name(),
                        along.get().name(),
                        from.get(),
                        to.get(),
                        fromZero));
    }

    private Optional<Slot> slot(Map<String, String> uses, ScalarNode node, Fields chart) {
        String name = node.text().strip();
        Optional<Slot> first = Optional.empty();
        for (String use : uses.keySet()) {
            Optional<Slot> slot = chain.slotAt(use + "." + name);
            if (slot.isEmpty()) {
                findings.add(
                        node,
                        "nothing is found at \"" + use + "." + name + "\"",
                        "a slot of every use of the chart",
                        "");
                return Optional.empty();
            }
            first = first.isEmpty() ? slot : first;
        }
        return first;
    }

    private Optional<Double> literal(Fields chart, String key, Slot slot) {
        Optional<ScalarNode> node = chart.scalar(key);
        Optional<Double> value =
                node.flatMap(
                        n -> Literal.value(n.text(), slot.quantity(), Units.STANDARD_ATMOSPHERE));
        if (node.isPresent() && value.isEmpty()) {
            findings.add(
                    node.get(),
                    "\"" + node.get().text() + "\" is no place",
                    Literal.expected(slot.quantity()),
                    "");
        }
        return value;
    }

    /** What is read off a chart. */
    Optional<ReadingAsked> reading(Fields ask, ChartPlan chart) {
        List<String> sorts = Arrays.stream(Reading.Sort.values()).map(Reading.Sort::id).toList();
        Reading.Sort sort = Reading.Sort.find(ask.oneOf("read", sorts)).orElseThrow();
        String phrase = ask.text("say");
        Optional<String> of = ask.scalar("of").flatMap(node -> curve(node, chart));
        Optional<String> and =
                sort.comparesTwo()
                        ? ask.scalar("and").flatMap(node -> curve(node, chart))
                        : Optional.empty();
        if (of.isEmpty() || sort.comparesTwo() && and.isEmpty()) {
            ask.names();
            return Optional.empty();
        }
        Quantity along = along(chart);
        Quantity up = quantity(chart, of.get());
        boolean banded =
                sort == Reading.Sort.MEAN
                        || (sort == Reading.Sort.DIFFERENCE || sort == Reading.Sort.CHANGE)
                                && !ask.has("at");
        boolean placed =
                sort == Reading.Sort.VALUE
                        || sort == Reading.Sort.REACHES
                        || sort.comparesTwo() && sort != Reading.Sort.CROSSING && !banded;
        Optional<String> at =
                placed
                        ? place(ask, "at", sort == Reading.Sort.REACHES ? up : along)
                        : Optional.empty();
        Optional<String> from = banded ? place(ask, "from", along) : Optional.empty();
        Optional<String> to = banded ? place(ask, "to", along) : Optional.empty();
        ask.noOthers();
        if (placed && at.isEmpty() || banded && (from.isEmpty() || to.isEmpty())) {
            return Optional.empty();
        }
        Reading reading = new Reading(sort, of.get(), and, at, from, to);
        return Optional.of(new ReadingAsked(reading, asked(phrase, reading, chart)));
    }

    private Ask asked(String phrase, Reading reading, ChartPlan chart) {
        Quantity quantity =
                switch (reading.sort()) {
                    case PEAK_PLACE, REACHES, CROSSING -> along(chart);
                    case CHANGE -> Quantity.PERCENTAGE;
                    case DIFFERENCE -> Reading.differenceOf(quantity(chart, reading.of()));
                    default -> quantity(chart, reading.of());
                };
        return new Ask(
                TaskReader.PLACE,
                phrase,
                quantity,
                scale(chart, reading, quantity, UnitSystem.SI_SHOP),
                scale(chart, reading, quantity, UnitSystem.US_SHOP),
                Ask.Tolerance.USUAL);
    }

    /** The scale of the axis that is read; answers in another unit are understood all the same. */
    private Scale scale(ChartPlan chart, Reading reading, Quantity quantity, UnitSystem system) {
        boolean plain = quantity == Quantity.PERCENTAGE && reading.sort() == Reading.Sort.CHANGE;
        if (chart instanceof ChartPlan.Pulls || plain) {
            return quantity.shown(system);
        }
        ChartPlan.Curves curves = (ChartPlan.Curves) chart;
        String use = curves.uses().keySet().iterator().next();
        String slot = reading.sort().alongX() ? curves.over() : curves.output();
        Scale own = SlotScale.of(chain.slotAt(use + "." + slot).orElseThrow(), system);
        return reading.sort() == Reading.Sort.DIFFERENCE
                ? new Scale(own.unit(), quantity.naturalReference())
                : own;
    }

    private Optional<String> curve(ScalarNode node, ChartPlan chart) {
        String id = node.text().strip();
        if (chart.curves().contains(id)) {
            return Optional.of(id);
        }
        unknown(node, "curve", chart.curves());
        return Optional.empty();
    }

    private Quantity along(ChartPlan chart) {
        return chart instanceof ChartPlan.Pulls pulls
                ? pulls.over().quantity()
                : slotOf((ChartPlan.Curves) chart, ((ChartPlan.Curves) chart).over()).quantity();
    }

    private Slot slotOf(ChartPlan.Curves curves, String slot) {
        return chain.slotAt(curves.uses().keySet().iterator().next() + "." + slot).orElseThrow();
    }

    private Quantity quantity(ChartPlan chart, String curve) {
        String last = curve.substring(curve.indexOf('.') + 1);
        return chart instanceof ChartPlan.Pulls
                ? Channel.of(last).orElseThrow().quantity()
                : slotOf((ChartPlan.Curves) chart, last).quantity();
    }

    private Optional<String> place(Fields ask, String key, Quantity quantity) {
        Optional<ScalarNode> node = ask.scalar(key);
        if (node.isEmpty()) {
            return Optional.empty();
        }
        String text = node.get().text().strip();
        Optional<Given> given = given(text);
        boolean fits =
                given.map(g -> ChainReader.fits(g.quantity(), quantity) && !g.isRow())
                        .orElseGet(() -> Literal.value(text, quantity, 0).isPresent());
        if (!fits) {
            findings.add(
                    node.get(),
                    "\"" + text + "\" is no place on this axis",
                    Literal.expected(quantity) + "; or the name of a given",
                    "");
        }
        return Optional.of(text).filter(t -> fits);
    }

    /** How it may be misread. */
    List<Misreading> misreadings(List<Fields> list, ChartPlan chart, Reading reading) {
        List<Misreading> misreadings = new ArrayList<>();
        List<String> known =
                Arrays.stream(Misreading.Sort.values())
                        .filter(sort -> sort.fits(reading.sort()))
                        .map(Misreading.Sort::id)
                        .toList();
        for (Fields fields : list) {
            Misreading.Sort sort = Misreading.Sort.find(fields.oneOf("slip", known)).orElseThrow();
            Optional<String> with =
                    sort == Misreading.Sort.OTHER_CURVE
                            ? fields.scalar("with").flatMap(node -> curve(node, chart))
                            : Optional.empty();
            Misreading misreading =
                    new Misreading(
                            sort,
                            with,
                            fields.optionalText("if"),
                            fields.optionalText("check"),
                            fields.optionalText("world"));
            fields.noOthers();
            if (misreadings.stream().anyMatch(m -> m.id().equals(misreading.id()))) {
                findings.add(
                        fields.place("slip"),
                        "the mistake " + misreading.id() + " a second time",
                        "each mistake once",
                        "delete one of the two");
            }
            if (sort != Misreading.Sort.OTHER_CURVE || with.isPresent()) {
                misreadings.add(misreading);
            }
        }
        return misreadings;
    }

    /** The number that a place of a reading stands for, SI. */
    static double value(String text, Quantity quantity, Values givens, double ambient) {
        return givens.has(text)
                ? givens.number(text)
                : Literal.value(text, quantity, ambient).orElseThrow();
    }
}
