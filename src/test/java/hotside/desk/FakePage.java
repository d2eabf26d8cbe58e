// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.HashMap;
import java.util.Map;

/** A page that remembers what it was told. */
final class FakePage implements Page {
    String html = "";
    String text = "";
    String focus = "";
    final Map<String, String> replaced = new HashMap<>();

    @Override
    public void show(String shown, String plainText) {
        html = shown;
        text = plainText;
        replaced.clear();
    }

    @Override
    public void replace(String id, String inside) {
        replaced.put(id, inside);
    }

    @Override
    public void put(String id, String value) {}

    @Override
    public void focus(String id) {
        focus = id;
    }

    @Override
    public void cursor(String id, double at) {}
}
