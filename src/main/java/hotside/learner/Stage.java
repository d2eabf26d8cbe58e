// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

/** How much of the working a learner is shown before answering. */
public enum Stage {
    /** A full example of the same problem with other numbers. */
    WORKED,
    /** The same with the last step left out. */
    FADED,
    /** Nothing: the learner's own work. */
    FULL;

    /** How it is written in the record. */
    public String id() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    Stage next() {
        return this == WORKED ? FADED : FULL;
    }

    Stage back() {
        return this == FULL ? FADED : WORKED;
    }
}
