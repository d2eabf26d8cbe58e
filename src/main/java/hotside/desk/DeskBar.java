// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.page.Words;
import hotside.speech.Language;
import hotside.unit.UnitSystem;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The bar at the top: the places at its left, how the desk looks and speaks at its right. */
final class DeskBar {
    private final BorderPane root;
    private final Doors doors;
    private final Map<Place, ToggleButton> places = new LinkedHashMap<>();
    private final ToggleButton si = new ToggleButton();
    private final ToggleButton us = new ToggleButton();
    private final Map<Language, ToggleButton> languages = new EnumMap<>(Language.class);
    private final Label size = new Label();
    private final FlowPane left = new FlowPane();
    private final HBox right = new HBox();
    private final ToggleButton dark = new ToggleButton();
    private final ToggleButton plain = new ToggleButton();

    /** Where its buttons lead. */
    interface Doors {
        void open(Place place);

        /** Changes how the desk looks and speaks. */
        void change(UnaryOperator<Settings> change);

        /** Shows the page in native controls, or as a page again. */
        void plain(boolean on);
    }

    /**
     * @param root the window, whose top it takes
     */
    DeskBar(BorderPane root, Doors doors) {
        this.root = root;
        this.doors = doors;
    }

    /** A place gets a button, behind those that are there. */
    void add(Place place) {
        ToggleButton button = new ToggleButton();
        button.setId("place-" + place.id());
        button.getStyleClass().add("place");
        button.setOnAction(
                e -> {
                    button.setSelected(true);
                    doors.open(place);
                });
        places.put(place, button);
    }

    /** All places, in their order. */
    List<Place> places() {
        return List.copyOf(places.keySet());
    }

    /** Shows which place is open. */
    void select(Place place) {
        places.get(place).setSelected(true);
    }

    /** True if the page is to be read in native controls. */
    boolean isPlain() {
        return plain.isSelected();
    }

    void setPlain(boolean on) {
        plain.setSelected(on);
    }

    /** Shows what is chosen; large text takes two rows. */
    void show(Settings settings) {
        (settings.system() == UnitSystem.SI_SHOP ? si : us).setSelected(true);
        languages.get(settings.language()).setSelected(true);
        dark.setSelected(settings.dark());
        size.setText(settings.percent() + " %");
        lay(settings.percent() > Settings.SMALLEST);
    }

    /** Draws it in the language that is spoken now. */
    void draw(Place current) {
        Label name = new Label(Words.of("desk.title"));
        name.getStyleClass().add("name");
        name.setGraphic(TemperMark.whole());
        places.forEach((place, button) -> button.setText(Words.of("desk.place." + place.id())));
        ToggleGroup group = new ToggleGroup();
        places.values().forEach(button -> button.setToggleGroup(group));
        select(current);
        units();
        looks();
        left.getChildren().setAll(name);
        left.getChildren().addAll(places.values());
        left.getStyleClass().add("left");
        right.getChildren()
                .setAll(
                        row(List.of(si, us)),
                        size("A−", "smaller", Settings::smaller),
                        size,
                        size("A+", "larger", Settings::larger),
                        dark,
                        plain,
                        row(languageButtons()));
        right.getStyleClass().add("right");
        // Nothing is cut short: the places take more rows, then the rest a row of its own.
        right.setMinWidth(Region.USE_PREF_SIZE);
        right.getChildren().forEach(node -> ((Region) node).setMinWidth(Region.USE_PREF_SIZE));
        HBox.setHgrow(left, Priority.ALWAYS);
    }

    private void units() {
        ToggleGroup units = new ToggleGroup();
        unit(si, "si", UnitSystem.SI_SHOP, units);
        unit(us, "us", UnitSystem.US_SHOP, units);
    }

    private void unit(ToggleButton button, String name, UnitSystem system, ToggleGroup group) {
        button.setId("units-" + name);
        button.setText(Words.of("desk.units." + name));
        button.setAccessibleText(Words.of("desk.units") + " " + button.getText());
        button.setToggleGroup(group);
        button.setOnAction(e -> doors.change(settings -> settings.in(system)));
    }

    private void looks() {
        dark.setId("theme-dark");
        dark.setText(Words.of("desk.theme.dark"));
        dark.setOnAction(e -> doors.change(settings -> settings.dark(dark.isSelected())));
        plain.setId("plain-text");
        plain.setText(Words.of("desk.plain"));
        plain.setOnAction(e -> doors.plain(plain.isSelected()));
    }

    private Button size(String sign, String name, UnaryOperator<Settings> change) {
        Button button = new Button(sign);
        button.setId("text-" + name);
        button.setAccessibleText(Words.of("desk.text." + name));
        button.setOnAction(e -> doors.change(change));
        return button;
    }

    private Collection<ToggleButton> languageButtons() {
        ToggleGroup group = new ToggleGroup();
        for (Language language : Language.values()) {
            ToggleButton button =
                    languages.computeIfAbsent(
                            language, l -> new ToggleButton(l.code().toUpperCase(Locale.ROOT)));
            button.setId("language-" + language.code());
            button.setAccessibleText(language.ownName());
            button.setTooltip(new Tooltip(language.ownName()));
            button.setToggleGroup(group);
            button.setOnAction(e -> doors.change(settings -> settings.speaking(language)));
        }
        return languages.values();
    }

    private static HBox row(Collection<ToggleButton> buttons) {
        HBox row = new HBox();
        row.getChildren().addAll(buttons);
        row.getStyleClass().add("pair");
        return row;
    }

    private void lay(boolean large) {
        if (root.getTop() instanceof VBox == large && root.getTop() != null) {
            return;
        }
        Scene scene = root.getScene();
        Node focused = scene.getFocusOwner();
        Pane bar = large ? new VBox() : new HBox();
        bar.getChildren().addAll(left, right);
        bar.getStyleClass().add("bar");
        root.setTop(bar);
        if (focused != null && focused.getScene() == scene) {
            focused.requestFocus();
        }
    }
}
