// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

/**
 * Something to be said of a plan, a prediction or a conclusion.
 *
 * @param kind whether it is well, to be mended, or just to be known
 * @param topic what it is about, an English word or two, whatever the language; see {@link #title}
 * @param text whole sentences
 */
public record Remark(Kind kind, String topic, String text) {
    /** Sorts of remark. */
    public enum Kind {
        GOOD,
        MEND,
        NOTE
    }

    /** What it is about, in the language spoken. */
    public String title() {
        return TrialWords.topic(topic);
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
