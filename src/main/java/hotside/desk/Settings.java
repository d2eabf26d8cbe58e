// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.unit.UnitSystem;

/**
 * How a person likes the desk. Immutable.
 *
 * @param system the units of the shop
 * @param dark true for the dark theme
 * @param percent text size, 100 to 200
 */
record Settings(UnitSystem system, boolean dark, int percent) {
    static final int SMALLEST = 100;
    static final int LARGEST = 200;
    private static final int STEP = 20;

    static final Settings USUAL = new Settings(UnitSystem.SI_SHOP, false, 100);

    Settings {
        percent = Math.max(SMALLEST, Math.min(LARGEST, percent));
    }

    Settings in(UnitSystem other) {
        return new Settings(other, dark, percent);
    }

    Settings dark(boolean on) {
        return new Settings(system, on, percent);
    }

    Settings larger() {
        return new Settings(system, dark, percent + STEP);
    }

    Settings smaller() {
        return new Settings(system, dark, percent - STEP);
    }

    Settings percent(int size) {
        return new Settings(system, dark, size);
    }

    /** The colour of the page's paper, as in page.css. */
    String paper() {
        return dark ? "#1a1b1e" : "#f8f5ee";
    }

    String theme() {
        return dark ? "dark" : "light";
    }
}
