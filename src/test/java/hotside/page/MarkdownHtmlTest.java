// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.course.Markup;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/** Text from strangers stays text, links lead only where links may lead. */
class MarkdownHtmlTest {
    private static final Maths MATHS = new Maths();
    private static final Set<String> LIVELY =
            Set.of(
                    "script", "iframe", "img", "meta", "object", "embed", "form", "input", "style",
                    "link", "base", "svg", "video", "audio");

    private static String html(String markdown) {
        return new MarkdownHtml(MATHS)
                .html(Markup.parse(markdown), name -> "<" + name + ">", part -> "<hr />")
                .strip();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    <script>alert(1)</script>                  | <p>&lt;script&gt;alert(1)&lt;/script&gt;</p>
                    <iframe src="http://x"></iframe>           | <p>&lt;iframe src=&quot;http://x&quot;&gt;&lt;/iframe&gt;</p>
                    a <img src=x onerror=alert(1)> b           | <p>a &lt;img src=x onerror=alert(1)&gt; b</p>
                    <meta http-equiv="refresh" content="0">    | <p>&lt;meta http-equiv=&quot;refresh&quot; content=&quot;0&quot;&gt;</p>
                    <!-- note -->                              | <p>&lt;!-- note --&gt;</p>
                    a <b onclick="x">b</b>                     | <p>a &lt;b onclick=&quot;x&quot;&gt;b&lt;/b&gt;</p>
                    """)
    void rawHtmlIsShownAsText(String markdown, String html) {
        assertEquals(html, html(markdown));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "![the rig](http://example.org/a.png)",
                "![the rig](file:///etc/passwd)",
                "![the *rig*](data:image/png;base64,AAAA)",
                "![the `rig`][pic]\n\n[pic]: https://example.org/a.png"
            })
    void picturesFromElsewhereAreToldInWords(String markdown) {
        assertEquals("<p><span class=\"missing\">[picture: the rig]</span></p>", html(markdown));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "javascript:alert(1)",
                "JavaScript:alert(1)",
                "java&#10;script:alert(1)",
                "javascript&colon;alert(1)",
                "&#106;avascript:alert(1)",
                "data:text/html,<b>",
                "file:///etc/passwd",
                "vbscript:x",
                "//example.org/a",
                "/etc/passwd",
                "a.html",
                "\\\\server\\share",
                "blob:x",
                "view-source:http://x",
                "jar:file:///a!/b",
            })
    void otherLinksAreEmptied(String target) {
        String html = html("[a](<" + target.replace("<", "\\<").replace(">", "\\>") + ">)");
        assertEquals("<p><a rel=\"nofollow\" href=\"\">a</a></p>", html);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://example.org/",
                "https://example.org/a?b=c#d",
                "mailto:a@example.org",
                "lesson:gate/what-opens-a-wastegate",
                "relation:valve-force",
                "#part"
            })
    void linksToTheWebByMailAndWithinTheCourseStay(String target) {
        assertEquals(
                "<p><a rel=\"nofollow\" href=\"" + target + "\">a</a></p>",
                html("[a](" + target + ")"));
    }

    @Test
    void attributesCannotBeBrokenOutOf() {
        assertEquals(
                "<p><a rel=\"nofollow\" href=\"http://x/&quot;onclick=&quot;y\" title=\"t&quot;u\">a</a></p>",
                html("[a](http://x/\"onclick=\"y 't\"u')"));
        assertEquals(
                "<pre><code class=\"language-a&quot;b\">x\n</code></pre>", html("```a\"b\nx\n```"));
    }

    @Test
    void computedValuesAreEscaped() {
        assertEquals(
                "<p>It is <span class=\"computed\">&lt;push.force&gt;</span>.</p>",
                html("It is {{ push.force }}."));
    }

    @Test
    void pricesStayPricesAndFormulasAreSet() {
        assertEquals("<p>It costs 5 $ or 6 $.</p>", html("It costs 5 $ or 6 $."));
        assertEquals("<p>From $5 to $ 6</p>", html("From $5 to $ 6"));
        assertTrue(html("$a^2$").startsWith("<p><math alttext=\"a²\""), html("$a^2$"));
        assertTrue(html("$$a$$").contains("<span class=\"eq\"><math"), html("$$a$$"));
        assertEquals("<p>$$$a$$$ and $ $</p>", html("$$$a$$$ and $ $"));
        assertEquals("<p>a $b</p>\n<p>c$ d</p>", html("a $b\n\nc$ d"));
    }

    @Test
    void aFormulaThatCannotBeSetIsShownAsItIs() {
        assertEquals("<p><code class=\"fault\">\\frac{&lt;b&gt;</code></p>", html("$\\frac{<b>$"));
    }

    @Test
    void aBraceThatClosesNothingIsText() {
        assertEquals("<p>{{a} and {b}} and {{ c { d }}</p>", html("{{a} and {b}} and {{ c { d }}"));
    }

    @Test
    void tablesCarryTheirClass() {
        assertTrue(html("|a|\n|-|\n|b|").startsWith("<table class=\"data\">"));
    }

    /** A numeric entity can name a character that no document may hold. */
    @Test
    void whatNoDocumentMayHoldIsReplaced() {
        assertEquals("<p>a\uFFFDb\uFFFDc</p>", html("a&#1;b&#xFFFF;c"));
        assertWellFormedAndQuiet(html("a&#1;b&#xFFFF;c&#xD800;\u0002"));
    }

    @Property(tries = 2_000, seed = "20261125")
    void anyMarkdownBecomesQuietWellFormedMarkup(@ForAll("nearMarkdown") String markdown) {
        assertWellFormedAndQuiet(html(markdown));
    }

    @Property(tries = 1_000, seed = "20261125")
    void anyTextBecomesQuietWellFormedMarkup(@ForAll String text) {
        assertWellFormedAndQuiet(html(text));
    }

    @Provide
    Arbitrary<String> nearMarkdown() {
        List<String> pieces =
                List.of(
                        "<script>",
                        "</script>",
                        "<iframe src=http://x>",
                        "<img onerror=x>",
                        "<!--",
                        "-->",
                        "<a href='javascript:x'>",
                        "](http://x)",
                        "](javascript:x)",
                        "![",
                        "[",
                        "]",
                        "(",
                        ")",
                        "<http://x>",
                        "<",
                        ">",
                        "\"",
                        "'",
                        "&",
                        "&lt;",
                        "&#0;",
                        "&#8;",
                        "&#xFFFE;",
                        "*",
                        "**",
                        "_",
                        "`",
                        "```",
                        "~~~",
                        "\n",
                        "\n\n",
                        "- ",
                        "1. ",
                        "> ",
                        "# ",
                        "    ",
                        "|",
                        "|-|",
                        "|a|b|\n|-|-|\n",
                        "$",
                        "$$",
                        "\\",
                        "{{",
                        "}}",
                        "{{a}}",
                        "\t",
                        "---",
                        "===",
                        "[a]: http://x \"t\"",
                        "onload=",
                        " ",
                        "a",
                        "é",
                        "\u0001",
                        "\uD83D\uDE00",
                        "\uD800",
                        "\u202E");
        return Arbitraries.of(pieces)
                .list()
                .ofMinSize(1)
                .ofMaxSize(40)
                .map(p -> String.join("", p));
    }

    private static void assertWellFormedAndQuiet(String html) {
        assertQuiet(Xml.parse("<div>" + html + "</div>"));
    }

    private static void assertQuiet(Element element) {
        String tag = element.getTagName().toLowerCase(Locale.ROOT);
        assertFalse(LIVELY.contains(tag), tag);
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Attr attribute = (Attr) attributes.item(i);
            String name = attribute.getName().toLowerCase(Locale.ROOT);
            assertFalse(name.startsWith("on") || name.equals("src") || name.equals("style"), name);
            if (name.equals("href")) {
                assertTrue(
                        attribute
                                .getValue()
                                .matches("(?is)|#.*|(https?|mailto|lesson|relation):.*"),
                        attribute.getValue());
            }
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                assertQuiet(inner);
            }
        }
    }
}
