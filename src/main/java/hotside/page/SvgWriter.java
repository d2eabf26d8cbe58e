// SPDX-License-Identifier: Apache-2.0
package hotside.page;

/** Writes SVG as text. Every value is escaped here and every number must be finite. */
final class SvgWriter {
    private final StringBuilder out = new StringBuilder(16_384);

    /**
     * Adds markup.
     *
     * @param markup written by us, with <code>{}</code> where a value goes and {@code '} for quotes
     * @param values numbers, or text of whatever origin
     */
    SvgWriter add(String markup, Object... values) {
        int from = 0;
        for (Object value : values) {
            int hole = markup.indexOf("{}", from);
            out.append(markup.substring(from, hole).replace('\'', '"'));
            out.append(
                    value instanceof Double number ? number(number) : Xml.escape(value.toString()));
            from = hole + 2;
        }
        out.append(markup.substring(from).replace('\'', '"'));
        return this;
    }

    /** A coordinate to a tenth of a pixel. */
    static String number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalStateException("a coordinate is " + value);
        }
        long tenths = Math.round(value * 10);
        String whole = (tenths < 0 ? "-" : "") + Math.abs(tenths) / 10;
        return tenths % 10 == 0 ? whole : whole + "." + Math.abs(tenths) % 10;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
