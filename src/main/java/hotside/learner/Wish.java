// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

/**
 * What a learner wants to practise.
 *
 * @param kind of wish
 * @param of which skill, strand, sort of mistake or problem; empty for the other kinds
 */
public record Wish(Kind kind, String of) {
    /** Kinds of wish. */
    public enum Kind {
        /** Whatever is best. */
        BEST,
        SKILL,
        STRAND,
        /** The mistakes the learner makes, in turn. */
        MISTAKES,
        /** One sort of mistake. */
        MISTAKE,
        PROBLEM
    }

    /** Whatever is best. */
    public static final Wish BEST = new Wish(Kind.BEST, "");

    /** The mistakes that the learner makes. */
    public static final Wish MISTAKES = new Wish(Kind.MISTAKES, "");
}
