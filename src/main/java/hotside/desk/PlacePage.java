// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.function.BooleanSupplier;
import java.util.function.Predicate;

/** The page as one place has it: while another place is open, nothing happens to it. */
final class PlacePage implements Page {
    private final PageView view;
    private final PlainView plainView;
    private final BooleanSupplier plain;
    private final Bookmarks bookmarks;
    private final Predicate<Place> open;
    private Place of;

    /**
     * @param plain whether the page is read in native controls
     * @param open whether a place is the open one
     */
    PlacePage(
            PageView view,
            PlainView plainView,
            BooleanSupplier plain,
            Bookmarks bookmarks,
            Predicate<Place> open) {
        this.view = view;
        this.plainView = plainView;
        this.plain = plain;
        this.bookmarks = bookmarks;
        this.open = open;
    }

    /** Says whose it is; a place needs its page before the page can know it. */
    void of(Place place) {
        of = place;
    }

    private void ifOpen(Runnable action) {
        if (open.test(of)) {
            action.run();
        }
    }

    /** After the page has changed, so that what is read is what it now holds. */
    private void inPlain(Runnable action) {
        if (plain.getAsBoolean()) {
            view.whenReady(action);
        }
    }

    @Override
    public void show(String html, String plainText) {
        ifOpen(
                () -> {
                    view.show(html, plainText);
                    bookmarks.shown(of.page());
                    inPlain(plainView::show);
                });
    }

    @Override
    public void replace(String id, String html) {
        ifOpen(
                () -> {
                    view.replace(id, html);
                    inPlain(() -> plainView.replaced(id));
                });
    }

    @Override
    public void put(String id, String text) {
        ifOpen(
                () -> {
                    view.put(id, text);
                    inPlain(() -> plainView.put(id, text));
                });
    }

    @Override
    public void reveal(String id) {
        ifOpen(
                () -> {
                    view.reveal(id);
                    inPlain(() -> plainView.reveal(id));
                });
    }

    @Override
    public void focus(String id) {
        ifOpen(
                () -> {
                    view.focus(id);
                    inPlain(() -> plainView.focus(id));
                });
    }

    @Override
    public void cursor(String id, double at) {
        ifOpen(() -> view.cursor(id, at));
    }
}
