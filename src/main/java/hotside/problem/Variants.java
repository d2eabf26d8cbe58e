// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.RigException;
import hotside.relation.Chain;
import hotside.relation.RelationException;
import hotside.relation.SlotScale;
import hotside.relation.Values;
import hotside.statistics.draw.SplitMix64;
import hotside.trial.Trial;
import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.Shown;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Draws variants. The same template, seed and unit system give the same numbers on every machine
 * and in every version: givens come from decimal grids by a frozen generator, and what is computed
 * from them only ever decides by margins far wider than a last digit.
 */
public final class Variants {
    /**
     * Goes up when the way of drawing changes; a recorded variant of another version is refused,
     * not guessed.
     */
    public static final int GENERATOR_VERSION = 1;

    /** The name of the given that is the air around, where a problem has one. */
    public static final String AMBIENT = "ambient";

    private static final int MOST_DRAWS = 400;

    /** A mistake this close to the right answer, relatively, does not touch that answer. */
    private static final double SAME = 1e-6;

    /**
     * Bands are compared with a little more than themselves. Round grids often land on a band's
     * very edge, where the last digit would decide, and last digits differ between machines.
     */
    private static final double EDGE = 1.001;

    private Variants() {}

    /**
     * Draws a variant in which everything is in range, no relation needs a caution, no answer
     * equals a given and every recognised mistake can be told from the right answer.
     *
     * @throws NoVariantException if none is found in some hundred draws; the message says what
     *     stood in the way
     */
    public static Variant draw(Template template, long seed, UnitSystem system) {
        SplitMix64 random = new SplitMix64(seed ^ hash(template.id()));
        String obstacle = "";
        for (int i = 0; i < MOST_DRAWS; i++) {
            try {
                Draw draw = new Draw(template, system, random);
                return draw.variant(seed, random);
            } catch (Unsound e) {
                obstacle = e.getMessage();
            } catch (RelationException | RigException | Reading.Unclear e) {
                obstacle = e.getMessage();
            }
        }
        throw new NoVariantException(
                template.id()
                        + ": no sound variant in "
                        + MOST_DRAWS
                        + " draws; the last one failed because "
                        + obstacle);
    }

    /** True if a sound variant is drawn from this seed. */
    static boolean draws(Template template, long seed, UnitSystem system) {
        try {
            draw(template, seed, system);
            return true;
        } catch (NoVariantException e) {
            return false;
        }
    }

    /** 64-bit FNV-1a, so that one seed gives different numbers to different problems. */
    static long hash(String text) {
        long hash = 0xcbf29ce484222325L;
        for (byte b : text.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (b & 0xff)) * 0x100000001b3L;
        }
        return hash;
    }

    /** A draw that cannot be used; the message says why. */
    static final class Unsound extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Unsound(String message) {
            super(message, null, false, false);
        }
    }

    private static final class Draw {
        private final Template template;
        private final UnitSystem system;
        private final Map<String, Object> givens = new LinkedHashMap<>();
        private final Map<String, String> shown = new LinkedHashMap<>();
        private double ambient = Units.STANDARD_ATMOSPHERE;
        private List<Figure> figures = List.of();

        Draw(Template template, UnitSystem system, SplitMix64 random) {
            this.template = template;
            this.system = system;
            Map<Given, Picked> picked = new LinkedHashMap<>();
            template.givens().stream()
                    .filter(given -> given.means().isEmpty())
                    .forEach(given -> picked.put(given, pick(given, random)));
            Picked air = template.given(AMBIENT).map(picked::get).orElse(null);
            if (air != null) {
                ambient =
                        air.scale()
                                .toSi(
                                        air.numbers().get(0).doubleValue(),
                                        Quantity.PRESSURE,
                                        ambient);
            }
            picked.forEach(this::put);
            if (template.task() instanceof Task.Split split) {
                pull(split, random);
            }
        }

        /** Makes the pulls of a trial; their means are givens like any other. */
        private void pull(Task.Split split, SplitMix64 random) {
            Contest contest = split.contest();
            List<String> lines =
                    split.plan().stream().map(line -> shown.getOrDefault(line, line)).toList();
            List<String> letters = List.copyOf(contest.parts().keySet());
            PlanDraft draft = PlanDraft.read(lines, contest.parts().keySet(), system);
            Trial trial = Trial.run(contest.plan(draft, letters, Values.of(givens)), random.next());
            if (template.given(AMBIENT).isEmpty()) {
                ambient = trial.pulls().get(0).rig().ambient().pressure();
            }
            template.givens().stream()
                    .filter(given -> given.means().isPresent())
                    .forEach(given -> put(given, means(given, contest, trial)));
            figures = new Figures(system, Values.of(givens)).of(contest, trial);
        }

        private Picked means(Given given, Contest contest, Trial trial) {
            Given.Means means = given.means().orElseThrow();
            Scale scale = given.si().scale();
            List<BigDecimal> numbers =
                    java.util.stream.IntStream.range(0, trial.pulls().size())
                            .filter(i -> means.holds(trial.plan().order().charAt(i)))
                            .mapToDouble(i -> contest.mean(trial.pulls().get(i), means.channel()))
                            .map(si -> scale.fromSi(si, given.quantity(), ambient))
                            .mapToObj(number -> rounded(number, given.step()))
                            .toList();
            Picked picked = new Picked(numbers, scale);
            return system == UnitSystem.US_SHOP ? convert(given, picked) : picked;
        }

        private static BigDecimal rounded(double number, BigDecimal step) {
            return new BigDecimal(number).divide(step, 0, RoundingMode.HALF_EVEN).multiply(step);
        }

        private record Picked(List<BigDecimal> numbers, Scale scale) {}

        private Picked pick(Given given, SplitMix64 random) {
            boolean converted = system == UnitSystem.US_SHOP && given.us().isEmpty();
            Grid grid = system == UnitSystem.US_SHOP ? given.us().orElse(given.si()) : given.si();
            BigDecimal number = grid.values().get(random.below(grid.values().size()));
            List<BigDecimal> numbers =
                    given.isFixedRow()
                            ? grid.values()
                            : given.isRow() ? readings(given, number, random) : List.of(number);
            return converted
                    ? convert(given, new Picked(numbers, grid.scale()))
                    : new Picked(numbers, grid.scale());
        }

        private static List<BigDecimal> readings(
                Given given, BigDecimal middle, SplitMix64 random) {
            int reach =
                    given.scatter().divide(given.step(), 0, RoundingMode.HALF_UP).intValueExact();
            List<BigDecimal> numbers = new ArrayList<>();
            for (int i = 0; i < given.readings(); i++) {
                int steps =
                        Math.floorDiv(
                                random.below(2 * reach + 1)
                                        + random.below(2 * reach + 1)
                                        - 2 * reach,
                                2);
                numbers.add(middle.add(given.step().multiply(BigDecimal.valueOf(steps))));
            }
            return numbers;
        }

        /**
         * A number drawn for one shop, as the other would say it: rounded, and then meant as
         * rounded.
         */
        private Picked convert(Given given, Picked picked) {
            Scale to =
                    ChainReader.fedBy(template.chain(), given.name())
                            .map(slot -> SlotScale.of(slot, UnitSystem.US_SHOP))
                            .orElse(given.quantity().shown(UnitSystem.US_SHOP));
            Scale scale = new Scale(to.unit(), picked.scale().reference());
            if (scale.equals(picked.scale())) {
                return picked;
            }
            double air = Units.STANDARD_ATMOSPHERE;
            MathContext digits = new MathContext(given.isRow() ? 4 : 3, RoundingMode.HALF_EVEN);
            List<BigDecimal> numbers =
                    picked.numbers().stream()
                            .map(n -> picked.scale().toSi(n.doubleValue(), given.quantity(), air))
                            .map(si -> scale.fromSi(si, given.quantity(), air))
                            .map(value -> new BigDecimal(value, digits))
                            .toList();
            return new Picked(numbers, scale);
        }

        private void put(Given given, Picked picked) {
            List<Double> si =
                    picked.numbers().stream()
                            .map(
                                    n ->
                                            picked.scale()
                                                    .toSi(
                                                            n.doubleValue(),
                                                            given.quantity(),
                                                            ambient))
                            .toList();
            givens.put(given.name(), given.isRow() ? (Object) si : si.get(0));
            String label = picked.scale().told();
            String numbers =
                    picked.numbers().stream()
                            .map(n -> told(given, n))
                            .collect(Collectors.joining("; "));
            shown.put(
                    given.name(),
                    label.isEmpty() ? numbers : numbers + "\u00a0" + label.replace(' ', '\u00a0'));
        }

        private static String told(Given given, BigDecimal number) {
            if (given.quantity() == Quantity.FLAG) {
                return Shown.of(number.signum(), Quantity.FLAG, UnitSystem.SI_SHOP, 1).text();
            }
            boolean plain = number.precision() - number.scale() <= 10 && number.scale() <= 10;
            return DecimalHabit.spoken()
                    .write(
                            plain
                                    ? number.toPlainString().replace('-', '−')
                                    : Numbers.plain(number.doubleValue()));
        }

        Variant variant(long seed, SplitMix64 random) {
            Values values = Values.of(givens);
            var run = template.chain().run(values);
            run.workings()
                    .forEach(
                            worked ->
                                    worked.cautions()
                                            .forEach(
                                                    caution -> {
                                                        throw new Unsound(
                                                                "of a caution: " + caution.text());
                                                    }));
            Task task = template.task();
            if (task.isWorked() || task instanceof Task.Pick) {
                Variant worked = worked(seed, values, run);
                return task instanceof Task.Pick ? new Sheet(worked, random).picking() : worked;
            }
            Variant bare =
                    new Variant(
                            template,
                            seed,
                            system,
                            values,
                            shown,
                            ambient,
                            run,
                            List.of(new Variant.Answer(Double.NaN, 0)),
                            List.of(),
                            List.of(),
                            List.of());
            Variant drawn = new Sheet(bare, random).drawn();
            if (task instanceof Task.Read) {
                refuseNearRight(drawn);
                refuseNearTwins(drawn, drawn.slips());
            }
            return drawn;
        }

        private Variant worked(long seed, Values values, Chain.Run run) {
            List<Variant.Answer> answers = new ArrayList<>();
            for (Ask ask : template.asks()) {
                double value = run.number(ask.place());
                answers.add(new Variant.Answer(value, ask.tolerance().band(value)));
            }
            refuseAnswersThatAreGivens(answers);
            Variant plain =
                    new Variant(
                            template, seed, system, values, shown, ambient, run, answers, List.of(),
                            List.of(), List.of());
            return new Variant(
                    template,
                    seed,
                    system,
                    values,
                    shown,
                    ambient,
                    run,
                    answers,
                    slips(plain),
                    List.of(),
                    figures);
        }

        private static void refuseNearRight(Variant drawn) {
            Variant.Answer right = drawn.answers().get(0);
            for (Variant.Slipped slip : drawn.slips()) {
                if (Math.abs(slip.value() - right.value()) <= EDGE * 2 * right.band()) {
                    throw new Unsound(
                            "the mistake " + slip.mistake().id() + " cannot be told apart");
                }
            }
        }

        private void refuseAnswersThatAreGivens(List<Variant.Answer> answers) {
            for (int i = 0; i < answers.size(); i++) {
                Ask ask = template.asks().get(i);
                for (Given given : template.givens()) {
                    if (given.quantity() == ask.quantity()
                            && givens.get(given.name()) instanceof Double number
                            && Math.abs(number - answers.get(i).value())
                                    <= EDGE * answers.get(i).band()) {
                        throw new Unsound(
                                "the answer " + ask.place() + " equals the given " + given.name());
                    }
                }
            }
        }

        private List<Variant.Slipped> slips(Variant plain) {
            List<Variant.Slipped> slips = new ArrayList<>();
            for (Mistake mistake : template.mistakes()) {
                List<Variant.Slipped> its = new ArrayList<>();
                try {
                    its = slipsOf(plain, mistake);
                } catch (RelationException | Unsound e) {
                    if (template.strict()) {
                        throw new Unsound(
                                "the mistake "
                                        + mistake.id()
                                        + " cannot be told apart: "
                                        + e.getMessage());
                    }
                }
                slips.addAll(its);
            }
            if (template.strict()) {
                refuseNearTwins(plain, slips);
            }
            return slips;
        }

        private static List<Variant.Slipped> slipsOf(Variant plain, Mistake mistake) {
            List<Variant.Slipped> its = new ArrayList<>();
            Values slipped = Replay.of(plain, List.of(), java.util.Optional.of(mistake));
            for (int i = 0; i < plain.answers().size(); i++) {
                Variant.Answer right = plain.answers().get(i);
                double value = slipped.number(plain.template().asks().get(i).place());
                double off = Math.abs(value - right.value());
                if (off <= SAME * Math.abs(right.value())) {
                    continue;
                }
                if (off <= EDGE * 2 * right.band()) {
                    throw new Unsound(
                            "it gives "
                                    + Numbers.significant(value, 4)
                                    + " where "
                                    + Numbers.significant(right.value(), 4)
                                    + " is right");
                }
                its.add(new Variant.Slipped(mistake, i, value));
            }
            if (its.isEmpty()) {
                throw new Unsound("it changes no answer");
            }
            return its;
        }

        /**
         * Two mistakes that give one number by their nature are told together; two that meet by
         * accident are not.
         */
        private static void refuseNearTwins(Variant plain, List<Variant.Slipped> slips) {
            for (int i = 0; i < slips.size(); i++) {
                for (int j = 0; j < i; j++) {
                    Variant.Slipped a = slips.get(i);
                    Variant.Slipped b = slips.get(j);
                    double apart = Math.abs(a.value() - b.value());
                    double band = plain.tolerance(a.ask(), a.value());
                    if (a.ask() == b.ask()
                            && apart > SAME * Math.abs(a.value())
                            && apart <= EDGE * band) {
                        throw new Unsound(
                                "the mistakes "
                                        + a.mistake().id()
                                        + " and "
                                        + b.mistake().id()
                                        + " meet");
                    }
                }
            }
        }
    }
}
