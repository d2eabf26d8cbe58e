// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.content.Once;
import hotside.course.Course;
import hotside.course.Lesson;
import hotside.course.LookUp;
import hotside.course.Part;
import hotside.course.RelationLessons;
import hotside.learner.Attempt;
import hotside.learner.Wish;
import hotside.page.Maths;
import hotside.page.Shell;
import hotside.relation.Relation;
import hotside.speech.Language;
import hotside.unit.UnitSystem;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.UnaryOperator;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.layout.BorderPane;

/**
 * The one window: outline at the left, page in the middle, units, text size and theme at the top.
 */
final class DeskWindow {
    private final BorderPane root = new BorderPane();
    private final Scene scene = new Scene(root, 1280, 800);
    private final DeskLook look;
    private final DeskBar bar = new DeskBar(root, new FromBar());
    private final PageView view;
    private final Bookmarks bookmarks;
    private Library library;
    private final LongSupplier seeds;
    private Outline outline;
    private LookUpPages lookUp;
    private final Worker worker;
    private final Chooser chooser;
    private final PagesPlace course;
    private final PagesPlace relations;
    private final PracticePlace practice;
    private final MyWorkPlace myWork;
    private final ClassPlace theClass;
    private Place current;
    private final RecordKeeper keeper;
    private final Habit habit;
    private Consent consent;
    private final Consumer<String> browser;
    private final Set<String> solved = new HashSet<>();
    private final PlainView plainView;
    private final Zones zones = new Zones(root, this::focusPage);
    private final HelpPlace help;
    private final Shortcuts shortcuts;
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
            RecordKeeper keeper,
            LongSupplier seeds,
            Path storage,
            Consumer<String> browser) {
        this.library = library;
        this.settings = settings;
        this.keeper = keeper;
        this.habit = Habit.keptBy(keeper);
        this.browser = browser;
        this.look = new DeskLook(scene, root);
        this.view =
                new PageView(
                        Shell.html(settings.theme(), settings.percent()), storage, new FromPage());
        this.bookmarks = new Bookmarks(view);
        this.plainView = new PlainView(view::element, new FromPage(), view::mirror);
        this.seeds = seeds;
        this.worker = new Worker(Platform::runLater);
        this.chooser = new FileChoosers(scene::getWindow);
        this.outline = outlined();
        this.course = pages("course", Once.of(coursePages()), this::leftOff);
        this.relations = pages("relations", new Once<>(this::relationPages), page -> {});
        PlacePage logsPage = toPage();
        RunLogsPlace logs = new RunLogsPlace(logsPage, worker, chooser, keeper, SampleTrial::run);
        logsPage.of(logs);
        PlacePage cellPage = toPage();
        TestCellPlace cell =
                new TestCellPlace(
                        cellPage,
                        worker,
                        seeds,
                        chooser,
                        trial -> {
                            open(logs);
                            logs.openTrial(trial);
                        });
        cellPage.of(cell);
        consent = new WindowConsent(scene);
        this.practice = practice();
        this.myWork = myWork(chooser);
        PlacePage classPage = toPage();
        theClass =
                new ClassPlace(
                        classPage,
                        worker,
                        chooser,
                        () -> this.library.bank(),
                        library.maths(),
                        storage.toAbsolutePath().getParent(),
                        Clock.systemDefaultZone());
        theClass.habit(habit);
        classPage.of(theClass);
        bar.add(course);
        bar.add(practice);
        bar.add(myWork);
        bar.add(cell);
        bar.add(logs);
        bar.add(relations);
        bar.add(theClass);
        shortcuts = new Shortcuts(new Keys(), bar.places());
        shortcuts.hear(scene);
        PlacePage helpPage = toPage();
        help =
                new HelpPlace(
                        helpPage,
                        shortcuts::rows,
                        Notices.about(storage.toAbsolutePath().getParent()));
        helpPage.of(help);
        bar.add(help);
        current = course;
        readSolved();
        bar.draw(current);
        root.setLeft(outline.node());
        bar.setPlain(keeper.remembered("plain").filter("true"::equals).isPresent());
        root.setCenter(bar.isPlain() ? plainView.node() : view.node());
        apply();
        outline.progress(solved::contains);
    }

    Scene scene() {
        return scene;
    }

    PageView page() {
        return view;
    }

    /** What the open lesson or relation shows, for tests and the tour. */
    LessonPlace lessonPlace() {
        return (current == relations ? relations : course).content();
    }

    Settings settings() {
        return settings;
    }

    /** Opens the lesson of this id, or the first one; then the place that was left last. */
    void openAtStart(Optional<String> id) {
        Optional<Place> left = keeper.remembered("place").flatMap(this::place);
        id.flatMap(library.course()::find)
                .or(() -> library.course().lessons().stream().findFirst())
                .ifPresent(this::open);
        left.filter(place -> place != course).ifPresent(this::open);
        view.whenReady(this::focusPage);
    }

    /** Opens a set or a hand-in that was opened outside. */
    void take(Path file) {
        enter(theClass);
        theClass.take(file);
    }

    /** The window is gone: long work stops, and what was typed gets into its file. */
    void close() {
        theClass.stop();
        worker.finish();
    }

    /** Shows the page in native controls, or as a page again. */
    void plain(boolean on) {
        bar.setPlain(on);
        keeper.remember("plain", String.valueOf(on));
        root.setCenter(on ? plainView.node() : view.node());
        current.open();
        view.whenReady(this::focusPage);
    }

    PlainView plainView() {
        return plainView;
    }

    Shortcuts shortcuts() {
        return shortcuts;
    }

    private void focusPage() {
        if (bar.isPlain()) {
            plainView.focus();
        } else {
            view.node().requestFocus();
        }
    }

    Maths maths() {
        return library.maths();
    }

    /** The outline of the course, with what stands above it. */
    private Outline outlined() {
        lookUp = new LookUpPages(library);
        Outline made = Outline.ofLessons(library.course().lessons(), this::open);
        SaveAs saveAs =
                new SaveAs(
                        () -> library,
                        () -> course.content().lesson(),
                        () -> settings.system(),
                        worker,
                        chooser);
        made.top(new CourseTools(lookUp, this::open, saveAs.nodes()).node());
        return made;
    }

    private PagesPlace.Pages coursePages() {
        return new PagesPlace.Pages(library.course().lessons(), outline);
    }

    private PagesPlace.Pages relationPages() {
        List<Lesson> all = RelationLessons.all();
        return new PagesPlace.Pages(
                all, Outline.ofRelations(all, DeskWindow::searched, this::open));
    }

    /** Takes other content, and shows the open lesson as it now is. */
    void library(Library other) {
        library = other;
        outline = outlined();
        outline.progress(solved::contains);
        course.pages(Once.of(coursePages()));
        course.content().content(other.course(), other.bank());
        relations.content().content(other.course(), other.bank());
        keeper.syllabus(other.plan());
        practice.content(other.bank(), other.plan());
        myWork.content(other.bank());
        if (current == course) {
            Optional<Lesson> open =
                    course.content()
                            .lesson()
                            .map(Lesson::id)
                            .flatMap(
                                    id ->
                                            lookUp.page("lesson:" + id)
                                                    .or(() -> other.course().find(id)));
            open.or(() -> other.course().lessons().stream().findFirst()).ifPresent(this::open);
        }
    }

    /** Opens a lesson or the page of a relation, in its place; the open one from its top. */
    void open(Lesson lesson) {
        PagesPlace place = lesson.id().startsWith(RelationLessons.PREFIX) ? relations : course;
        String before = current.page();
        enter(place);
        await(before, place.page(lesson));
        place.turnTo(lesson);
    }

    /** Another page is found where it was left; the same one anew begins at its top. */
    private void await(String before, String next) {
        bookmarks.await(next.equals(before) ? "" : next);
    }

    /** Opens the page of the relation of this id, if there is one. */
    void openRelation(String id) {
        relations.find(RelationLessons.PREFIX + id).ifPresent(this::open);
    }

    /** Opens a place as it was left. */
    void open(Place place) {
        String before = current.page();
        enter(place);
        await(before, place.page());
        place.open();
    }

    /** Where the person goes on next time; pages to look things up in are no such place. */
    private void leftOff(Lesson lesson) {
        if (!lesson.id().startsWith(LookUp.PREFIX)) {
            keeper.remember("lesson", lesson.id());
        }
    }

    /** The place of this id. */
    Optional<Place> place(String id) {
        return bar.places().stream().filter(place -> place.id().equals(id)).findFirst();
    }

    private void enter(Place place) {
        bookmarks.leave(current.page());
        if (current != place) {
            current.leave();
        }
        current = place;
        if (place != help) {
            keeper.remember("place", place.id());
        }
        bar.select(place);
        root.setLeft(place.side().orElse(null));
    }

    private PagesPlace pages(String id, Once<PagesPlace.Pages> pages, Consumer<Lesson> opened) {
        PlacePage toPage = toPage();
        PagesPlace place =
                new PagesPlace(
                        id,
                        pages,
                        new LessonPlace(
                                        library.course(),
                                        library.bank(),
                                        library.maths(),
                                        toPage,
                                        new ToRecord(),
                                        seeds,
                                        Clock.systemUTC(),
                                        worker)
                                .habit(habit),
                        opened);
        toPage.of(place);
        return place;
    }

    private PracticePlace practice() {
        PlacePage toPage = toPage();
        PracticePlace place =
                new PracticePlace(
                        library.bank(),
                        library.plan(),
                        library.maths(),
                        toPage,
                        keeper,
                        new ToRecord()::solved,
                        seeds,
                        Clock.systemDefaultZone(),
                        new Ticks(Platform::runLater));
        place.habit(habit);
        toPage.of(place);
        return place;
    }

    private MyWorkPlace myWork(Chooser chooser) {
        PlacePage toPage = toPage();
        MyWorkPlace place =
                new MyWorkPlace(
                        toPage,
                        keeper,
                        keeper,
                        new MyWorkReading(library.bank(), ZoneId.systemDefault()),
                        chooser,
                        (title, question) -> consent.to(title, question),
                        new FromMyWork(),
                        Clock.systemDefaultZone());
        toPage.of(place);
        return place;
    }

    PracticePlace practicePlace() {
        return practice;
    }

    MyWorkPlace myWorkPlace() {
        return myWork;
    }

    /** Who asks the person for a yes, for tests. */
    void consent(Consent other) {
        consent = other;
    }

    private void readSolved() {
        solved.clear();
        keeper.solved()
                .forEach(
                        (problem, right) -> {
                            if (right) {
                                solved.add(problem);
                            }
                        });
    }

    /** Words, content and pages come in another language from now on. */
    private void speak(Language language) {
        Language.speak(language);
        bar.draw(current);
        relations.pages(new Once<>(this::relationPages));
        practice.forget();
        if (current != course) {
            open(current);
        }
        worker.run(
                () -> Libraries.read(library.maths(), language),
                read -> {
                    if (language == settings.language()) {
                        library(read);
                    }
                },
                fault -> course.open());
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
        boolean spoken = changed.language() != settings.language();
        settings = changed;
        if (spoken) {
            speak(changed.language());
        }
        bookmarks.keep(this::apply);
        keeper.remember("units", changed.system().name());
        keeper.remember("theme", changed.theme());
        keeper.remember("language", changed.language().code());
        keeper.remember("text", String.valueOf(changed.percent()));
    }

    private void apply() {
        look.wear(settings, view);
        bar.places()
                .forEach(
                        place -> {
                            place.textSize(settings.percent());
                            place.units(settings.system());
                        });
        bar.show(settings);
    }

    private PlacePage toPage() {
        return new PlacePage(view, plainView, bar::isPlain, bookmarks, place -> place == current);
    }

    private final class FromBar implements DeskBar.Doors {
        @Override
        public void open(Place place) {
            DeskWindow.this.open(place);
        }

        @Override
        public void change(UnaryOperator<Settings> change) {
            settings(change.apply(settings));
        }

        @Override
        public void plain(boolean on) {
            DeskWindow.this.plain(on);
        }
    }

    private final class FromMyWork implements MyWorkPlace.Doors {
        @Override
        public void practise(Wish wish) {
            enter(practice);
            practice.open(wish);
        }

        @Override
        public void again(Attempt attempt) {
            enter(practice);
            practice.again(attempt);
        }

        @Override
        public void changed() {
            practice.forget();
            readSolved();
            outline.progress(solved::contains);
            settings(keeper.settings());
            boolean reads = keeper.remembered("plain").filter("true"::equals).isPresent();
            if (reads != bar.isPlain()) {
                plain(reads);
            }
        }
    }

    /** What keys do. */
    private final class Keys implements Shortcuts.Desk {
        @Override
        public void open(Place place) {
            DeskWindow.this.open(place);
        }

        @Override
        public void help() {
            DeskWindow.this.open(help);
            focusPage();
        }

        @Override
        public void search() {
            if (current != relations) {
                DeskWindow.this.open(course);
            }
            scene.lookup("#search-" + current.id()).requestFocus();
        }

        @Override
        public void neighbour(int by) {
            if (current == course) {
                Course all = library.course();
                course.content()
                        .lesson()
                        .flatMap(open -> by < 0 ? all.before(open) : all.after(open))
                        .ifPresent(DeskWindow.this::open);
            }
        }

        @Override
        public void larger() {
            settings(settings.larger());
        }

        @Override
        public void smaller() {
            settings(settings.smaller());
        }

        @Override
        public void otherTheme() {
            settings(settings.dark(!settings.dark()));
        }

        @Override
        public void otherUnits() {
            settings(
                    settings.in(
                            settings.system() == UnitSystem.SI_SHOP
                                    ? UnitSystem.US_SHOP
                                    : UnitSystem.SI_SHOP));
        }

        @Override
        public void otherReading() {
            plain(!bar.isPlain());
        }

        @Override
        public void otherZone(int by) {
            zones.turn(by);
        }

        @Override
        public void finish() {
            current.finish();
        }
    }

    /** Tries go to the record; what is solved shows in the outline. */
    private final class ToRecord implements Tries {
        @Override
        public void keep(List<Try> tries, Runnable then) {
            if (tries.isEmpty()) {
                then.run();
            } else {
                keeper.keep(tries, then);
            }
        }

        @Override
        public void solved(String problem) {
            solved.add(problem);
            outline.progress(solved::contains);
        }
    }

    /** What a person does in the page. */
    private final class FromPage implements PageView.Listener {
        @Override
        public void act(String action, String part, String argument) {
            current.act(action, part, argument);
        }

        @Override
        public void edit(String part, String slot, String kind, String value) {
            current.edit(part, slot, kind, value);
        }

        @Override
        public void follow(String href) {
            Optional<Lesson> page = lookUp.page(href);
            if (page.isPresent()) {
                open(page.get());
            } else if (href.startsWith("term:")) {
                lessonPlace().explain(href.substring("term:".length()));
            } else if (href.startsWith("lesson:")) {
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
            current.point(part, across);
        }

        @Override
        public void nudge(String part, int steps) {
            current.nudge(part, steps);
        }
    }
}
