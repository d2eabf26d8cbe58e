// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

/** Why a file is set aside instead of marked. */
public enum Reason {
    /** Larger than any honest file of its sort. */
    TOO_LARGE,
    /** Could not be read from the disk. */
    UNREADABLE,
    /** Not a file of the sort that was wanted. */
    FOREIGN,
    /** Of a version of the format, of the set or of the number generator that is not known here. */
    UNKNOWN_VERSION,
    /** Ends before its seal. */
    TRUNCATED,
    /** Not what was sealed, or sealed though it breaks the rules of the format. */
    ALTERED,
    /** The set asks what cannot be marked here. */
    UNMARKABLE,
    /** A second file of one learner. */
    DUPLICATE,
    /** Finished after the date. */
    LATE;

    /** For people, in the language spoken. */
    public String word() {
        return ClassWords.of("reason." + Names.of(this));
    }
}
