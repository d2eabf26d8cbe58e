// SPDX-License-Identifier: Apache-2.0
package hotside.page.diagram;

import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Quantity;

/** What charts do to numbers. */
final class CurveDrawings {
    private static final int SPOTS = 41;

    private CurveDrawings() {}

    /** Two bars on an axis from zero and on an axis that is cut. */
    static Picture axisExaggeration(Facts f) {
        Sketch s = new Sketch(310);
        double whole = Math.max(f.si("axisHigh"), Math.max(f.si("first"), f.si("second")));
        bars(s, f, 60, 0, whole, DrawingWords.of("axes.zero"));
        bars(s, f, 300, f.si("axisLow"), f.si("axisHigh"), DrawingWords.of("axes.cut"));
        s.words(
                "quiet-words",
                "start",
                20,
                262,
                DrawingWords.lines(
                        "axes.note",
                        told(f.si("first")),
                        told(f.si("second")),
                        DecimalHabit.spoken().write(Numbers.significant(f.si("exaggeration"), 3))));
        return new Picture(
                s,
                DrawingWords.of(
                        "axes.words",
                        told(f.si("first")),
                        told(f.si("second")),
                        told(f.si("axisLow")),
                        told(f.si("axisHigh")),
                        DecimalHabit.spoken().write(Numbers.significant(f.si("exaggeration"), 3))));
    }

    private static void bars(Sketch s, Facts f, double x, double low, double high, String title) {
        double foot = 215;
        double scale = 160 / Math.max(high - low, 1e-12);
        s.line("edge", x, foot, x + 140, foot).line("edge", x, foot, x, 50);
        s.end(x - 5, foot + 4, told(low)).end(x - 5, foot - 156, told(high));
        double a = Math.max(0, Math.min(165, (f.si("first") - low) * scale));
        double b = Math.max(0, Math.min(165, (f.si("second") - low) * scale));
        s.rect("cool", x + 20, foot - a, 40, a).rect("hot", x + 80, foot - b, 40, b);
        s.line("cool-line", x + 20, foot - a, x + 60, foot - a);
        s.line("hot-line", x + 80, foot - b, x + 120, foot - b);
        s.middle(x + 40, foot + 18, DrawingWords.lines("axes.before"))
                .middle(x + 100, foot + 18, DrawingWords.lines("axes.after"));
        s.words("strong", "middle", x + 70, 36, title);
    }

    private static String told(double value) {
        return DecimalHabit.spoken().write(Numbers.upTo(value, 4));
    }

    /** A peak and its moving average. */
    static Picture smoothing(Facts f) {
        double drop = Math.max(f.si("drop"), 1e-12);
        double distance = f.si("distance");
        double bias = f.si("bias");
        double width = f.si("width");
        double reach = Math.max(distance, width) * 1.2;
        double deepest = drop * (reach / distance) * (reach / distance) - bias;
        double scale = 150 / deepest;
        double x = 190 / reach;
        double[] truth = new double[2 * SPOTS];
        double[] smooth = new double[2 * SPOTS];
        for (int i = 0; i < SPOTS; i++) {
            double off = reach * (2.0 * i / (SPOTS - 1) - 1);
            double fall = drop * (off / distance) * (off / distance);
            truth[2 * i] = 240 + off * x;
            truth[2 * i + 1] = 40 + fall * scale;
            smooth[2 * i] = truth[2 * i];
            smooth[2 * i + 1] = 40 + (fall - bias) * scale;
        }
        Sketch s = new Sketch(300);
        s.rect("mild", 240 - width / 2 * x, 40, width * x, 165);
        s.curve("cool-line", truth).curve("hot-line", smooth);
        s.line("dash", 60, 40, 420, 40).line("dash", 60, 40 - bias * scale, 420, 40 - bias * scale);
        s.say(20, 30, DrawingWords.lines("peak.truth"))
                .end(470, 34 - bias * scale + 18, DrawingWords.lines("peak.smooth"));
        s.middle(240, 222, DrawingWords.lines("peak.window", f.told("points")));
        s.words(
                "quiet-words",
                "start",
                20,
                250,
                DrawingWords.lines(
                        "peak.note",
                        told(Math.abs(bias)),
                        told(f.si("noiseLeft")),
                        told(f.si("noise"))));
        return new Picture(
                s,
                DrawingWords.of(
                        "peak.words",
                        f.told("width"),
                        told(Math.abs(bias)),
                        told(f.si("noise")),
                        told(f.si("noiseLeft"))));
    }

    /** Power as the area under a torque. */
    static Picture torqueAndPower(Facts f) {
        double fullTorque = Math.max(Math.abs(f.si("torque")) * 1.25, 1e-9);
        double fullSpeed = Math.max(f.si("speed") * 1.25, 1e-9);
        double left = 90;
        double foot = 220;
        double x = left + f.si("speed") / fullSpeed * 340;
        double y = foot - Math.abs(f.si("torque")) / fullTorque * 180;
        double half = left + f.si("speed") / 2 / fullSpeed * 340;
        Sketch s = new Sketch(310);
        s.rect("hot", left, y, x - left, foot - y).rect("cool", left, y, half - left, foot - y);
        s.line("edge", left, foot, 450, foot).line("edge", left, foot, left, 30);
        s.line("hot-line", left, y, x, y).circle("hot-dot", x, y, 5).circle("cool-dot", half, y, 5);
        s.line("dash", x, y, x, foot).line("dash", half, y, half, foot);
        s.end(left - 6, y + 5, f.told("torque"))
                .words("quiet-words", "start", 20, 24, DrawingWords.lines("area.torque"));
        s.middle(x, foot + 18, f.told("speed"));
        s.middle(half, foot + 18, f.told(f.si("speed") / 2, Quantity.ROTATION));
        s.words(
                "strong",
                "middle",
                (half + x) / 2,
                (y + foot) / 2,
                f.told("power"),
                DrawingWords.of("area.in-all"));
        double small = f.other("power", "speed", f.si("speed") / 2);
        s.words(
                "strong",
                "middle",
                (left + half) / 2,
                (y + foot) / 2,
                f.told(small, Quantity.POWER));
        s.words("quiet-words", "start", 20, foot + 48, DrawingWords.lines("area.note"));
        return new Picture(
                s,
                DrawingWords.of(
                        "area.words",
                        f.told("torque"),
                        f.told("speed"),
                        f.told("power"),
                        f.told(small, Quantity.POWER)));
    }
}
