// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.Pull;
import hotside.cell.Rig;
import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.statistics.draw.SplitMix64;
import hotside.unit.DecimalHabit;
import hotside.unit.Quantity;
import hotside.unit.Shown;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.MatchResult;

/** Adds to a variant what its kind needs beside numbers: options, items, charts. */
final class Sheet {
    private static final int DIGITS = 3;

    /** Faults whose curves lie closer than this share of an axis look alike. */
    private static final double ALIKE = 0.06;

    private final Variant bare;
    private final Template template;
    private final SplitMix64 random;
    private final Map<String, String> shown;

    /**
     * @param bare the variant with its givens and its working
     * @param random goes on from the draw of the givens
     */
    Sheet(Variant bare, SplitMix64 random) {
        this.bare = bare;
        this.template = bare.template();
        this.random = random;
        this.shown = new LinkedHashMap<>(bare.shown());
    }

    Variant drawn() {
        Task task = template.task();
        if (task instanceof Task.Judge judge) {
            return judging(judge);
        }
        if (task instanceof Task.Arrange arrange) {
            return arranging(arrange);
        }
        if (task instanceof Task.Rank rank) {
            return ranking(rank);
        }
        if (task instanceof Task.Devise) {
            return devising();
        }
        return task instanceof Task.Read read ? reading(read) : diagnosing((Task.Diagnose) task);
    }

    /** A plan's problem is sound if the plan of its file is right. */
    private Variant devising() {
        int lines = PlanLine.values().length;
        Variant.Answer none = new Variant.Answer(Double.NaN, 0);
        Variant drawn =
                new Variant(
                        template,
                        bare.seed(),
                        bare.system(),
                        bare.givens(),
                        shown,
                        bare.ambient(),
                        bare.run(),
                        Collections.nCopies(lines, none),
                        List.of(),
                        List.of(),
                        List.of());
        List<PlanJudge.Fault> faults = PlanJudge.of(drawn, PlanJudge.model(drawn)).faults();
        if (!faults.isEmpty()) {
            throw new Variants.Unsound(
                    "the plan in the file is not right: " + faults.get(0).text());
        }
        return drawn;
    }

    /** The right number among those of the mistakes. */
    Variant picking() {
        List<Lettered> options = new ArrayList<>();
        options.add(new Lettered("", "", told(bare.answers().get(0).value()), true, ""));
        Set<String> texts = new LinkedHashSet<>();
        texts.add(options.get(0).text());
        for (Variant.Slipped slip : bare.slips()) {
            String text = told(slip.value());
            // Mistakes that give one number by their nature are one option.
            if (texts.add(text)) {
                options.add(new Lettered("", slip.mistake().id(), text, false, ""));
            }
        }
        if (options.size() < 3) {
            throw new Variants.Unsound("fewer than three options differ");
        }
        return with(lettered(shuffled(options)), List.of());
    }

    private String told(double value) {
        return Answers.told(bare, 0, value, DIGITS);
    }

    private Variant judging(Task.Judge judge) {
        List<Lettered> options = new ArrayList<>();
        tell(template.prompt());
        tell(template.why());
        template.hints().forEach(this::tell);
        for (Task.Statement statement : judge.statements()) {
            boolean holds =
                    statement
                            .holds()
                            .holds(bare.run().values(), bare.ambient())
                            .orElseThrow(
                                    () ->
                                            new Variants.Unsound(
                                                    "it is too close to say whether \""
                                                            + statement.say()
                                                            + "\" holds"));
            options.add(
                    new Lettered(
                            "",
                            statement.id(),
                            filled(statement.say()),
                            holds,
                            filled(statement.because())));
        }
        long right = options.stream().filter(Lettered::right).count();
        if (judge.several() ? right == 0 || right == options.size() : right != 1) {
            throw new Variants.Unsound(right + " options hold");
        }
        return with(lettered(shuffled(options)), List.of());
    }

    private Variant arranging(Task.Arrange arrange) {
        List<Lettered> items = new ArrayList<>();
        arrange.items()
                .forEach(i -> items.add(new Lettered("", i.id(), filled(i.say()), false, "")));
        List<Lettered> mixed = shuffled(items);
        if (Orders.broken(arrange, mixed.stream().map(Lettered::id).toList()).isEmpty()) {
            throw new Variants.Unsound("the items begin in order");
        }
        return with(lettered(mixed), List.of());
    }

    /**
     * Sound where the order can be told, and no wrong idea leads to the right one or to another's.
     */
    private Variant ranking(Task.Rank rank) {
        Set<List<String>> orders = new LinkedHashSet<>();
        orders.add(Orders.right(rank, bare.run().values()));
        for (Task.Misrank misrank : rank.misranks()) {
            if (!orders.add(Orders.wrong(rank, misrank, bare.run().values()))) {
                throw new Variants.Unsound(
                        "the order of " + misrank.id() + " cannot be told apart");
            }
        }
        tell(template.prompt());
        tell(template.why());
        template.hints().forEach(this::tell);
        rank.misranks().forEach(misrank -> tell(misrank.because()));
        List<Lettered> items = new ArrayList<>();
        for (Task.Ranked item : rank.items()) {
            String value = "{{" + item.value() + "}}";
            items.add(new Lettered("", item.id(), filled(item.say()), false, filled(value)));
        }
        List<Lettered> mixed = shuffled(items);
        if (mixed.stream().map(Lettered::id).toList().equals(orders.iterator().next())) {
            throw new Variants.Unsound("the items begin in order");
        }
        return with(lettered(mixed), List.of());
    }

    private Variant reading(Task.Read task) {
        Figures figures = new Figures(bare.system(), bare.givens());
        double ambient = bare.ambient();
        Figure figure;
        if (task.chart() instanceof ChartPlan.Pulls plan) {
            Map<String, Pull> ran = figures.run(plan, random.next());
            ambient = ran.values().iterator().next().rig().ambient().pressure();
            figure = holding(figures.of(plan, ran), task.reading().of());
        } else {
            figure =
                    figures.of(
                            (ChartPlan.Curves) task.chart(), template.chain(), bare.run(), ambient);
        }
        Reading reading = task.reading();
        Reading.Place place = place(reading, figure, ambient);
        double value = reading.value(figure, place);
        double half = reading.band(figure, place);
        double si = reading.toSi(figure, value, ambient);
        double band = Math.abs(reading.toSi(figure, value + half, ambient) - si);
        List<Variant.Slipped> slips = new ArrayList<>();
        for (Misreading misreading : task.misreadings()) {
            double wrong = misreading.value(reading, figure, place);
            slips.add(new Variant.Slipped(misreading, 0, reading.toSi(figure, wrong, ambient)));
        }
        return new Variant(
                template,
                bare.seed(),
                bare.system(),
                bare.givens(),
                shown,
                ambient,
                bare.run(),
                List.of(new Variant.Answer(si, band)),
                slips,
                List.of(),
                List.of(figure));
    }

    private static Figure holding(List<Figure> figures, String curve) {
        return figures.stream()
                .filter(figure -> figure.curve(curve).isPresent())
                .findFirst()
                .orElseThrow();
    }

    private Reading.Place place(Reading reading, Figure figure, double ambient) {
        Quantity up = Reading.curve(figure, reading.of()).quantity();
        boolean level = reading.sort() == Reading.Sort.REACHES;
        Figure.Axis x = figure.x();
        Function<String, Double> along =
                text -> x.scale().fromSi(si(text, x.quantity(), ambient), x.quantity(), ambient);
        double at =
                reading.at()
                        .map(
                                text ->
                                        level
                                                ? Reading.curve(figure, reading.of())
                                                        .scale()
                                                        .fromSi(si(text, up, ambient), up, ambient)
                                                : along.apply(text))
                        .orElse(Double.NaN);
        return new Reading.Place(
                at,
                reading.from().map(along).orElse(Double.NaN),
                reading.to().map(along).orElse(Double.NaN));
    }

    private double si(String text, Quantity quantity, double ambient) {
        return ChartReader.value(text, quantity, bare.givens(), ambient);
    }

    /** One fault is drawn; all of them are run, to be sure that its curves are like no other's. */
    private Variant diagnosing(Task.Diagnose task) {
        Figures figures = new Figures(bare.system(), bare.givens());
        long seed = random.next();
        int drawn = random.below(task.faults().size());
        Map<String, Pull> ran = figures.run(task.chart(), seed);
        List<List<Figure>> looks = new ArrayList<>();
        for (Task.Fault fault : task.faults()) {
            looks.add(figures.of(task.chart(), disturbed(task, ran, fault, seed)));
        }
        List<Figure> seen = looks.get(drawn);
        refuseAlike(seen, figures.of(task.chart(), ran), "no fault");
        List<Lettered> options = new ArrayList<>();
        for (int i = 0; i < task.faults().size(); i++) {
            Task.Fault fault = task.faults().get(i);
            if (i != drawn) {
                refuseAlike(seen, looks.get(i), fault.id());
            }
            options.add(
                    new Lettered(
                            "",
                            fault.id(),
                            filled(fault.say()),
                            i == drawn,
                            filled(fault.trace())));
        }
        return with(lettered(shuffled(options)), seen);
    }

    private Map<String, Pull> disturbed(
            Task.Diagnose task, Map<String, Pull> ran, Task.Fault fault, long seed) {
        Map<String, Pull> with = new LinkedHashMap<>(ran);
        ChartPlan.Planned planned = task.chart().pulls().get(task.pull());
        Rig rig = planned.change().on(planned.rig(), bare.givens());
        int index = List.copyOf(ran.keySet()).indexOf(task.pull());
        with.put(task.pull(), Figures.pull(fault.change().on(rig, bare.givens()), seed + index));
        return with;
    }

    private static void refuseAlike(List<Figure> some, List<Figure> others, String what) {
        if (Figures.apart(some, others) < ALIKE) {
            throw new Variants.Unsound("the curves look like those of " + what);
        }
    }

    private <T> List<T> shuffled(List<T> list) {
        List<T> mixed = new ArrayList<>(list);
        for (int i = mixed.size() - 1; i > 0; i--) {
            int j = random.below(i + 1);
            T other = mixed.set(i, mixed.get(j));
            mixed.set(j, other);
        }
        return mixed;
    }

    private static List<Lettered> lettered(List<Lettered> list) {
        List<Lettered> out = new ArrayList<>();
        for (Lettered one : list) {
            String letter = String.valueOf((char) ('A' + out.size()));
            out.add(new Lettered(letter, one.id(), one.text(), one.right(), one.because()));
        }
        return out;
    }

    private Variant with(List<Lettered> lettered, List<Figure> figures) {
        return new Variant(
                template,
                bare.seed(),
                bare.system(),
                bare.givens(),
                shown,
                bare.ambient(),
                bare.run(),
                bare.answers(),
                bare.slips(),
                lettered,
                figures);
    }

    private String filled(String text) {
        tell(text);
        return TemplateReader.GIVEN_IN_TEXT
                .matcher(text)
                .replaceAll(match -> java.util.regex.Matcher.quoteReplacement(value(match)));
    }

    private String value(MatchResult match) {
        return shown.getOrDefault(match.group(1), match.group());
    }

    /** Makes the results that a text names ready to be printed in it. */
    private void tell(String text) {
        TemplateReader.GIVEN_IN_TEXT
                .matcher(text)
                .results()
                .map(match -> match.group(1))
                .filter(name -> !shown.containsKey(name))
                .forEach(name -> result(name).ifPresent(value -> shown.put(name, value)));
    }

    private Optional<String> result(String place) {
        UnitSystem system = bare.system();
        return template.chain()
                .slotAt(place)
                .filter(slot -> slot.kind() == Slot.Kind.NUMBER)
                .map(
                        slot ->
                                Shown.of(
                                                bare.run().number(place),
                                                slot.quantity(),
                                                SlotScale.of(slot, system),
                                                bare.ambient(),
                                                DIGITS,
                                                DecimalHabit.spoken())
                                        .text()
                                        .replace(' ', '\u00a0'));
    }
}
