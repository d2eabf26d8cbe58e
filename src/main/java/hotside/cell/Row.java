// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * One row of a pull.
 *
 * @param time since the pull began, s
 * @param readings what the sensors showed, SI; power worked from torque and speed
 * @param truth what was so, SI, for every channel
 */
public record Row(double time, Map<Channel, Double> readings, Map<Channel, Double> truth) {
    public Row {
        readings = Collections.unmodifiableMap(new EnumMap<>(readings));
        truth = Collections.unmodifiableMap(new EnumMap<>(truth));
    }
}
