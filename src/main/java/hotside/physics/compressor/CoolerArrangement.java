// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Stream;

/**
 * How the two flows of a cooler meet, and what that makes of its size.
 *
 * <p>Effectiveness from the number of transfer units (NTU = conductance over the smaller capacity
 * rate) and the ratio of capacity rates (smaller over larger, 0 to 1). Source: Kays and London,
 * Compact Heat Exchangers, table 2-2 onward; Incropera, table 11.3; both from memory. Exact for
 * constant conductance and specific heats.
 */
public enum CoolerArrangement {
    /** Crossflow, both flows kept in their passages: the usual core. */
    CROSSFLOW(
            "crossflow",
            CoolerArrangement::crossflow,
            "\\frac{1}{@capacityRatio \\cdot @ntu}\\sum_{n \\ge 0}"
                    + "\\left(1 - e^{-@ntu}\\sum_{m \\le n}\\frac{@ntu^m}{m!}\\right)"
                    + "\\left(1 - e^{-@capacityRatio \\cdot @ntu}\\sum_{m \\le n}\\frac{(@capacityRatio \\cdot @ntu)^m}{m!}\\right)",
            "Crossflow with both flows kept in their passages; the sum runs until its terms vanish."),
    /** The two flows run against each other: the best there is. */
    COUNTERFLOW(
            "counterflow",
            CoolerArrangement::counterflow,
            "\\frac{1 - e^{-@ntu(1 - @capacityRatio)}}{1 - @capacityRatio\\,e^{-@ntu(1 - @capacityRatio)}}",
            "Counterflow; with equal capacity rates this becomes NTU/(1 + NTU)."),
    /** The two flows run side by side: the worst there is. */
    PARALLEL(
            "parallel",
            CoolerArrangement::parallel,
            "\\frac{1 - e^{-@ntu(1 + @capacityRatio)}}{1 + @capacityRatio}",
            "Both flows run the same way: the charge can only meet coolant that is already warmed."),
    /** Crossflow; the flow of the larger capacity rate mixes sideways. */
    CROSSFLOW_MAX_MIXED(
            "crossflow-max-mixed",
            CoolerArrangement::maxMixed,
            "\\frac{1 - e^{-@capacityRatio(1 - e^{-@ntu})}}{@capacityRatio}",
            "Crossflow, the larger flow free to mix sideways."),
    /** Crossflow; the flow of the smaller capacity rate mixes sideways. */
    CROSSFLOW_MIN_MIXED(
            "crossflow-min-mixed",
            CoolerArrangement::minMixed,
            "1 - e^{-\\frac{1}{@capacityRatio}(1 - e^{-@capacityRatio \\cdot @ntu})}",
            "Crossflow, the smaller flow free to mix sideways.");

    /** Transfer units beyond which no cooler is built and the sum grows long. */
    static final double MOST_UNITS = 1000;

    private final String word;
    private final DoubleBinaryOperator law;
    private final String formula;
    private final String text;

    CoolerArrangement(String word, DoubleBinaryOperator law, String formula, String text) {
        this.word = word;
        this.law = law;
        this.formula = formula;
        this.text = text;
    }

    /**
     * Heat over the greatest heat that could pass.
     *
     * @param ntu number of transfer units, 0 to 1000
     * @param capacityRatio smaller over larger capacity rate, 0 to 1
     * @return 0 to 1
     */
    public double effectiveness(double ntu, double capacityRatio) {
        if (!(ntu >= 0 && ntu <= MOST_UNITS && capacityRatio >= 0 && capacityRatio <= 1)) {
            throw new IllegalArgumentException(
                    "ntu = "
                            + ntu
                            + ", capacityRatio = "
                            + capacityRatio
                            + ": expected 0 to 1000 and 0 to 1");
        }
        return capacityRatio == 0 ? single(ntu) : law.applyAsDouble(ntu, capacityRatio);
    }

    /** As on the command line, such as {@code crossflow-max-mixed}. */
    public String word() {
        return word;
    }

    String formula() {
        return formula;
    }

    String text() {
        return text;
    }

    /**
     * @param word one of the words of the arrangements
     * @throws IllegalArgumentException if there is none of this name; the message lists them
     */
    public static CoolerArrangement of(String word) {
        return Stream.of(values())
                .filter(a -> a.word.equals(word))
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "no arrangement is called \""
                                                + word
                                                + "\"; there are "
                                                + String.join(", ", words())));
    }

    static String[] words() {
        return Stream.of(values()).map(CoolerArrangement::word).toArray(String[]::new);
    }

    /** One flow keeps its temperature: then it does not matter how they meet. */
    private static double single(double ntu) {
        return -Math.expm1(-ntu);
    }

    private static double counterflow(double ntu, double ratio) {
        double gap = 1 - ratio;
        if (gap == 0) {
            return ntu / (1 + ntu);
        }
        double done = -Math.expm1(-ntu * gap);
        return done / (done + gap * (1 - done)); // 1 − Cr E, without cancelling as Cr nears 1
    }

    private static double parallel(double ntu, double ratio) {
        return -Math.expm1(-ntu * (1 + ratio)) / (1 + ratio);
    }

    private static double maxMixed(double ntu, double ratio) {
        return -Math.expm1(-ratio * single(ntu)) / ratio;
    }

    private static double minMixed(double ntu, double ratio) {
        return -Math.expm1(-single(ratio * ntu) / ratio);
    }

    /**
     * The exact series. Its brackets are the chances that a Poisson count of mean NTU, and one of
     * mean Cr NTU, exceed n; summed from the far end they lose no digits.
     */
    private static double crossflow(double ntu, double ratio) {
        if (ntu == 0) {
            return 0;
        }
        int terms = (int) (ntu + 12 * Math.sqrt(ntu) + 40);
        double[] more = chancesOfMore(ntu, terms);
        double[] less = chancesOfMore(ratio * ntu, terms);
        double sum = 0;
        for (int n = terms - 1; n >= 0; n--) {
            sum += more[n] * less[n];
        }
        return sum / (ratio * ntu);
    }

    /** Chances that a Poisson count of this mean exceeds 0, 1, 2 … terms − 1. */
    private static double[] chancesOfMore(double mean, int terms) {
        double[] chance = new double[terms + 1];
        int mode = (int) mean;
        chance[mode] = 1;
        for (int m = mode; m > 0; m--) {
            chance[m - 1] = chance[m] * m / mean;
        }
        for (int m = mode; m < terms; m++) {
            chance[m + 1] = chance[m] * mean / (m + 1);
        }
        double all = Arrays.stream(chance).sum();
        double[] more = new double[terms];
        double tail = 0;
        for (int n = terms - 1; n >= 0; n--) {
            tail += chance[n + 1] / all;
            more[n] = tail;
        }
        return more;
    }
}
