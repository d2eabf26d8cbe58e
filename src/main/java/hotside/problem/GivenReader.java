// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.Channel;
import hotside.content.Findings;
import hotside.content.MapNode;
import hotside.content.Node;
import hotside.content.ScalarNode;
import hotside.relation.Chain;
import hotside.relation.Slot;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.Units;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads givens: {@code 38 to 50 by 2 mm}, {@code one of 38 44 46 mm}, {@code 98.5 kPa}, or a row of
 * readings.
 */
public final class GivenReader {
    private static final String N = Literal.NUMBER;
    private static final Pattern STEPS =
            Pattern.compile("(" + N + ")\\s+to\\s+(" + N + ")\\s+by\\s+(" + N + ")\\s*(.*)");
    private static final Pattern LIST = Pattern.compile("one of((?:\\s+" + N + ")+)(?:\\s+(.*))?");
    private static final Pattern ROW = Pattern.compile("(" + N + "(?:\\s+" + N + ")+)\\s*(.*)");
    private static final Pattern ONE = Pattern.compile("(" + N + ")\\s*(.*)");
    private static final Pattern UNIT =
            Pattern.compile("(?:one of\\s+|to\\s+|by\\s+|" + N + "\\s*)+([^\\d\\s].*)");
    private static final int LONGEST = 1_000;
    private static final int MOST_READINGS = 50;
    private static final int MOST_STEPS = 1_000;
    private static final String FORMS =
            "a value such as \"98.5 kPa\", a grid such as \"38 to 50 by 2 mm\", \"one of 38 44 46 mm\", or a row"
                    + " of readings such as \"149.6 150.9 kW\"";

    private static final String READINGS =
            "such as {readings: 4, around: 240 to 260 by 1 kW, within: 1.5, steps: 0.1}";

    private final Findings findings;

    public GivenReader(Findings findings) {
        this.findings = findings;
    }

    /**
     * @param name the given's name
     * @param node how it is written
     * @param quantity what it measures, by the slot that it feeds
     * @return the given, or nothing after a finding
     */
    public Optional<Given> read(String name, Node node, Quantity quantity) {
        if (node instanceof ScalarNode scalar && scalar.text().length() > LONGEST) {
            findings.add(
                    node,
                    name + " is " + scalar.text().length() + " characters long",
                    "at most " + LONGEST,
                    "");
            return Optional.empty();
        }
        if (node instanceof ScalarNode scalar) {
            Matcher row = ROW.matcher(scalar.text().strip());
            if (row.matches()) {
                return row(name, scalar, row, quantity);
            }
            return grid(scalar, quantity)
                    .map(grid -> Given.number(name, quantity, grid, Optional.empty()));
        }
        if (node instanceof MapNode map && map.get("readings").isPresent()) {
            return readings(name, map, quantity);
        }
        if (node instanceof MapNode map && map.get("means").isPresent()) {
            return means(name, map, quantity);
        }
        if (node instanceof MapNode map && map.get("si").isPresent()) {
            refuseOthers(map, Set.of("si", "us"));
            Optional<Grid> si = scalarOf(map, "si").flatMap(s -> grid(s, quantity));
            Optional<Grid> us =
                    map.get("us").isEmpty()
                            ? Optional.empty()
                            : scalarOf(map, "us").flatMap(s -> grid(s, quantity));
            return si.map(grid -> Given.number(name, quantity, grid, us));
        }
        findings.add(node, name + " is " + node.kind() + " that is no given", FORMS, "");
        return Optional.empty();
    }

    /**
     * What a given measures: what the slot that it feeds does, else what its unit says. One that
     * feeds no slot is told to the learner all the same, who has to know what to leave alone.
     */
    public static Quantity quantity(String name, Node node, Chain chain) {
        return ChainReader.fedBy(chain, name)
                .map(Slot::quantity)
                .or(
                        () ->
                                name.equals(Variants.AMBIENT)
                                        ? Optional.of(Quantity.PRESSURE)
                                        : measuredIn(node))
                .orElse(Quantity.RATIO);
    }

    /** True if this is written as a row of readings, so that it can feed no single number. */
    static boolean isRow(Node node) {
        return node instanceof MapNode map
                        && (map.get("readings").isPresent() || map.get("means").isPresent())
                || node instanceof ScalarNode scalar
                        && scalar.text().length() <= LONGEST
                        && ROW.matcher(scalar.text().strip()).matches();
    }

    /** What a given measures by the unit that it is written in, for one whose slot does not say. */
    public static Optional<Quantity> measuredIn(Node node) {
        if (node instanceof MapNode map && map.get("means").isPresent()) {
            return measuredByPulls(map);
        }
        if (node instanceof MapNode map) {
            return map.get("si").or(() -> map.get("around")).flatMap(GivenReader::measuredIn);
        }
        if (!(node instanceof ScalarNode scalar) || scalar.text().length() > LONGEST) {
            return Optional.empty();
        }
        Matcher unit = UNIT.matcher(scalar.text().strip());
        return unit.matches() ? Units.quantityOf(unit.group(1)) : Optional.empty();
    }

    /** What a channel reads; boost without the word gauge is the difference that it is. */
    private static Optional<Quantity> measuredByPulls(MapNode map) {
        return map.get("of")
                .filter(ScalarNode.class::isInstance)
                .flatMap(of -> Channel.of(((ScalarNode) of).text().strip()))
                .map(Channel::quantity)
                .map(
                        quantity ->
                                quantity == Quantity.GAUGE_PRESSURE && !saysGauge(map)
                                        ? Quantity.PRESSURE_DIFFERENCE
                                        : quantity);
    }

    private static boolean saysGauge(MapNode map) {
        return map.get("steps")
                .filter(ScalarNode.class::isInstance)
                .filter(step -> ((ScalarNode) step).text().contains("gauge"))
                .isPresent();
    }

    private static boolean fits(Channel channel, Quantity quantity) {
        return channel.quantity() == quantity
                || channel.quantity() == Quantity.GAUGE_PRESSURE
                        && quantity == Quantity.PRESSURE_DIFFERENCE;
    }

    /** Several numbers and one unit: a row of readings that stays as it is. */
    private Optional<Given> row(String name, ScalarNode scalar, Matcher row, Quantity quantity) {
        List<BigDecimal> numbers = numbers(row.group(1));
        return scale(scalar, row.group(2), quantity)
                .map(s -> Given.row(name, quantity, new Grid(numbers, s)));
    }

    private static List<BigDecimal> numbers(String spaced) {
        return Arrays.stream(spaced.strip().split("\\s+")).map(Literal::number).toList();
    }

    private Optional<Given> readings(String name, MapNode map, Quantity quantity) {
        refuseOthers(map, Set.of("readings", "around", "within", "steps"));
        Optional<Grid> around = scalarOf(map, "around").flatMap(s -> grid(s, quantity));
        Optional<BigDecimal> count = number(map, "readings");
        Optional<BigDecimal> within = number(map, "within");
        Optional<BigDecimal> steps = number(map, "steps");
        if (around.isEmpty() || count.isEmpty() || within.isEmpty() || steps.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal farthest = steps.get().multiply(BigDecimal.valueOf(MOST_STEPS));
        boolean sound =
                isBetween(count.get(), BigDecimal.valueOf(2), BigDecimal.valueOf(MOST_READINGS))
                        && count.get().stripTrailingZeros().scale() <= 0
                        && steps.get().signum() > 0
                        && isBetween(within.get(), steps.get(), farthest);
        if (!sound) {
            findings.add(
                    map,
                    name + ": these readings cannot be drawn",
                    "2 to "
                            + MOST_READINGS
                            + " readings, steps above 0, within of one to "
                            + MOST_STEPS
                            + " steps",
                    "");
            return Optional.empty();
        }
        return Optional.of(
                new Given(
                        name,
                        quantity,
                        around.get(),
                        Optional.empty(),
                        count.get().intValue(),
                        within.get(),
                        steps.get()));
    }

    /** Means of the pulls of a trial, rounded as its log would be. */
    private Optional<Given> means(String name, MapNode map, Quantity quantity) {
        refuseOthers(map, Set.of("means", "of", "steps"));
        Optional<ScalarNode> part = scalarOf(map, "means");
        Optional<ScalarNode> of = scalarOf(map, "of");
        Optional<Grid> step = scalarOf(map, "steps").flatMap(s -> grid(s, quantity));
        Optional<Channel> channel = of.flatMap(word -> Channel.of(word.text().strip()));
        boolean fits = channel.filter(c -> fits(c, quantity)).isPresent();
        if (of.isPresent() && !fits) {
            List<String> known =
                    Arrays.stream(Channel.values())
                            .filter(c -> fits(c, quantity))
                            .map(Channel::label)
                            .toList();
            findings.add(
                    of.get(),
                    "no channel \"" + of.get().text().strip() + "\" is " + Literal.a(quantity),
                    "one of " + String.join(", ", known),
                    "");
        }
        boolean sound = step.filter(s -> s.values().get(0).signum() > 0).isPresent();
        if (step.isPresent() && !sound) {
            findings.add(map, name + " is rounded to nothing", "steps above 0", "");
        }
        return fits && sound && part.isPresent()
                ? Optional.of(
                        Given.means(
                                name,
                                quantity,
                                step.get(),
                                new Given.Means(part.get().text().strip(), channel.get())))
                : Optional.empty();
    }

    private static boolean isBetween(BigDecimal value, BigDecimal low, BigDecimal high) {
        return value.compareTo(low) >= 0 && value.compareTo(high) <= 0;
    }

    private Optional<ScalarNode> scalarOf(MapNode map, String key) {
        Optional<Node> node = map.get(key);
        if (node.isPresent() && node.get() instanceof ScalarNode scalar) {
            return Optional.of(scalar);
        }
        node.ifPresentOrElse(
                n -> findings.add(n, "\"" + key + "\" is " + n.kind(), "one value", ""),
                () ->
                        findings.add(
                                map,
                                "\"" + key + "\" is missing",
                                key.equals("si") ? FORMS : READINGS,
                                ""));
        return Optional.empty();
    }

    private Optional<BigDecimal> number(MapNode map, String key) {
        Optional<ScalarNode> scalar = scalarOf(map, key);
        if (scalar.isPresent() && scalar.get().text().matches(N)) {
            return Optional.of(Literal.number(scalar.get().text()));
        }
        scalar.ifPresent(
                s ->
                        findings.add(
                                s,
                                "\"" + s.text() + "\" is no number",
                                "a number without a unit",
                                ""));
        return Optional.empty();
    }

    private void refuseOthers(MapNode map, Set<String> known) {
        for (Map.Entry<String, MapNode.Entry> entry : map.entries().entrySet()) {
            if (!known.contains(entry.getKey())) {
                findings.add(
                        entry.getValue().keyPlace(),
                        "unknown key \"" + entry.getKey() + "\"",
                        "one of " + String.join(", ", known.stream().sorted().toList()),
                        "");
            }
        }
    }

    private Optional<Grid> grid(ScalarNode scalar, Quantity quantity) {
        String text = scalar.text().strip();
        Matcher steps = STEPS.matcher(text);
        if (steps.matches()) {
            BigDecimal from = Literal.number(steps.group(1));
            BigDecimal to = Literal.number(steps.group(2));
            BigDecimal by = Literal.number(steps.group(3));
            if (by.signum() <= 0 || to.compareTo(from) < 0) {
                findings.add(
                        scalar,
                        "this grid has no values",
                        "from the smaller to the larger, by more than 0",
                        "");
                return Optional.empty();
            }
            if (to.subtract(from).compareTo(by.multiply(BigDecimal.valueOf(Grid.MOST_VALUES - 1L)))
                    > 0) {
                findings.add(
                        scalar,
                        "this grid has too many values",
                        "at most " + Grid.MOST_VALUES,
                        "take bigger steps");
                return Optional.empty();
            }
            return scale(scalar, steps.group(4), quantity).map(s -> Grid.steps(from, to, by, s));
        }
        Matcher list = LIST.matcher(text);
        if (list.matches()) {
            List<BigDecimal> values = numbers(list.group(1));
            String unit = list.group(2) == null ? "" : list.group(2);
            return scale(scalar, unit, quantity).map(s -> new Grid(values, s));
        }
        Matcher one = ONE.matcher(text);
        if (one.matches()) {
            return scale(scalar, one.group(2), quantity)
                    .map(s -> new Grid(List.of(Literal.number(one.group(1))), s));
        }
        findings.add(scalar, "\"" + text + "\" is no given", FORMS, "");
        return Optional.empty();
    }

    private Optional<Scale> scale(ScalarNode scalar, String unit, Quantity quantity) {
        Optional<Scale> scale = Literal.scale(unit, quantity);
        if (scale.isEmpty()) {
            findings.add(
                    scalar.at(Math.max(0, scalar.text().lastIndexOf(unit))),
                    unit.isBlank()
                            ? "the unit is missing"
                            : "unknown unit \"" + unit + "\" for " + Literal.a(quantity),
                    Literal.expected(quantity),
                    "");
        }
        return scale;
    }
}
