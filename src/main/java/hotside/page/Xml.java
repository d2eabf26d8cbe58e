// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Markup written and read safely. */
final class Xml {
    /** Making one takes longer than reading a formula with it. */
    private static final ThreadLocal<DocumentBuilder> BUILDER =
            ThreadLocal.withInitial(Xml::builder);

    private Xml() {}

    /** Text as it may stand between tags and inside quoted attributes. */
    static String escape(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.append(writable(text, i) ? c : '\uFFFD');
            }
        }
        return out.toString();
    }

    /** True if XML 1.0 can hold the character at this place. */
    static boolean writable(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1));
        }
        if (Character.isLowSurrogate(c)) {
            return i > 0 && Character.isHighSurrogate(text.charAt(i - 1));
        }
        return c >= ' ' ? c < '\uFFFE' : c == '\t' || c == '\n' || c == '\r';
    }

    /** Markup with what XML 1.0 cannot hold made visible: a numeric entity can name anything. */
    static String writable(String markup) {
        StringBuilder out = null;
        for (int i = 0; i < markup.length(); i++) {
            if (!writable(markup, i)) {
                out = out == null ? new StringBuilder(markup) : out;
                out.setCharAt(i, '\uFFFD');
            }
        }
        return out == null ? markup : out.toString();
    }

    /** The root of well-formed markup; no document type, nothing fetched. */
    static Element parse(String markup) {
        try {
            return BUILDER.get()
                    .parse(new InputSource(new StringReader(markup)))
                    .getDocumentElement();
        } catch (SAXException | IOException e) {
            throw new IllegalStateException("markup is not well formed: " + e.getMessage(), e);
        }
    }

    private static DocumentBuilder builder() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setXIncludeAware(false);
            factory.setExpandEntityReferences(false);
            return factory.newDocumentBuilder();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("every Java reads XML safely", e);
        }
    }
}
