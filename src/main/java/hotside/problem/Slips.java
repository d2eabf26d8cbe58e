// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.speech.Phrases;
import hotside.unit.Units;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The slips that people make with numbers: each spoils one value, and the same relations are worked
 * again with it. Their wording is in {@code slips.properties}.
 */
public enum Slips {
    GAUGE_AS_ABSOLUTE((x, s) -> x - s.ambient()),
    ABSOLUTE_AS_GAUGE((x, s) -> x + s.ambient()),
    CELSIUS_AS_KELVIN((x, s) -> x - Units.ZERO_CELSIUS),
    FAHRENHEIT_AS_KELVIN((x, s) -> x * 9 / 5 - 459.67),
    KELVIN_ADDED_TO_DIFFERENCE((x, s) -> x + Units.ZERO_CELSIUS),
    RADIUS_AS_DIAMETER((x, s) -> x / 2),
    DIAMETER_AS_RADIUS((x, s) -> x * 2),
    SQUARE_FOR_CIRCLE((x, s) -> x * Math.sqrt(4 / Math.PI)),
    LEFT_OUT((x, s) -> 0),
    IGNORED((x, s) -> 1),
    SIGN_TURNED((x, s) -> -x),
    TURNED_OVER((x, s) -> 1 / x),
    SQUARED((x, s) -> x * x),
    ROOT_FORGOTTEN((x, s) -> x * x),
    /** A ratio taken as the rise above one. */
    ONE_LEFT_OUT((x, s) -> x - 1),
    /** What a share leaves, taken for the share. */
    REST_FOR_SHARE((x, s) -> 1 - x),
    PERCENT_AS_NUMBER((x, s) -> x * 100),
    PERCENT_TWICE((x, s) -> x / 100),
    MINUTES_AS_SECONDS((x, s) -> x * 60),
    THOUSAND_TOO_BIG((x, s) -> x * 1000),
    THOUSAND_TOO_SMALL((x, s) -> x / 1000),
    PSI_WRONG_WAY(
            (x, s) ->
                    x
                            / Math.pow(
                                    Units.bySymbol(hotside.unit.Dimension.PRESSURE, "psi").factor()
                                            / 1000,
                                    2)),
    /** Another value of the problem taken in its place. */
    TAKEN_INSTEAD((x, s) -> s.other()),
    ADDED((x, s) -> x + s.other()),
    NOT_SUBTRACTED((x, s) -> x + s.other()),
    SUBTRACTED_TWICE((x, s) -> x - s.other()),
    /** Of a row of readings: the first stands for their mean. */
    FIRST_FOR_MEAN((x, s) -> x),
    /** Of a row: the largest stands for their mean. */
    BEST_FOR_MEAN((x, s) -> x),
    /** Of a row: the reading farthest from the others' middle is dropped. */
    ODD_ONE_DROPPED((x, s) -> x),
    /** A change of so many degrees Fahrenheit from which the scale's 32 are taken off. */
    OFFSET_IN_DIFFERENCE((x, s) -> x - 32 / 1.8),
    /** The angle to the other axis, as when sine and cosine are mixed up. */
    SINE_FOR_COSINE((x, s) -> Math.PI / 2 - x),
    /** A length that changes an area, from another one on, as if areas went with it plainly. */
    LINEAR_FOR_SQUARE((x, s) -> Math.sqrt(x * s.other())),
    /** The ratio to another value turned upside down. */
    RATIO_TURNED((x, s) -> s.other() * s.other() / x),
    /**
     * The ratio to another value squared, as when the root on the way from an area is forgotten.
     */
    RATIO_SQUARED((x, s) -> x * x / s.other()),
    /** The difference to another value with the opposite sign. */
    DIFFERENCE_TURNED((x, s) -> 2 * s.other() - x),
    /** A factor that the problem's author names. */
    FACTOR((x, s) -> x * s.factor()),
    /** Raised to a power that the problem's author names: an exponent that went wrong. */
    RAISED((x, s) -> Math.pow(x, s.factor()));

    /**
     * What a slip may use.
     *
     * @param ambient absolute pressure of the air around, Pa
     * @param other another value of the problem, SI; NaN if none was named
     * @param factor a number that the author named; 1 if none
     */
    public record Surroundings(double ambient, double other, double factor) {}

    @FunctionalInterface
    private interface Spoil {
        double of(double value, Surroundings surroundings);
    }

    private static final Phrases WORDS = Phrases.of("hotside.problem.slips");

    private final Spoil spoil;

    Slips(Spoil spoil) {
        this.spoil = spoil;
    }

    /** As problem files write it: {@code gauge-as-absolute}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Slips> find(String id) {
        return Arrays.stream(values()).filter(slip -> slip.id().equals(id)).findFirst();
    }

    /** True if the slip takes another value of the problem. */
    public boolean needsOther() {
        return this == TAKEN_INSTEAD
                || this == ADDED
                || this == NOT_SUBTRACTED
                || this == SUBTRACTED_TWICE
                || this == LINEAR_FOR_SQUARE
                || this == RATIO_TURNED
                || this == RATIO_SQUARED
                || this == DIFFERENCE_TURNED;
    }

    /** True if the author must word it, because only the author knows what the value means. */
    public boolean needsWords() {
        return this == FACTOR || this == RAISED;
    }

    /** The spoilt value, SI. */
    public double spoil(double value, Surroundings surroundings) {
        return spoil.of(value, surroundings);
    }

    /** True if it spoils a row of readings and not a number. */
    public boolean isOfRows() {
        return this == FIRST_FOR_MEAN || this == BEST_FOR_MEAN || this == ODD_ONE_DROPPED;
    }

    /** The spoilt row, SI. Where one reading stands for the mean, the scatter stays as it was. */
    List<Double> spoil(List<Double> row) {
        double mean = row.stream().mapToDouble(x -> x).average().orElseThrow();
        return switch (this) {
            case FIRST_FOR_MEAN -> row.stream().map(x -> x + row.get(0) - mean).toList();
            case BEST_FOR_MEAN -> {
                double best = java.util.Collections.max(row);
                yield row.stream().map(x -> x + best - mean).toList();
            }
            case ODD_ONE_DROPPED -> {
                double odd =
                        row.stream()
                                .max((a, b) -> Double.compare(far(a, row), far(b, row)))
                                .orElseThrow();
                int at = row.indexOf(odd);
                yield java.util.stream.IntStream.range(0, row.size())
                        .filter(i -> i != at)
                        .mapToObj(row::get)
                        .toList();
            }
            default -> row;
        };
    }

    private static double far(double x, List<Double> row) {
        List<Double> sorted = row.stream().sorted().toList();
        int half = sorted.size() / 2;
        double middle =
                sorted.size() % 2 == 1
                        ? sorted.get(half)
                        : (sorted.get(half - 1) + sorted.get(half)) / 2;
        return Math.abs(x - middle);
    }

    /** The clause after "what you would get if", with {@code {what}} for the value concerned. */
    public String ifText() {
        return WORDS.get(id() + ".if");
    }

    /** {@link #ifText} where the answer itself is counted from the wrong zero. */
    String answerIfText() {
        return WORDS.get(id() + ".answer.if");
    }

    /** {@link #checkText} where the answer itself is counted from the wrong zero. */
    String answerCheckText() {
        return WORDS.get(id() + ".answer.check");
    }

    /** The advice after "check". */
    public String checkText() {
        return WORDS.get(id() + ".check");
    }
}
