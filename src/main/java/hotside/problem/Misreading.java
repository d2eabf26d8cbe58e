// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.speech.Phrases;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * A way to misread a chart.
 *
 * @param sort what is done wrong
 * @param with the curve that is taken, where it takes another
 * @param ifText in place of the sort's own wording after "what you would get if"
 * @param checkText in place of its own advice after "check"
 * @param world what the world would look like if the wrong number were true
 */
public record Misreading(
        Sort sort,
        Optional<String> with,
        Optional<String> ifText,
        Optional<String> checkText,
        Optional<String> world)
        implements NamedMistake {

    private static final Phrases WORDS = Phrases.of("hotside.problem.misreadings");

    /** What is done wrong. */
    enum Sort {
        /** The same reading on another curve. */
        OTHER_CURVE,
        /** The numbered mark nearest to the answer, without looking between the marks. */
        NEAREST_MARK,
        /** The top, or the largest gap, in place of the mean of a band. */
        PEAK_FOR_MEAN,
        /** The mean of the whole curve in place of that of a band. */
        WHOLE_FOR_BAND,
        /** The top in place of the height at a place. */
        PEAK_FOR_VALUE,
        /** The end of the curve in place of its top. */
        END_FOR_PEAK,
        /** Where the curve is highest in place of where it reaches a height. */
        PEAK_FOR_REACHED,
        /** The lengths above the lower end of the axis, though zero is not there. */
        BY_HEIGHT,
        /** The share of the changed value in place of that of the first. */
        WRONG_BASE,
        /** The bare difference called percent. */
        POINTS_FOR_PERCENT,
        /** The change in percent given as the difference. */
        PERCENT_FOR_POINTS,
        /** The other way round. */
        TURNED_ROUND;

        String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        static Optional<Sort> find(String id) {
            return Arrays.stream(values()).filter(s -> s.id().equals(id)).findFirst();
        }

        boolean fits(Reading.Sort reading) {
            return switch (this) {
                case OTHER_CURVE -> true;
                case NEAREST_MARK ->
                        reading != Reading.Sort.DIFFERENCE && reading != Reading.Sort.CHANGE;
                case PEAK_FOR_MEAN ->
                        reading == Reading.Sort.MEAN
                                || reading == Reading.Sort.DIFFERENCE
                                || reading == Reading.Sort.CHANGE;
                case WHOLE_FOR_BAND -> reading == Reading.Sort.MEAN;
                case PEAK_FOR_VALUE -> reading == Reading.Sort.VALUE;
                case END_FOR_PEAK ->
                        reading == Reading.Sort.PEAK || reading == Reading.Sort.PEAK_PLACE;
                case PEAK_FOR_REACHED -> reading == Reading.Sort.REACHES;
                case BY_HEIGHT, WRONG_BASE, POINTS_FOR_PERCENT -> reading == Reading.Sort.CHANGE;
                case PERCENT_FOR_POINTS -> reading == Reading.Sort.DIFFERENCE;
                case TURNED_ROUND ->
                        reading == Reading.Sort.DIFFERENCE || reading == Reading.Sort.CHANGE;
            };
        }
    }

    @Override
    public String id() {
        return sort.id() + with.map(curve -> "=" + curve).orElse("");
    }

    /** The clause after "what you would get if". */
    String clause() {
        return ifText.orElseGet(() -> WORDS.get(sort.id() + ".if"));
    }

    /** The advice after "check". */
    String advice() {
        return checkText.orElseGet(() -> WORDS.get(sort.id() + ".check"));
    }

    /**
     * The number that this gives, in the unit shown.
     *
     * @throws Reading.Unclear if there is none
     */
    double value(Reading right, Figure figure, Reading.Place place) {
        Figure.Curve a = Reading.curve(figure, right.of());
        return switch (sort) {
            case OTHER_CURVE -> instead(right).value(figure, place);
            case NEAREST_MARK ->
                    (right.sort().alongX() ? figure.x() : figure.y())
                            .marks()
                            .nearest(right.value(figure, place));
            case PEAK_FOR_MEAN -> peak(right, figure, place);
            case WHOLE_FOR_BAND -> Reading.mean(a, a.begin(), a.end());
            case PEAK_FOR_VALUE -> Reading.top(a, a.begin(), a.end());
            case END_FOR_PEAK -> right.sort() == Reading.Sort.PEAK_PLACE ? a.end() : a.at(a.end());
            case PEAK_FOR_REACHED -> Reading.topPlace(a);
            case BY_HEIGHT -> compared(right, figure, place, figure.y().marks().low());
            case WRONG_BASE -> {
                double share = right.value(figure, place) / 100;
                yield 100 * share / (1 + share);
            }
            case POINTS_FOR_PERCENT -> as(Reading.Sort.DIFFERENCE, right).value(figure, place);
            case PERCENT_FOR_POINTS -> as(Reading.Sort.CHANGE, right).value(figure, place);
            case TURNED_ROUND -> -right.value(figure, place);
        };
    }

    private Reading instead(Reading right) {
        return new Reading(
                right.sort(),
                with.orElseThrow(),
                right.and(),
                right.at(),
                right.from(),
                right.to());
    }

    private static Reading as(Reading.Sort sort, Reading right) {
        return new Reading(sort, right.of(), right.and(), right.at(), right.from(), right.to());
    }

    private static double compared(Reading right, Figure figure, Reading.Place place, double zero) {
        double difference = as(Reading.Sort.DIFFERENCE, right).value(figure, place);
        double base = 100 * difference / right.value(figure, place);
        return 100 * difference / (base - zero);
    }

    /** The top of the band, or the largest gap anywhere in it. */
    private static double peak(Reading right, Figure figure, Reading.Place place) {
        if (!place.isBand()) {
            throw new Reading.Unclear("there is no band");
        }
        Figure.Curve a = Reading.curve(figure, right.of());
        if (right.sort() == Reading.Sort.MEAN) {
            return Reading.top(a, place.from(), place.to());
        }
        return a.xs().stream()
                .filter(x -> x >= place.from() && x <= place.to())
                .map(x -> right.value(figure, new Reading.Place(x, Double.NaN, Double.NaN)))
                .max((x, y) -> Double.compare(Math.abs(x), Math.abs(y)))
                .orElseThrow(() -> new Reading.Unclear("the band holds no points"));
    }
}
