// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.desk.PlainBlock.Action;
import hotside.desk.PlainBlock.Target;
import hotside.page.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListCell;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DataFormat;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.w3c.dom.Element;

/**
 * The page in native controls, for those who have the screen read to them: a screen reader cannot
 * see into WebView. It shows what stands in the page and hands on what is done to the same
 * listener, so that there is one desk, not two.
 *
 * <p>Tab goes from control to control. The arrow keys up and down go through everything, text
 * included. After a button was pressed, the keyboard goes to the first text that changes.
 */
final class PlainView {
    /** Presses of an arrow key from one end of a slider to the other. */
    private static final int SLIDER_STEPS = 100;

    private static final String PREFIX = "plain-";

    private final VBox body = new VBox();
    private final ScrollPane pane = new ScrollPane(body);
    private final Function<String, Optional<Element>> page;
    private final PageView.Listener listener;
    private final BiConsumer<String, String> mirror;
    private final Map<String, Node> byId = new HashMap<>();
    private final Map<String, ToggleGroup> groups = new HashMap<>();
    private boolean putting;
    private boolean acted;

    /**
     * @param page the elements of the page, by their id
     * @param listener told what a person does
     * @param mirror told what a field of the page should hold now
     */
    PlainView(
            Function<String, Optional<Element>> page,
            PageView.Listener listener,
            BiConsumer<String, String> mirror) {
        this.page = page;
        this.listener = listener;
        this.mirror = mirror;
        body.getStyleClass().add("plain");
        pane.getStyleClass().add("plain-pane");
        pane.setFitToWidth(true);
        pane.setFocusTraversable(false);
        body.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    }

    Node node() {
        return pane;
    }

    /** Shows the page afresh and goes to its top, or stays at the control that was just used. */
    void show() {
        boolean inside = hasFocus();
        String at = inside ? focusedId() : "";
        byId.clear();
        groups.clear();
        body.getChildren().setAll(built("page"));
        pane.setVvalue(0);
        acted = false;
        if (inside && byId.get(at) != null) {
            byId.get(at).requestFocus();
        } else if (inside) {
            focus();
        }
    }

    /** Gives the keyboard to the first line. */
    void focus() {
        // Before its first look, the pane has not taken the lines into the window.
        pane.applyCss();
        stops(body).stream().findFirst().ifPresent(Node::requestFocus);
    }

    /** One element of the page got another inside. */
    void replaced(String id) {
        Node node = byId.get(id);
        if (node instanceof Labeled labeled) {
            page.apply(id).map(PlainReading::text).ifPresent(labeled::setText);
        } else if (node instanceof VBox region) {
            renew(id, region);
        } else {
            above(id).ifPresent(known -> renew(known, (VBox) byId.get(known)));
        }
    }

    private void renew(String id, VBox region) {
        boolean inside = isIn(focused(), region);
        String at = inside ? focusedId() : "";
        int before = stops(body).indexOf(focused());
        byId.values().removeIf(node -> node != region && isIn(node, region));
        region.getChildren().setAll(built(id));
        List<Node> stops = stops(region);
        if (inside && byId.containsKey(at)) {
            byId.get(at).requestFocus();
        } else if (inside && stops.isEmpty()) {
            // What comes in its place is read out; until then the keyboard is near by.
            stops(body).stream()
                    .skip(Math.max(0, before - 1))
                    .findFirst()
                    .ifPresent(Node::requestFocus);
            acted = true;
        } else if (!stops.isEmpty() && (inside || acted && !isClock(id))) {
            acted = false;
            stops.get(0).requestFocus();
        }
        if (focused() instanceof Label chart && chart.getStyleClass().contains("plain-chart")) {
            page.apply(id).map(PlainReading::text).ifPresent(chart::setAccessibleText);
        }
    }

    /** What counts down would take the keyboard again and again. */
    private boolean isClock(String id) {
        return page.apply(id)
                .filter(element -> PlainReading.attribute(element, "role").equals("timer"))
                .isPresent();
    }

    /** A field of the page got another content. */
    void put(String id, String text) {
        if (byId.get(id) instanceof TextInputControl field && !field.getText().equals(text)) {
            putting = true;
            field.setText(text);
            putting = false;
        } else if (byId.get(id) instanceof Slider slider) {
            putting = true;
            slider.setValue(Double.parseDouble(text));
            putting = false;
        }
    }

    /** Gives a control the keyboard. */
    void focus(String id) {
        Node node = byId.get(id);
        if (node != null) {
            acted = false;
            (node instanceof Parent box && stops(box).size() > 0 ? stops(box).get(0) : node)
                    .requestFocus();
        }
    }

    /** Brings something into sight. */
    void reveal(String id) {
        if (byId.get(id) != null) {
            reveal(byId.get(id));
        }
    }

    private List<Node> built(String id) {
        return page.apply(id).map(element -> nodes(PlainReading.inside(element))).orElse(List.of());
    }

    private List<Node> nodes(List<PlainBlock> blocks) {
        List<Node> list = new ArrayList<>();
        FlowPane links = null;
        for (PlainBlock block : blocks) {
            if (block instanceof PlainBlock.Link link) {
                if (links == null) {
                    links = new FlowPane();
                    links.getStyleClass().add("plain-links");
                    list.add(links);
                }
                links.getChildren().add(link(link));
            } else {
                links = null;
                list.addAll(nodes(block));
            }
        }
        return list;
    }

    private Hyperlink link(PlainBlock.Link link) {
        boolean term = link.href().startsWith("term:");
        Hyperlink made = new Hyperlink(term ? Words.of("plain.term", link.text()) : link.text());
        made.setOnAction(
                e -> {
                    acted = true;
                    listener.follow(link.href());
                });
        return stop(made);
    }

    private List<Node> nodes(PlainBlock block) {
        if (block instanceof PlainBlock.Prose prose) {
            return List.of(prose(prose));
        }
        if (block instanceof PlainBlock.Region region) {
            VBox box = box(region.inside());
            return List.of(known(region.id(), box));
        }
        if (block instanceof PlainBlock.Field field) {
            return field(field);
        }
        if (block instanceof PlainBlock.Slide slide) {
            return List.of(slider(slide));
        }
        if (block instanceof PlainBlock.Choice choice) {
            return choice(choice);
        }
        if (block instanceof PlainBlock.Tick tick) {
            return List.of(tick(tick));
        }
        if (block instanceof PlainBlock.Press press) {
            return List.of(button(press));
        }
        if (block instanceof PlainBlock.Chart chart) {
            return List.of(chart(chart));
        }
        PlainBlock.Fold fold = (PlainBlock.Fold) block;
        TitledPane folded = new TitledPane(fold.summary(), box(fold.inside()));
        folded.setExpanded(false);
        folded.setAnimated(false);
        return List.of(stop(folded));
    }

    private VBox box(List<PlainBlock> blocks) {
        VBox box = new VBox();
        box.getStyleClass().add("plain-box");
        box.getChildren().setAll(nodes(blocks));
        return box;
    }

    private Label prose(PlainBlock.Prose prose) {
        Label label = new Label(prose.text());
        label.setWrapText(true);
        label.getStyleClass().add("plain-text");
        if (prose.heading() > 0) {
            label.getStyleClass().add("plain-heading-" + Math.min(3, prose.heading()));
            label.setAccessibleRoleDescription(Words.of("plain.heading", prose.heading()));
        }
        label.setOnMouseClicked(e -> label.requestFocus());
        return stop(label);
    }

    private List<Node> field(PlainBlock.Field field) {
        TextInputControl input = field.lines() ? new TextArea() : new TextField();
        input.setText(field.value());
        input.setPromptText(field.prompt());
        input.textProperty().addListener((o, was, is) -> edited(field.id(), field.target(), is));
        if (input instanceof TextField one) {
            one.setOnAction(e -> act(field.enter()));
        }
        return List.of(naming(field.label(), field.prompt(), input), known(field.id(), input));
    }

    private Slider slider(PlainBlock.Slide slide) {
        Slider made = new Slider(slide.low(), slide.high(), slide.at());
        made.setBlockIncrement((slide.high() - slide.low()) / SLIDER_STEPS);
        made.setAccessibleText(slide.label());
        made.valueProperty()
                .addListener(
                        (o, was, is) ->
                                edited(
                                        slide.id(),
                                        slide.target(),
                                        String.valueOf(Math.round(is.doubleValue()))));
        return known(slide.id(), made);
    }

    private List<Node> choice(PlainBlock.Choice choice) {
        ComboBox<PlainBlock.Option> box = new ComboBox<>();
        box.setButtonCell(new WrappedCell());
        box.getItems().setAll(choice.options());
        choice.options().stream()
                .filter(option -> option.value().equals(choice.chosen()))
                .findFirst()
                .ifPresent(box::setValue);
        box.valueProperty()
                .addListener(
                        (o, was, is) -> {
                            if (is != null) {
                                edited(choice.id(), choice.target(), is.value());
                            }
                        });
        return List.of(naming(choice.label(), "", box), known(choice.id(), box));
    }

    private Node tick(PlainBlock.Tick tick) {
        Labeled made;
        if (tick.group().isEmpty()) {
            CheckBox box = new CheckBox(tick.label());
            box.setSelected(tick.ticked());
            box.selectedProperty()
                    .addListener((o, was, is) -> edited(tick.id(), tick.target(), is.toString()));
            made = box;
        } else {
            RadioButton button = new RadioButton(tick.label());
            button.setToggleGroup(groups.computeIfAbsent(tick.group(), name -> new ToggleGroup()));
            button.setSelected(tick.ticked());
            button.selectedProperty()
                    .addListener(
                            (o, was, is) -> {
                                if (is) {
                                    edited(tick.id(), tick.target(), tick.value());
                                }
                            });
            made = button;
        }
        made.setWrapText(true);
        made.setOnKeyPressed(
                e -> {
                    if (e.getCode() == KeyCode.ENTER) {
                        act(tick.enter());
                    }
                });
        return known(tick.id(), made);
    }

    private Button button(PlainBlock.Press press) {
        Button button = new Button(press.label());
        button.setWrapText(true);
        button.setDisable(!press.enabled());
        button.setOnAction(e -> act(press.action()));
        button.setOnKeyPressed(
                e -> {
                    if (e.getCode() == KeyCode.ENTER) {
                        button.fire();
                        e.consume();
                    }
                });
        return known(press.id(), button);
    }

    private Label chart(PlainBlock.Chart chart) {
        Label label = new Label(chart.label());
        label.setWrapText(true);
        label.getStyleClass().addAll("plain-text", "plain-chart");
        label.setFocusTraversable(true);
        label.setOnMouseClicked(e -> label.requestFocus());
        label.setOnKeyPressed(
                e -> {
                    KeyCode less = chart.level() ? KeyCode.DOWN : KeyCode.LEFT;
                    KeyCode more = chart.level() ? KeyCode.UP : KeyCode.RIGHT;
                    int steps = e.isShiftDown() ? 10 : 1;
                    if (e.getCode() == less || e.getCode() == more) {
                        listener.nudge(chart.enter().part(), e.getCode() == less ? -steps : steps);
                        e.consume();
                    } else if (e.getCode() == KeyCode.ENTER) {
                        act(chart.enter());
                        e.consume();
                    }
                });
        if (chart.level()) {
            label.getProperties().put(PlainView.class, "level");
        }
        return known(chart.id(), label);
    }

    private static Label naming(String text, String help, Control control) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.getStyleClass().add("plain-name");
        label.setLabelFor(control);
        control.setAccessibleText(text);
        if (!help.isEmpty()) {
            control.setAccessibleHelp(help);
        }
        return label;
    }

    private <T extends Node> T known(String id, T node) {
        if (!id.isEmpty()) {
            node.setId(PREFIX + id);
            byId.put(id, node);
        }
        return node instanceof VBox ? node : stop(node);
    }

    /** Something that the arrow keys stop at. */
    private <T extends Node> T stop(T node) {
        node.getStyleClass().add("plain-stop");
        node.focusedProperty()
                .addListener(
                        (o, was, is) -> {
                            if (is) {
                                reveal(node);
                            }
                        });
        return node;
    }

    private void edited(String id, Target target, String value) {
        if (putting || target.slot().isEmpty()) {
            return;
        }
        acted = false;
        if (!id.isEmpty()) {
            mirror.accept(id, value);
        }
        listener.edit(target.part(), target.slot(), target.kind(), value);
    }

    private void act(Action action) {
        if (!action.name().isEmpty()) {
            acted = true;
            listener.act(action.name(), action.part(), action.argument());
        }
    }

    private void pressed(KeyEvent event) {
        boolean up = event.getCode() == KeyCode.UP;
        boolean down = event.getCode() == KeyCode.DOWN;
        Node at = focused();
        acted = false;
        if (event.isShortcutDown() && event.getCode() == KeyCode.C && at instanceof Label label) {
            Clipboard.getSystemClipboard()
                    .setContent(Map.of(DataFormat.PLAIN_TEXT, label.getText()));
            event.consume();
        }
        if (!(up || down) || event.isAltDown() || (ownsArrows(at) && !event.isShortcutDown())) {
            return;
        }
        List<Node> stops = stops(body);
        int next = stops.indexOf(at) + (up ? -1 : 1);
        if (next >= 0 && next < stops.size()) {
            stops.get(next).requestFocus();
        }
        event.consume();
    }

    private static boolean ownsArrows(Node node) {
        return node instanceof ComboBox<?>
                || node instanceof TextArea
                || node instanceof RadioButton
                || (node != null && "level".equals(node.getProperties().get(PlainView.class)));
    }

    /** What can be stopped at, in the order of the page. */
    private static List<Node> stops(Parent parent) {
        List<Node> list = new ArrayList<>();
        for (Node child : parent.getChildrenUnmodifiable()) {
            if (child.getStyleClass().contains("plain-stop")) {
                if (!child.isDisabled()) {
                    list.add(child);
                }
                if (child instanceof TitledPane fold
                        && fold.isExpanded()
                        && fold.getContent() instanceof Parent content) {
                    list.addAll(stops(content));
                }
            } else if (child instanceof Parent inner) {
                list.addAll(stops(inner));
            }
        }
        return list;
    }

    private void reveal(Node node) {
        body.applyCss();
        body.layout();
        double seen = pane.getViewportBounds().getHeight();
        double beyond = body.getHeight() - seen;
        if (seen <= 0 || beyond <= 0) {
            return;
        }
        double top = body.sceneToLocal(node.localToScene(node.getBoundsInLocal())).getMinY();
        double bottom = top + node.getBoundsInLocal().getHeight();
        double at = pane.getVvalue() * beyond;
        if (top < at || bottom > at + seen) {
            pane.setVvalue(Math.max(0, Math.min(1, (top - seen / 4) / beyond)));
        }
    }

    private boolean hasFocus() {
        return isIn(focused(), body);
    }

    private Node focused() {
        return body.getScene() == null ? null : body.getScene().getFocusOwner();
    }

    private String focusedId() {
        String id = focused().getId();
        return id != null && id.startsWith(PREFIX) ? id.substring(PREFIX.length()) : "";
    }

    private static boolean isIn(Node node, Node box) {
        for (Node above = node; above != null; above = above.getParent()) {
            if (above == box) {
                return true;
            }
        }
        return false;
    }

    /** The nearest region around an element of the page. */
    private Optional<String> above(String id) {
        org.w3c.dom.Node node = page.apply(id).map(Element::getParentNode).orElse(null);
        while (node instanceof Element element) {
            if (byId.get(PlainReading.attribute(element, "id")) instanceof VBox) {
                return Optional.of(PlainReading.attribute(element, "id"));
            }
            node = node.getParentNode();
        }
        return Optional.empty();
    }

    /** What is chosen, on as many lines as it takes. */
    private static final class WrappedCell extends ListCell<PlainBlock.Option> {
        WrappedCell() {
            setWrapText(true);
            widthProperty().addListener((o, was, is) -> requestLayout());
        }

        @Override
        protected void updateItem(PlainBlock.Option option, boolean empty) {
            super.updateItem(option, empty);
            setText(empty || option == null ? "" : option.label());
        }

        @Override
        protected double computePrefHeight(double width) {
            return super.computePrefHeight(width < 0 && getWidth() > 0 ? getWidth() : width);
        }
    }
}
