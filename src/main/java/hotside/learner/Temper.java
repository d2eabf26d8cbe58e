// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.util.Locale;

/** How far a skill has come, named after the colours of steel as it heats. */
public enum Temper {
    /** No problem tried yet. */
    COLD,
    /** Begun. */
    STRAW,
    /** More often right than wrong. */
    BRONZE,
    /** Looks known; not yet proven on enough problems and days, or shaken after it was. */
    VIOLET,
    /** Mastered: proven without help, in different problems, on different days. */
    BLUE;

    /** How pages call it. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
