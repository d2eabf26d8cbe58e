// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.relation.Values;
import hotside.unit.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Works a variant's chain again, as somebody would who slipped, or who went on from a wrong result.
 */
final class Replay {
    private Replay() {}

    /**
     * @param variant the variant
     * @param carried the learner's own results for the first asks, SI; NaN for one to be worked
     *     rightly
     * @param mistake the slip to make, if any
     * @return every value by place
     */
    static Values of(Variant variant, List<Double> carried, Optional<Mistake> mistake) {
        return variant.template()
                .chain()
                .run(
                        variant.givens(),
                        (place, value, known) -> {
                            Object out = value;
                            if (mistake.isPresent()
                                    && mistake.get().at().equals(place)
                                    && value instanceof Double number) {
                                out =
                                        mistake.get()
                                                .slip()
                                                .spoil(
                                                        number,
                                                        surroundings(
                                                                variant, mistake.get(), known));
                            }
                            if (mistake.isPresent()
                                    && mistake.get().at().equals(place)
                                    && value instanceof List<?> row
                                    && mistake.get().slip().isOfRows()) {
                                out =
                                        mistake.get()
                                                .slip()
                                                .spoil(
                                                        row.stream()
                                                                .map(Double.class::cast)
                                                                .toList());
                            }
                            for (int i = 0; i < carried.size(); i++) {
                                if (variant.template().asks().get(i).place().equals(place)
                                        && !Double.isNaN(carried.get(i))) {
                                    out = carried.get(i);
                                }
                            }
                            return out;
                        },
                        variant.run().values());
    }

    private static Slips.Surroundings surroundings(
            Variant variant, Mistake mistake, Map<String, Object> known) {
        double other =
                mistake.with()
                        .map(place -> known.getOrDefault(place, variant.run().values().get(place)))
                        .filter(Double.class::isInstance)
                        .map(Double.class::cast)
                        .orElse(Double.NaN);
        double ambient = variant.ambient() > 0 ? variant.ambient() : Units.STANDARD_ATMOSPHERE;
        return new Slips.Surroundings(ambient, other, mistake.factor());
    }
}
