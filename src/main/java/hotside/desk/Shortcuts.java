// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.page.HelpPage;
import hotside.page.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** The keys of the desk: what is pressed, what it does, what the page of keys says of it. */
final class Shortcuts {
    /** What keys can do. */
    interface Desk {
        void open(Place place);

        void help();

        void search();

        void neighbour(int by);

        void larger();

        void smaller();

        void otherTheme();

        void otherUnits();

        void otherReading();

        void otherZone(int by);

        void finish();
    }

    /**
     * One line of the table.
     *
     * @param words what it does, in the language spoken
     * @param keys any of them will do; the first is shown
     */
    record Shortcut(Supplier<String> words, List<KeyCombination> keys, Runnable action) {
        String says() {
            return words.get();
        }

        String shown() {
            return keys.get(0)
                    .getDisplayText()
                    .replace("Ctrl", Words.of("keys.ctrl"))
                    .replace("Shift", Words.of("keys.shift"));
        }

        boolean answers(KeyEvent event) {
            return keys.stream().anyMatch(key -> key.match(event));
        }
    }

    private final List<Shortcut> table = new ArrayList<>();

    /**
     * @param places in the order of the bar; the first nine get a number
     */
    Shortcuts(Desk desk, List<Place> places) {
        add("keys.help", desk::help, plain(KeyCode.F1));
        add("keys.zone", () -> desk.otherZone(1), plain(KeyCode.F6));
        add(
                "keys.zone-back",
                () -> desk.otherZone(-1),
                new KeyCodeCombination(KeyCode.F6, KeyCombination.SHIFT_DOWN));
        KeyCode[] digits = {
            KeyCode.DIGIT1,
            KeyCode.DIGIT2,
            KeyCode.DIGIT3,
            KeyCode.DIGIT4,
            KeyCode.DIGIT5,
            KeyCode.DIGIT6,
            KeyCode.DIGIT7,
            KeyCode.DIGIT8,
            KeyCode.DIGIT9
        };
        for (int i = 0; i < Math.min(digits.length, places.size()); i++) {
            Place place = places.get(i);
            table.add(
                    new Shortcut(
                            () -> Words.of("keys.place", Words.of("desk.place." + place.id())),
                            List.of(command(digits[i])),
                            () -> desk.open(place)));
        }
        add("keys.search", desk::search, command(KeyCode.F));
        add("keys.before", () -> desk.neighbour(-1), alt(KeyCode.LEFT));
        add("keys.after", () -> desk.neighbour(1), alt(KeyCode.RIGHT));
        add(
                "keys.larger",
                desk::larger,
                command(KeyCode.PLUS),
                command(KeyCode.EQUALS),
                command(KeyCode.ADD),
                new KeyCodeCombination(
                        KeyCode.EQUALS, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN));
        add("keys.smaller", desk::smaller, command(KeyCode.MINUS), command(KeyCode.SUBTRACT));
        add("keys.theme", desk::otherTheme, command(KeyCode.D));
        add("keys.units", desk::otherUnits, command(KeyCode.U));
        add("keys.plain", desk::otherReading, command(KeyCode.T));
        add("keys.finish", desk::finish, command(KeyCode.ENTER));
    }

    private void add(String key, Runnable action, KeyCombination... keys) {
        table.add(new Shortcut(() -> Words.of(key), List.of(keys), action));
    }

    List<Shortcut> table() {
        return List.copyOf(table);
    }

    /** As the page of keys shows them. */
    List<HelpPage.Key> rows() {
        return table.stream().map(s -> new HelpPage.Key(s.shown(), s.says())).toList();
    }

    /** Hears them before anything in the window does, the page included. */
    void hear(Scene scene) {
        scene.addEventFilter(
                KeyEvent.KEY_PRESSED,
                event ->
                        table.stream()
                                .filter(shortcut -> shortcut.answers(event))
                                .findFirst()
                                .ifPresent(
                                        shortcut -> {
                                            event.consume();
                                            shortcut.action().run();
                                        }));
    }

    private static KeyCombination plain(KeyCode code) {
        return new KeyCodeCombination(code);
    }

    private static KeyCombination command(KeyCode code) {
        return new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN);
    }

    private static KeyCombination alt(KeyCode code) {
        return new KeyCodeCombination(code, KeyCombination.ALT_DOWN);
    }
}
