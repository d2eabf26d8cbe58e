// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import java.util.Locale;

/** Who decides the boost. */
public enum Regime {
    /** The gate is shut: the turbine gives no more than this. */
    SHUT,
    /** The gate stands between its stops where spring, signal and exhaust balance. */
    BALANCED,
    /** A regulating control holds its target. */
    HELD,
    /** The control would hold more boost than it has, and has no less signal to give. */
    OUT_OF_REACH_BELOW,
    /** The control would hold less boost than it has, and has no more signal to give. */
    OUT_OF_REACH_ABOVE,
    /** The gate does not move, whatever pushes it. */
    STUCK,
    /** The gate is on its far stop. */
    WIDE_OPEN;

    /** For people, a phrase in the language spoken. */
    public String words() {
        return CellWords.of("regime." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
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
