// SPDX-License-Identifier: Apache-2.0
package hotside.page.diagram;

import hotside.unit.Quantity;

/** Pressures and where they are taken. */
final class PressureDrawings {
    private PressureDrawings() {}

    /** A hole in the wall and a tube that faces the flow. */
    static Picture pipeWithTaps(Facts f) {
        Sketch s = new Sketch(290);
        s.rect("hot", 20, 130, 440, 90);
        s.line("edge", 20, 130, 128, 130).line("edge", 136, 130, 284, 130);
        s.line("edge", 296, 130, 460, 130).line("edge", 20, 220, 460, 220);
        for (int i = 0; i < 3; i++) {
            s.arrow("hot", 40, 153 + 22 * i, 40 + (i == 1 ? 70 : 56), 153 + 22 * i);
        }
        s.line("edge", 128, 130, 128, 62).line("edge", 136, 130, 136, 62);
        s.circle("blank", 132, 44, 20);
        s.middle(132, 49, "p");
        s.path("edge", "M", 284, 62, "L", 284, 130, "L", 284, 180, "L", 240, 180);
        s.path("edge", "M", 296, 62, "L", 296, 130, "L", 296, 170, "L", 240, 170);
        s.circle("blank", 290, 44, 20);
        s.middle(290, 49, "p₀");
        s.say(158, 30, DrawingWords.lines("taps.tap", f.told("static")));
        s.say(316, 30, DrawingWords.lines("taps.facing", f.told("total")));
        s.arrow("hot", 200, 175, 236, 175);
        s.words(
                "quiet-words",
                "start",
                20,
                246,
                DrawingWords.lines("taps.note", f.told("dynamic"), f.told("mach")));
        return new Picture(
                s,
                DrawingWords.of(
                        "taps.words",
                        f.told("static"),
                        f.told("total"),
                        f.told("dynamic"),
                        f.told("mach")));
    }

    /** Both readings as columns from zero. */
    static Picture pitotAndWallTap(Facts f) {
        double full = 190;
        double foot = 230;
        double scale = full / f.si("total");
        double low = f.si("static") * scale;
        double high = f.si("total") * scale;
        Sketch s = new Sketch(280);
        s.line("edge", 30, foot, 450, foot);
        s.rect("cool", 70, foot - low, 90, low).rect("cool", 230, foot - low, 90, low);
        s.rect("hot", 230, foot - high, 90, high - low);
        s.line("cool-line", 70, foot - low, 340, foot - low);
        s.line("hot-line", 230, foot - high, 340, foot - high);
        s.middle(115, foot + 20, DrawingWords.of("probes.tap"))
                .middle(275, foot + 20, DrawingWords.of("probes.facing"));
        s.middle(115, foot - low / 2, DrawingWords.of("probes.static"), f.told("static"));
        s.middle(275, foot - low / 2, DrawingWords.of("probes.total"), f.told("total"));
        s.say(348, foot - low + 18, DrawingWords.lines("probes.tap-reads"));
        s.say(348, foot - high - 22, DrawingWords.of("probes.speed"), f.told("dynamic"));
        s.words("quiet-words", "start", 30, foot + 42, DrawingWords.of("probes.zero"));
        return new Picture(
                s,
                DrawingWords.of(
                        "probes.words", f.told("static"), f.told("total"), f.told("dynamic")));
    }

    /** Absolute from nothing, gauge from the air around. */
    static Picture pressureScales(Facts f) {
        double ambient = f.si("ambientPressure");
        double boost = f.si("boost");
        double manifold = f.other("outletPressure", "chargeLoss", 0);
        double foot = 260;
        double scale = 210 / Math.max(manifold, ambient);
        double air = foot - ambient * scale;
        double top = foot - manifold * scale;
        Sketch s = new Sketch(320);
        s.rect("cool", 60, top, 90, foot - top);
        s.rect("mild", 250, top, 90, air - top);
        s.line("edge", 30, foot, 460, foot).line("dash", 30, air, 460, air);
        s.line("edge", 60, top, 150, top).line("edge", 250, top, 340, top);
        s.span("cool", 105, foot, 105, top);
        s.span("mild", 295, air, 295, top);
        s.say(
                164,
                (foot + air) / 2 + 2 * Sketch.LINE,
                DrawingWords.of("scales.absolute"),
                f.told(manifold, Quantity.PRESSURE));
        s.say(350, (air + top) / 2, DrawingWords.of("scales.gauge"), f.told("boost"));
        s.say(350, foot - 6, DrawingWords.of("scales.nothing"))
                .say(164, air + 18, DrawingWords.of("scales.air"));
        s.say(164, air + 18 + Sketch.LINE, f.told(ambient, Quantity.PRESSURE));
        s.words("quiet-words", "start", 30, foot + 24, DrawingWords.lines("scales.note"));
        return new Picture(
                s,
                DrawingWords.of(
                        "scales.words",
                        f.told(manifold, Quantity.PRESSURE),
                        f.told(ambient, Quantity.PRESSURE),
                        f.told(boost, Quantity.GAUGE_PRESSURE)));
    }
}
