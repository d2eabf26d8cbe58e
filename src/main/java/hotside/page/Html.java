// SPDX-License-Identifier: Apache-2.0
package hotside.page;

/** Writing HTML without letting a text become markup. */
final class Html {
    private Html() {}

    /** The text as it may stand in an element or between double quotes. */
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
                default -> out.append(c < ' ' && c != '\n' && c != '\t' ? '\uFFFD' : c);
            }
        }
        return out.toString();
    }

    /** An element with escaped text. */
    static String element(String tag, String attributes, String text) {
        return "<"
                + tag
                + (attributes.isEmpty() ? "" : " " + attributes)
                + ">"
                + escape(text)
                + "</"
                + tag
                + ">";
    }

    /** One escaped attribute, with a leading space. */
    static String attribute(String name, String value) {
        return " " + name + "=\"" + escape(value) + "\"";
    }
}
