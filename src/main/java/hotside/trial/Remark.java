// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

/**
 * Something to be said of a plan, a prediction or a conclusion.
 *
 * @param kind whether it is well, to be mended, or just to be known
 * @param topic what it is about, a word or two
 * @param text whole sentences
 */
public record Remark(Kind kind, String topic, String text) {
    /** Sorts of remark. */
    public enum Kind {
        GOOD,
        MEND,
        NOTE
    }

    static Remark good(String topic, String text) {
        return new Remark(Kind.GOOD, topic, text);
    }

    static Remark mend(String topic, String text) {
        return new Remark(Kind.MEND, topic, text);
    }

    static Remark note(String topic, String text) {
        return new Remark(Kind.NOTE, topic, text);
    }
}
