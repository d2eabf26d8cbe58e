// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.physics.engine.Din70020;
import hotside.physics.engine.Iso1585;
import hotside.physics.engine.SaeJ1349;
import hotside.physics.engine.SaeJ607;
import hotside.physics.gas.HumidAir;
import hotside.relation.Caution;
import hotside.relation.Relation;
import hotside.relation.Values;
import hotside.relation.Worked;
import java.util.List;
import java.util.Optional;

/**
 * A factor on measured power, with what may be wrong about it.
 *
 * @param standard title of the standard's relation
 * @param factor corrected over measured power
 * @param cautions whole sentences
 */
public record PowerCorrection(String standard, double factor, List<String> cautions) {
    private static final List<Relation> STANDARDS =
            List.of(SaeJ1349.RELATION, Iso1585.RELATION, Din70020.RELATION, SaeJ607.RELATION);

    public PowerCorrection {
        cautions = List.copyOf(cautions);
    }

    /** The ids of the standards, such as {@code sae-j1349}. */
    public static List<String> standards() {
        return STANDARDS.stream().map(Relation::id).toList();
    }

    public static Optional<Relation> byId(String id) {
        return STANDARDS.stream().filter(r -> r.id().equals(id)).findFirst();
    }

    /**
     * Works the factor for a boosted engine: with the standard's warning that a control which holds
     * boost has already made up for the weather.
     *
     * @param standard one of {@link #standards}
     * @param barometer absolute pressure as read, moisture included, Pa
     * @param temperature of the inlet air, K
     * @param humidity relative, 0 to 1; 0 if it was not measured
     * @throws hotside.relation.RelationException if the weather is out of all range
     */
    public static PowerCorrection of(
            Relation standard, double barometer, double temperature, double humidity) {
        boolean asRead = standard == Din70020.RELATION;
        double pressure =
                asRead || humidity == 0
                        ? barometer
                        : HumidAir.of(barometer, temperature, humidity).dryPressure();
        Worked worked =
                standard.work(
                        Values.of(
                                "drypressure", pressure,
                                "temperature", temperature,
                                "boosted", "yes"));
        return new PowerCorrection(
                standard.title(),
                worked.out().number("factor"),
                worked.cautions().stream().map(Caution::text).toList());
    }
}
