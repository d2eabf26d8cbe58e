// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Course;
import hotside.course.LookUp;
import hotside.course.Term;

/** The small note that says what a term means. */
public final class TermNote {
    private final MarkdownHtml markdown;

    public TermNote(Maths maths) {
        markdown = new MarkdownHtml(maths);
    }

    /** The note, with a way to the lesson and one to put it away. */
    public String html(Course course, Term term) {
        return "<aside class=\"note\" role=\"note\">"
                + Html.element("p", "class=\"label\"", term.name())
                + markdown.html(LookUp.meaning(term), name -> name, part -> "")
                + "<p>"
                + LookUp.lessonOf(course, term)
                        .map(
                                lesson ->
                                        "<a"
                                                + Html.attribute("href", "lesson:" + lesson.id())
                                                + ">"
                                                + Xml.escape(lesson.title())
                                                + "</a> · ")
                        .orElse("")
                + "<a href=\"lesson:look-up/glossary\">"
                + Xml.escape(Words.of("term.glossary"))
                + "</a> · <a href=\"term:\">"
                + Xml.escape(Words.of("term.close"))
                + "</a></p></aside>";
    }
}
