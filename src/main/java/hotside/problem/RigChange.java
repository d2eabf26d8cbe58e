// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.Disturbance;
import hotside.cell.Rig;
import hotside.relation.Values;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a problem changes on a rig of the stock. */
public sealed interface RigChange {
    /**
     * The changed rig.
     *
     * @param givens of the variant, SI
     * @throws hotside.cell.RigException if the rig cannot be so
     */
    Rig on(Rig rig, Values givens);

    /**
     * Values set by path.
     *
     * @param values by path, the name of a given or a text such as {@code 60.2 mm}
     */
    record Settings(Map<String, String> values) implements RigChange {
        public Settings {
            values = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(values));
        }

        @Override
        public Rig on(Rig rig, Values givens) {
            Rig changed = rig;
            for (Map.Entry<String, String> setting : values.entrySet()) {
                String text = setting.getValue();
                changed =
                        givens.has(text)
                                ? changed.with(setting.getKey(), givens.number(text))
                                : changed.with(setting.getKey(), text);
            }
            return changed;
        }
    }

    /**
     * Something that goes wrong by itself.
     *
     * @param disturbance what
     */
    record Disturbed(Disturbance disturbance) implements RigChange {
        @Override
        public Rig on(Rig rig, Values givens) {
            return disturbance.on(rig);
        }
    }
}
