// SPDX-License-Identifier: Apache-2.0
package hotside.page.diagram;

import hotside.course.Diagram;
import hotside.relation.RelationException;
import hotside.relation.Values;
import hotside.unit.UnitSystem;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;

/** All drawings by the id of their diagram. */
public final class Drawings {
    private static final Map<String, Function<Facts, Picture>> NUMBERED = new LinkedHashMap<>();
    private static final Map<String, Supplier<Picture>> PLAIN = new LinkedHashMap<>();

    static {
        NUMBERED.put("pipe-with-taps", PressureDrawings::pipeWithTaps);
        NUMBERED.put("pitot-and-wall-tap", PressureDrawings::pitotAndWallTap);
        NUMBERED.put("pressure-scales", PressureDrawings::pressureScales);
        PLAIN.put("engine-air-path", EngineDrawings::airPath);
        PLAIN.put("turbo-cutaway", EngineDrawings::turboCutaway);
        NUMBERED.put("shaft-balance", TurboDrawings::shaftBalance);
        NUMBERED.put("compressor-temperature", TurboDrawings::compressorTemperature);
        NUMBERED.put("cooler", TurboDrawings::cooler);
        NUMBERED.put("turbine-expansion", TurboDrawings::turbineExpansion);
        NUMBERED.put("valve-forces", GateDrawings::valveForces);
        PLAIN.put("actuator-cutaway", GateDrawings::actuatorCutaway);
        NUMBERED.put("bleed-network", GateDrawings::bleedNetwork);
        PLAIN.put("vented-and-returned", GateDrawings::ventedAndReturned);
        NUMBERED.put("flap-and-lever", GateDrawings::flapAndLever);
        NUMBERED.put("pipe-bores-to-scale", PipeDrawings::boresToScale);
        NUMBERED.put("bend-and-mitre", PipeDrawings::bendAndMitre);
        NUMBERED.put("choking-profile", PipeDrawings::chokingProfile);
        PLAIN.put("cell-layout", TestDrawings::cellLayout);
        NUMBERED.put("pull-order-and-drift", TestDrawings::pullOrder);
        NUMBERED.put("interval-picture", TestDrawings::interval);
        NUMBERED.put("axis-exaggeration", CurveDrawings::axisExaggeration);
        NUMBERED.put("smoothing-shaves-peak", CurveDrawings::smoothing);
        NUMBERED.put("gain-split-bar", TestDrawings::gainSplit);
        NUMBERED.put("torque-and-power", CurveDrawings::torqueAndPower);
    }

    private Drawings() {}

    /**
     * A diagram drawn.
     *
     * @param in the inputs of its relation, SI
     * @param ambient absolute pressure of the air around, Pa
     * @throws RelationException if its relation cannot be worked for these inputs
     */
    public static Picture of(Diagram diagram, Values in, UnitSystem system, double ambient) {
        if (PLAIN.containsKey(diagram.id())) {
            return PLAIN.get(diagram.id()).get();
        }
        Facts facts = new Facts(diagram.relation().orElseThrow(), in, system, ambient);
        return NUMBERED.get(diagram.id()).apply(facts);
    }
}
