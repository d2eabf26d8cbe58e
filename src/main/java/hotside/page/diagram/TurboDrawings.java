// SPDX-License-Identifier: Apache-2.0
package hotside.page.diagram;

import hotside.physics.compressor.CompressorOutlet;
import hotside.physics.turbine.TurbineExpansion;
import hotside.unit.Quantity;

/** Work and temperature of both wheels and of the cooler. */
final class TurboDrawings {
    private TurboDrawings() {}

    /** Three bars: what the turbine gives, what the bearings keep, what the compressor takes. */
    static Picture shaftBalance(Facts f) {
        double taken =
                CompressorOutlet.specificWork(
                        f.si("compressorInletTemperature"),
                        f.si("pressureRatio"),
                        f.si("compressorEfficiency"));
        double each =
                TurbineExpansion.specificWork(
                        f.si("turbineInletTemperature"),
                        f.si("expansionRatio"),
                        f.si("turbineEfficiency"),
                        f.si("gamma"),
                        f.si("cp"));
        double given = each * (1 + 1 / f.si("airFuelRatio")) * (1 - f.si("bypassFraction"));
        double kept = given - taken;
        double scale = 400 / Math.max(Math.max(given, taken), 1e-9);
        Sketch s = new Sketch(285);
        s.say(20, 24, DrawingWords.lines("balance.gives", f.told(given, Quantity.SPECIFIC_ENERGY)));
        s.rect("hot", 20, 34, given * scale, 40).line("hot-line", 20, 34, 20, 74);
        s.say(
                20,
                110,
                DrawingWords.lines("balance.takes", f.told(taken, Quantity.SPECIFIC_ENERGY)));
        s.rect("cool", 20, 120, taken * scale, 40).line("cool-line", 20, 120, 20, 160);
        s.rect("mild", 20 + taken * scale, 120, Math.max(0, kept) * scale, 40);
        s.line("dash", 20 + given * scale, 34, 20 + given * scale, 160);
        s.end(
                20 + given * scale,
                178,
                DrawingWords.lines("balance.keeps", f.told(kept, Quantity.SPECIFIC_ENERGY)));
        s.words(
                "quiet-words",
                "start",
                20,
                212,
                DrawingWords.lines(
                        "balance.note",
                        f.told("expansionRatio"),
                        f.told("inletPressure"),
                        f.told("multiplication")));
        return new Picture(
                s,
                DrawingWords.of(
                        "balance.words",
                        f.told(given, Quantity.SPECIFIC_ENERGY),
                        f.told(taken, Quantity.SPECIFIC_ENERGY),
                        f.told("expansionRatio"),
                        f.told("multiplication")));
    }

    /** The rise that physics asks for, and what a real wheel adds. */
    static Picture compressorTemperature(Facts f) {
        double cold = f.si("inletTemperature");
        double hot = f.si("outletTemperature");
        double best = f.other("outletTemperature", "efficiency", 1);
        double foot = 225;
        double scale = 185 / Math.max(1, hot - cold);
        Sketch s = new Sketch(275);
        s.line("edge", 4, foot, 460, foot);
        double bestTop = foot - (best - cold) * scale;
        s.rect("cool", 80, bestTop, 90, foot - bestTop);
        s.rect("cool", 250, bestTop, 90, foot - bestTop);
        s.rect("hot", 250, 40, 90, bestTop - 40);
        s.line("dash", 80, bestTop, 350, bestTop).line("hot-line", 250, 40, 350, 40);
        s.middle(125, foot + 20, DrawingWords.lines("rise.perfect"))
                .middle(295, foot + 20, DrawingWords.lines("rise.real"));
        s.say(4, foot - 22, DrawingWords.lines("rise.in"))
                .say(4, foot - 5, f.told("inletTemperature"));
        s.middle(125, bestTop - 8, f.told(best, Quantity.TEMPERATURE));
        s.middle(295, 32, f.told("outletTemperature"));
        s.say(352, (40 + bestTop) / 2, DrawingWords.lines("rise.friction"));
        s.say(
                352,
                (40 + bestTop) / 2 + Sketch.LINE,
                f.told(hot - best, Quantity.TEMPERATURE_DIFFERENCE));
        s.say(352, (foot + bestTop) / 2, DrawingWords.lines("rise.pressing"));
        s.say(
                352,
                (foot + bestTop) / 2 + Sketch.LINE,
                f.told(best - cold, Quantity.TEMPERATURE_DIFFERENCE));
        s.words(
                "quiet-words",
                "start",
                30,
                foot + 44,
                DrawingWords.lines("rise.note", f.told("pressureRatio")));
        return new Picture(
                s,
                DrawingWords.of(
                        "rise.words",
                        f.told("inletTemperature"),
                        f.told(best, Quantity.TEMPERATURE),
                        f.told("efficiency"),
                        f.told("outletTemperature")));
    }

    /** How far the charge goes towards the coolant. */
    static Picture cooler(Facts f) {
        double in = f.si("inletTemperature");
        double out = f.si("outletTemperature");
        double coolant = f.si("coolantTemperature");
        double top = 50;
        double foot = 220;
        double scale = (foot - top) / (Math.abs(in - coolant) < 1e-9 ? 1 : in - coolant);
        double left = foot - (in - coolant) * scale;
        double right = foot - (out - coolant) * scale;
        Sketch s = new Sketch(290);
        s.path("hot", "M", 120, left, "L", 340, right, "L", 340, foot, "L", 120, foot, "Z");
        s.line("hot-line", 120, left, 340, right);
        s.line("cool-line", 120, foot, 340, foot);
        s.line("dash", 340, left, 120, left);
        s.span("mild", 352, left, 352, right);
        s.span("cool", 352, right, 352, foot);
        s.end(112, left + 5, f.told("inletTemperature"));
        s.say(
                362,
                (left + right) / 2 + 5,
                DrawingWords.lines("cooler.gone", f.told("effectiveness")));
        s.say(
                362,
                Math.min(foot - 22, (right + foot) / 2 + 5),
                DrawingWords.lines(
                        "cooler.left", f.told(out - coolant, Quantity.TEMPERATURE_DIFFERENCE)));
        s.end(112, foot + 5, f.told("coolantTemperature"));
        s.middle(140, top - 26, DrawingWords.lines("cooler.in"))
                .end(340, top - 26, DrawingWords.lines("cooler.out", f.told("outletTemperature")));
        s.words("quiet-words", "middle", 230, foot + 20, DrawingWords.lines("cooler.coolant"));
        s.words("quiet-words", "start", 20, foot + 46, DrawingWords.lines("cooler.note"));
        return new Picture(
                s,
                DrawingWords.of(
                        "cooler.words",
                        f.told("inletTemperature"),
                        f.told("outletTemperature"),
                        f.told("coolantTemperature"),
                        f.told("effectiveness")));
    }

    /** Pressure and temperature before and behind the wheel. */
    static Picture turbineExpansion(Facts f) {
        double foot = 200;
        double full = 150;
        double p = full / Math.max(f.si("inletPressure"), f.si("outletPressure"));
        double t = full / f.si("inletTemperature");
        Sketch s = new Sketch(290);
        s.line("edge", 20, foot, 460, foot);
        column(s, "cool", 40, foot, f.si("inletPressure") * p, "p3", f.told("inletPressure"));
        column(s, "cool", 120, foot, f.si("outletPressure") * p, "p4", f.told("outletPressure"));
        column(s, "hot", 270, foot, f.si("inletTemperature") * t, "T3", f.told("inletTemperature"));
        column(
                s,
                "hot",
                350,
                foot,
                f.si("outletTemperature") * t,
                "T4",
                f.told("outletTemperature"));
        s.middle(110, foot + 42, DrawingWords.lines("expansion.ratio", f.told("expansionRatio")));
        s.middle(345, foot + 42, DrawingWords.lines("expansion.work", f.told("specificWork")));
        s.words("quiet-words", "start", 20, foot + 66, DrawingWords.lines("expansion.note"));
        return new Picture(
                s,
                DrawingWords.of(
                        "expansion.words",
                        f.told("inletPressure"),
                        f.told("outletPressure"),
                        f.told("expansionRatio"),
                        f.told("inletTemperature"),
                        f.told("outletTemperature"),
                        f.told("specificWork")));
    }

    private static void column(
            Sketch s, String ink, double x, double foot, double high, String name, String told) {
        s.rect(ink, x, foot - high, 60, high)
                .line(ink + "-line", x, foot - high, x + 60, foot - high);
        s.middle(x + 30, foot - high - 8, told).middle(x + 30, foot + 18, name);
    }
}
