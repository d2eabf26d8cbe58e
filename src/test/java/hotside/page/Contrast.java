// SPDX-License-Identifier: Apache-2.0
package hotside.page;

/** Contrast of two colours of sRGB, as WCAG 2.2 defines it. */
public final class Contrast {
    private static final double[] WEIGHTS = {0.2126, 0.7152, 0.0722};

    private Contrast() {}

    /** The ratio of two colours written {@code #rrggbb}, 1 to 21. */
    public static double of(String a, String b) {
        return of(channels(a), channels(b));
    }

    /** The same, where the colour is laid over the ground with an opacity of 0 to 1. */
    public static double of(String colour, double opacity, String ground) {
        double[] over = channels(colour);
        double[] under = channels(ground);
        double[] mixed = new double[3];
        for (int i = 0; i < 3; i++) {
            mixed[i] = opacity * over[i] + (1 - opacity) * under[i];
        }
        return of(mixed, under);
    }

    private static double of(double[] a, double[] b) {
        double lighter = Math.max(luminance(a), luminance(b));
        double darker = Math.min(luminance(a), luminance(b));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(double[] channels) {
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double c = channels[i];
            sum += WEIGHTS[i] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    private static double[] channels(String hex) {
        double[] list = new double[3];
        for (int i = 0; i < 3; i++) {
            list[i] = Integer.parseInt(hex.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
        }
        return list;
    }
}
