// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.WholeFile;
import hotside.course.Course;
import hotside.course.Lesson;
import hotside.page.diagram.Sketch;
import hotside.problem.ProblemBank;
import hotside.unit.UnitSystem;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * The shipped course on paper and as EPUB. The package is held against EPUB 3.3 (W3C
 * Recommendation, 25 May 2023), sections as named, from memory; no checker of the standard's is at
 * hand.
 */
class BookTest {
    private static final Course COURSE = Course.shipped();
    private static final ProblemBank BANK = ProblemBank.shipped();
    private static final Maths MATHS = new Maths();
    private static final Map<String, byte[]> FILES = new LinkedHashMap<>();
    private static final Map<String, Integer> METHODS = new LinkedHashMap<>();
    private static byte[] epub;

    private static Book book(UnitSystem system) {
        return new Book(COURSE, BANK, MATHS, system);
    }

    @BeforeAll
    static void bindTheBook() throws IOException {
        epub = book(UnitSystem.SI_SHOP).epub();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(epub))) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                FILES.put(e.getName(), zip.readAllBytes());
                METHODS.put(e.getName(), e.getMethod());
            }
        }
    }

    private static String text(String name) {
        return new String(FILES.get(name), StandardCharsets.UTF_8);
    }

    private static Element xml(String name) {
        return Xml.parse(text(name).replace("<!DOCTYPE html>", ""));
    }

    private static List<Element> all(Element root, String tag) {
        NodeList nodes = root.getElementsByTagName(tag);
        List<Element> list = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            list.add((Element) nodes.item(i));
        }
        return list;
    }

    /** Section 4.2.6.2 and 4.3: the first entry, stored, without extra field, 20 bytes. */
    @Test
    void theFirstEntrySaysWhatItIs() {
        assertEquals("mimetype", FILES.keySet().iterator().next());
        assertEquals(ZipEntry.STORED, METHODS.get("mimetype"));
        assertEquals("application/epub+zip", text("mimetype"));
        assertEquals(
                "mimetypeapplication/epub+zip",
                new String(epub, 30, 28, StandardCharsets.US_ASCII),
                "name and content stand at the fixed place");
    }

    /** Sections 5.1 to 5.9: package document, its metadata, manifest and spine. */
    @Test
    void thePackageListsEveryFileOnce() {
        Element container = xml("META-INF/container.xml");
        assertEquals(
                "EPUB/package.opf", all(container, "rootfile").get(0).getAttribute("full-path"));
        Element opf = xml("EPUB/package.opf");
        assertEquals("3.0", opf.getAttribute("version"));
        for (String needed : List.of("dc:identifier", "dc:title", "dc:language")) {
            assertEquals(1, all(opf, needed).size(), needed);
        }
        assertEquals(
                all(opf, "dc:identifier").get(0).getAttribute("id"),
                opf.getAttribute("unique-identifier"));
        assertTrue(
                all(opf, "meta").stream()
                        .anyMatch(m -> m.getAttribute("property").equals("dcterms:modified")));
        Set<String> listed = new HashSet<>();
        Set<String> ids = new HashSet<>();
        for (Element item : all(opf, "item")) {
            assertTrue(listed.add("EPUB/" + item.getAttribute("href")), item.getAttribute("href"));
            assertTrue(ids.add(item.getAttribute("id")));
        }
        Set<String> there = new HashSet<>(FILES.keySet());
        there.removeAll(Set.of("mimetype", "META-INF/container.xml", "EPUB/package.opf"));
        assertEquals(there, listed);
        List<Element> spine = all(opf, "itemref");
        assertEquals(COURSE.lessons().size() + 2, spine.size(), "contents, lessons, glossary");
        spine.forEach(ref -> assertTrue(ids.contains(ref.getAttribute("idref"))));
    }

    /** Section 5.6.2.1: a chapter with formulas or drawings says so, and no other does. */
    @Test
    void chaptersWithFormulasAndDrawingsAreMarked() {
        for (Element item : all(xml("EPUB/package.opf"), "item")) {
            if (item.getAttribute("href").endsWith(".xhtml")) {
                Element page = xml("EPUB/" + item.getAttribute("href"));
                List<String> says = List.of(item.getAttribute("properties").split(" "));
                assertEquals(!all(page, "math").isEmpty(), says.contains("mathml"), says + "");
                assertEquals(!all(page, "svg").isEmpty(), says.contains("svg"));
            }
        }
    }

    /** Section 7: the navigation document leads to every chapter. */
    @Test
    void theContentsLeadToEveryChapter() {
        Element nav = all(xml("EPUB/nav.xhtml"), "nav").get(0);
        assertEquals("toc", nav.getAttribute("epub:type"));
        List<String> targets = all(nav, "a").stream().map(a -> a.getAttribute("href")).toList();
        assertEquals(COURSE.lessons().size() + 1, targets.size());
        targets.forEach(target -> assertTrue(FILES.containsKey("EPUB/" + target), target));
    }

    @Test
    void everyChapterIsWellFormedAndItsIdsAndLinksHold() {
        for (String name : FILES.keySet()) {
            if (!name.endsWith(".xhtml")) {
                continue;
            }
            Element page = xml(name);
            Set<String> ids = new HashSet<>();
            for (Element element : all(page, "*")) {
                if (element.hasAttribute("id")) {
                    assertTrue(ids.add(element.getAttribute("id")), name + ": " + element);
                }
                for (String live : List.of("onclick", "data-do", "data-part", "style")) {
                    assertFalse(element.hasAttribute(live), name + ": " + live);
                }
                assertFalse(
                        Set.of("script", "input", "button", "select")
                                .contains(element.getTagName()),
                        name);
            }
            for (Element link : all(page, "a")) {
                String href = link.getAttribute("href");
                String file = href.replaceFirst("#.*", "");
                boolean outside = href.startsWith("http") || href.startsWith("mailto:");
                assertTrue(
                        outside || href.isEmpty() || FILES.containsKey("EPUB/" + file),
                        name + " leads to " + href);
                if (href.contains("glossary.xhtml#")) {
                    assertTrue(
                            text("EPUB/glossary.xhtml")
                                    .contains("id=\"" + href.replaceFirst(".*#", "") + "\""),
                            href);
                }
            }
            for (Element math : all(page, "math")) {
                assertEquals(
                        "http://www.w3.org/1998/Math/MathML", math.getAttribute("xmlns"), name);
            }
            for (Element svg : all(page, "svg")) {
                assertEquals("http://www.w3.org/2000/svg", svg.getAttribute("xmlns"), name);
            }
        }
    }

    @Test
    void theSameCourseGivesTheSameBytes() {
        assertArrayEquals(epub, book(UnitSystem.SI_SHOP).epub());
    }

    @Test
    void idsAreUniqueInTheWholeCourseAndItsLinksHold() {
        Element page = Xml.parse(book(UnitSystem.US_SHOP).html());
        Set<String> ids = new HashSet<>();
        for (Element element : all(page, "*")) {
            if (element.hasAttribute("id")) {
                assertTrue(ids.add(element.getAttribute("id")), element.getAttribute("id"));
            }
        }
        for (Element link : all(page, "a")) {
            String href = link.getAttribute("href");
            assertTrue(
                    !href.startsWith("#") || ids.contains(href.substring(1)), "nowhere: " + href);
        }
    }

    @Test
    void aLessonOnPaperHasBlankLinesAndItsAnswersAtTheEnd() {
        Lesson lesson =
                COURSE.lessons().stream()
                        .filter(l -> !l.problems().isEmpty())
                        .findFirst()
                        .orElseThrow();
        String html = book(UnitSystem.SI_SHOP).html(lesson);
        int line = html.indexOf("class=\"line\"");
        int answers = html.indexOf("class=\"answers\"");
        assertTrue(line > 0 && answers > line);
        String title = BANK.find(lesson.problems().get(0)).orElseThrow().title();
        assertTrue(html.indexOf(Xml.escape(title)) < answers, title);
        assertTrue(html.lastIndexOf(Xml.escape(title)) > answers, title);
        assertFalse(html.contains("<details"));
    }

    @Test
    void aLessonAsPdfSaysItsTitleAndIsTagged() throws IOException {
        Lesson lesson = COURSE.lessons().get(0);
        byte[] pdf = book(UnitSystem.SI_SHOP).pdf(lesson);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertTrue(document.getNumberOfPages() >= 2);
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertTrue(text.contains(lesson.title()), text.substring(0, 200));
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
            assertEquals("en", document.getDocumentCatalog().getLanguage().substring(0, 2));
        }
    }

    /** A drawing outside its namespace would be left out in silence. */
    @Test
    void drawingsAreDrawnInThePdf() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Pdf.write(
                "<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>t</title>"
                        + "<meta name=\"description\" content=\"d\"/></head><body><p>a</p>"
                        + new Sketch(100)
                                .rect("hot-dot", 0, 0, Sketch.WIDTH, 100)
                                .svg("s", "t", "w")
                        + "</body></html>",
                out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 36);
            int coloured = 0;
            for (int x = 0; x < page.getWidth(); x++) {
                for (int y = 0; y < page.getHeight(); y++) {
                    coloured += (page.getRGB(x, y) & 0xffffff) == 0xa3420f ? 1 : 0;
                }
            }
            assertTrue(coloured > 1_000, coloured + " dots of the drawing's colour");
        }
    }

    @Test
    void aFileIsReplacedWholeAndNothingIsLeftAside(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("a.pdf");
        Files.writeString(file, "old");
        WholeFile.write(file, new byte[] {1, 2, 3});
        assertArrayEquals(new byte[] {1, 2, 3}, Files.readAllBytes(file));
        try (var files = Files.list(folder)) {
            assertEquals(List.of(file), files.toList());
        }
    }
}
