// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

/**
 * Bayesian knowledge tracing: how an answer moves the belief that a skill is known. The numbers are
 * set once for each kind of answer and never fitted: a class is too small to fit them on.
 *
 * <p>Source of the model: A. T. Corbett and J. R. Anderson, Knowledge tracing (1995). The numbers
 * keep guess + slip below one and the lowest belief that wrong answers lead to below the start.
 *
 * @param learn chance to learn the skill from one problem
 * @param guess chance to be right without the skill
 * @param slip chance to be wrong with it
 */
record Tracing(double learn, double guess, double slip) {
    /** The belief before the first answer. */
    static final double START = 0.20;

    /** From this belief on a skill is taken as known, if the other evidence is there too. */
    static final double KNOWN = 0.95;

    static final Tracing NUMBER = new Tracing(0.15, 0.05, 0.10);
    static final Tracing CHOICE = new Tracing(0.15, 0.25, 0.10);
    static final Tracing ORDER = new Tracing(0.15, 0.08, 0.10);

    Tracing {
        boolean chances = in01(learn) && in01(guess) && in01(slip) && guess + slip < 1;
        if (!chances || lowest(learn, guess, slip) >= START) {
            throw new IllegalArgumentException(
                    "learn " + learn + ", guess " + guess + ", slip " + slip + " are degenerate");
        }
    }

    /** For a kind of problem, by its name in a template; free numbers if it is not known. */
    static Tracing of(String kind) {
        return switch (kind) {
            case "choice", "several", "fault" -> CHOICE;
            case "order", "graph" -> ORDER;
            default -> NUMBER;
        };
    }

    /** The belief after a right answer. */
    double right(double belief) {
        double both = belief * (1 - slip);
        return learnt(both / (both + (1 - belief) * guess));
    }

    /** The belief after a wrong answer. */
    double wrong(double belief) {
        double both = belief * slip;
        return learnt(both / (both + (1 - belief) * (1 - guess)));
    }

    /** Where the belief ends after many wrong answers in a row. */
    double lowest() {
        return lowest(learn, guess, slip);
    }

    private static double lowest(double learn, double guess, double slip) {
        return (1 - guess) * learn / (1 - slip - guess);
    }

    private double learnt(double belief) {
        return belief + (1 - belief) * learn;
    }

    private static boolean in01(double chance) {
        return chance > 0 && chance < 1;
    }
}
