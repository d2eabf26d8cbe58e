// SPDX-License-Identifier: Apache-2.0
package hotside.page.diagram;

import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import java.util.List;

/** How a test is laid out and what comes of it. */
final class TestDrawings {
    private static final int MOST_PULLS = 24;

    private TestDrawings() {}

    /** The cell from above. */
    static Picture cellLayout() {
        Sketch s = new Sketch(410);
        s.path("edge", "M", 20, 40, "L", 330, 40, "L", 330, 250);
        s.path("edge", "M", 330, 300, "L", 330, 330, "L", 20, 330, "L", 20, 40);
        s.line("dash", 330, 250, 362, 278)
                .words("quiet-words", "start", 338, 300, DrawingWords.lines("cell.door"));
        s.path("edge", "M", 330, 40, "L", 465, 40, "L", 465, 230, "L", 330, 230);
        s.rect("cool", 326, 90, 8, 90);
        s.rect("metal", 90, 140, 96, 70).middle(138, 180, DrawingWords.lines("cell.engine"));
        s.rect("metal", 206, 150, 70, 50)
                .middle(241, 180, DrawingWords.lines("cell.brake"))
                .line("edge", 186, 175, 206, 175);
        s.circle("metal", 62, 150, 18)
                .words("words", "middle", 62, 155, DrawingWords.lines("cell.turbo"));
        s.path("hot-line", "M", 62, 168, "L", 62, 290, "L", 130, 290);
        s.arrow("hot", 130, 290, 176, 290);
        s.rect("blank", 176, 276, 84, 28).middle(218, 295, DrawingWords.lines("cell.extraction"));
        s.arrow("hot", 260, 290, 312, 290);
        s.circle("blank", 62, 196, 7)
                .leader(92, 236, 69, 198)
                .say(94, 240, DrawingWords.lines("cell.tap"));
        s.circle("blank", 62, 222, 7)
                .leader(92, 258, 68, 225)
                .say(94, 262, DrawingWords.lines("cell.pipe"));
        s.rect("blank", 80, 56, 70, 28)
                .middle(115, 75, DrawingWords.lines("cell.fan"))
                .arrow("cool", 115, 84, 115, 134);
        s.circle("blank", 196, 104, 7).leader(214, 84, 200, 100);
        s.say(206, 78, DrawingWords.lines("cell.probe"))
                .say(206, 78 + Sketch.LINE, DrawingWords.lines("cell.probe-reads"));
        s.circle("hot-dot", 312, 60, 9).circle("hot-dot", 356, 206, 9);
        s.leader(300, 118, 312, 70)
                .end(318, 132, DrawingWords.lines("cell.stop"))
                .say(372, 211, DrawingWords.lines("cell.stop"));
        s.rect("blank", 344, 100, 40, 70).middle(364, 140, DrawingWords.lines("cell.desk"));
        s.say(344, 62, DrawingWords.lines("cell.room"));
        s.leader(410, 128, 334, 120).say(398, 146, DrawingWords.lines("cell.window"));
        s.circle("mild-dot", 40, 60, 8)
                .say(26, 30, DrawingWords.lines("cell.alarm"))
                .rect("green", 296, 306, 14, 20);
        s.end(290, 324, DrawingWords.lines("cell.extinguisher"));
        s.words("quiet-words", "start", 20, 354, DrawingWords.lines("cell.note"));
        return new Picture(s, DrawingWords.of("cell.words"));
    }

    /** Letters in their order on a bench that drifts. */
    static Picture pullOrder(Facts f) {
        String order =
                f.word("order").replaceAll("[^A-Za-z]", "").toUpperCase(java.util.Locale.ROOT);
        int count = Math.min(MOST_PULLS, Math.max(2, order.length()));
        order = order.substring(0, Math.min(order.length(), count));
        double left = 50;
        double step = 390.0 / (count - 1);
        double foot = 200;
        double rise = 130.0 / (count - 1);
        Sketch s = new Sketch(320);
        double[] sum = new double[2];
        int[] many = new int[2];
        s.line("dash", left, foot, left + 390, foot - 130);
        s.line("edge", 30, 220, 460, 220);
        for (int i = 0; i < order.length(); i++) {
            int part = order.charAt(i) == 'A' ? 0 : 1;
            double x = left + i * step;
            double y = foot - i * rise;
            if (part == 0) {
                s.circle("cool-dot", x, y, 7);
            } else {
                s.rect("hot-dot", x - 7, y - 7, 14, 14);
            }
            s.words("strong", "middle", x, 238, order.substring(i, i + 1));
            sum[part] += y;
            many[part]++;
        }
        for (int part = 0; part < 2; part++) {
            if (many[part] > 0) {
                double mean = sum[part] / many[part];
                s.line(part == 0 ? "cool-line" : "hot-line", left, mean, 455, mean);
                s.end(
                        part == 0 ? 150 : 250,
                        mean - 6,
                        DrawingWords.lines("order.mean", part == 0 ? "A" : "B"));
            }
        }
        s.say(30, 30, DrawingWords.lines("order.drift"));
        s.words(
                "quiet-words",
                "start",
                30,
                264,
                DrawingWords.lines("order.note", f.told("driftBias"), f.told("changes")));
        return new Picture(
                s, DrawingWords.of("order.words", order, f.told("driftBias"), f.told("changes")));
    }

    /** Readings as dots on one line, with mean and interval. */
    static Picture interval(Facts f) {
        List<Double> readings = f.readings("sample");
        double low = f.si("low");
        double high = f.si("high");
        double from =
                Math.min(low, readings.stream().mapToDouble(Double::doubleValue).min().orElse(0));
        double to =
                Math.max(high, readings.stream().mapToDouble(Double::doubleValue).max().orElse(1));
        double left = 50;
        double scale = 380 / Math.max(to - from, 1e-12);
        Sketch s = new Sketch(230);
        double mean = left + (f.si("mean") - from) * scale;
        s.line("edge", 30, 120, 450, 120);
        for (int i = 0; i < readings.size(); i++) {
            s.circle("cool-dot", left + (readings.get(i) - from) * scale, 106 - 5 * (i % 3), 5);
        }
        double a = left + (low - from) * scale;
        double b = left + (high - from) * scale;
        s.rect("mild", a, 130, b - a, 22);
        s.line("mild-line", a, 126, a, 156).line("mild-line", b, 126, b, 156);
        s.line("hot-line", mean, 60, mean, 160);
        s.middle(
                Math.max(90, Math.min(390, mean)),
                46,
                DrawingWords.lines("interval.mean", f.told("mean")));
        s.words(
                "quiet-words",
                "start",
                30,
                82,
                DrawingWords.lines("interval.readings", readings.size()));
        s.middle(
                Math.max(150, Math.min(330, (a + b) / 2)),
                174,
                DrawingWords.lines("interval.from-to", f.told("low"), f.told("high")));
        s.words(
                "quiet-words",
                "start",
                30,
                206,
                DrawingWords.lines("interval.note", f.told("confidence")));
        return new Picture(
                s,
                DrawingWords.of(
                        "interval.words",
                        readings.size(),
                        f.told("mean"),
                        f.told("confidence"),
                        f.told("low"),
                        f.told("high")));
    }

    /** The gain as one bar of two pieces, each with its interval. */
    static Picture gainSplit(Facts f) {
        double[] ends = {
            0,
            f.si("gain"),
            f.si("boostPartLow"),
            f.si("boostPartHigh"),
            f.si("exhaustPartLow"),
            f.si("exhaustPartHigh")
        };
        double least = java.util.Arrays.stream(ends).min().orElse(0);
        double most = java.util.Arrays.stream(ends).max().orElse(1);
        double left = 40;
        double scale = 400 / Math.max(most - least, 1e-9);
        double zero = left - least * scale;
        Sketch s = new Sketch(300);
        s.line("edge", zero, 20, zero, 222);
        s.middle(zero, 240, "0");
        split(s, f, 34, "edge", "gain", zero, scale, false);
        split(s, f, 94, "mild", "boostPart", zero, scale, true);
        split(s, f, 154, "hot", "exhaustPart", zero, scale, true);
        s.words("strong", "start", zero + 6, 30, DrawingWords.lines("split.whole", f.told("gain")));
        s.words(
                "strong",
                "start",
                zero + 6,
                90,
                DrawingWords.lines("split.boost", f.told("boostPart")));
        s.words(
                "strong",
                "start",
                zero + 6,
                150,
                DrawingWords.lines("split.rest", f.told("exhaustPart")));
        s.words(
                "quiet-words",
                "start",
                30,
                264,
                DrawingWords.lines(
                        "split.note",
                        DecimalHabit.spoken()
                                .write(Numbers.significant(f.si("confidence") * 100, 2))));
        return new Picture(
                s,
                DrawingWords.of(
                        "split.words",
                        f.told("gain"),
                        f.told("boostPart"),
                        f.told("boostPartLow"),
                        f.told("boostPartHigh"),
                        f.told("exhaustPart"),
                        f.told("exhaustPartLow"),
                        f.told("exhaustPartHigh")));
    }

    private static void split(
            Sketch s,
            Facts f,
            double y,
            String ink,
            String slot,
            double zero,
            double scale,
            boolean doubt) {
        double value = f.si(slot) * scale;
        s.rect(
                ink.equals("edge") ? "cool" : ink,
                Math.min(zero, zero + value),
                y,
                Math.abs(value),
                30);
        if (doubt) {
            double low = zero + f.si(slot + "Low") * scale;
            double high = zero + f.si(slot + "High") * scale;
            s.line("edge", low, y + 15, high, y + 15);
            s.line("edge", low, y + 8, low, y + 22).line("edge", high, y + 8, high, y + 22);
        }
    }
}
