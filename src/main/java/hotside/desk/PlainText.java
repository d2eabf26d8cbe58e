// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

/** A page of fields and tables read as plain text. */
final class PlainText {
    private PlainText() {}

    static String of(String html) {
        return html.replaceAll("<svg.*?</svg>", "")
                .replaceAll("<math[^>]*alttext=\"([^\"]*)\".*?</math>", "$1")
                .replaceAll("</t[dh]>", "  ")
                .replaceAll("</(p|h\\d|tr|li|div|section|button|label)>", "\n")
                .replaceAll("<[^>]*>", "")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&")
                .replaceAll("\n{3,}", "\n\n")
                .strip();
    }
}
