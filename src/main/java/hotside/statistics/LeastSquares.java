// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import java.util.Arrays;

/**
 * Linear least squares with the covariance of what it finds.
 *
 * <p>Source: Householder's QR (Golub and Van Loan, Matrix Computations, from memory); covariance s²
 * (XᵀX)⁻¹ as in the NIST/SEMATECH e-Handbook of Statistical Methods, section 4.1.4.1. The normal
 * equations are never formed, so that digits of ill-conditioned data survive.
 */
public final class LeastSquares {
    /** A column counts as a mixture of those before it when so little of it is left. */
    private static final double NOTHING_NEW = 1e-10;

    private LeastSquares() {}

    /**
     * What a fit gives.
     *
     * @param coefficients one for each column
     * @param unscaled inverse of XᵀX: the covariance for readings with a spread of one
     * @param residualSd spread of the readings about the fit; 0 without degrees of freedom
     * @param degreesOfFreedom readings less coefficients
     * @param rSquared share of the readings' variation about their mean that the fit explains; 1 if
     *     they do not vary
     */
    public record Fit(
            double[] coefficients,
            double[][] unscaled,
            double residualSd,
            int degreesOfFreedom,
            double rSquared) {
        /** Covariance of two coefficients. */
        public double covariance(int i, int j) {
            return residualSd * residualSd * unscaled[i][j];
        }

        /** Correlation of two coefficients: a property of the design, not of the readings. */
        public double correlation(int i, int j) {
            return unscaled[i][j] / Math.sqrt(unscaled[i][i] * unscaled[j][j]);
        }

        /** One coefficient; needs at least one degree of freedom. */
        public Estimate coefficient(int i) {
            return new Estimate(
                    coefficients[i], residualSd * Math.sqrt(unscaled[i][i]), degreesOfFreedom);
        }

        /** One coefficient where the spread of a reading is known rather than estimated. */
        public Estimate coefficient(int i, double knownSd) {
            return new Estimate(
                    coefficients[i], knownSd * Math.sqrt(unscaled[i][i]), Double.POSITIVE_INFINITY);
        }

        /**
         * The fitted value at a place, with its standard error (that of the line, not of a new
         * reading).
         *
         * @param row one value for each column
         */
        public Estimate at(double... row) {
            double value = 0;
            double variance = 0;
            for (int i = 0; i < row.length; i++) {
                value += coefficients[i] * row[i];
                for (int j = 0; j < row.length; j++) {
                    variance += row[i] * row[j] * unscaled[i][j];
                }
            }
            return new Estimate(
                    value, residualSd * Math.sqrt(Math.max(0, variance)), degreesOfFreedom);
        }
    }

    /**
     * Fits {@code y} by a weighted sum of columns.
     *
     * @param y the readings, at least as many as columns; not changed
     * @param columns one array for each coefficient, each as long as {@code y}; a constant term is
     *     a column of ones; not changed
     * @throws IllegalArgumentException if lengths differ, readings are too few, or a column is a
     *     mixture of the ones before it, so that no data can tell them apart
     */
    public static Fit fit(double[] y, double[]... columns) {
        int n = y.length;
        int k = columns.length;
        if (n < k) {
            throw new IllegalArgumentException(n + " readings cannot fix " + k + " coefficients");
        }
        double[][] q = new double[k][];
        double[] size = new double[k];
        for (int j = 0; j < k; j++) {
            if (columns[j].length != n) {
                throw new IllegalArgumentException(
                        "column "
                                + j
                                + " has "
                                + columns[j].length
                                + " values for "
                                + n
                                + " readings");
            }
            q[j] = columns[j].clone();
            size[j] = norm(q[j], 0);
        }
        double[] rest = y.clone();
        double[] diagonal = new double[k];
        for (int j = 0; j < k; j++) {
            diagonal[j] = reflect(q, rest, j, size[j]);
        }
        double[] coefficients = backward(q, diagonal, rest);
        int dof = n - k;
        double sum = norm(rest, k);
        double sd = dof == 0 ? 0 : sum / Math.sqrt(dof);
        return new Fit(coefficients, inverse(q, diagonal), sd, dof, explained(y, sum));
    }

    /** Turns column j into a multiple of the j-th axis; gives the diagonal term of R. */
    private static double reflect(double[][] q, double[] rest, int j, double size) {
        double[] v = q[j];
        double length = norm(v, j);
        if (!(length > NOTHING_NEW * size)) {
            throw new IllegalArgumentException(
                    "column " + j + " is a mixture of the columns before it");
        }
        double alpha = v[j] > 0 ? -length : length;
        v[j] -= alpha;
        double scale = -alpha * v[j];
        for (int m = j + 1; m < q.length; m++) {
            mirror(v, q[m], j, scale);
        }
        mirror(v, rest, j, scale);
        return alpha;
    }

    private static void mirror(double[] v, double[] x, int from, double scale) {
        double dot = 0;
        for (int i = from; i < v.length; i++) {
            dot += v[i] * x[i];
        }
        double factor = dot / scale;
        for (int i = from; i < v.length; i++) {
            x[i] -= factor * v[i];
        }
    }

    /** Solves R b = c, where R's strict upper part stands in the columns. */
    private static double[] backward(double[][] q, double[] diagonal, double[] c) {
        int k = q.length;
        double[] b = new double[k];
        for (int i = k - 1; i >= 0; i--) {
            double value = c[i];
            for (int j = i + 1; j < k; j++) {
                value -= q[j][i] * b[j];
            }
            b[i] = value / diagonal[i];
        }
        return b;
    }

    /** (XᵀX)⁻¹ = R⁻¹ R⁻ᵀ. */
    private static double[][] inverse(double[][] q, double[] diagonal) {
        int k = q.length;
        double[][] inverseColumns = new double[k][];
        for (int j = 0; j < k; j++) {
            double[] unit = new double[k];
            unit[j] = 1;
            inverseColumns[j] = backward(q, diagonal, unit);
        }
        double[][] out = new double[k][k];
        for (double[] column : inverseColumns) {
            for (int i = 0; i < k; i++) {
                for (int j = 0; j < k; j++) {
                    out[i][j] += column[i] * column[j];
                }
            }
        }
        return out;
    }

    private static double explained(double[] y, double residualNorm) {
        double mean = Samples.mean(y);
        double total = norm(Arrays.stream(y).map(v -> v - mean).toArray(), 0);
        return total == 0 ? 1 : 1 - residualNorm * residualNorm / (total * total);
    }

    /** Length of the tail of a vector, safe from overflow. */
    private static double norm(double[] x, int from) {
        double largest = 0;
        for (int i = from; i < x.length; i++) {
            largest = Math.max(largest, Math.abs(x[i]));
        }
        if (largest == 0) {
            return 0;
        }
        double sum = 0;
        for (int i = from; i < x.length; i++) {
            double part = x[i] / largest;
            sum += part * part;
        }
        return largest * Math.sqrt(sum);
    }
}
