// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.Rig;
import hotside.content.ContentFile;
import hotside.content.Fields;
import hotside.content.Findings;
import hotside.content.MapNode;
import hotside.content.Nearest;
import hotside.content.Place;
import hotside.relation.Chain;
import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads a problem file into a template, or into findings that say what is wrong with it. */
public final class TemplateReader {
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*+");
    private static final Pattern SKILL = Pattern.compile("[a-z0-9-]+\\.[a-z0-9-]+");

    /** A value in double braces. */
    static final Pattern GIVEN_IN_TEXT = Pattern.compile("\\{\\{\\s*+([^{}]{0,100}?)\\s*+}}");

    private static final int LONGEST_NAME = 100;
    private static final int MOST_GIVENS = 40;
    private static final int MOST_ASKS = 12;
    private static final int MOST_MISTAKES = 60;
    private static final int MOST_DOLLARS = 400;
    private static final int LEAST_WRONG_OPTIONS = 2;

    private final ContentFile file;
    private final Findings findings;
    private final Fields fields;

    TemplateReader(ContentFile file) {
        this.file = file;
        this.findings = file.findings();
        this.fields = file.fields();
    }

    /**
     * @param file a problem file; findings are added to its own
     * @return the template, if the file is free of findings
     */
    public static Optional<Template> read(ContentFile file) {
        return new TemplateReader(file).template();
    }

    private Optional<Template> template() {
        String id = fields.text("id");
        checkForm(id, ID, "id", "lower case words joined by hyphens");
        String title = fields.text("title");
        String skill = fields.text("skill");
        checkForm(skill, SKILL, "skill", "strand.skill in lower case");
        int level = fields.whole("level", 1, 4);
        Template.Kind kind = kind(fields.text("kind"));
        boolean worked = !TaskReader.reads(kind, fields);
        MapNode givenNodes = map("givens", worked);
        Chain chain =
                ChainReader.read(
                        map("work", worked),
                        givenNodes,
                        givenNodes.get(Variants.AMBIENT).isPresent()
                                ? Double.NaN
                                : Units.STANDARD_ATMOSPHERE,
                        findings);
        List<Given> givens = givens(givenNodes, chain);
        List<Mistake> mistakes =
                worked ? mistakes(fields.maps("mistakes"), chain, givenNodes) : List.of();
        TaskReader.Asked asked =
                worked
                        ? new TaskReader.Asked(
                                kind == Template.Kind.SPLIT
                                        ? new TaskReader(fields, chain, givens).split()
                                        : work(kind),
                                asks(fields.maps("ask"), chain))
                        : new TaskReader(fields, chain, givens).read(kind);
        List<Ask> asks = asked.asks();
        refuseMeans(kind, givens);
        fields.noOthers();
        refuseManyAsks(kind, worked, asks.size());
        if (asked.task() instanceof Task.Pick && mistakes.size() < LEAST_WRONG_OPTIONS) {
            findings.add(
                    fields.keyPlace("mistakes"),
                    mistakes.size() + " mistakes make " + (mistakes.size() + 1) + " options",
                    "at least " + LEAST_WRONG_OPTIONS + " mistakes",
                    "");
        }
        Body body = new Body(file);
        List<String> names = new ArrayList<>(givenNodes.entries().keySet());
        if (asked.task() instanceof Task.Judge || asked.task() instanceof Task.Rank) {
            names.addAll(places(chain));
        }
        checkText(body, givens, names, asked.task());
        if (!findings.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Template(
                        id,
                        title,
                        skill,
                        level,
                        kind,
                        givens,
                        chain,
                        asks,
                        mistakes,
                        true,
                        body.prompt(),
                        body.hints(),
                        body.why(),
                        asked.task(),
                        fingerprint(file.text() + rigs(asked.task()))));
    }

    /** The map under a key; where nothing has to be worked it may be missing. */
    private MapNode map(String key, boolean needed) {
        return needed || fields.has(key)
                ? ChainReader.map(fields, key)
                : new MapNode(fields.place(), Map.of());
    }

    private static Task work(Template.Kind kind) {
        return kind == Template.Kind.CHOICE ? new Task.Pick() : new Task.Work();
    }

    private void refuseManyAsks(Template.Kind kind, boolean worked, int count) {
        boolean several = kind == Template.Kind.STEPS || kind == Template.Kind.SPLIT;
        if (worked && !several && count > 1) {
            boolean number = kind == Template.Kind.NUMBER;
            findings.add(
                    fields.place("ask"),
                    "a problem of kind "
                            + kind.name().toLowerCase(Locale.ROOT)
                            + " asks "
                            + count
                            + " things",
                    "one",
                    number ? "write kind: steps" : "make several problems of it");
        }
    }

    private void refuseMeans(Template.Kind kind, List<Given> givens) {
        if (kind != Template.Kind.SPLIT) {
            givens.stream()
                    .filter(given -> given.means().isPresent())
                    .forEach(
                            given ->
                                    findings.add(
                                            fields.place("givens"),
                                            given.name() + " comes out of pulls that nobody makes",
                                            "a trial, in a problem of kind split",
                                            ""));
        }
    }

    /** The values of the rigs behind a task: a variant no longer holds when they change. */
    private static String rigs(Task task) {
        ChartPlan chart =
                task instanceof Task.Read read
                        ? read.chart()
                        : task instanceof Task.Diagnose diagnose ? diagnose.chart() : null;
        StringBuilder values = new StringBuilder();
        if (chart instanceof ChartPlan.Pulls pulls) {
            pulls.pulls().values().forEach(planned -> tell(planned.rig(), values));
        }
        if (task instanceof Task.Devise devise) {
            tell(devise.contest().rig(), values);
        } else if (task instanceof Task.Split split) {
            tell(split.contest().rig(), values);
        }
        return values.toString();
    }

    private static void tell(Rig rig, StringBuilder values) {
        rig.paths().forEach(path -> values.append(path).append(rig.value(path)));
    }

    /** Every value of the working that is a number. */
    static List<String> places(Chain chain) {
        List<String> places = new ArrayList<>();
        for (Chain.Use use : chain.uses()) {
            Stream.concat(use.relation().inputs().stream(), use.relation().outputs().stream())
                    .filter(slot -> slot.kind() == Slot.Kind.NUMBER)
                    .forEach(slot -> places.add(use.name() + "." + slot.name()));
        }
        return places;
    }

    /** True for {@code strand.skill}. */
    public static boolean isSkill(String text) {
        return text.length() <= LONGEST_NAME && SKILL.matcher(text).matches();
    }

    private Template.Kind kind(String text) {
        for (Template.Kind kind : Template.Kind.values()) {
            if (kind.name().toLowerCase(Locale.ROOT).equals(text)) {
                return kind;
            }
        }
        if (!text.isEmpty()) {
            findings.add(
                    fields.place("kind"),
                    "unknown kind \"" + text + "\"",
                    "one of " + String.join(", ", kinds()),
                    Nearest.to(text, kinds()).map(near -> "write \"" + near + "\"").orElse(""));
        }
        return Template.Kind.NUMBER;
    }

    private static List<String> kinds() {
        return Arrays.stream(Template.Kind.values())
                .map(kind -> kind.name().toLowerCase(Locale.ROOT))
                .toList();
    }

    private void checkForm(String text, Pattern form, String key, String expected) {
        boolean fits = text.length() <= LONGEST_NAME && form.matcher(text).matches();
        if (!text.isEmpty() && !fits) {
            findings.add(
                    fields.place(key), key + " \"" + text + "\" has the wrong form", expected, "");
        }
    }

    private List<Given> givens(MapNode nodes, Chain chain) {
        List<Given> givens = new ArrayList<>();
        GivenReader reader = new GivenReader(findings);
        nodes.entries()
                .forEach(
                        (name, entry) -> {
                            Quantity quantity =
                                    ChainReader.fedBy(chain, name).isPresent()
                                            ? GivenReader.quantity(name, entry.value(), chain)
                                            : ChartSettings.measured(
                                                            fields,
                                                            name,
                                                            GivenReader.measuredIn(entry.value()))
                                                    .orElseGet(
                                                            () ->
                                                                    GivenReader.quantity(
                                                                            name,
                                                                            entry.value(),
                                                                            chain));
                            if (givens.size() < MOST_GIVENS) {
                                reader.read(name, entry.value(), quantity).ifPresent(givens::add);
                            }
                            ChainReader.refuseMixedUse(
                                    name, entry.keyPlace(), chain, quantity, findings);
                        });
        refuseTooMany("givens", nodes.entries().size(), MOST_GIVENS);
        return givens;
    }

    private boolean refuseTooMany(String key, int count, int most) {
        if (count > most) {
            findings.add(
                    fields.keyPlace(key),
                    count + " " + key + " in one problem",
                    "at most " + most,
                    "make several problems of it");
        }
        return count > most;
    }

    private List<Ask> asks(List<Fields> list, Chain chain) {
        List<Ask> asks = new ArrayList<>();
        if (refuseTooMany("ask", list.size(), MOST_ASKS)) {
            return asks;
        }
        List<String> known = results(chain);
        for (Fields ask : list) {
            String place = ask.text("of");
            String phrase = ask.text("say");
            Optional<Slot> slot = chain.slotAt(place).filter(s -> known.contains(place));
            if (slot.isEmpty()) {
                if (!place.isEmpty() && !known.isEmpty()) {
                    findings.add(
                            ask.place("of"),
                            chain.slotAt(place).isEmpty()
                                    ? "nothing is found at \"" + place + "\""
                                    : place + " goes in and does not come out",
                            "one of " + String.join(", ", known),
                            Nearest.to(place, known).map(n -> "write \"" + n + "\"").orElse(""));
                }
                ask.optionalText("tolerance");
                ask.optionalText("unit");
                ask.optionalText("us");
                ask.noOthers();
                continue;
            }
            Scale si = askedIn(ask, "unit", slot.get(), UnitSystem.SI_SHOP);
            Scale us = askedIn(ask, "us", slot.get(), UnitSystem.US_SHOP);
            Ask.Tolerance tolerance =
                    ask.optionalText("tolerance")
                            .map(text -> tolerance(text, slot.get(), ask.place("tolerance")))
                            .orElse(Ask.Tolerance.USUAL);
            ask.noOthers();
            asks.add(new Ask(place, phrase, slot.get().quantity(), si, us, tolerance));
        }
        return asks;
    }

    private Scale askedIn(Fields ask, String key, Slot slot, UnitSystem system) {
        Optional<String> unit = ask.optionalText(key);
        if (unit.isEmpty()) {
            return SlotScale.of(slot, system);
        }
        Optional<Scale> scale = Literal.scale(unit.get(), slot.quantity());
        if (scale.isEmpty()) {
            findings.add(
                    ask.place(key),
                    "unknown unit \"" + unit.get() + "\"",
                    Literal.expected(slot.quantity()),
                    "");
        }
        return scale.orElse(SlotScale.of(slot, system));
    }

    /**
     * A share, an amount, or both joined by "or"; an amount is one of a difference: a kelvin, not a
     * temperature.
     */
    private Ask.Tolerance tolerance(String text, Slot slot, Place place) {
        String expected = "such as \"2 %\", \"1 K\" or \"2 % or 1 K\"";
        if (text.length() > LONGEST_NAME) {
            findings.add(place, "a tolerance of " + text.length() + " characters", expected, "");
            return Ask.Tolerance.USUAL;
        }
        double relative = 0;
        double absolute = 0;
        Quantity amount =
                switch (slot.quantity()) {
                    case PRESSURE, GAUGE_PRESSURE -> Quantity.PRESSURE_DIFFERENCE;
                    case TEMPERATURE -> Quantity.TEMPERATURE_DIFFERENCE;
                    default -> slot.quantity();
                };
        for (String part : text.split("\\s+or\\s+")) {
            Optional<Double> share =
                    part.endsWith("%") && slot.quantity() != Quantity.PERCENTAGE
                            ? Literal.value(part, Quantity.PERCENTAGE, 0)
                            : Optional.empty();
            Optional<Double> fixed =
                    share.isPresent() ? Optional.empty() : Literal.value(part, amount, 0);
            if (share.or(() -> fixed).filter(t -> t > 0).isEmpty()) {
                findings.add(place, "\"" + part + "\" is no tolerance", expected, "");
            }
            relative = share.orElse(relative);
            absolute = fixed.orElse(absolute);
        }
        return new Ask.Tolerance(relative, absolute);
    }

    private List<Mistake> mistakes(List<Fields> list, Chain chain, MapNode givens) {
        List<Mistake> mistakes = new ArrayList<>();
        if (refuseTooMany("mistakes", list.size(), MOST_MISTAKES)) {
            return mistakes;
        }
        for (Fields fields : list) {
            String slipId = fields.text("slip");
            String at = fields.text("at");
            Optional<String> with = fields.optionalText("with");
            Optional<String> factor = fields.optionalText("factor");
            Optional<String> ifText = fields.optionalText("if");
            Optional<String> checkText = fields.optionalText("check");
            Optional<String> world = fields.optionalText("world");
            fields.noOthers();
            Optional<Slips> slip = Slips.find(slipId);
            if (slip.isEmpty()) {
                if (!slipId.isEmpty()) {
                    List<String> known = Arrays.stream(Slips.values()).map(Slips::id).toList();
                    findings.add(
                            fields.place("slip"),
                            "unknown slip \"" + slipId + "\"",
                            "one of " + String.join(", ", known),
                            Nearest.to(slipId, known).map(n -> "write \"" + n + "\"").orElse(""));
                }
                continue;
            }
            checkPlace(at, fields.place("at"), chain, givens);
            with.ifPresent(w -> checkPlace(w, fields.place("with"), chain, givens));
            if (slip.get().isOfRows()
                    && givens.get(at).filter(node -> !GivenReader.isRow(node)).isPresent()) {
                findings.add(
                        fields.place("at"),
                        at + " is no row of readings",
                        "a given that is one",
                        "");
            }
            if (slip.get().needsOther() && with.isEmpty()) {
                findings.add(
                        fields.place("slip"),
                        slipId + " needs another value",
                        "with: and the place of a value",
                        "");
            }
            if (slip.get().needsWords()
                    && (ifText.isEmpty() || checkText.isEmpty() || factor.isEmpty())) {
                findings.add(
                        fields.place("slip"),
                        slipId + " needs your own words",
                        "factor:, if: and check:",
                        "");
            }
            Optional<Double> number =
                    factor.filter(f -> f.matches(Literal.NUMBER))
                            .map(f -> Literal.number(f).doubleValue());
            if (factor.isPresent() && number.isEmpty()) {
                findings.add(
                        fields.place("factor"),
                        "\"" + factor.get() + "\" is no factor",
                        "a number without a unit",
                        "");
            }
            Mistake mistake =
                    new Mistake(slip.get(), at, with, number.orElse(1.0), ifText, checkText, world);
            if (mistakes.stream().anyMatch(m -> m.id().equals(mistake.id()))) {
                findings.add(
                        fields.place("slip"),
                        "the mistake " + mistake.id() + " a second time",
                        "each mistake once",
                        "delete one of the two");
            }
            mistakes.add(mistake);
        }
        return mistakes;
    }

    private void checkPlace(String place, Place where, Chain chain, MapNode givens) {
        if (place.isEmpty() || chain.uses().isEmpty()) {
            return;
        }
        if (!givens.entries().containsKey(place) && chain.slotAt(place).isEmpty()) {
            List<String> known = new ArrayList<>(givens.entries().keySet());
            for (Chain.Use use : chain.uses()) {
                use.relation().inputs().forEach(slot -> known.add(use.name() + "." + slot.name()));
            }
            known.addAll(results(chain));
            findings.add(
                    where,
                    "nothing is found at \"" + place + "\"",
                    "one of " + String.join(", ", known),
                    Nearest.to(place, known).map(n -> "write \"" + n + "\"").orElse(""));
        }
    }

    /** Everything that a problem may ask for: inputs that are solved for, and results not fed. */
    private static List<String> results(Chain chain) {
        List<String> known = new ArrayList<>();
        for (Chain.Use use : chain.uses()) {
            use.solveFor().ifPresent(slot -> known.add(use.name() + "." + slot));
            use.relation().outputs().stream()
                    .filter(slot -> !use.feeds().containsKey(slot.name()))
                    .forEach(slot -> known.add(use.name() + "." + slot.name()));
        }
        return known;
    }

    /**
     * @param names of all givens, those that could not be read among them
     */
    /** Every value that is told is a given, and every given is told. */
    void checkText(Body body, List<Given> givens, List<String> names, Task task) {
        TaskReader.texts(task).forEach((what, text) -> refuseUnknownValues(what, text, names));
        long dollars = file.body().chars().filter(c -> c == '$').count();
        if (dollars > MOST_DOLLARS) {
            findings.add(
                    file.inBody(1, 1),
                    dollars + " dollar signs in one problem",
                    "at most " + MOST_DOLLARS + ", enough for " + MOST_DOLLARS / 2 + " formulas",
                    "make several problems of it");
        }
        String[] lines = file.body().split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            Matcher matcher = GIVEN_IN_TEXT.matcher(lines[i]);
            while (matcher.find()) {
                if (!names.contains(matcher.group(1))) {
                    findings.add(
                            file.inBody(i + 1, lines[i].codePointCount(0, matcher.start()) + 1),
                            "no given is called \"" + matcher.group(1) + "\"",
                            "one of " + String.join(", ", names),
                            "");
                }
            }
        }
        String items =
                task instanceof Task.Rank rank
                        ? rank.items().stream()
                                .map(Task.Ranked::say)
                                .collect(Collectors.joining(" ", " ", ""))
                        : "";
        Set<String> told =
                GIVEN_IN_TEXT
                        .matcher(body.prompt() + items)
                        .results()
                        .map(match -> match.group(1))
                        .collect(Collectors.toSet());
        for (Given given : givens) {
            if (!told.contains(given.name())
                    && !body.prompt().isEmpty()
                    && given.means().isEmpty()
                    && !ChartSettings.use(task, given.name())) {
                findings.add(
                        file.inBody(1, 1),
                        "the text never tells the given " + given.name(),
                        "{{" + given.name() + "}} in the scenario",
                        "");
            }
        }
    }

    private void refuseUnknownValues(String what, String text, List<String> names) {
        GIVEN_IN_TEXT
                .matcher(text)
                .results()
                .map(match -> match.group(1))
                .filter(name -> !names.contains(name))
                .forEach(
                        name ->
                                findings.add(
                                        fields.place(),
                                        what + " tells a value \"" + name + "\" that is not there",
                                        "one of " + String.join(", ", names),
                                        ""));
    }

    static String fingerprint(String text) {
        try {
            byte[] hash =
                    MessageDigest.getInstance("SHA-256")
                            .digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash, 0, 6);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The parts of the body: prompt, three hints, why. */
    static final class Body {
        private static final Pattern ITEM = Pattern.compile("\\d+[.)]\\s+(.*)");
        private static final int HINTS = 3;
        private static final String HINT = "Hints";
        private static final String WHY = "Why";

        private final Map<String, StringBuilder> sections = new LinkedHashMap<>();
        private final List<String> hints = new ArrayList<>();

        Body(ContentFile file) {
            String section = "";
            sections.put(section, new StringBuilder());
            int hintsLine = 1;
            String[] lines = file.body().split("\n", -1);
            for (int i = 0; i < lines.length; i++) {
                if (lines[i].startsWith("## ")) {
                    section = lines[i].substring(3).strip();
                    sections.putIfAbsent(section, new StringBuilder());
                    hintsLine = section.equals(HINT) ? i + 1 : hintsLine;
                    if (!section.equals(HINT) && !section.equals(WHY)) {
                        file.findings()
                                .add(
                                        file.inBody(i + 1, 1),
                                        "unknown section \"" + section + "\"",
                                        "## Hints or ## Why",
                                        "");
                    }
                } else {
                    sections.get(section).append(lines[i]).append('\n');
                }
            }
            splitHints();
            boolean misspelt = !Set.of("", HINT, WHY).containsAll(sections.keySet());
            if (hints.size() != HINTS && !(misspelt && hints.isEmpty())) {
                file.findings()
                        .add(
                                file.inBody(hintsLine, 1),
                                hints.size() + " hints",
                                "a section ## Hints with a numbered list of exactly three",
                                "the fourth rung, the full working, is computed");
            }
            if (why().isEmpty() && !misspelt) {
                file.findings()
                        .add(file.inBody(1, 1), "no reason why it matters", "a section ## Why", "");
            }
            if (prompt().isEmpty()) {
                file.findings()
                        .add(
                                file.inBody(1, 1),
                                "no scenario",
                                "the text of the problem under the front matter",
                                "");
            }
        }

        private void splitHints() {
            StringBuilder hint = null;
            for (String line :
                    sections.getOrDefault(HINT, new StringBuilder()).toString().split("\n")) {
                Matcher item = ITEM.matcher(line);
                if (item.matches()) {
                    addHint(hint);
                    hint = new StringBuilder(item.group(1)).append('\n');
                } else if (hint != null) {
                    hint.append(line.strip()).append('\n');
                }
            }
            addHint(hint);
        }

        private void addHint(StringBuilder hint) {
            if (hint != null) {
                hints.add(hint.toString().strip());
            }
        }

        String prompt() {
            return sections.get("").toString().strip();
        }

        List<String> hints() {
            return hints;
        }

        String why() {
            return sections.getOrDefault(WHY, new StringBuilder()).toString().strip();
        }
    }
}
