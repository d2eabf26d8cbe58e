// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

/**
 * A number found from readings, with how far it can be trusted.
 *
 * @param value what was found
 * @param standardError standard deviation of it, same unit, at least 0
 * @param degreesOfFreedom how well the standard error is known, above 0; infinite if it was given
 */
public record Estimate(double value, double standardError, double degreesOfFreedom) {
    /** Student's t against a true value of zero; infinite if there is no error at all. */
    public double t() {
        return value == 0 ? 0 : value / standardError;
    }

    /**
     * Probability of a value at least so far from zero, on either side, if the true value were
     * zero.
     */
    public double p() {
        return Confidence.bothTails(t(), degreesOfFreedom);
    }

    /** Half the width of the interval that holds the true value with this confidence. */
    public double halfWidth(double confidence) {
        return Confidence.student(confidence, degreesOfFreedom) * standardError;
    }
}
