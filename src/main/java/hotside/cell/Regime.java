// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

/** Who decides the boost. */
public enum Regime {
    /** The gate is shut: the turbine gives no more than this. */
    SHUT("the gate is shut; boost is all that the turbine can make at this speed"),
    /** The gate stands between its stops where spring, signal and exhaust balance. */
    BALANCED("the gate stands where spring, signal and exhaust balance"),
    /** A regulating control holds its target. */
    HELD("the control holds its target boost"),
    /** The control would hold more boost than it has, and has no less signal to give. */
    OUT_OF_REACH_BELOW(
            "the control gives its least signal and boost stays below its target; it is a fixed bleed here"),
    /** The control would hold less boost than it has, and has no more signal to give. */
    OUT_OF_REACH_ABOVE(
            "the control gives all of its signal and boost stays above its target: the spring sets it"),
    /** The gate does not move, whatever pushes it. */
    STUCK("the gate is stuck and does not answer to its signal"),
    /** The gate is on its far stop. */
    WIDE_OPEN("the gate is wide open and cannot hold boost back: boost creeps");

    private final String words;

    Regime(String words) {
        this.words = words;
    }

    /** For people, a phrase. */
    public String words() {
        return words;
    }

    static Regime of(Rig rig, Flow flow) {
        if (rig.gate().stuck()) {
            return STUCK;
        }
        if (flow.lift() <= 0) {
            return SHUT;
        }
        if (flow.lift() >= rig.gate().maxLift()) {
            return WIDE_OPEN;
        }
        Control control = rig.control();
        if (!control.regulates()) {
            return BALANCED;
        }
        if (flow.signalShare() <= control.leastShare()) {
            return OUT_OF_REACH_BELOW;
        }
        return flow.signalShare() >= 1 ? OUT_OF_REACH_ABOVE : HELD;
    }
}
