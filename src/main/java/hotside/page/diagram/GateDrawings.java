// SPDX-License-Identifier: Apache-2.0
package hotside.page.diagram;

import hotside.physics.gate.DiaphragmForce;
import hotside.physics.gate.SpringForce;
import hotside.physics.gate.ValveForce;
import hotside.unit.Quantity;

/** The gate and what moves it. */
final class GateDrawings {
    private GateDrawings() {}

    /** The three forces on the gate's stem, as arrows to one scale. */
    static Picture valveForces(Facts f) {
        double signal =
                DiaphragmForce.of(f.si("signalShare") * f.si("boost"), f.si("diaphragmDiameter"));
        String signalTold = f.told(f.si("signalShare") * f.si("boost"), Quantity.GAUGE_PRESSURE);
        double gas = ValveForce.of(f.si("seatDiameter"), f.si("upstream"), f.si("downstream"));
        double spring = SpringForce.of(f.si("preload"), f.si("rate"), f.si("lift"));
        double most = Math.max(Math.max(Math.abs(signal), Math.abs(gas)), Math.abs(spring));
        double scale = 110 / Math.max(most, 1e-9);
        double lifted = f.si("lift") > 0 ? 8 : 0;
        Sketch s = new Sketch(390);
        double seat = 268;
        // Can, diaphragm, spring.
        s.path("edge", "M", 90, 40, "L", 90, 20, "L", 230, 20, "L", 230, 40);
        s.path("edge", "M", 90, 100, "L", 90, 116, "L", 148, 116);
        s.path("edge", "M", 172, 116, "L", 230, 116, "L", 230, 100);
        s.line("edge", 90, 40, 90, 100).line("edge", 230, 40, 230, 100);
        s.path(
                "cool",
                "M",
                90,
                76 - lifted,
                "L",
                230,
                76 - lifted,
                "L",
                230,
                116,
                "L",
                90,
                116,
                "Z");
        s.line("cool-line", 90, 76 - lifted, 230, 76 - lifted);
        s.spring("green-line", 160, 20, 160, 76 - lifted, 4, 22);
        // Stem and valve on its seat.
        s.rect("metal", 155, 76 - lifted, 10, seat - 84);
        s.path(
                "metal",
                "M",
                118,
                seat - lifted,
                "L",
                202,
                seat - lifted,
                "L",
                190,
                seat - 12 - lifted,
                "L",
                130,
                seat - 12 - lifted,
                "Z");
        s.path(
                "metal", "M", 40, seat, "L", 126, seat, "L", 126, seat + 62, "L", 112, seat + 62,
                "L", 112, seat + 14, "L", 40, seat + 14, "Z");
        s.path(
                "metal", "M", 280, seat, "L", 194, seat, "L", 194, seat + 62, "L", 208, seat + 62,
                "L", 208, seat + 14, "L", 280, seat + 14, "Z");
        s.rect("hot", 126, seat + 2, 68, 60);
        // Forces.
        s.arrow("cool", 320, 190, 320, 190 - signal * scale);
        s.arrow("green", 380, 190, 380, 190 + spring * scale);
        s.arrow("hot", 440, 190, 440, 190 - gas * scale);
        s.line("thin", 296, 190, 466, 190);
        s.words("strong", "middle", 320, 208, DrawingWords.lines("forces.signal"))
                .middle(320, 208 + Sketch.LINE, f.told(signal, Quantity.FORCE));
        s.words("strong", "middle", 380, 180 - Sketch.LINE, DrawingWords.lines("forces.spring"))
                .middle(380, 180, f.told(spring, Quantity.FORCE));
        s.words("strong", "middle", 440, 208, DrawingWords.lines("forces.exhaust"))
                .middle(440, 208 + Sketch.LINE, f.told(gas, Quantity.FORCE));
        s.end(84, 36, DrawingWords.lines("forces.above"));
        s.end(84, 90, DrawingWords.lines("forces.below"));
        s.end(84, 90 + Sketch.LINE, Sketch.wrap(signalTold, 84));
        s.say(216, seat - 20, DrawingWords.lines("forces.behind", f.told("downstream")));
        s.middle(160, seat + 80, DrawingWords.lines("forces.under", f.told("upstream")));
        s.words(
                "strong",
                "start",
                20,
                seat + 106,
                DrawingWords.lines("forces.lift", f.told("lift")));
        return new Picture(
                s,
                DrawingWords.of(
                        "forces.words",
                        f.told(signal, Quantity.FORCE),
                        f.told(gas, Quantity.FORCE),
                        f.told(spring, Quantity.FORCE),
                        f.told("lift")));
    }

    /** What is inside the can. */
    static Picture actuatorCutaway() {
        Sketch s = new Sketch(330);
        s.path("cool", "M", 110, 96, "L", 300, 96, "L", 300, 150, "L", 110, 150, "Z");
        s.path("edge", "M", 100, 92, "L", 100, 34, "L", 310, 34, "L", 310, 92);
        s.path("edge", "M", 100, 100, "L", 100, 160, "L", 196, 160);
        s.path("edge", "M", 214, 160, "L", 310, 160, "L", 310, 100);
        s.rect("metal", 88, 90, 24, 12).rect("metal", 298, 90, 24, 12);
        s.curve("cool-line", 112, 96, 130, 84, 150, 92, 260, 92, 280, 84, 298, 96);
        s.rect("metal", 150, 86, 110, 6);
        s.spring("green-line", 175, 34, 175, 86, 4, 14)
                .spring("green-line", 235, 34, 235, 86, 4, 14);
        s.rect("metal", 201, 92, 8, 160);
        s.rect("blank", 190, 156, 30, 14);
        s.path("metal", "M", 165, 264, "L", 245, 264, "L", 232, 252, "L", 178, 252, "Z");
        s.path("metal", "M", 90, 266, "L", 172, 266, "L", 172, 300, "L", 90, 300, "Z");
        s.path("metal", "M", 320, 266, "L", 238, 266, "L", 238, 300, "L", 320, 300, "Z");
        s.rect("hot", 172, 268, 66, 40);
        s.rect("blank", 300, 126, 46, 12);
        s.arrow("cool", 376, 132, 348, 132);
        s.say(380, 128, DrawingWords.lines("can.hose"))
                .say(380, 128 + Sketch.LINE, DrawingWords.lines("can.boost"));
        s.leader(360, 62, 240, 56)
                .say(364, 60, DrawingWords.lines("can.spring"))
                .say(364, 60 + Sketch.LINE, DrawingWords.lines("can.preload"));
        s.leader(60, 74, 124, 88)
                .words("words", "start", 4, 58, DrawingWords.lines("can.diaphragm"));
        s.leader(60, 210, 202, 204)
                .say(4, 206, DrawingWords.lines("can.stem"))
                .say(4, 206 + Sketch.LINE, DrawingWords.lines("can.guide"));
        s.leader(360, 236, 236, 258)
                .say(364, 234, DrawingWords.lines("can.valve"))
                .leader(360, 286, 300, 284);
        s.say(364, 290, DrawingWords.lines("can.seat"));
        s.arrow("hot", 205, 326, 205, 300);
        s.end(196, 324, DrawingWords.lines("can.exhaust"));
        return new Picture(s, DrawingWords.of("can.words"));
    }

    /** Restrictor, bleed and diaphragm, with the pressures that they leave. */
    static Picture bleedNetwork(Facts f) {
        double scale = 110 / Math.max(f.si("boost"), 1e-9);
        double boost = f.si("boost") * scale;
        double signal = f.si("signalPressure") * scale;
        Sketch s = new Sketch(320);
        s.rect("cool", 20, 62, 180, 16)
                .rect("cool", 216, 62, 184, 16)
                .rect("cool", 290, 78, 16, 60);
        s.path(
                "edge", "M", 20, 62, "L", 196, 62, "L", 200, 67, "L", 216, 67, "L", 220, 62, "L",
                400, 62);
        s.path(
                "edge", "M", 20, 78, "L", 196, 78, "L", 200, 73, "L", 216, 73, "L", 220, 78, "L",
                290, 78, "L", 290, 128, "L", 295, 134, "L", 295, 142);
        s.path("edge", "M", 400, 78, "L", 306, 78, "L", 306, 128, "L", 301, 134, "L", 301, 142);
        s.circle("blank", 432, 70, 34).line("cool-line", 400, 70, 464, 70);
        s.arrow("cool", 40, 70, 100, 70).arrow("cool", 298, 142, 298, 168);
        s.say(20, 48, DrawingWords.lines("bleed.from"))
                .middle(
                        208,
                        30,
                        DrawingWords.lines("bleed.restrictor", f.told("restrictorDiameter")));
        s.end(286, 124, DrawingWords.lines("bleed.bleed", f.told("bleedDiameter")))
                .middle(298, 186, DrawingWords.lines("bleed.air"));
        s.middle(432, 122, DrawingWords.lines("bleed.diaphragm"));
        double foot = 292;
        s.line("edge", 20, foot, 460, foot);
        s.rect("mild", 40, foot - boost, 60, boost).rect("cool", 130, foot - signal, 60, signal);
        s.middle(70, foot - boost - 6, f.told("boost"))
                .middle(160, foot - signal - 6, f.told("signalPressure"));
        s.middle(70, foot + 18, DrawingWords.lines("bleed.boost"))
                .middle(160, foot + 18, DrawingWords.lines("bleed.signal"));
        s.say(232, foot - 56, DrawingWords.lines("bleed.share", f.told("share")));
        s.say(232, foot - 36, DrawingWords.lines("bleed.of-change", f.told("shareOfChange")));
        return new Picture(
                s,
                DrawingWords.of(
                        "bleed.words",
                        f.told("restrictorDiameter"),
                        f.told("bleedDiameter"),
                        f.told("boost"),
                        f.told("signalPressure"),
                        f.told("share"),
                        f.told("shareOfChange")));
    }

    /** Two ways for the gas that goes round. */
    static Picture ventedAndReturned() {
        Sketch s = new Sketch(330);
        scheme(s, 0, false);
        scheme(s, 165, true);
        return new Picture(s, DrawingWords.of("schemes.words"));
    }

    private static void scheme(Sketch s, double y, boolean returned) {
        s.words(
                "strong",
                "start",
                14,
                y + 22,
                DrawingWords.of(returned ? "schemes.returned" : "schemes.vented"));
        s.line("hot-line", 20, y + 66, 150, y + 66);
        s.arrow("hot", 110, y + 66, 158, y + 66);
        s.circle("metal", 190, y + 66, 30)
                .middle(190, y + 71, DrawingWords.lines("schemes.turbine"));
        s.line("hot-line", 220, y + 66, 440, y + 66);
        s.arrow("hot", 410, y + 66, 466, y + 66);
        s.say(250, y + 56, DrawingWords.of(returned ? "schemes.p4-all" : "schemes.p4-turbine"));
        s.say(20, y + 56, "p3");
        s.path("hot-line", "M", 90, y + 66, "L", 90, y + 118, "L", 150, y + 118);
        s.circle("blank", 162, y + 118, 12).line("edge", 154, y + 110, 170, y + 126);
        if (returned) {
            s.line("hot-line", 174, y + 118, 300, y + 118);
            s.arrow("hot", 300, y + 118, 300, y + 70);
            s.middle(235, y + 138, DrawingWords.lines("schemes.behind-p4"));
        } else {
            s.arrow("hot", 174, y + 118, 240, y + 118);
            s.say(250, y + 123, DrawingWords.lines("schemes.behind-air"));
        }
        s.end(146, y + 138, DrawingWords.lines("schemes.gate"));
    }

    /** Flap, shaft, crank and rod, with the arms to scale. */
    static Picture flapAndLever(Facts f) {
        double flap = f.si("flapArm");
        double crank = f.si("crankArm");
        double seat = f.si("seatDiameter");
        double scale = 220 / (flap + crank + seat / 2);
        double pivotX = 70 + crank * scale;
        double shaftX = Math.min(330, pivotX + 20);
        double y = 190;
        double flapX = shaftX + flap * scale;
        double half = seat / 2 * scale;
        double angle = f.si("crankAngle");
        Sketch s = new Sketch(320);
        // The flap lies level on its seat; the crank stands up from the shaft.
        s.rect("metal", flapX - half, y - 6, 2 * half, 10);
        s.line("edge", shaftX, y - 4, flapX, y - 4);
        s.rect("hot", flapX - half * 0.9, y + 6, 1.8 * half * 0.9 / 0.9, 46);
        s.arrow("hot", flapX, y + 50, flapX, y + 8);
        double topX = shaftX;
        double topY = y - crank * scale;
        s.line("edge", shaftX, y, topX, topY);
        s.circle("blank", shaftX, y, 8).circle("blank", topX, topY, 6);
        double rx = -Math.sin(angle);
        double ry = Math.cos(angle);
        double rod = 90;
        s.arrow("green", topX, topY, topX + rx * rod, topY - ry * rod);
        s.words("strong", "start", 14, 30, DrawingWords.lines("flap.rod", f.told("rodForce")));
        s.say(14, 30 + Sketch.LINE, DrawingWords.lines("flap.holds"));
        s.say(
                shaftX + 10,
                (topY + y) / 2,
                DrawingWords.lines("flap.crank-arm", f.told("crankArm")));
        s.line("thin", shaftX, y + 66, flapX, y + 66);
        s.line("thin", shaftX, y + 8, shaftX, y + 70).line("thin", flapX, y + 54, flapX, y + 70);
        s.middle(
                (shaftX + flapX) / 2,
                y + 84,
                DrawingWords.lines("flap.flap-arm", f.told("flapArm")));
        s.end(shaftX - 14, y + 5, DrawingWords.lines("flap.shaft"));
        s.say(14, y + 108, DrawingWords.lines("flap.turns", f.told("moment")));
        s.say(
                14,
                y + 108 + Sketch.LINE,
                DrawingWords.lines("flap.straight", f.told("equivalentSeatDiameter")));
        return new Picture(
                s,
                DrawingWords.of(
                        "flap.words",
                        f.told("flapArm"),
                        f.told("crankArm"),
                        f.told("moment"),
                        f.told("rodForce")));
    }
}
