// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import hotside.course.Lesson;
import hotside.course.Part;
import hotside.course.RelationLessons;
import hotside.page.Shell;
import hotside.page.Words;
import hotside.relation.Relation;
import hotside.unit.UnitSystem;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;

/**
 * The one window: outline at the left, page in the middle, units, text size and theme at the top.
 */
final class DeskWindow {
    private static final double BASE_FONT = 14;

    private final BorderPane root = new BorderPane();
    private final Scene scene = new Scene(root, 1280, 800);
    private final PageView view;
    private final LessonPlace place;
    private final Library library;
    private final List<Lesson> relations = RelationLessons.all();
    private final Outline outline;
    private final Outline relationOutline;
    private final Keeper keeper;
    private final Consumer<String> browser;
    private final Set<String> solved = new HashSet<>();
    private final ToggleButton si = new ToggleButton(Words.of("desk.units.si"));
    private final ToggleButton us = new ToggleButton(Words.of("desk.units.us"));
    private final Label size = new Label();
    private final ToggleButton dark = new ToggleButton(Words.of("desk.theme.dark"));
    private final ToggleButton coursePlace = new ToggleButton(Words.of("desk.place.course"));
    private final ToggleButton relationPlace = new ToggleButton(Words.of("desk.place.relations"));
    private Lesson lastLesson;
    private Lesson lastRelation;
    private Settings settings;

    /**
     * @param library what to show
     * @param keeper where tries and settings go
     * @param seeds where fresh problem numbers come from
     * @param storage a folder that the page's engine may use for itself
     * @param browser opens an outside address once the person has agreed
     */
    DeskWindow(
            Library library,
            Settings settings,
            Keeper keeper,
            LongSupplier seeds,
            Path storage,
            Consumer<String> browser) {
        this.library = library;
        this.settings = settings;
        this.keeper = keeper;
        this.browser = browser;
        Font.loadFont(
                DeskWindow.class.getResourceAsStream(
                        "/com/formdev/flatlaf/fonts/roboto/Roboto-Regular.ttf"),
                BASE_FONT);
        Font.loadFont(
                DeskWindow.class.getResourceAsStream(
                        "/com/formdev/flatlaf/fonts/roboto/Roboto-Bold.ttf"),
                BASE_FONT);
        this.view =
                new PageView(
                        Shell.html(settings.theme(), settings.percent()), storage, new FromPage());
        this.place =
                new LessonPlace(
                        library.course(),
                        library.bank(),
                        library.maths(),
                        new ToPage(),
                        this::keep,
                        seeds,
                        java.time.Clock.systemUTC());
        this.outline = Outline.ofLessons(library.course().lessons(), this::open);
        this.relationOutline = Outline.ofRelations(relations, DeskWindow::searched, this::open);
        keeper.solved()
                .forEach(
                        (problem, right) -> {
                            if (right) {
                                solved.add(problem);
                            }
                        });
        root.getStyleClass().add("desk");
        root.setTop(bar());
        root.setLeft(outline.node());
        root.setCenter(view.node());
        scene.getStylesheets()
                .add(DeskWindow.class.getResource("/hotside/desk/desk.css").toExternalForm());
        apply();
        outline.progress(solved::contains);
    }

    Scene scene() {
        return scene;
    }

    PageView page() {
        return view;
    }

    LessonPlace lessonPlace() {
        return place;
    }

    Settings settings() {
        return settings;
    }

    /** Opens the lesson of this id, or the first one. */
    void openAtStart(Optional<String> id) {
        id.flatMap(library.course()::find)
                .or(() -> library.course().lessons().stream().findFirst())
                .ifPresent(this::open);
        view.node().requestFocus();
    }

    /** Opens a lesson or the page of a relation, in its place. */
    void open(Lesson lesson) {
        boolean relation = lesson.id().startsWith(RelationLessons.PREFIX);
        Outline here = relation ? relationOutline : outline;
        (relation ? relationPlace : coursePlace).setSelected(true);
        root.setLeft(here.node());
        here.select(lesson);
        place.open(lesson);
        if (relation) {
            lastRelation = lesson;
        } else {
            lastLesson = lesson;
            keeper.remember("lesson", lesson.id());
        }
    }

    /** Opens the page of the relation of this id, if there is one. */
    void openRelation(String id) {
        relations.stream()
                .filter(page -> page.id().equals(RelationLessons.PREFIX + id))
                .findFirst()
                .ifPresent(this::open);
    }

    /** What a search in the relations looks at. */
    private static String searched(Lesson page) {
        Relation relation = ((Part.Calculator) page.parts().get(0)).relation();
        StringBuilder text =
                new StringBuilder(page.title() + " " + relation.id() + " " + relation.says());
        relation.inputs()
                .forEach(
                        slot ->
                                text.append(' ')
                                        .append(slot.name())
                                        .append(' ')
                                        .append(slot.meaning()));
        relation.outputs()
                .forEach(
                        slot ->
                                text.append(' ')
                                        .append(slot.name())
                                        .append(' ')
                                        .append(slot.meaning()));
        return text.toString();
    }

    /** Changes how the desk looks and speaks. */
    void settings(Settings changed) {
        settings = changed;
        apply();
        keeper.remember("units", changed.system().name());
        keeper.remember("theme", changed.theme());
        keeper.remember("text", String.valueOf(changed.percent()));
    }

    private void apply() {
        Application.setUserAgentStylesheet(
                (settings.dark() ? new PrimerDark() : new PrimerLight()).getUserAgentStylesheet());
        root.getStyleClass().removeAll("light", "dark");
        root.getStyleClass().add(settings.theme());
        root.setStyle("-fx-font-size: " + BASE_FONT * settings.percent() / 100 + "px;");
        view.root("data-theme", settings.theme());
        view.paper(settings.paper());
        view.root("style", "font-size:" + settings.percent() + "%");
        place.textSize(settings.percent());
        place.units(settings.system());
        (settings.system() == UnitSystem.SI_SHOP ? si : us).setSelected(true);
        dark.setSelected(settings.dark());
        size.setText(settings.percent() + " %");
    }

    private HBox bar() {
        Label name = new Label(Words.of("desk.title"));
        name.getStyleClass().add("name");
        ToggleGroup places = new ToggleGroup();
        place(coursePlace, "place-course", places, () -> lastLesson);
        place(
                relationPlace,
                "place-relations",
                places,
                () -> lastRelation == null ? relations.get(0) : lastRelation);
        ToggleGroup units = new ToggleGroup();
        si.setToggleGroup(units);
        us.setToggleGroup(units);
        si.setId("units-si");
        us.setId("units-us");
        si.setOnAction(e -> settings(settings.in(UnitSystem.SI_SHOP)));
        us.setOnAction(e -> settings(settings.in(UnitSystem.US_SHOP)));
        Button smaller = new Button("A−");
        smaller.setId("text-smaller");
        smaller.setAccessibleText(Words.of("desk.text.smaller"));
        smaller.setOnAction(e -> settings(settings.smaller()));
        Button larger = new Button("A+");
        larger.setId("text-larger");
        larger.setAccessibleText(Words.of("desk.text.larger"));
        larger.setOnAction(e -> settings(settings.larger()));
        dark.setId("theme-dark");
        dark.setOnAction(e -> settings(settings.dark(dark.isSelected())));
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox bar =
                new HBox(
                        name,
                        pair(coursePlace, relationPlace),
                        space,
                        new Label(Words.of("desk.units")),
                        pair(si, us),
                        new Label(Words.of("desk.text")),
                        smaller,
                        size,
                        larger,
                        dark);
        bar.getStyleClass().add("bar");
        return bar;
    }

    private static HBox pair(ToggleButton one, ToggleButton other) {
        HBox pair = new HBox(one, other);
        pair.getStyleClass().add("pair");
        return pair;
    }

    private void place(ToggleButton button, String id, ToggleGroup places, Supplier<Lesson> page) {
        button.setId(id);
        button.setToggleGroup(places);
        button.getStyleClass().add("place");
        button.setOnAction(
                e -> {
                    button.setSelected(true);
                    if (page.get() != null) {
                        open(page.get());
                    }
                });
    }

    private void keep(List<LessonPlace.Try> tries, Runnable then) {
        if (tries.isEmpty()) {
            then.run();
            return;
        }
        keeper.keep(
                tries,
                () -> {
                    tries.stream()
                            .filter(
                                    t ->
                                            place.problem(cardOf(t))
                                                    .map(hotside.page.ProblemState::solved)
                                                    .orElse(false))
                            .forEach(t -> solved.add(t.variant().template().id()));
                    outline.progress(solved::contains);
                    then.run();
                });
    }

    private String cardOf(LessonPlace.Try attempt) {
        return place.cardOf(attempt.variant());
    }

    /** What a person does in the page. */
    private final class FromPage implements PageView.Listener {
        @Override
        public void act(String action, String part, String argument) {
            place.act(action, part);
        }

        @Override
        public void edit(String part, String slot, String kind, String value) {
            place.edit(part, slot, kind, value);
        }

        @Override
        public void follow(String href) {
            if (href.startsWith("lesson:")) {
                library.course()
                        .find(href.substring("lesson:".length()))
                        .ifPresent(DeskWindow.this::open);
            } else if (href.startsWith("relation:")) {
                openRelation(href.substring("relation:".length()));
            } else if (PageView.outside(href)) {
                browser.accept(href);
            }
        }

        @Override
        public void point(String part, double across) {
            place.point(part, across);
        }

        @Override
        public void nudge(String part, int steps) {
            place.nudge(part, steps);
        }
    }

    /** What happens to the page. */
    private final class ToPage implements LessonPlace.Page {
        @Override
        public void show(String html, String plainText) {
            view.show(html, plainText);
        }

        @Override
        public void replace(String id, String html) {
            view.replace(id, html);
        }

        @Override
        public void put(String id, String text) {
            view.put(id, text);
        }

        @Override
        public void focus(String id) {
            view.focus(id);
        }

        @Override
        public void cursor(String id, double at) {
            view.cursor(id, at);
        }
    }
}
