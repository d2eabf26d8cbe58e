// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.speech.Language;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Packs chapters as EPUB 3: a zip whose first entry says what it is and is stored as it is, a
 * package document, a navigation document, chapters as XHTML with MathML and SVG. The same chapters
 * give the same bytes.
 */
final class Epub {
    private static final String FOLDER = "EPUB/";

    private static final String MODIFIED = "2026-11-25T00:00:00Z";

    private final String title;
    private final String styles;
    private final List<Chapter> chapters = new ArrayList<>();

    private record Chapter(String file, String part, String title, String body) {
        String properties() {
            StringBuilder out = new StringBuilder();
            if (body.contains("<math")) {
                out.append("mathml ");
            }
            if (body.contains("<svg")) {
                out.append("svg");
            }
            return out.toString().strip();
        }
    }

    Epub(String title, String styles) {
        this.title = title;
        this.styles = styles;
    }

    /**
     * Adds a chapter.
     *
     * @param file its name in the book
     * @param part what it belongs to in the contents
     * @param body well-formed XHTML
     */
    void chapter(String file, String part, String name, String body) {
        chapters.add(new Chapter(file, part, name, body));
    }

    /** The book. */
    byte[] bytes() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            stored(zip, "mimetype", "application/epub+zip");
            entry(zip, "META-INF/container.xml", container());
            entry(zip, FOLDER + "package.opf", contents());
            entry(zip, FOLDER + "nav.xhtml", navigation());
            entry(zip, FOLDER + "book.css", styles);
            for (Chapter chapter : chapters) {
                entry(zip, FOLDER + chapter.file(), page(chapter.title(), chapter.body()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static void stored(ZipOutputStream zip, String name, String text) throws IOException {
        byte[] content = text.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(content);
        ZipEntry entry = new ZipEntry(name);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(content.length);
        entry.setCrc(sum.getValue());
        entry.setTimeLocal(java.time.LocalDateTime.of(2026, 11, 25, 12, 0));
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(java.time.LocalDateTime.of(2026, 11, 25, 12, 0));
        zip.putNextEntry(entry);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static String container() {
        return """
                <?xml version="1.0" encoding="UTF-8"?>
                <container version="1.0" xmlns="urn:oasis:names:tc:opendocument:xmlns:container">
                  <rootfiles>
                    <rootfile full-path="EPUB/package.opf" media-type="application/oebps-package+xml"/>
                  </rootfiles>
                </container>
                """;
    }

    private String contents() {
        StringBuilder all = new StringBuilder();
        chapters.forEach(c -> all.append(c.file()).append(c.body()));
        UUID id = UUID.nameUUIDFromBytes(all.toString().getBytes(StandardCharsets.UTF_8));
        StringBuilder out =
                new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
                        .append(
                                "<package version=\"3.0\" unique-identifier=\"id\" xml:lang=\""
                                        + Language.spoken().code()
                                        + "\""
                                        + " xmlns=\"http://www.idpf.org/2007/opf\">\n"
                                        + "<metadata xmlns:dc=\"http://purl.org/dc/elements/1.1/\">\n")
                        .append("<dc:identifier id=\"id\">urn:uuid:")
                        .append(id)
                        .append("</dc:identifier>\n<dc:title>")
                        .append(Xml.escape(title))
                        .append(
                                "</dc:title>\n<dc:language>"
                                        + Language.spoken().code()
                                        + "</dc:language>\n")
                        .append("<meta property=\"dcterms:modified\">")
                        .append(MODIFIED)
                        .append("</meta>\n");
        for (String[] meta :
                new String[][] {
                    {"schema:accessMode", "textual"},
                    {"schema:accessMode", "visual"},
                    {"schema:accessModeSufficient", "textual"},
                    {"schema:accessibilityFeature", "MathML"},
                    {"schema:accessibilityFeature", "alternativeText"},
                    {"schema:accessibilityFeature", "tableOfContents"},
                    {"schema:accessibilityHazard", "none"}
                }) {
            out.append("<meta property=\"").append(meta[0]).append("\">");
            out.append(meta[1]).append("</meta>\n");
        }
        out.append("</metadata>\n<manifest>\n")
                .append(
                        "<item id=\"nav\" href=\"nav.xhtml\" media-type=\"application/xhtml+xml\""
                                + " properties=\"nav\"/>\n"
                                + "<item id=\"css\" href=\"book.css\" media-type=\"text/css\"/>\n");
        for (int i = 0; i < chapters.size(); i++) {
            Chapter chapter = chapters.get(i);
            out.append("<item id=\"c")
                    .append(i + 1)
                    .append("\" href=\"")
                    .append(Xml.escape(chapter.file()))
                    .append("\" media-type=\"application/xhtml+xml\"");
            if (!chapter.properties().isEmpty()) {
                out.append(" properties=\"").append(chapter.properties()).append('"');
            }
            out.append("/>\n");
        }
        out.append("</manifest>\n<spine>\n<itemref idref=\"nav\"/>\n");
        for (int i = 0; i < chapters.size(); i++) {
            out.append("<itemref idref=\"c").append(i + 1).append("\"/>\n");
        }
        return out.append("</spine>\n</package>\n").toString();
    }

    private String navigation() {
        Map<String, List<Chapter>> parts = new LinkedHashMap<>();
        chapters.forEach(c -> parts.computeIfAbsent(c.part(), p -> new ArrayList<>()).add(c));
        StringBuilder out =
                new StringBuilder("<nav epub:type=\"toc\" id=\"toc\" role=\"doc-toc\">")
                        .append(Html.element("h1", "", title))
                        .append("<ol>");
        parts.forEach(
                (part, those) -> {
                    out.append("<li>").append(Html.element("span", "", part)).append("<ol>");
                    for (Chapter chapter : those) {
                        out.append("<li><a")
                                .append(Html.attribute("href", chapter.file()))
                                .append('>')
                                .append(Xml.escape(chapter.title()))
                                .append("</a></li>");
                    }
                    out.append("</ol></li>");
                });
        return page(Words.of("print.contents"), out.append("</ol></nav>").toString());
    }

    private static String page(String title, String body) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!DOCTYPE html>\n"
                + "<html xmlns=\"http://www.w3.org/1999/xhtml\""
                + " xmlns:epub=\"http://www.idpf.org/2007/ops\" lang=\""
                + Language.spoken().code()
                + "\" xml:lang=\""
                + Language.spoken().code()
                + "\"><head>"
                + Html.element("title", "", title)
                + "<link rel=\"stylesheet\" type=\"text/css\" href=\"book.css\"/></head><body>"
                + body
                + "</body></html>\n";
    }
}
