// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.catalogue.Catalogue;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.speech.Translations;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A picture that the program draws. What is drawn to scale in it comes from one relation, whose
 * inputs a lesson may set; a picture without a relation shows how things are arranged and no
 * numbers.
 *
 * @param id as lessons call it
 * @param title for people
 * @param relation what its numbers come from, if it shows any
 */
public record Diagram(String id, String title, Optional<Relation> relation) {
    private static final Translations TITLES = Translations.of("hotside.course.diagrams");
    private static final List<Diagram> ALL = new ArrayList<>();

    static {
        drawn("pipe-with-taps", "Two taps in one pipe", "static-total");
        drawn("pitot-and-wall-tap", "What two probes read in one flow", "static-total");
        drawn("pressure-scales", "One pressure on two scales", "compressor-pressure-ratio");
        drawn("engine-air-path", "The way of the air and of the exhaust");
        drawn("turbo-cutaway", "A turbo, cut open");
        drawn("shaft-balance", "What the turbine gives and the compressor takes", "turbo-balance");
        drawn("compressor-temperature", "Why compressed air is hot", "compressor-outlet");
        drawn("cooler", "A charge cooler, from end to end", "charge-cooler");
        drawn("turbine-expansion", "What the exhaust gives up", "turbine-expansion");
        drawn("valve-forces", "Who pushes on the gate", "gate-lift");
        drawn("actuator-cutaway", "The gate's actuator, cut open");
        drawn("bleed-network", "A bleed on the signal hose", "bleed-signal");
        drawn("vented-and-returned", "Where the gate's gas goes");
        drawn("flap-and-lever", "Flap, lever and rod", "flap-moment");
        drawn("pipe-bores-to-scale", "Bores drawn to scale", "diameter-scaling");
        drawn("bend-and-mitre", "A bend and a corner of cut pieces", "bend-loss");
        drawn("choking-profile", "How the gas speeds up along a pipe", "duct-flow");
        drawn("cell-layout", "A test cell from above");
        drawn("pull-order-and-drift", "The order of pulls against drift", "order-balance");
        drawn("interval-picture", "Readings, their mean and its interval", "mean-interval");
        drawn("axis-exaggeration", "The same two bars on two axes", "chart-exaggeration");
        drawn("smoothing-shaves-peak", "What an average does to a peak", "smoothing-bias");
        drawn("gain-split-bar", "A gain, split", "gain-split");
        drawn("torque-and-power", "Power is torque times speed", "torque-power");
    }

    private static void drawn(String id, String title) {
        ALL.add(new Diagram(id, title, Optional.empty()));
    }

    private static void drawn(String id, String title, String relation) {
        ALL.add(new Diagram(id, title, Optional.of(Catalogue.find(relation).orElseThrow())));
    }

    /** In the language spoken, where it has a title there. */
    @Override
    public String title() {
        return TITLES.find(id).orElse(title);
    }

    /** All of them, in the order of the course. */
    public static List<Diagram> all() {
        return List.copyOf(ALL);
    }

    public static Optional<Diagram> find(String id) {
        return ALL.stream().filter(diagram -> diagram.id().equals(id)).findFirst();
    }

    /** The inputs that it takes from another relation: those of one name and one quantity. */
    public List<Slot> shared(Relation other) {
        return relation.map(Relation::inputs).orElse(List.of()).stream()
                .filter(
                        slot ->
                                other.slot(slot.name())
                                        .filter(s -> s.quantity() == slot.quantity())
                                        .isPresent())
                .toList();
    }
}
