// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.Channel;
import hotside.cell.Pull;
import hotside.cell.Rig;
import hotside.cell.Row;
import hotside.relation.Values;
import hotside.trial.Plan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a problem has compared in the test cell.
 *
 * @param rig of the stock
 * @param shared what is done to it whatever part is on
 * @param parts by their letters, A first
 * @param fromSpeed low end of the band that is averaged, turns per second
 * @param toSpeed its high end
 */
public record Contest(
        Rig rig, RigChange shared, Map<String, Entry> parts, double fromSpeed, double toSpeed) {
    /** Between the samples of a hold, s. */
    private static final double SAMPLING = 0.5;

    public Contest {
        parts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    }

    /**
     * One of the parts.
     *
     * @param say what people call it
     * @param change what fitting it does to the rig
     */
    public record Entry(String say, RigChange change) {}

    /**
     * The plan of a draft for some of the parts.
     *
     * @param letters of the parts; the first is what the others are measured by
     * @throws hotside.cell.RigException if it cannot be run
     */
    Plan plan(PlanDraft draft, List<String> letters, Values givens) {
        StringBuilder order = new StringBuilder();
        for (char letter : draft.order().toCharArray()) {
            order.append((char) ('A' + letters.indexOf(String.valueOf(letter))));
        }
        return new Plan(
                letters.stream().map(letter -> contestant(letter, givens)).toList(),
                order.toString(),
                draft.warmUp(),
                draft.interval(),
                draft.hold(),
                draft.log(),
                fromSpeed,
                toSpeed);
    }

    /** Mean of what a channel showed over the band, SI. */
    double mean(Pull pull, Channel channel) {
        return pull.rows().stream()
                .map(Row::readings)
                .filter(r -> isInBand(r.get(Channel.ENGINE_SPEED)))
                .mapToDouble(r -> r.get(channel))
                .average()
                .orElseThrow();
    }

    /** Held speeds are never met to the last turn. */
    private boolean isInBand(double speed) {
        double near = (toSpeed - fromSpeed) * 0.02;
        return speed >= fromSpeed - near && speed <= toSpeed + near;
    }

    private Plan.Contestant contestant(String letter, Values givens) {
        Entry entry = parts.get(letter);
        Rig fitted = entry.change().on(shared.on(rig, givens), givens);
        boolean holds = fitted.bench().rampRate() == 0;
        boolean often = fitted.bench().sampling() < SAMPLING;
        return new Plan.Contestant(
                entry.say(), holds && often ? fitted.with("cell.sampling", SAMPLING) : fitted);
    }
}
