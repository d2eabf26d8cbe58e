// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.Channel;
import hotside.cell.Rig;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How a problem's chart is made once its numbers are drawn. */
public sealed interface ChartPlan {
    /** True if the upright axis must show zero. */
    boolean fromZero();

    /** The curves that a reading may name, such as {@code old.torque}. */
    List<String> curves();

    /**
     * Pulls of the test cell.
     *
     * @param pulls by name
     * @param show what is drawn of each
     * @param over what runs along the horizontal axis
     * @param together true if everything stands in one chart, false for one chart to each channel
     */
    record Pulls(
            Map<String, Planned> pulls,
            List<Channel> show,
            Channel over,
            boolean together,
            boolean fromZero)
            implements ChartPlan {
        public Pulls {
            pulls = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(pulls));
            show = List.copyOf(show);
        }

        @Override
        public List<String> curves() {
            return pulls.keySet().stream()
                    .flatMap(pull -> show.stream().map(c -> pull + "." + c.label()))
                    .toList();
        }
    }

    /**
     * One pull.
     *
     * @param say what people call it; may be empty where there is only one
     * @param rig of the stock
     * @param change what is done to it
     */
    record Planned(String say, Rig rig, RigChange change) {}

    /**
     * A result of relations over one of their inputs.
     *
     * @param uses names in the chain, with what people call their curves
     * @param output the slot that is drawn
     * @param over the slot along the horizontal axis
     * @param from where the curves begin, SI
     * @param to where they end, SI
     */
    record Curves(
            Map<String, String> uses,
            String output,
            String over,
            double from,
            double to,
            boolean fromZero)
            implements ChartPlan {
        public Curves {
            uses = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(uses));
        }

        @Override
        public List<String> curves() {
            return uses.keySet().stream().map(use -> use + "." + output).toList();
        }
    }
}
