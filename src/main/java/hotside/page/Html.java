// SPDX-License-Identifier: Apache-2.0
package hotside.page;

/** Writing elements and attributes without letting a text become markup. */
public final class Html {
    private Html() {}

    /** The text as it may stand between tags and between double quotes. */
    public static String escape(String text) {
        return Xml.escape(text);
    }

    /** An element with escaped text. */
    public static String element(String tag, String attributes, String text) {
        return "<"
                + tag
                + (attributes.isEmpty() ? "" : " " + attributes)
                + ">"
                + Xml.escape(text)
                + "</"
                + tag
                + ">";
    }

    /** One escaped attribute, with a leading space. */
    public static String attribute(String name, String value) {
        return " " + name + "=\"" + Xml.escape(value) + "\"";
    }
}
