// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.desk.PlainBlock.Action;
import hotside.desk.PlainBlock.Target;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.w3c.dom.Text;
import org.w3c.dom.html.HTMLInputElement;
import org.w3c.dom.html.HTMLSelectElement;
import org.w3c.dom.html.HTMLTextAreaElement;

/**
 * Reads the elements of a page in their order, as text and controls. Knows nothing of lessons or
 * problems: whatever a page offers to mouse and keyboard is offered here too.
 */
final class PlainReading {
    private static final Set<String> BLOCKS =
            Set.of(
                    "address",
                    "article",
                    "aside",
                    "blockquote",
                    "caption",
                    "div",
                    "dl",
                    "fieldset",
                    "figcaption",
                    "figure",
                    "footer",
                    "form",
                    "header",
                    "legend",
                    "li",
                    "main",
                    "nav",
                    "ol",
                    "p",
                    "pre",
                    "section",
                    "table",
                    "tbody",
                    "thead",
                    "ul");
    private static final Set<String> CONTROLS = Set.of("input", "select", "textarea", "button");

    private final Map<String, String> labels;
    private final List<PlainBlock> blocks = new ArrayList<>();
    private final List<PlainBlock> links = new ArrayList<>();
    private final StringBuilder line = new StringBuilder();

    private PlainReading(Map<String, String> labels) {
        this.labels = labels;
    }

    /** What stands inside an element. */
    static List<PlainBlock> inside(Element element) {
        Map<String, String> labels = new HashMap<>();
        NodeList all = element.getElementsByTagName("label");
        for (int i = 0; i < all.getLength(); i++) {
            Element label = (Element) all.item(i);
            if (label.hasAttribute("for")) {
                labels.put(attribute(label, "for"), text(label));
            }
        }
        return inside(element, labels);
    }

    /** The words inside an element, on one line. */
    static String text(Element element) {
        PlainReading reading = new PlainReading(Map.of());
        reading.children(element);
        return reading.taken();
    }

    private static List<PlainBlock> inside(Element element, Map<String, String> labels) {
        PlainReading reading = new PlainReading(labels);
        reading.children(element);
        reading.flush();
        return reading.blocks;
    }

    private void children(Element element) {
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Text text) {
                line.append(text.getData());
            } else if (node instanceof Element child) {
                element(child);
            }
        }
    }

    private void element(Element element) {
        String tag = tag(element);
        if (unseen(element, tag)) {
            return;
        }
        if (CONTROLS.contains(tag) || element.hasAttribute("data-do")) {
            flush();
            control(element, tag);
        } else if (element.hasAttribute("data-chart")) {
            flush();
            blocks.add(chart(element));
        } else if (tag.matches("h[1-6]")) {
            flush();
            add(new PlainBlock.Prose(text(element), tag.charAt(1) - '0'));
        } else if (BLOCKS.contains(tag)) {
            flush();
            block(element, tag);
            flush();
        } else {
            inline(element, tag);
        }
    }

    private static boolean unseen(Element element, String tag) {
        return tag.equals("script")
                || tag.equals("style")
                || element.hasAttribute("hidden")
                || attribute(element, "aria-hidden").equals("true")
                || isUnitOfField(element);
    }

    /** It is said with the name of the field. */
    private static boolean isUnitOfField(Element element) {
        return attribute(element, "class").equals("unit")
                && element.getPreviousSibling() instanceof Element before
                && CONTROLS.contains(tag(before));
    }

    private void inline(Element element, String tag) {
        switch (tag) {
            case "math" -> line.append(' ').append(attribute(element, "alttext")).append(' ');
            case "svg" -> {
                flush();
                add(new PlainBlock.Prose(picture(element), 0));
            }
            case "a" -> {
                String words = text(element);
                line.append(words);
                links.add(new PlainBlock.Link(words, attribute(element, "href")));
            }
            case "label" -> {
                if (!element.hasAttribute("for")) {
                    labelled(element);
                }
            }
            case "details" -> {
                flush();
                blocks.add(fold(element));
            }
            case "dt" -> {
                flush();
                children(element);
                line.append(": ");
            }
            case "dd" -> {
                children(element);
                flush();
            }
            case "tr" -> {
                flush();
                row(element);
                flush();
            }
            case "td", "th" -> {
                children(element);
                line.append("; ");
            }
            case "br" -> line.append(' ');
            default -> children(element);
        }
    }

    /** A label around its control: the control alone, which knows the words. */
    private void labelled(Element label) {
        NodeList inputs = label.getElementsByTagName("*");
        boolean found = false;
        for (int i = 0; i < inputs.getLength(); i++) {
            Element inner = (Element) inputs.item(i);
            if (CONTROLS.contains(tag(inner))) {
                found = true;
                element(inner);
            }
        }
        if (!found) {
            children(label);
        }
    }

    private void block(Element element, String tag) {
        if (!attribute(element, "id").isEmpty()) {
            blocks.add(new PlainBlock.Region(attribute(element, "id"), inside(element, labels)));
            return;
        }
        if (tag.equals("li")) {
            line.append(bullet(element));
        }
        children(element);
    }

    private static String bullet(Element item) {
        if (!(item.getParentNode() instanceof Element list) || !tag(list).equals("ol")) {
            return "• ";
        }
        int number = 1;
        for (Node before = item.getPreviousSibling();
                before != null;
                before = before.getPreviousSibling()) {
            number += before instanceof Element ? 1 : 0;
        }
        return number + ". ";
    }

    /** A row without controls, each cell after the heading of its column. */
    private void row(Element row) {
        List<String> headings = headings(row);
        int column = 0;
        for (Node node = row.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (!(node instanceof Element cell)) {
                continue;
            }
            String heading = column < headings.size() ? headings.get(column) : "";
            column++;
            if (!heading.isEmpty() && tag(cell).equals("td")) {
                line.append(heading).append(": ");
            }
            element(cell);
        }
    }

    private static List<String> headings(Element row) {
        Node table = row.getParentNode();
        while (table instanceof Element above && !tag(above).equals("table")) {
            table = table.getParentNode();
        }
        List<String> list = new ArrayList<>();
        if (table instanceof Element element
                && element.getElementsByTagName("thead").item(0) instanceof Element head) {
            NodeList cells = head.getElementsByTagName("th");
            for (int i = 0; i < cells.getLength(); i++) {
                list.add(text((Element) cells.item(i)));
            }
        }
        return list;
    }

    private void control(Element element, String tag) {
        String id = attribute(element, "id");
        switch (tag) {
            case "select" ->
                    blocks.add(
                            new PlainBlock.Choice(
                                    id,
                                    target(element),
                                    label(element),
                                    options(element),
                                    chosen(element)));
            case "textarea" -> blocks.add(field(element, true));
            case "input" -> {
                String type = attribute(element, "type");
                if (type.equals("checkbox") || type.equals("radio")) {
                    blocks.add(tick(element, type.equals("radio")));
                } else if (type.equals("range")) {
                    blocks.add(slide(element));
                } else {
                    blocks.add(field(element, false));
                }
            }
            default -> blocks.add(press(element));
        }
    }

    private PlainBlock field(Element element, boolean lines) {
        return new PlainBlock.Field(
                attribute(element, "id"),
                target(element),
                label(element) + unitAfter(element),
                value(element),
                attribute(element, "placeholder"),
                new Action(attribute(element, "data-enter"), part(element), ""),
                lines);
    }

    private PlainBlock slide(Element element) {
        return new PlainBlock.Slide(
                attribute(element, "id"),
                target(element),
                label(element),
                Double.parseDouble(attribute(element, "min")),
                Double.parseDouble(attribute(element, "max")),
                Double.parseDouble(value(element)));
    }

    /** The unit that stands behind a field belongs to its name. */
    private static String unitAfter(Element element) {
        Node next = element.getNextSibling();
        boolean unit = next instanceof Element e && attribute(e, "class").equals("unit");
        String words = unit ? text((Element) next) : "";
        return words.isEmpty() ? "" : ", " + words;
    }

    private PlainBlock tick(Element element, boolean radio) {
        boolean ticked =
                element instanceof HTMLInputElement input
                        ? input.getChecked()
                        : element.hasAttribute("checked");
        return new PlainBlock.Tick(
                attribute(element, "id"),
                target(element),
                label(element),
                radio ? attribute(element, "value") : "",
                radio ? attribute(element, "name") : "",
                ticked,
                new Action(attribute(element, "data-enter"), part(element), ""));
    }

    private static PlainBlock press(Element element) {
        String spoken = attribute(element, "aria-label");
        return new PlainBlock.Press(
                attribute(element, "id"),
                spoken.isEmpty() ? text(element) : spoken,
                new Action(
                        attribute(element, "data-do"),
                        part(element),
                        attribute(element, "data-arg")),
                !element.hasAttribute("disabled"));
    }

    private static PlainBlock chart(Element element) {
        return new PlainBlock.Chart(
                attribute(element, "id"),
                attribute(element, "aria-label"),
                new Action(attribute(element, "data-enter"), part(element), ""),
                attribute(element, "data-chart").equals("level"));
    }

    private PlainBlock fold(Element element) {
        String summary = "";
        if (element.getElementsByTagName("summary").item(0) instanceof Element head) {
            summary = text(head);
        }
        PlainReading reading = new PlainReading(labels);
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child && !tag(child).equals("summary")) {
                reading.element(child);
            }
        }
        reading.flush();
        return new PlainBlock.Fold(summary, reading.blocks);
    }

    private static List<PlainBlock.Option> options(Element select) {
        List<PlainBlock.Option> list = new ArrayList<>();
        NodeList options = select.getElementsByTagName("option");
        for (int i = 0; i < options.getLength(); i++) {
            Element option = (Element) options.item(i);
            list.add(new PlainBlock.Option(attribute(option, "value"), text(option)));
        }
        return list;
    }

    private static String chosen(Element select) {
        if (select instanceof HTMLSelectElement live) {
            return live.getValue();
        }
        NodeList options = select.getElementsByTagName("option");
        for (int i = 0; i < options.getLength(); i++) {
            Element option = (Element) options.item(i);
            if (option.hasAttribute("selected")) {
                return attribute(option, "value");
            }
        }
        return "";
    }

    private static String value(Element element) {
        if (element instanceof HTMLInputElement input) {
            return input.getValue();
        }
        if (element instanceof HTMLTextAreaElement area) {
            return area.getValue();
        }
        return attribute(element, "value");
    }

    /** The words of a control's label; they may stand around it. */
    private String label(Element element) {
        String spoken = attribute(element, "aria-label");
        String named = labels.getOrDefault(attribute(element, "id"), spoken);
        for (Node node = element.getParentNode();
                named.isEmpty() && node instanceof Element above;
                node = node.getParentNode()) {
            if (tag(above).equals("label")) {
                named = wordsAround(above);
            }
        }
        return named;
    }

    private static String wordsAround(Element label) {
        StringBuilder words = new StringBuilder();
        for (Node node = label.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Text text) {
                words.append(text.getData());
            } else if (node instanceof Element child && !CONTROLS.contains(tag(child))) {
                words.append(' ').append(text(child)).append(' ');
            }
        }
        return tidy(words);
    }

    /** What a picture says of itself. */
    private static String picture(Element svg) {
        String spoken = attribute(svg, "aria-label");
        if (!spoken.isEmpty()) {
            return spoken;
        }
        StringBuilder words = new StringBuilder();
        for (String name : List.of("title", "desc")) {
            if (svg.getElementsByTagName(name).item(0) instanceof Element said) {
                words.append(said.getTextContent()).append(". ");
            }
        }
        return tidy(words);
    }

    private static Target target(Element element) {
        return new Target(
                part(element), attribute(element, "data-slot"), attribute(element, "data-kind"));
    }

    /** The page's engine has null where the DOM has the empty text. */
    static String attribute(Element element, String name) {
        String value = element.getAttribute(name);
        return value == null ? "" : value;
    }

    private static String part(Element element) {
        return attribute(element, "data-part");
    }

    private static String tag(Element element) {
        return element.getTagName().toLowerCase(Locale.ROOT);
    }

    private void add(PlainBlock.Prose prose) {
        if (!prose.text().isEmpty()) {
            blocks.add(prose);
        }
    }

    private void flush() {
        add(new PlainBlock.Prose(taken(), 0));
        blocks.addAll(links);
        links.clear();
    }

    private String taken() {
        String text = tidy(line).replaceFirst(";$", "");
        line.setLength(0);
        return text.equals("•") || text.matches("\\d+\\.") ? "" : text;
    }

    private static String tidy(CharSequence text) {
        return text.toString()
                .replaceAll("\\s+", " ")
                .replaceAll(" ([,.;:)])", "$1")
                .replace(":: ", ": ")
                .strip();
    }
}
