// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Course;
import hotside.course.Lesson;
import hotside.course.LookUp;
import hotside.course.Term;
import hotside.problem.ProblemBank;
import hotside.speech.Language;
import hotside.unit.UnitSystem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The course on paper and as a book: one lesson or all of them, as HTML or PDF; all of them as
 * EPUB.
 */
public final class Book {
    private static final String LESSON = "lesson:";
    private static final String TERM = "term:";

    private final Course course;
    private final UnitSystem system;
    private final PrintLesson lessons;
    private final MarkdownHtml markdown;

    public Book(Course course, ProblemBank bank, Maths maths, UnitSystem system) {
        this.course = course;
        this.system = system;
        this.lessons = new PrintLesson(maths, bank, system);
        this.markdown = new MarkdownHtml(maths);
    }

    /** One lesson as a document of its own. */
    public String html(Lesson lesson) {
        return document(
                lesson.title(),
                "",
                lessons.html(lesson, "", PrintLesson.Form.PAPER, Book::outside));
    }

    /** The whole course as one document: contents, lessons, glossary. */
    public String html() {
        StringBuilder bookmarks = new StringBuilder("<bookmarks>");
        StringBuilder body = new StringBuilder("<section class=\"cover\">");
        body.append(Html.element("p", "class=\"book-title\"", Words.of("print.title")))
                .append(Html.element("p", "", Words.of("print.sub-title", units())))
                .append("</section><nav class=\"contents\">")
                .append(Html.element("h1", "", Words.of("print.contents")))
                .append("<ul>");
        String strand = "";
        for (Lesson lesson : course.lessons()) {
            if (!strand.equals(lesson.strand())) {
                strand = lesson.strand();
                body.append(Html.element("li", "class=\"strand\"", strand));
            }
            entry(body, bookmarks, "#" + anchor(lesson.id()), lesson.title());
        }
        entry(body, bookmarks, "#glossary", Words.of("term.glossary"));
        body.append("</ul></nav>");
        for (int i = 0; i < course.lessons().size(); i++) {
            Lesson lesson = course.lessons().get(i);
            body.append("<section class=\"chapter\"")
                    .append(Html.attribute("id", anchor(lesson.id())))
                    .append('>')
                    .append(
                            lessons.html(
                                    lesson,
                                    "l" + (i + 1) + "-",
                                    PrintLesson.Form.PAPER,
                                    href -> within(href, id -> "#" + anchor(id), "")))
                    .append("</section>");
        }
        body.append("<section class=\"chapter\" id=\"glossary\">")
                .append(Html.element("h1", "", Words.of("term.glossary")))
                .append(glossary(""))
                .append("</section>");
        return document(
                Words.of("print.title"),
                bookmarks.append("</bookmarks>").toString(),
                body.toString());
    }

    private static void entry(
            StringBuilder body, StringBuilder bookmarks, String href, String title) {
        body.append("<li><a").append(Html.attribute("href", href)).append('>');
        body.append(Xml.escape(title)).append("</a></li>");
        bookmarks
                .append("<bookmark")
                .append(Html.attribute("name", title))
                .append(Html.attribute("href", href))
                .append("/>");
    }

    /** One lesson as PDF. */
    public byte[] pdf(Lesson lesson) {
        return pdf(html(lesson));
    }

    /** The whole course as PDF. */
    public byte[] pdf() {
        return pdf(html());
    }

    private static byte[] pdf(String html) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            Pdf.write(html, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** The whole course as EPUB 3. */
    public byte[] epub() {
        Epub epub = new Epub(Words.of("print.title"), styles("book.css"));
        List<Lesson> all = course.lessons();
        for (Lesson lesson : all) {
            epub.chapter(
                    file(lesson.id()),
                    lesson.strand(),
                    lesson.title(),
                    lessons.html(
                            lesson,
                            "",
                            PrintLesson.Form.BOOK,
                            href -> within(href, Book::file, "glossary.xhtml")));
        }
        epub.chapter(
                "glossary.xhtml",
                Words.of("print.back"),
                Words.of("term.glossary"),
                Html.element("h1", "", Words.of("term.glossary")) + glossary("glossary.xhtml"));
        return epub.bytes();
    }

    private String glossary(String file) {
        StringBuilder out = new StringBuilder("<dl class=\"glossary\">");
        for (Term term : course.glossary().terms()) {
            out.append("<dt")
                    .append(Html.attribute("id", "term-" + term.slug()))
                    .append('>')
                    .append(Xml.escape(String.join(", ", term.spellings())))
                    .append("</dt><dd>")
                    .append(plainLinks(markdown.html(LookUp.meaning(term), n -> n, p -> "")));
            LookUp.lessonOf(course, term)
                    .ifPresent(
                            lesson ->
                                    out.append("<p><a")
                                            .append(
                                                    Html.attribute(
                                                            "href",
                                                            file.isEmpty()
                                                                    ? "#" + anchor(lesson.id())
                                                                    : file(lesson.id())))
                                            .append('>')
                                            .append(Xml.escape(lesson.title()))
                                            .append("</a></p>"));
            out.append("</dd>");
        }
        return course.glossary().terms().isEmpty()
                ? Html.element("p", "", Words.of("print.no-terms"))
                : out.append("</dl>").toString();
    }

    /** A meaning's own links lead nowhere in a book. */
    private static String plainLinks(String html) {
        return html.replaceAll("</?a\\b[^>]*>", "");
    }

    private static Optional<String> outside(String href) {
        return href.startsWith("http:") || href.startsWith("https:") || href.startsWith("mailto:")
                ? Optional.of(href)
                : Optional.empty();
    }

    private Optional<String> within(
            String href, Function<String, String> lesson, String glossaryFile) {
        if (href.startsWith(LESSON)) {
            String id = href.substring(LESSON.length());
            return course.find(id).map(found -> lesson.apply(found.id()));
        }
        if (href.startsWith(TERM)) {
            String slug = href.substring(TERM.length());
            return course.glossary().find(slug).map(t -> glossaryFile + "#term-" + t.slug());
        }
        return outside(href);
    }

    private static String anchor(String id) {
        return "lesson-" + id.replace('/', '-');
    }

    private static String file(String id) {
        return id.replace('/', '-') + ".xhtml";
    }

    private String units() {
        return Words.of(system == UnitSystem.SI_SHOP ? "desk.units.si" : "desk.units.us");
    }

    private static String document(String title, String head, String body) {
        return "<html lang=\""
                + Language.spoken().code()
                + "\" xmlns=\"http://www.w3.org/1999/xhtml\"><head><meta charset=\"utf-8\"/>"
                + Html.element("title", "", title)
                + "<meta name=\"description\""
                + Html.attribute("content", title)
                + "/><style>"
                + styles("book.css")
                + styles("print.css")
                + "</style>"
                + head
                + "</head><body>"
                + body
                + "</body></html>";
    }

    private static String styles(String name) {
        try (InputStream in = Book.class.getResourceAsStream("/hotside/page/" + name)) {
            if (in == null) {
                throw new IllegalStateException("missing from the program: " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
