// SPDX-License-Identifier: Apache-2.0
package hotside.page.diagram;

/** How things are arranged around the engine; no numbers. */
final class EngineDrawings {
    private EngineDrawings() {}

    /** From the filter to the tail pipe. */
    static Picture airPath() {
        Sketch s = new Sketch(350);
        box(s, 15, 25, 80, 44, DrawingWords.of("path.filter"));
        wheel(s, 160, 47, DrawingWords.of("path.compressor"));
        box(s, 300, 25, 90, 44, DrawingWords.of("path.cooler"));
        s.arrow("cool", 95, 47, 128, 47).arrow("cool", 192, 47, 298, 47);
        s.say(213, 36, DrawingWords.of("path.hot"));
        s.path("cool-line", "M", 345, 69, "L", 345, 136);
        s.arrow("cool", 345, 126, 345, 150);
        s.say(355, 105, DrawingWords.lines("path.boost"));
        s.rect("metal", 190, 152, 270, 60);
        s.middle(325, 176, DrawingWords.of("path.engine"))
                .words("quiet-words", "middle", 325, 196, DrawingWords.of("path.fuel"));
        s.arrow("hot", 190, 182, 148, 182);
        s.path("hot-line", "M", 148, 182, "L", 120, 182, "L", 120, 230);
        s.arrow("hot", 120, 220, 120, 238);
        s.end(110, 178, DrawingWords.lines("path.exhaust"));
        wheel(s, 160, 270, "");
        s.arrow("hot", 120, 238, 134, 252);
        s.end(118, 284, DrawingWords.of("path.turbine"));
        s.line("thin", 160, 84, 160, 238);
        s.say(168, 118, DrawingWords.of("path.shaft"));
        s.arrow("hot", 192, 270, 300, 270);
        s.say(206, 292, DrawingWords.of("path.downpipe"));
        box(s, 300, 248, 80, 44, DrawingWords.of("path.muffler"));
        s.arrow("hot", 380, 270, 455, 270);
        s.end(455, 292, DrawingWords.of("path.outside"));
        s.path("dash", "M", 120, 232, "L", 60, 232, "L", 60, 322, "L", 250, 322, "L", 250, 276);
        s.circle("blank", 60, 300, 13);
        s.line("edge", 51, 291, 69, 309);
        s.say(80, 340, DrawingWords.of("path.gate"));
        return new Picture(s, DrawingWords.of("path.words"));
    }

    private static void box(Sketch s, double x, double y, double w, double h, String name) {
        String[] lines = Sketch.wrap(name, w - 8);
        s.rect("metal", x, y, w, h);
        s.middle(x + w / 2, y + h / 2 + 5 - (lines.length - 1) * Sketch.LINE / 2, lines);
    }

    private static void wheel(Sketch s, double x, double y, String name) {
        s.circle("metal", x, y, 32);
        for (int i = 0; i < 6; i++) {
            double a = Math.PI * i / 3;
            s.line("thin", x, y, x + 27 * Math.cos(a), y + 27 * Math.sin(a));
        }
        s.circle("ink-dot", x, y, 4);
        s.say(x + 24, y + 44, name);
    }

    /** Both wheels on one shaft. */
    static Picture turboCutaway() {
        Sketch s = new Sketch(330);
        // Housings, cut along the shaft.
        s.path(
                "metal", "M", 60, 120, "L", 105, 112, "L", 128, 60, "L", 172, 60, "L", 172, 112,
                "L", 196, 128, "L", 196, 196, "L", 172, 212, "L", 172, 264, "L", 128, 264, "L", 105,
                212, "L", 60, 204, "Z");
        s.path(
                "metal", "M", 420, 116, "L", 375, 112, "L", 352, 60, "L", 304, 60, "L", 304, 112,
                "L", 284, 128, "L", 284, 196, "L", 304, 212, "L", 304, 264, "L", 352, 264, "L", 375,
                212, "L", 420, 208, "Z");
        s.rect("metal", 196, 128, 88, 68);
        // The ways of the gas.
        s.path(
                "cool", "M", 60, 128, "L", 112, 122, "L", 140, 84, "L", 160, 84, "L", 160, 118, "L",
                160, 206, "L", 160, 240, "L", 140, 240, "L", 112, 202, "L", 60, 196, "Z");
        s.path(
                "hot", "M", 420, 124, "L", 368, 122, "L", 340, 84, "L", 316, 84, "L", 316, 118, "L",
                316, 206, "L", 316, 240, "L", 340, 240, "L", 368, 202, "L", 420, 200, "Z");
        // Wheels and shaft.
        s.path(
                "blank", "M", 108, 154, "L", 130, 148, "L", 152, 116, "L", 160, 116, "L", 160, 208,
                "L", 152, 208, "L", 130, 176, "L", 108, 170, "Z");
        s.path(
                "blank", "M", 370, 154, "L", 346, 148, "L", 324, 116, "L", 316, 116, "L", 316, 208,
                "L", 324, 208, "L", 346, 176, "L", 370, 170, "Z");
        s.rect("blank", 160, 155, 156, 14);
        s.rect("mild", 206, 146, 20, 32).rect("mild", 254, 146, 20, 32);
        s.arrow("cool", 20, 162, 100, 162);
        s.arrow("cool", 150, 100, 150, 68);
        s.arrow("hot", 330, 68, 330, 100);
        s.arrow("hot", 380, 162, 462, 162);
        s.say(4, 148, DrawingWords.lines("turbo.air-in"))
                .end(144, 48, DrawingWords.lines("turbo.air-out"));
        s.say(338, 48, DrawingWords.lines("turbo.exhaust-in"))
                .end(476, 148, DrawingWords.lines("turbo.exhaust-out"));
        s.leader(40, 252, 118, 164).middle(50, 268, DrawingWords.lines("turbo.compressor"));
        s.leader(440, 252, 360, 164).middle(432, 268, DrawingWords.lines("turbo.turbine"));
        s.leader(240, 250, 216, 168).leader(240, 250, 264, 168);
        s.middle(240, 268, DrawingWords.lines("turbo.bearings")).leader(240, 108, 240, 160);
        s.middle(240, 102, DrawingWords.lines("turbo.shaft"));
        s.words("quiet-words", "middle", 240, 318, DrawingWords.lines("turbo.note"));
        return new Picture(s, DrawingWords.of("turbo.words"));
    }
}
