// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;

/** Engine speeds as both shops say them: whole turns a minute. */
final class Speeds {
    private static final Scale SHOWN = Quantity.ROTATION.shown(UnitSystem.SI_SHOP);

    /** What arithmetic alone may add to a whole number of turns. */
    private static final double HAIR = 1e-6;

    private Speeds() {}

    /** Turns a second said in whole turns a minute, without the unit. */
    static String rpm(double speed) {
        return Long.toString(Math.round(SHOWN.fromSi(speed, Quantity.ROTATION, 0)));
    }

    /** The lowest whole turns a minute that are not below a speed. */
    static long wholeAbove(double speed) {
        return (long) Math.ceil(SHOWN.fromSi(speed, Quantity.ROTATION, 0) - HAIR);
    }

    /** The highest whole turns a minute that are not above a speed. */
    static long wholeBelow(double speed) {
        return (long) Math.floor(SHOWN.fromSi(speed, Quantity.ROTATION, 0) + HAIR);
    }

    /** Turns a second for so many turns a minute. */
    static double of(double rpm) {
        return SHOWN.toSi(rpm, Quantity.ROTATION, 0);
    }
}
