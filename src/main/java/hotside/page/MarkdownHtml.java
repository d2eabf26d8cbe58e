// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.ComputedValue;
import hotside.course.Markup;
import hotside.course.Part;
import hotside.course.PartBlock;
import hotside.course.TermUse;
import hotside.course.Tex;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.html.UrlSanitizer;

/**
 * Draws a Markdown tree. Raw HTML comes out as text, links lead to the web, by mail or inside the
 * course and nowhere else, pictures from elsewhere are told in words.
 */
final class MarkdownHtml {
    private final Maths maths;

    MarkdownHtml(Maths maths) {
        this.maths = maths;
    }

    /**
     * @param node the tree
     * @param values what a computed value says, for its expression
     * @param parts the HTML of a living part
     */
    String html(Node node, Function<String, String> values, Function<Part, String> parts) {
        String html =
                HtmlRenderer.builder()
                        .extensions(Markup.EXTENSIONS)
                        .escapeHtml(true)
                        .sanitizeUrls(true)
                        .urlSanitizer(new OnlyKnownPlaces())
                        .attributeProviderFactory(
                                context ->
                                        (n, tag, attributes) -> {
                                            if (tag.equals("table")) {
                                                attributes.put("class", "data");
                                            }
                                        })
                        .nodeRendererFactory(context -> new Living(context, values, parts))
                        .build()
                        .render(node);
        return Xml.writable(html);
    }

    private final class Living implements NodeRenderer {
        private final HtmlNodeRendererContext context;
        private final Function<String, String> values;
        private final Function<Part, String> parts;

        Living(
                HtmlNodeRendererContext context,
                Function<String, String> values,
                Function<Part, String> parts) {
            this.context = context;
            this.values = values;
            this.parts = parts;
        }

        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(
                    Tex.class, ComputedValue.class, TermUse.class, PartBlock.class, Image.class);
        }

        @Override
        public void render(Node node) {
            if (node instanceof Tex tex) {
                context.getWriter().raw(formula(tex));
            } else if (node instanceof ComputedValue value) {
                context.getWriter()
                        .raw(
                                "<span class=\"computed\">"
                                        + Xml.escape(values.apply(value.expression()))
                                        + "</span>");
            } else if (node instanceof TermUse use) {
                context.getWriter()
                        .raw(
                                "<a class=\"term\""
                                        + Html.attribute("href", "term:" + use.term().slug())
                                        + ">"
                                        + Xml.escape(use.literal())
                                        + "</a>");
            } else if (node instanceof PartBlock block) {
                context.getWriter().line();
                context.getWriter().raw(parts.apply(block.part()));
                context.getWriter().line();
            } else if (node instanceof Image image) {
                context.getWriter()
                        .raw(
                                "<span class=\"missing\">"
                                        + Xml.escape(Words.of("picture.refused", alt(image)))
                                        + "</span>");
            }
        }
    }

    private String formula(Tex tex) {
        try {
            return tex.display()
                    ? "<span class=\"eq\">" + maths.block(tex.source()) + "</span>"
                    : maths.line(tex.source());
        } catch (MathsException e) {
            return "<code class=\"fault\">" + Xml.escape(tex.source()) + "</code>";
        }
    }

    /** The words that stand for a picture, whatever they are set in. */
    private static String alt(Image image) {
        StringBuilder text = new StringBuilder();
        image.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(Text words) {
                        text.append(words.getLiteral());
                    }

                    @Override
                    public void visit(Code code) {
                        text.append(code.getLiteral());
                    }
                });
        return text.toString();
    }

    /** True if a link to this is drawn without its target. */
    static boolean isRefused(String url) {
        return !OnlyKnownPlaces.isKnown(url);
    }

    private static final class OnlyKnownPlaces implements UrlSanitizer {
        private static final Set<String> SCHEMES =
                Set.of("http", "https", "mailto", "lesson", "relation", "term", "problem");

        static boolean isKnown(String url) {
            int colon = url.indexOf(':');
            boolean known =
                    colon > 0 && SCHEMES.contains(url.substring(0, colon).toLowerCase(Locale.ROOT));
            return known || url.startsWith("#");
        }

        @Override
        public String sanitizeLinkUrl(String url) {
            return isKnown(url) ? url : "";
        }

        @Override
        public String sanitizeImageUrl(String url) {
            return "";
        }
    }
}
