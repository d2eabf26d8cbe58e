// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.mathmlsupport.MathMLDrawer;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Makes PDF of XHTML: tagged, with alternatives for formulas and charts, fonts inside, and nothing
 * loaded from anywhere.
 */
public final class Pdf {
    private static final String FONTS = "font";
    private static final String ROBOTO = "/com/formdev/flatlaf/fonts/roboto/";
    private static final String DEJAVU = "/net/sf/jasperreports/fonts/dejavu/";

    /** The drawers of formulas and charts find their fonts by these rules alone. */
    private static final String DRAWN_FONTS =
            "<style>"
                    + face("DejaVu Serif", DEJAVU + "DejaVuSerif.ttf")
                    + face("Roboto", ROBOTO + "Roboto-Regular.ttf")
                    + "</style></head>";

    static {
        XRLog.setLoggingEnabled(false);
        // AWT draws the formulas; it must not look for a screen.
        if (System.getProperty("java.awt.headless") == null) {
            System.setProperty("java.awt.headless", "true");
        }
    }

    private Pdf() {}

    private static String face(String family, String file) {
        return "@font-face{font-family:'" + family + "';src:url(" + FONTS + ":" + file + ")}";
    }

    /**
     * Writes a document.
     *
     * @param xhtml well-formed, in its namespaces
     * @param out is not closed
     */
    public static void write(String xhtml, OutputStream out) throws IOException {
        Document document = parsed(xhtml.replace("</head>", DRAWN_FONTS));
        PdfRendererBuilder builder =
                new PdfRendererBuilder()
                        .useFastMode()
                        .usePdfUaAccessibility(true)
                        .useMathMLDrawer(new MathMLDrawer())
                        .useSVGDrawer(new BatikSVGDrawer())
                        .useProtocolsStreamImplementation(Font::new, FONTS)
                        .useExternalResourceAccessControl(
                                (uri, type) -> uri.startsWith(FONTS + ":"),
                                ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI)
                        .withProducer("Hotside")
                        .withW3cDocument(document, null);
        font(builder, "Roboto", ROBOTO + "Roboto-Regular.ttf", 400, FontStyle.NORMAL);
        font(builder, "Roboto", ROBOTO + "Roboto-Bold.ttf", 700, FontStyle.NORMAL);
        font(builder, "Roboto", ROBOTO + "Roboto-Italic.ttf", 400, FontStyle.ITALIC);
        font(builder, "DejaVu Sans", DEJAVU + "DejaVuSans.ttf", 400, FontStyle.NORMAL);
        font(builder, "DejaVu Serif", DEJAVU + "DejaVuSerif.ttf", 400, FontStyle.NORMAL);
        builder.toStream(out).run();
    }

    private static void font(
            PdfRendererBuilder builder, String family, String file, int weight, FontStyle style) {
        builder.useFont(() -> Pdf.class.getResourceAsStream(file), family, weight, style, true);
    }

    private static Document parsed(String xhtml) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            // The drawer of SVG draws nothing that is not in its namespace, and says nothing.
            factory.setNamespaceAware(true);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xhtml)));
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException("a page of ours is not well-formed", e);
        }
    }

    /** A font that comes with the program. */
    private record Font(String uri) implements FSStream {
        @Override
        public InputStream getStream() {
            return Pdf.class.getResourceAsStream(uri.substring(FONTS.length() + 1));
        }

        @Override
        public Reader getReader() {
            return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
        }
    }
}
