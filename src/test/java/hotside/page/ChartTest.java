// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.page.ChartData.Axis;
import hotside.page.ChartData.Line;
import hotside.page.ChartData.Present;
import hotside.page.ChartData.Series;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class ChartTest {
    private static final Axis SPEED = Axis.aroundData("Engine speed", "rev/min");
    private static final Axis POWER = Axis.fromZero("Power", "kW");
    private static final double NONE = Double.NaN;

    /** Charts that are hard to lay out, each by a name. */
    static Stream<ChartData> hardCases() {
        double[] x = range(200, 2000, 6500);
        return Stream.of(
                ChartData.of("nothing", SPEED, POWER, List.of()),
                ChartData.of("all gaps", SPEED, POWER, List.of(one(NONE, 1), one(1, NONE))),
                ChartData.of("one point", SPEED, POWER, List.of(one(3000, 80))),
                ChartData.of("one zero", SPEED, POWER, List.of(one(0, 0))),
                ChartData.of("constant", SPEED, around(), List.of(curve("c", x, v -> 248.1))),
                ChartData.of("tiny", SPEED, around(), List.of(curve("t", x, v -> 1 + v * 1e-12))),
                ChartData.of("huge", SPEED, POWER, List.of(curve("h", x, v -> v * 1e290))),
                ChartData.of("too huge", SPEED, POWER, List.of(curve("h", x, v -> v * 1e300))),
                ChartData.of("infinite", SPEED, POWER, List.of(one(1, Double.POSITIVE_INFINITY))),
                ChartData.of("minute", SPEED, POWER, List.of(curve("m", x, v -> v * 1e-310))),
                ChartData.of("below zero", SPEED, around(), List.of(curve("n", x, v -> -v))),
                ChartData.of("bundle", SPEED, POWER, bundle(9)),
                ChartData.of("bundle on little room", SPEED, POWER, bundle(30)).sized(200, 200),
                ChartData.of("a very long title ".repeat(12), SPEED, POWER, longNames())
                        .sized(320, 220),
                ChartData.of("lines", SPEED, POWER, bundle(2))
                        .with(Line.upright(3000, "onset"))
                        .with(Line.upright(3050, "a name that stands close by"))
                        .with(Line.upright(6500, "at the very edge of the chart"))
                        .with(Line.level(200, "target"))
                        .with(Line.level(NONE, "no line"))
                        .with(new Present(3100, 120, "you are here: 120 kW at 3100 rev/min")),
                ChartData.of("outside", SPEED, POWER, bundle(1))
                        .with(new Present(9000, 900, "far out")),
                ChartData.of("<script>&\"'", axis("<b>", "<i>"), axis("&amp;", "\"'"), hostile())
                        .with(Line.level(1, "<img src=x onerror=alert(1)>"))
                        .with(new Present(1, 1, "]]><svg onload=alert(1)>")));
    }

    @ParameterizedTest
    @MethodSource("hardCases")
    void isWellFormedWithoutANumberThatIsNone(ChartData data) {
        String svg = Chart.svg(data);
        Element root = Xml.parse(svg);
        assertEquals("img", root.getAttribute("role"));
        assertEquals("title", firstChild(root).getTagName());
        assertFalse(svg.matches("(?s).*=\"[^\"]*(NaN|Infinity)[^\"]*\".*"), svg);
        for (String tag : List.of("script", "img", "b", "i")) {
            assertEquals(0, root.getElementsByTagName(tag).getLength(), tag);
        }
        Xml.parse(Chart.figure(data));
    }

    @ParameterizedTest
    @MethodSource("hardCases")
    void noLabelIsCutOffOrCoversAnother(ChartData data) {
        List<double[]> boxes = new ArrayList<>();
        Element root = Xml.parse(Chart.svg(data));
        double height = number(root, "height");
        for (Element text : elements(root, "text")) {
            double[] box = box(text);
            String what = text.getTextContent() + " in " + data.title();
            assertTrue(box[0] >= 0 && box[1] <= data.width(), "cut at the side: " + what);
            assertTrue(box[2] >= 0 && box[3] <= height, "cut at the edge: " + what);
            if (!text.getAttribute("class").equals("present-label")) {
                boxes.forEach(other -> assertFalse(overlap(box, other), "covered: " + what));
                boxes.add(box);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("hardCases")
    void everyCurveDrawnCarriesItsNameInItsColour(ChartData data) {
        Element root = Xml.parse(Chart.svg(data));
        List<Element> ends = withClass(root, "text", "end-label");
        for (Element curve : withClass(root, "g", "curve")) {
            String colour = curve.getAttribute("class").replace("curve ", "");
            assertTrue(
                    ends.stream().anyMatch(end -> end.getAttribute("class").endsWith(colour)),
                    colour + " is named");
        }
    }

    @Test
    void theUnitStandsAtBothAxes() {
        Element root = Xml.parse(Chart.svg(plain()));
        List<String> titles =
                withClass(root, "text", "axis-title").stream()
                        .map(Element::getTextContent)
                        .toList();
        assertEquals(List.of("Power, kW", "Engine speed, rev/min"), titles);
    }

    @Test
    void anAxisWithoutZeroSaysSoAndShowsABreak() {
        ChartData data = ChartData.of("t", SPEED, around(), plain().series());
        Element root = Xml.parse(Chart.svg(data));
        assertEquals(2, withClass(root, "path", "axis break").size());
        assertTrue(Chart.svg(data).contains("axis does not start at zero"));
        assertFalse(Chart.svg(plain()).contains("axis does not start at zero"));
        Axis fromZero = Axis.fromZero("Time", "s");
        ChartData whole = ChartData.of("t", fromZero, POWER, plain().series());
        assertEquals(0, withClass(Xml.parse(Chart.svg(whole)), "path", "axis break").size());
    }

    @Test
    void aGapBreaksTheLine() {
        Series gap = Series.of("g", new double[] {1, 2, 3, 4, 5}, new double[] {1, 2, NONE, 4, 5});
        assertEquals(2, strokes(ChartData.of("t", SPEED, POWER, List.of(gap))));
    }

    @Test
    void aPointBetweenTwoGapsIsSeen() {
        Series lone =
                Series.of("g", new double[] {1, 2, 3, 4, 5}, new double[] {1, NONE, 3, NONE, 5})
                        .drawn(ChartData.Dash.SOLID, ChartData.Marker.NONE);
        Element root = Xml.parse(Chart.svg(ChartData.of("t", SPEED, POWER, List.of(lone))));
        assertEquals(3, elements(root, "circle").size());
    }

    @Test
    void aLongLogIsThinnedAndKeepsItsPeaksItsGapAndItsEnds() {
        double[] x = range(20_000, 0, 100);
        double[] y = new double[x.length];
        y[7_001] = 55;
        y[12_003] = -44;
        y[15_000] = NONE;
        List<ChartData.Point> kept = Thinned.of(Series.of("log", x, y).points());
        assertTrue(kept.size() <= Thinned.MOST, kept.size() + " points");
        assertTrue(kept.stream().anyMatch(p -> p.y() == 55));
        assertTrue(kept.stream().anyMatch(p -> p.y() == -44));
        assertTrue(kept.stream().anyMatch(ChartData.Point::isGap));
        assertEquals(0, kept.get(0).x());
        assertEquals(100, kept.get(kept.size() - 1).x());
    }

    @Test
    void curvesDifferByDashAndByMarker() {
        Element root = Xml.parse(Chart.svg(ChartData.of("t", SPEED, POWER, bundle(6))));
        long dashes =
                withClass(root, "path", "way").stream()
                        .map(way -> way.getAttribute("stroke-dasharray"))
                        .distinct()
                        .count();
        assertEquals(6, dashes);
    }

    @Test
    void saysWhatItShows() {
        ChartData data = plain().with(Line.level(200, "target")).with(new Present(3000, 90, "now"));
        assertEquals(
                "Power over Engine speed from 2000 to 6000 rev/min."
                        + " before starts at 80 kW, ends at 150 kW, highest 160 kW at 4000 rev/min."
                        + " target: line at 200 kW. now: 90 kW at 3000 rev/min.",
                Chart.summary(data));
        Element root = Xml.parse(Chart.svg(data));
        assertEquals(
                Chart.summary(data), root.getElementsByTagName("desc").item(0).getTextContent());
    }

    @Test
    void refusesASizeWithoutRoomForLabels() {
        assertThrows(IllegalArgumentException.class, () -> plain().sized(100, 400));
    }

    @Test
    void refusesPlacesAndValuesOfDifferentNumber() {
        assertThrows(
                IllegalArgumentException.class,
                () -> Series.of("s", new double[] {1, 2}, new double[] {1}));
    }

    @Test
    void theTableShowsCurvesOverTheSamePlacesSideBySide() {
        Series after =
                Series.of(
                        "after",
                        new double[] {2000, 4000, 6000},
                        new double[] {85, NONE, 0.1 + 0.2});
        ChartData data =
                ChartData.of("Power", SPEED, POWER, List.of(plain().series().get(0), after));
        Element table = Xml.parse(ChartTable.html(data));
        assertEquals(
                List.of("Engine speed, rev/min", "before: Power, kW", "after: Power, kW"),
                texts(table, "th"));
        assertEquals(
                List.of("2000", "80", "85.0", "4000", "160", "–", "6000", "150", "0.3"),
                texts(table, "td"));
    }

    @Test
    void theTableListsOtherCurvesOneBelowTheOther() {
        ChartData data =
                ChartData.of("P", SPEED, POWER, List.of(plain().series().get(0), one(2500, 99)));
        Element table = Xml.parse(ChartTable.html(data));
        assertEquals(
                List.of("Curve", "Engine speed, rev/min", "Power, kW"),
                texts(table, "th").subList(0, 3));
        assertEquals(
                List.of("before", "before", "before", "lone"), texts(table, "th").subList(3, 7));
        assertEquals(
                List.of("2000", "80", "4000", "160", "6000", "150", "2500", "99"),
                texts(table, "td"));
    }

    @ParameterizedTest
    @MethodSource("hardCases")
    void theTableStaysShort(ChartData data) {
        assertTrue(elements(Xml.parse(ChartTable.html(data)), "tr").size() <= 26);
    }

    @Test
    void aLongTableKeepsFirstAndLastAndSaysThatItIsThinned() {
        ChartData data =
                ChartData.of("P", SPEED, POWER, List.of(curve("c", range(500, 0, 499), v -> v)));
        List<String> cells = texts(Xml.parse(ChartTable.html(data)), "td");
        assertEquals("0", cells.get(0));
        assertEquals("499", cells.get(cells.size() - 1));
        assertEquals(50, cells.size());
        assertTrue(ChartTable.html(data).contains("(some of the readings)"));
    }

    @Test
    void aCursorReadsEveryCurveAtThePlaceNearestToIt() {
        Series after =
                Series.of("after", new double[] {2000, 4010, 6000}, new double[] {85, 170, 155});
        ChartData data =
                ChartData.of("Power", SPEED, POWER, List.of(plain().series().get(0), after));
        ChartCursor cursor = new ChartCursor(data);
        ChartCursor.Reading first = cursor.near(0).orElseThrow();
        assertEquals("2000 rev/min: before 80 kW, after 85 kW", first.text());
        ChartCursor.Reading next = cursor.step(first.index(), 1).orElseThrow();
        assertEquals("4000 rev/min: before 160 kW, after 170 kW", next.text());
        assertTrue(next.at() > first.at());
        assertEquals(next, cursor.near(next.at() + 1e-6).orElseThrow());
        assertEquals(first, cursor.step(first.index(), -9).orElseThrow());
        assertTrue(new ChartCursor(ChartData.of("", SPEED, POWER, List.of())).near(9).isEmpty());
    }

    private static ChartData plain() {
        return ChartData.of(
                "Power",
                SPEED,
                POWER,
                List.of(
                        Series.of(
                                "before",
                                new double[] {2000, 4000, 6000},
                                new double[] {80, 160, 150})));
    }

    private static Axis axis(String label, String unit) {
        return Axis.aroundData(label, unit);
    }

    private static Axis around() {
        return Axis.aroundData("Power", "kW");
    }

    private static Series one(double x, double y) {
        return Series.of("lone", new double[] {x}, new double[] {y});
    }

    private static Series curve(String name, double[] x, DoubleUnaryOperator y) {
        return Series.of(name, x, Arrays.stream(x).map(y).toArray());
    }

    private static List<Series> bundle(int count) {
        double[] x = range(60, 2000, 6500);
        return IntStream.range(0, count)
                .mapToObj(i -> curve("run " + (i + 1), x, v -> v / 30 + i))
                .toList();
    }

    private static List<Series> longNames() {
        double[] x = range(60, 2000, 6500);
        return List.of(
                curve("a pipe of which much is to be said and more to be told", x, v -> v),
                curve("Donaudampfschifffahrtsgesellschaftskapitän".repeat(3), x, v -> v + 1),
                curve("漢字".repeat(40), x, v -> v + 2));
    }

    private static List<Series> hostile() {
        return List.of(
                Series.of(
                        "</text><script>alert(1)</script>\u0000",
                        new double[] {1},
                        new double[] {1}));
    }

    private static double[] range(int count, double from, double to) {
        return IntStream.range(0, count)
                .mapToDouble(i -> from + (to - from) * i / (count - 1))
                .toArray();
    }

    private static long strokes(ChartData data) {
        Element way = withClass(Xml.parse(Chart.svg(data)), "path", "way").get(0);
        return way.getAttribute("d").chars().filter(c -> c == 'M').count();
    }

    /** Left, right, top and bottom of a line of text, by widths on the wide side. */
    private static double[] box(Element text) {
        double size = text.hasAttribute("font-size") ? number(text, "font-size") : ChartLayout.FONT;
        double width = TextWidth.of(text.getTextContent(), size);
        double shift =
                switch (text.getAttribute("text-anchor")) {
                    case "middle" -> -width / 2;
                    case "end" -> -width;
                    default -> 0;
                };
        double x = number(text, "x") + shift;
        double y = number(text, "y");
        // Ascent and descent of Roboto are 0.93 and 0.24 em; capitals and digits reach 0.71 em.
        return new double[] {x, x + width, y - 0.75 * size, y + 0.24 * size};
    }

    private static boolean overlap(double[] a, double[] b) {
        return a[0] < b[1] && b[0] < a[1] && a[2] < b[3] && b[2] < a[3];
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    private static Element firstChild(Element parent) {
        return (Element) parent.getFirstChild();
    }

    private static List<Element> withClass(Element root, String tag, String name) {
        return elements(root, tag).stream()
                .filter(e -> (e.getAttribute("class") + " ").startsWith(name + " "))
                .toList();
    }

    private static List<String> texts(Element root, String tag) {
        return elements(root, tag).stream().map(Element::getTextContent).toList();
    }

    private static List<Element> elements(Element root, String tag) {
        NodeList nodes = root.getElementsByTagName(tag);
        return IntStream.range(0, nodes.getLength())
                .mapToObj(i -> (Element) nodes.item(i))
                .toList();
    }
}
