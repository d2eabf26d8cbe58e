// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;

/** Engine speeds as both shops say them: whole turns a minute. */
final class Speeds {
    private static final Scale SHOWN = Quantity.ROTATION.shown(UnitSystem.SI_SHOP);

    private Speeds() {}

    /** Turns a second said in whole turns a minute, without the unit. */
    static String rpm(double speed) {
        return Long.toString(Math.round(SHOWN.fromSi(speed, Quantity.ROTATION, 0)));
    }

    /** Turns a second for so many turns a minute. */
    static double of(double rpm) {
        return SHOWN.toSi(rpm, Quantity.ROTATION, 0);
    }
}
