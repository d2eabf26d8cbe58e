// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.page.HelpPage;
import java.util.List;
import java.util.function.Supplier;

/** Keys, versions, licences, and where the program keeps what it keeps. */
final class HelpPlace implements Place {
    static final String ID = "help";

    private final Page page;
    private final Supplier<List<HelpPage.Key>> keys;
    private final HelpPage.About about;

    HelpPlace(Page page, Supplier<List<HelpPage.Key>> keys, HelpPage.About about) {
        this.page = page;
        this.keys = keys;
        this.about = about;
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public void open() {
        String html = HelpPage.html(keys.get(), about);
        page.show(html, PlainText.of(html));
    }
}
