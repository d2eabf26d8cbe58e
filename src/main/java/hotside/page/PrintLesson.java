// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Computed;
import hotside.course.Lesson;
import hotside.problem.ProblemBank;
import hotside.unit.UnitSystem;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * A lesson as XHTML for paper and for books: nothing to click, blank lines to write on, answers at
 * the end, ids that stay unique when many lessons stand in one document.
 */
public final class PrintLesson {
    /** What a screen has and paper has not. */
    private static final Set<String> SCREEN_ONLY = Set.of("reading", "neighbours");

    private static final Set<String> LIVE = Set.of("tabindex", "role", "aria-live", "data-chart");

    private final Maths maths;
    private final ProblemBank bank;
    private final UnitSystem system;

    public PrintLesson(Maths maths, ProblemBank bank, UnitSystem system) {
        this.maths = maths;
        this.bank = bank;
        this.system = system;
    }

    /** How a document wants its lessons. */
    public enum Form {
        /**
         * Data tables of charts are left out; formulas and drawings carry their words for a PDF.
         */
        PAPER,
        /** All of it. */
        BOOK
    }

    /**
     * A lesson.
     *
     * @param prefix of all ids in it
     * @param link where a link of a page leads in the document; empty for nowhere
     * @return a {@code div} with well-formed content
     */
    public String html(
            Lesson lesson, String prefix, Form form, Function<String, Optional<String>> link) {
        PrintCards cards =
                new PrintCards(lesson, bank, system, new Computed(lesson, system).ambient(), maths);
        StringBuilder page =
                new StringBuilder(
                        new LessonPage(maths)
                                .html(lesson, system, cards, Optional.empty(), Optional.empty()));
        if (!cards.answers().isEmpty()) {
            page.append("<section class=\"answers\">")
                    .append(Html.element("h2", "", Words.of("print.answers")));
            cards.answers().forEach(page::append);
            page.append("</section>");
        }
        Element root = Xml.parse("<div class=\"lesson\">" + page + "</div>");
        tidy(root, prefix, form, link);
        return text(root);
    }

    private static void tidy(
            Element element, String prefix, Form form, Function<String, Optional<String>> link) {
        for (Element child : children(element)) {
            if (isLeftOut(child, form)) {
                element.removeChild(child);
            } else {
                tidy(child, prefix, form, link);
            }
        }
        identify(element, prefix);
        if (element.getTagName().equals("a")) {
            Optional<String> target = link.apply(element.getAttribute("href"));
            target.ifPresentOrElse(
                    to -> element.setAttribute("href", to), () -> element.removeAttribute("href"));
        }
        if (form == Form.PAPER) {
            tell(element);
        }
    }

    private static boolean isLeftOut(Element element, Form form) {
        return SCREEN_ONLY.contains(element.getAttribute("class"))
                || element.getAttribute("id").equals("term-note")
                || element.getAttribute("class").equals("cursor")
                || form == Form.PAPER && element.getTagName().equals("details");
    }

    private static void identify(Element element, String prefix) {
        boolean isSvg = element.getTagName().equals("svg");
        NamedNodeMap attributes = element.getAttributes();
        for (int i = attributes.getLength() - 1; i >= 0; i--) {
            Node attribute = attributes.item(i);
            String name = attribute.getNodeName();
            if (name.equals("id")) {
                attribute.setNodeValue(prefix + attribute.getNodeValue());
            } else if (name.equals("aria-labelledby")) {
                attribute.setNodeValue(
                        prefix + attribute.getNodeValue().replace(" ", " " + prefix));
            } else if (name.startsWith("data-") || !isSvg && LIVE.contains(name)) {
                element.removeAttribute(name);
            } else if (name.equals("aria-label") && element.getTagName().equals("div")) {
                element.removeAttribute(name);
            }
        }
    }

    /** A reader of the PDF hears what formulas and drawings show, under this name. */
    private static void tell(Element element) {
        if (element.getTagName().equals("math") && element.hasAttribute("alttext")) {
            element.setAttribute("alt", element.getAttribute("alttext"));
            pad(element);
        } else if (element.getTagName().equals("svg")) {
            NodeList words = element.getElementsByTagName("desc");
            NodeList title = element.getElementsByTagName("title");
            Node told = words.getLength() > 0 ? words.item(0) : title.item(0);
            element.setAttribute("alt", told == null ? "" : told.getTextContent());
        }
    }

    /** The drawer of formulas cuts to whole points; a strut keeps feet of letters in. */
    private static void pad(Element math) {
        Element strut = math.getOwnerDocument().createElement("mspace");
        strut.setAttribute("width", "0em");
        strut.setAttribute("height", "0.9em");
        strut.setAttribute("depth", "0.35em");
        math.appendChild(strut);
    }

    private static List<Element> children(Element element) {
        List<Element> children = new ArrayList<>();
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child) {
                children.add(child);
            }
        }
        return children;
    }

    private static String text(Element root) {
        try {
            Transformer writer = TransformerFactory.newInstance().newTransformer();
            writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            writer.setOutputProperty(OutputKeys.METHOD, "xml");
            StringWriter out = new StringWriter();
            writer.transform(new DOMSource(root), new StreamResult(out));
            return out.toString();
        } catch (TransformerException e) {
            throw new IllegalStateException("every Java writes XML", e);
        }
    }
}
