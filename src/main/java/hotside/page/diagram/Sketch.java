// SPDX-License-Identifier: Apache-2.0
package hotside.page.diagram;

import hotside.page.Html;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Draws SVG in a few words. Shapes have classes, which the stylesheet colours for both themes; the
 * same colours of the light theme stand in the markup too, for paper, which has no variables.
 *
 * <p>One width fits all: {@value #WIDTH} units, of which a letter is {@value #LETTER} high, so that
 * words stay as large beside a text as in it.
 */
public final class Sketch {
    /** Of every sketch, in its own units. */
    public static final int WIDTH = 480;

    static final int LETTER = 14;
    static final double LINE = 17;

    /** Of a letter of this size on average; from Roboto, measured once. */
    private static final double LETTER_WIDTH = 7.1;

    private static final double HEAD = 9;

    private static final Map<String, String> INK =
            Map.ofEntries(
                    Map.entry("edge", "fill='none' stroke='#23272c' stroke-width='1.6'"),
                    Map.entry("thin", "fill='none' stroke='#555b63' stroke-width='1'"),
                    Map.entry(
                            "dash",
                            "fill='none' stroke='#555b63' stroke-width='1.2' stroke-dasharray='5 4'"),
                    Map.entry(
                            "metal",
                            "fill='#555b63' fill-opacity='0.22' stroke='#23272c' stroke-width='1.6'"),
                    Map.entry("blank", "fill='#fffdf9' stroke='#23272c' stroke-width='1.6'"),
                    Map.entry("hot", "fill='#a3420f' fill-opacity='0.25' stroke='none'"),
                    Map.entry("cool", "fill='#1b5a9c' fill-opacity='0.22' stroke='none'"),
                    Map.entry("mild", "fill='#7a5b00' fill-opacity='0.25' stroke='none'"),
                    Map.entry("green", "fill='#1f6b3a' fill-opacity='0.25' stroke='none'"),
                    Map.entry("hot-line", "fill='none' stroke='#a3420f' stroke-width='2.4'"),
                    Map.entry("cool-line", "fill='none' stroke='#1b5a9c' stroke-width='2.4'"),
                    Map.entry("mild-line", "fill='none' stroke='#7a5b00' stroke-width='2.4'"),
                    Map.entry("green-line", "fill='none' stroke='#1f6b3a' stroke-width='2.4'"),
                    Map.entry("hot-dot", "fill='#a3420f' stroke='none'"),
                    Map.entry("cool-dot", "fill='#1b5a9c' stroke='none'"),
                    Map.entry("mild-dot", "fill='#7a5b00' stroke='none'"),
                    Map.entry("green-dot", "fill='#1f6b3a' stroke='none'"),
                    Map.entry("ink-dot", "fill='#23272c' stroke='none'"),
                    Map.entry("words", "fill='#23272c'"),
                    Map.entry("strong", "fill='#23272c' font-weight='700'"),
                    Map.entry("quiet-words", "fill='#555b63'"));

    private final int height;
    private final StringBuilder out = new StringBuilder(4_096);

    public Sketch(int height) {
        this.height = height;
    }

    /** How high it is, in the units of its width. */
    int height() {
        return height;
    }

    public Sketch line(String ink, double x1, double y1, double x2, double y2) {
        return path(ink, "M", x1, y1, "L", x2, y2);
    }

    public Sketch rect(String ink, double x, double y, double width, double height) {
        out.append("<rect").append(ink(ink));
        attribute("x", x);
        attribute("y", y);
        attribute("width", Math.max(0, width));
        attribute("height", Math.max(0, height));
        out.append("/>");
        return this;
    }

    public Sketch circle(String ink, double x, double y, double radius) {
        out.append("<circle").append(ink(ink));
        attribute("cx", x);
        attribute("cy", y);
        attribute("r", radius);
        out.append("/>");
        return this;
    }

    /**
     * A path.
     *
     * @param pieces letters of commands as text and coordinates as numbers, in the order of SVG
     */
    public Sketch path(String ink, Object... pieces) {
        out.append("<path").append(ink(ink)).append(" d=\"");
        for (Object piece : pieces) {
            out.append(piece instanceof Number n ? number(n.doubleValue()) : piece).append(' ');
        }
        out.append("\"/>");
        return this;
    }

    /** A curve through points, x and y in turn. */
    Sketch curve(String ink, double... points) {
        List<Object> pieces = new ArrayList<>();
        for (int i = 0; i + 1 < points.length; i += 2) {
            pieces.add(i == 0 ? "M" : "L");
            pieces.add(points[i]);
            pieces.add(points[i + 1]);
        }
        return path(ink, pieces.toArray());
    }

    /** A spring along a line, with so many turns. */
    Sketch spring(String ink, double x1, double y1, double x2, double y2, int turns, double half) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        double ux = (x2 - x1) / length;
        double uy = (y2 - y1) / length;
        List<Object> pieces = new ArrayList<>(List.of("M", x1, y1));
        for (int i = 0; i < 2 * turns; i++) {
            double along = length * (i + 0.5) / (2 * turns);
            double side = i % 2 == 0 ? half : -half;
            pieces.add("L");
            pieces.add(x1 + ux * along - uy * side);
            pieces.add(y1 + uy * along + ux * side);
        }
        pieces.addAll(List.of("L", x2, y2));
        return path(ink, pieces.toArray());
    }

    /**
     * An arrow from one point to another; the tip alone where they are close.
     *
     * @param ink {@code hot}, {@code cool}, {@code mild}, {@code green}
     */
    Sketch arrow(String ink, double x1, double y1, double x2, double y2) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        if (length < 1) {
            return this;
        }
        double ux = (x2 - x1) / length;
        double uy = (y2 - y1) / length;
        double head = Math.min(HEAD, length);
        double bx = x2 - ux * head;
        double by = y2 - uy * head;
        if (length > head) {
            line(ink + "-line", x1, y1, bx, by);
        }
        double half = head * 0.5;
        return path(
                ink + "-dot",
                "M",
                x2,
                y2,
                "L",
                bx - uy * half,
                by + ux * half,
                "L",
                bx + uy * half,
                by - ux * half,
                "Z");
    }

    /** An arrow with two tips. */
    Sketch span(String ink, double x1, double y1, double x2, double y2) {
        double mx = (x1 + x2) / 2;
        double my = (y1 + y2) / 2;
        return arrow(ink, mx, my, x1, y1).arrow(ink, mx, my, x2, y2);
    }

    /**
     * Words, line by line.
     *
     * @param anchor {@code start}, {@code middle} or {@code end}
     * @param y of the first line's foot
     */
    public Sketch words(String ink, String anchor, double x, double y, String... lines) {
        for (int i = 0; i < lines.length; i++) {
            out.append("<text").append(ink(ink));
            attribute("x", x);
            attribute("y", y + i * LINE);
            out.append(" text-anchor=\"").append(anchor).append("\">");
            out.append(Html.escape(lines[i])).append("</text>");
        }
        return this;
    }

    Sketch say(double x, double y, String... lines) {
        return words("words", "start", x, y, lines);
    }

    Sketch middle(double x, double y, String... lines) {
        return words("words", "middle", x, y, lines);
    }

    Sketch end(double x, double y, String... lines) {
        return words("words", "end", x, y, lines);
    }

    /** A thin line from words to what they name. */
    Sketch leader(double x1, double y1, double x2, double y2) {
        return line("thin", x1, y1, x2, y2).circle("ink-dot", x2, y2, 2.2);
    }

    /** Lines of words that fit into a width. */
    static String[] wrap(String text, double width) {
        int most = (int) Math.max(6, width / LETTER_WIDTH);
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > most) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines.toArray(String[]::new);
    }

    /** About how wide words come out. */
    static double width(String text) {
        return text.length() * LETTER_WIDTH;
    }

    /**
     * The drawing, with what it is and what it shows for those who do not see it.
     *
     * @param id unique in the page
     */
    public String svg(String id, String title, String words) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"diagram\" role=\"img\" viewBox=\"0 0 "
                + WIDTH
                + " "
                + height
                + "\" width=\""
                + WIDTH
                + "\" height=\""
                + height
                + "\" font-family=\"Roboto, 'DejaVu Sans', sans-serif\" font-size=\""
                + LETTER
                + "\""
                + " aria-labelledby=\""
                + Html.escape(id)
                + "-t "
                + Html.escape(id)
                + "-d\"><title id=\""
                + Html.escape(id)
                + "-t\">"
                + Html.escape(title)
                + "</title><desc id=\""
                + Html.escape(id)
                + "-d\">"
                + Html.escape(words)
                + "</desc>"
                + out
                + "</svg>";
    }

    private void attribute(String name, double value) {
        out.append(' ').append(name).append("=\"").append(number(value)).append('"');
    }

    private static String ink(String ink) {
        String colours = INK.get(ink);
        if (colours == null) {
            throw new IllegalArgumentException("no ink is called " + ink);
        }
        return " class=\"" + ink + "\" " + colours.replace('\'', '"');
    }

    /** A coordinate to a tenth. */
    private static String number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalStateException("a coordinate is " + value);
        }
        long tenths = Math.round(value * 10);
        String whole = (tenths < 0 ? "-" : "") + Math.abs(tenths) / 10;
        return tenths % 10 == 0 ? whole : whole + "." + Math.abs(tenths) % 10;
    }
}
