// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * The one HTML document that the page lives in: a content policy that lets nothing load from
 * anywhere, the typeface as data, the stylesheet, and an empty main element.
 */
public final class Shell {
    private static final String POLICY =
            "default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline'; form-action 'none';"
                    + " base-uri 'none'";

    private static final String ROBOTO = "/com/formdev/flatlaf/fonts/roboto/";
    private static final String DEJAVU = "/net/sf/jasperreports/fonts/dejavu/";

    private Shell() {}

    /**
     * @param theme {@code light} or {@code dark}
     * @param percent text size, 100 for the usual
     */
    public static String html(String theme, int percent) {
        return "<!DOCTYPE html><html lang=\"en\" data-theme=\""
                + Xml.escape(theme)
                + "\" style=\"font-size:"
                + percent
                + "%\"><head><meta http-equiv=\"Content-Security-Policy\" content=\""
                + POLICY
                + "\"><meta charset=\"utf-8\"><title>Hotside</title><style>"
                + typeface()
                + styles()
                + "</style></head><body><main id=\"page\" tabindex=\"-1\"></main></body></html>";
    }

    /** The stylesheet of pages. */
    public static String styles() {
        return new String(resource("/hotside/page/page.css"), StandardCharsets.UTF_8);
    }

    /** Roboto for words, DejaVu for formulas and for signs that Roboto lacks. */
    private static String typeface() {
        return face("Roboto", ROBOTO + "Roboto-Regular.ttf", 400, "normal")
                + face("Roboto", ROBOTO + "Roboto-Bold.ttf", 700, "normal")
                + face("Roboto", ROBOTO + "Roboto-Italic.ttf", 400, "italic")
                + face("DejaVu Serif", DEJAVU + "DejaVuSerif.ttf", 400, "normal")
                + face("DejaVu Sans", DEJAVU + "DejaVuSans.ttf", 400, "normal");
    }

    private static String face(String family, String file, int weight, String style) {
        return "@font-face{font-family:'"
                + family
                + "';font-weight:"
                + weight
                + ";font-style:"
                + style
                + ";src:url(data:font/ttf;base64,"
                + Base64.getEncoder().encodeToString(resource(file))
                + ") format('truetype')}";
    }

    private static byte[] resource(String path) {
        try (InputStream in = Shell.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("missing from the program: " + path);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
