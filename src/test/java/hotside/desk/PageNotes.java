// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.HashMap;
import java.util.Map;

/** A page without a window: remembers what it was last told of each element. */
final class PageNotes implements Page {
    final Map<String, String> elements = new HashMap<>();
    String shown = "";
    String text = "";
    String focused = "";

    @Override
    public void show(String html, String plainText) {
        shown = html;
        text = plainText;
    }

    @Override
    public void replace(String id, String html) {
        elements.put(id, html);
    }

    @Override
    public void put(String id, String value) {
        elements.put(id, value);
    }

    @Override
    public void reveal(String id) {}

    @Override
    public void focus(String id) {
        focused = id;
    }

    @Override
    public void cursor(String id, double at) {
        elements.put(id + " cursor", String.valueOf(at));
    }

    String element(String id) {
        return elements.getOrDefault(id, "");
    }
}
