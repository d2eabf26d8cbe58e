// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.speech.Language;
import hotside.unit.UnitSystem;

/**
 * How a person likes the desk. Immutable.
 *
 * @param system the units of the shop
 * @param dark true for the dark theme
 * @param percent text size, 100 to 200
 * @param language what the desk speaks
 */
record Settings(UnitSystem system, boolean dark, int percent, Language language) {
    static final int SMALLEST = 100;
    static final int LARGEST = 200;
    private static final int STEP = 20;

    static final Settings USUAL = new Settings(UnitSystem.SI_SHOP, false, 100, Language.ENGLISH);

    Settings {
        percent = Math.max(SMALLEST, Math.min(LARGEST, percent));
    }

    /** In English. */
    Settings(UnitSystem system, boolean dark, int percent) {
        this(system, dark, percent, Language.ENGLISH);
    }

    Settings in(UnitSystem other) {
        return new Settings(other, dark, percent, language);
    }

    Settings dark(boolean on) {
        return new Settings(system, on, percent, language);
    }

    Settings larger() {
        return new Settings(system, dark, percent + STEP, language);
    }

    Settings smaller() {
        return new Settings(system, dark, percent - STEP, language);
    }

    Settings percent(int size) {
        return new Settings(system, dark, size, language);
    }

    Settings speaking(Language other) {
        return new Settings(system, dark, percent, other);
    }

    /** The colour of the page's paper, as in page.css. */
    String paper() {
        return dark ? "#1a1b1e" : "#f8f5ee";
    }

    String theme() {
        return dark ? "dark" : "light";
    }
}
