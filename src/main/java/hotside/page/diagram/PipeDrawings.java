// SPDX-License-Identifier: Apache-2.0
package hotside.page.diagram;

import hotside.catalogue.Catalogue;
import hotside.relation.RelationException;
import hotside.relation.Values;
import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import java.util.ArrayList;
import java.util.List;

/** Pipes, their bores and bends. */
final class PipeDrawings {
    /** Bores that tube is sold in, outer sizes less a usual wall; m. Common practice, no source. */
    private static final double[] BORES = {0.057, 0.063, 0.070, 0.076, 0.089, 0.102, 0.114, 0.127};

    private static final int SPOTS = 25;

    private PipeDrawings() {}

    /** Circles to one scale, with what each would drop where one of them is known. */
    static Picture boresToScale(Facts f) {
        double scale = 960;
        Sketch s = new Sketch(400);
        StringBuilder words = new StringBuilder();
        double known = f.si("diameterA");
        for (int i = 0; i < BORES.length; i++) {
            int row = i / 4;
            double gap = row == 0 ? 58 : 14;
            double before = 0;
            for (int j = row * 4; j < i; j++) {
                before += BORES[j] * scale + gap;
            }
            double left = (row == 0 ? 26 : 10) + before;
            double radius = BORES[i] * scale / 2;
            double x = left + radius;
            double y = row == 0 ? 50 : 240;
            boolean isKnown = Math.abs(BORES[i] - known) < 0.0005;
            s.circle(isKnown ? "hot" : "cool", x, y, radius).circle("edge", x, y, radius);
            String bore = f.told(BORES[i], Quantity.LENGTH);
            String drop = f.told(f.other("dropB", "diameterB", BORES[i]), "dropB");
            double at = row == 0 ? y + radius + 18 : y - 1;
            s.words("strong", "middle", x, at, bore).middle(x, at + 16, drop);
            words.append(bore).append(": ").append(drop).append("; ");
        }
        s.words(
                "quiet-words",
                "start",
                10,
                348,
                DrawingWords.lines("bores.note", f.told("diameterA"), f.told("dropA")));
        return new Picture(
                s,
                DrawingWords.of(
                        "bores.words",
                        f.told("diameterA"),
                        f.told("dropA"),
                        words.toString().replaceFirst("; $", ".")));
    }

    /** A drawn bend and corners of cut pieces, with what each costs. */
    static Picture bendAndMitre(Facts f) {
        double angle = f.si("angle");
        double ratio = f.si("bendRadiusRatio");
        double smooth = f.si("lossCoefficient");
        double one = mitre(f, 1);
        double three = mitre(f, 3);
        Sketch s = new Sketch(360);
        double bore = 38;
        double radius = Math.min(ratio, 2.4) * bore;
        arc(s, 120, 40, radius, bore, angle);
        corner(s, 300, 40, bore, angle);
        s.words("strong", "start", 24, 20, DrawingWords.lines("bend.bend"))
                .words("strong", "start", 250, 20, DrawingWords.lines("bend.corner"));
        s.say(
                24,
                176,
                DrawingWords.lines(
                        "bend.radius", DecimalHabit.spoken().write(Numbers.significant(ratio, 2))));
        double most = Math.max(smooth, Math.max(one, three));
        double scale = 250 / most;
        bar(s, 206, "cool", smooth * scale, DrawingWords.of("bend.bend"), smooth);
        bar(s, 240, "mild", three * scale, DrawingWords.of("bend.three"), three);
        bar(s, 274, "hot", one * scale, DrawingWords.of("bend.one"), one);
        s.words(
                "quiet-words",
                "start",
                20,
                322,
                DrawingWords.lines("bend.note", f.told("angle"), f.told("drop")));
        return new Picture(
                s,
                DrawingWords.of(
                        "bend.words",
                        f.told("angle"),
                        DecimalHabit.spoken().write(Numbers.significant(smooth, 2)),
                        DecimalHabit.spoken().write(Numbers.significant(three, 2)),
                        DecimalHabit.spoken().write(Numbers.significant(one, 2)),
                        f.told("drop")));
    }

    private static double mitre(Facts f, int joints) {
        Values in =
                Values.of(
                        "diameter", f.si("diameter"),
                        "angle", f.si("angle"),
                        "joints", (double) joints,
                        "frictionFactor", f.si("frictionFactor"),
                        "massFlow", f.si("massFlow"),
                        "pressure", f.si("pressure"),
                        "temperature", f.si("temperature"),
                        "lambda", f.si("lambda"));
        return Catalogue.find("mitre-loss").orElseThrow().value("lossCoefficient", in);
    }

    private static void bar(
            Sketch s, double y, String ink, double length, String name, double value) {
        s.end(98, y + 15, name);
        s.rect(ink, 106, y, length, 22).line(ink + "-line", 106, y, 106, y + 22);
        s.say(112 + length, y + 15, DecimalHabit.spoken().write(Numbers.significant(value, 2)));
    }

    /** A piece straight down, then round to the right by the angle. */
    private static void arc(
            Sketch s, double x, double top, double radius, double bore, double angle) {
        double start = top + 16;
        double cx = x + radius;
        double inner = radius - bore / 2;
        double outer = radius + bore / 2;
        double turn = Math.min(angle, Math.PI);
        Object[] path = {
            "M",
            x - bore / 2,
            top,
            "L",
            x - bore / 2,
            start,
            "A",
            outer,
            outer,
            0,
            0,
            0,
            cx - outer * Math.cos(turn),
            start + outer * Math.sin(turn),
            "L",
            cx - inner * Math.cos(turn),
            start + inner * Math.sin(turn),
            "A",
            inner,
            inner,
            0,
            0,
            1,
            x + bore / 2,
            start,
            "L",
            x + bore / 2,
            top,
            "Z"
        };
        s.path("hot", path).path("edge", path);
    }

    private static void corner(Sketch s, double x, double top, double bore, double angle) {
        double turn = Math.min(angle, Math.toRadians(150));
        double bend = Math.tan(turn / 2) * bore / 2;
        double mid = top + 66;
        double ux = Math.sin(turn);
        double uy = Math.cos(turn);
        double far = 80;
        Object[] path = {
            "M",
            x - bore / 2,
            top,
            "L",
            x - bore / 2,
            mid + bend,
            "L",
            x - bore / 2 * uy + ux * far,
            mid + bore / 2 * ux + uy * far,
            "L",
            x + bore / 2 * uy + ux * far,
            mid - bore / 2 * ux + uy * far,
            "L",
            x + bore / 2,
            mid - bend,
            "L",
            x + bore / 2,
            top,
            "Z"
        };
        s.path("hot", path).path("edge", path);
        s.line("thin", x - bore / 2, mid + bend, x + bore / 2, mid - bend);
    }

    /** Mach number from the pipe's beginning to its open end. */
    static Picture chokingProfile(Facts f) {
        double length = f.si("length");
        double exit = f.si("exitMach");
        double left = 60;
        double width = 390;
        double foot = 230;
        double scale = 170 / Math.max(1, exit);
        List<Double> points = new ArrayList<>();
        for (int i = 0; i < SPOTS; i++) {
            double share = (double) i / (SPOTS - 1);
            double mach = share >= 1 ? exit : mach(f, length, share);
            if (Double.isFinite(mach)) {
                points.add(left + share * width);
                points.add(foot - mach * scale);
            }
        }
        Sketch s = new Sketch(310);
        s.rect("hot", left, 20, width, 26);
        s.line("edge", left, 20, left + width, 20).line("edge", left, 46, left + width, 46);
        s.arrow("hot", left + 10, 33, left + 60, 33);
        s.line("edge", left, foot, left + width, foot).line("edge", left, foot, left, foot - 175);
        s.line("dash", left, foot - scale, left + width, foot - scale);
        s.say(left + 6, foot - scale + 17, DrawingWords.lines("choking.sound"));
        s.end(left - 6, foot + 4, "0").end(left - 6, foot - scale + 5, "1");
        s.curve("hot-line", points.stream().mapToDouble(Double::doubleValue).toArray());
        double in = f.si("inletMach");
        s.circle("hot-dot", left, foot - in * scale, 4);
        s.circle("hot-dot", left + width, foot - exit * scale, 4);
        s.say(
                left + 8,
                foot - in * scale + 20,
                DrawingWords.lines("choking.in", f.told("inletMach")));
        s.end(
                left + width - 4,
                foot - exit * scale + 24,
                DrawingWords.lines("choking.out", f.told("exitMach")));
        s.say(left, foot + 18, "0").end(left + width, foot + 18, f.told("length"));
        boolean choked = f.si("choked") > 0.5;
        s.words(
                "quiet-words",
                "start",
                20,
                foot + 44,
                choked
                        ? DrawingWords.lines("choking.note-choked", f.told("exitStatic"))
                        : DrawingWords.lines("choking.note", f.told("drop")));
        return new Picture(
                s,
                DrawingWords.of(
                        "choking.words",
                        f.told("length"),
                        f.told("inletMach"),
                        f.told("exitMach"),
                        choked ? DrawingWords.of("choking.words-choked") : "",
                        f.told("drop")));
    }

    /** At a share of the way: the rest of the pipe, bends spread evenly, is a pipe too. */
    private static double mach(Facts f, double length, double share) {
        try {
            return f.with(
                    "inletMach",
                    "length",
                    length * (1 - share),
                    "lossSum",
                    f.si("lossSum") * (1 - share));
        } catch (RelationException e) {
            return Double.NaN;
        }
    }
}
