// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Part;
import hotside.problem.SkillMap;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The skill map as a picture: strands below one another, in each the skills by how much they build
 * on, lines from a skill to what builds on it. Strands have colours and names.
 */
final class SkillDrawing {
    private static final double WIDTH = 640;
    private static final int IN_A_ROW = 4;
    private static final double BOX = 142;
    private static final double GAP = (WIDTH - 16 - IN_A_ROW * BOX) / (IN_A_ROW - 1);
    private static final double HIGH = 54;
    private static final double ROW = 78;
    private static final int CURVES = 6;
    private static final int LETTERS = 19;

    /** Of the light theme, for paper; the stylesheet has its own. */
    private static final List<String> COLOURS =
            List.of("#1b5a9c", "#a3420f", "#1f6b3a", "#6f3fa3", "#7a5b00", "#0a6a75");

    private record Box(SkillMap.Skill skill, double x, double y, int colour) {}

    private SkillDrawing() {}

    static String html(Part.SkillPicture picture) {
        return "<figure class=\"drawing skills\"><div>"
                + svg(picture.map())
                + "</div>"
                + Html.element("figcaption", "", Words.of("skills.title"))
                + "</figure>";
    }

    /** For those who do not see it; the list beneath the picture says the rest. */
    static String words(Part.SkillPicture picture) {
        SkillMap map = picture.map();
        String strands =
                map.strands().entrySet().stream()
                        .map(
                                strand ->
                                        strand.getValue()
                                                + ": "
                                                + map.all().stream()
                                                        .filter(
                                                                s ->
                                                                        s.strand()
                                                                                .equals(
                                                                                        strand
                                                                                                .getKey()))
                                                        .count())
                        .collect(Collectors.joining(", "));
        return Words.of("skills.words", map.all().size(), strands);
    }

    private static String svg(SkillMap map) {
        Map<String, Box> boxes = new LinkedHashMap<>();
        StringBuilder heads = new StringBuilder();
        double y = 8;
        int colour = 0;
        for (Map.Entry<String, String> strand : map.strands().entrySet()) {
            SvgWriter head = new SvgWriter();
            head.add(
                    "<text class='strong' fill='#23272c' font-weight='700' font-size='16' x='8' y='{}'>{}</text>",
                    y + 16,
                    strand.getValue());
            heads.append(head);
            y = place(map, strand.getKey(), colour, y + 28, boxes) + 14;
            colour = (colour + 1) % CURVES;
        }
        SvgWriter out = new SvgWriter();
        out.add(
                "<svg xmlns='http://www.w3.org/2000/svg' class='diagram' role='img' viewBox='0 0 {} {}'"
                        + " width='{}' height='{}' font-family='Roboto, sans-serif' font-size='13'"
                        + " aria-labelledby='skills-t skills-d'><title id='skills-t'>{}</title>"
                        + "<desc id='skills-d'>{}</desc>",
                WIDTH,
                y,
                WIDTH,
                y,
                Words.of("skills.title"),
                words(new Part.SkillPicture(map)));
        boxes.values().forEach(box -> lines(out, box, boxes));
        boxes.values().forEach(box -> box(out, box));
        return out + heads.toString() + "</svg>";
    }

    /** Places a strand's skills, those that build on fewer first; returns its lower edge. */
    private static double place(
            SkillMap map, String strand, int colour, double top, Map<String, Box> boxes) {
        Map<Integer, List<SkillMap.Skill>> levels = new java.util.TreeMap<>();
        for (SkillMap.Skill skill : map.all()) {
            if (skill.strand().equals(strand)) {
                levels.computeIfAbsent(level(map, skill, 0), l -> new ArrayList<>()).add(skill);
            }
        }
        double y = top;
        for (List<SkillMap.Skill> level : levels.values()) {
            for (int i = 0; i < level.size(); i++) {
                double x = 8 + (i % IN_A_ROW) * (BOX + GAP);
                boxes.put(
                        level.get(i).id(),
                        new Box(level.get(i), x, y + i / IN_A_ROW * ROW, colour));
            }
            y += ((level.size() - 1) / IN_A_ROW + 1) * ROW;
        }
        return y;
    }

    /** How many skills of its own strand stand before it in a row; a circle ends somewhere. */
    private static int level(SkillMap map, SkillMap.Skill skill, int depth) {
        int level = 0;
        for (String need : skill.needs()) {
            var before = map.find(need).filter(s -> s.strand().equals(skill.strand()));
            if (before.isPresent() && depth < map.all().size()) {
                level = Math.max(level, 1 + level(map, before.get(), depth + 1));
            }
        }
        return level;
    }

    private static void lines(SvgWriter out, Box box, Map<String, Box> boxes) {
        for (String need : box.skill().needs()) {
            Box from = boxes.get(need);
            if (from != null) {
                double x1 = from.x() + BOX / 2;
                double y1 = from.y() + HIGH;
                double x2 = box.x() + BOX / 2;
                double y2 = box.y();
                double bend = Math.min(60, Math.abs(y2 - y1) / 2 + 10);
                out.add(
                        "<path class='skill-line c{}' fill='none' stroke='{}' stroke-width='1.6'"
                                + " stroke-opacity='0.7' stroke-dasharray='{}'"
                                + " d='M{} {}C{} {} {} {} {} {}'/>",
                        String.valueOf(from.colour() + 1),
                        COLOURS.get(from.colour()),
                        from.colour() == box.colour() ? "none" : "5 4",
                        x1,
                        y1,
                        x1,
                        y1 + bend,
                        x2,
                        y2 - bend,
                        x2,
                        y2);
            }
        }
    }

    private static void box(SvgWriter out, Box box) {
        out.add(
                "<rect class='blank' x='{}' y='{}' width='{}' height='{}' rx='5' fill='#fffdf9'"
                        + " stroke='none'/><rect class='skill-box c{}' x='{}' y='{}' width='{}'"
                        + " height='{}' rx='5' fill='{}' fill-opacity='0.16' stroke='{}'"
                        + " stroke-width='1.8'/>",
                box.x(),
                box.y(),
                BOX,
                HIGH,
                String.valueOf(box.colour() + 1),
                box.x(),
                box.y(),
                BOX,
                HIGH,
                COLOURS.get(box.colour()),
                COLOURS.get(box.colour()));
        List<String> lines = broken(box.skill().name());
        double first = box.y() + HIGH / 2 + 5 - (lines.size() - 1) * 7.5;
        for (int i = 0; i < lines.size(); i++) {
            out.add(
                    "<text class='words' fill='#23272c' text-anchor='middle' x='{}' y='{}'>{}</text>",
                    box.x() + BOX / 2,
                    first + i * 15,
                    lines.get(i));
        }
    }

    private static List<String> broken(String name) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : name.split(" ")) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > LETTERS) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
