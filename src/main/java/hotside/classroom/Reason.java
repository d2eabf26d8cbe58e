// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

/** Why a file is set aside instead of marked. */
public enum Reason {
    /** Larger than any honest file of its sort. */
    TOO_LARGE("too large"),
    /** Could not be read from the disk. */
    UNREADABLE("unreadable"),
    /** Not a file of the sort that was wanted. */
    FOREIGN("foreign"),
    /** Of a version of the format, of the set or of the number generator that is not known here. */
    UNKNOWN_VERSION("unknown version"),
    /** Ends before its seal. */
    TRUNCATED("truncated"),
    /** Not what was sealed, or sealed though it breaks the rules of the format. */
    ALTERED("altered"),
    /** The set asks what cannot be marked here. */
    UNMARKABLE("cannot be marked"),
    /** A second file of one learner. */
    DUPLICATE("duplicate"),
    /** Finished after the date. */
    LATE("late");

    private final String word;

    Reason(String word) {
        this.word = word;
    }

    /** For people. */
    public String word() {
        return word;
    }
}
