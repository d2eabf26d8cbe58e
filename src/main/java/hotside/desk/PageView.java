// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.concurrent.Worker;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.paint.Color;
import javafx.scene.web.WebEngine;
import javafx.scene.web.WebView;
import netscape.javascript.JSObject;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.events.Event;
import org.w3c.dom.events.EventListener;
import org.w3c.dom.events.EventTarget;
import org.w3c.dom.events.MouseEvent;
import org.w3c.dom.html.HTMLInputElement;
import org.w3c.dom.html.HTMLSelectElement;
import org.w3c.dom.html.HTMLTextAreaElement;

/**
 * The page, and the one class that touches WebView.
 *
 * <p>A fixed shell is loaded once, page script is off, and pages are turned by exchanging the
 * inside of its main element. What a person does in the page reaches Java through DOM listeners on
 * the root, in the capture phase, which also stop every default action: nothing in a page can
 * navigate, submit or open anything by itself. There is no bridge object.
 */
final class PageView {
    /** What a person does in the page. */
    interface Listener {
        /**
         * Something with a {@code data-do} was clicked, or Enter was pressed in a field that has
         * one.
         *
         * @param action its {@code data-do}
         * @param part its {@code data-part}, or the empty text
         * @param argument its {@code data-arg}, or the empty text
         */
        void act(String action, String part, String argument);

        /**
         * A field with a {@code data-slot} got a new content.
         *
         * @param part its {@code data-part}
         * @param slot its {@code data-slot}
         * @param kind its {@code data-kind}
         * @param value what it now holds
         */
        void edit(String part, String slot, String kind, String value);

        /**
         * A link was followed.
         *
         * @param href as the page holds it
         */
        void follow(String href);

        /**
         * A chart was pointed at.
         *
         * @param part its {@code data-part}
         * @param across 0 at its left edge to 1 at its right edge; where {@code data-chart} is
         *     {@code level}, 0 at its upper edge to 1 at its lower edge
         */
        void point(String part, double across);

        /**
         * An arrow key was pressed on a chart.
         *
         * @param part its {@code data-part}
         * @param steps negative to the left, or downwards where {@code data-chart} is {@code
         *     level}; larger with shift
         */
        void nudge(String part, int steps);
    }

    private static final List<String> HEARD =
            List.of("click", "submit", "input", "change", "dragover", "drop");

    private final WebView view = new WebView();
    private final WebEngine engine = view.getEngine();
    private final Listener listener;
    private final CompletableFuture<Void> ready = new CompletableFuture<>();
    private final List<Runnable> waiting = new ArrayList<>();

    /**
     * @param shell the page to load once, see {@code hotside.page.Shell}
     * @param storage a folder that the engine may use for itself
     * @param listener told what a person does
     */
    PageView(String shell, Path storage, Listener listener) {
        this.listener = listener;
        engine.setJavaScriptEnabled(false);
        engine.setUserDataDirectory(storage.toFile());
        engine.setCreatePopupHandler(features -> null);
        view.setContextMenuEnabled(false);
        view.setOnDragDropped(null);
        view.setOnDragOver(null);
        view.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        view.addEventHandler(KeyEvent.KEY_RELEASED, this::released);
        engine.getLoadWorker()
                .stateProperty()
                .addListener(
                        (o, was, is) -> {
                            if (is == Worker.State.SUCCEEDED && !ready.isDone()) {
                                listen();
                                ready.complete(null);
                                waiting.forEach(Runnable::run);
                                waiting.clear();
                            }
                        });
        engine.loadContent(shell);
    }

    /**
     * Loads the engine, which takes most of a second the first time. Called while other things are
     * read on another thread, so that the first page does not wait for it.
     */
    static void warmUp() {
        new WebView();
    }

    Node node() {
        return view;
    }

    /** Done once the shell stands. */
    CompletableFuture<Void> ready() {
        return ready;
    }

    /**
     * Turns to a page and goes to its top.
     *
     * @param html the inside of the page's main element; made by {@code hotside.page}, never a
     *     file's own
     * @param plainText the same in plain text, for assistive technology
     */
    void show(String html, String plainText) {
        whenReady(
                () -> {
                    inside("page", html);
                    engine.executeScript("window.scrollTo(0,0)");
                    view.setAccessibleText(plainText);
                });
    }

    /** Exchanges the inside of one element, if the page has it. */
    void replace(String id, String html) {
        whenReady(() -> inside(id, html));
    }

    /** Puts a text into a field without telling the listener. */
    void put(String id, String value) {
        whenReady(
                () -> {
                    Element field = document().getElementById(id);
                    if (field instanceof HTMLInputElement input
                            && !input.getValue().equals(value)) {
                        input.setValue(value);
                    }
                });
    }

    /** An element of the page, to read. */
    Optional<Element> element(String id) {
        return ready.isDone()
                ? Optional.ofNullable(document().getElementById(id))
                : Optional.empty();
    }

    /** Sets a field as a person did elsewhere, without telling the listener. */
    void mirror(String id, String value) {
        Element field = element(id).orElse(null);
        if (field instanceof HTMLInputElement input) {
            switch (input.getType()) {
                case "checkbox" -> input.setChecked(Boolean.parseBoolean(value));
                case "radio" -> input.setChecked(true);
                default -> input.setValue(value);
            }
        } else if (field instanceof HTMLSelectElement select) {
            select.setValue(value);
        } else if (field instanceof HTMLTextAreaElement area) {
            area.setValue(value);
        }
    }

    /** What a field holds, if the page has it. */
    Optional<String> value(String id) {
        return ready.isDone()
                ? Optional.ofNullable(document().getElementById(id)).map(PageView::valueOf)
                : Optional.empty();
    }

    /** Sets an attribute of the root element: theme, text size. */
    void root(String attribute, String value) {
        whenReady(() -> document().getDocumentElement().setAttribute(attribute, value));
    }

    /**
     * Moves the hair line of a chart to a place along the chart's own horizontal coordinate, or
     * upright one where its heights are measured.
     */
    void cursor(String chart, double at) {
        whenReady(
                () -> {
                    if (!(document().getElementById(chart) instanceof JSObject frame)) {
                        return;
                    }
                    boolean level = isLevel((Element) frame);
                    String which = level ? "line.ruler" : "line.cursor";
                    if (frame.call("querySelector", which) instanceof Element line) {
                        line.setAttribute(level ? "y1" : "x1", String.valueOf(at));
                        line.setAttribute(level ? "y2" : "x2", String.valueOf(at));
                        line.setAttribute("visibility", "visible");
                    }
                });
    }

    /** The colour under everything, which shows beside the page's scroll bar. */
    void paper(String colour) {
        view.setPageFill(Color.web(colour));
    }

    /** Brings an element into sight. */
    void reveal(String id) {
        whenReady(
                () -> {
                    if (document().getElementById(id) instanceof JSObject element) {
                        element.call("scrollIntoView", true);
                    }
                });
    }

    /** Gives an element the keyboard. */
    void focus(String id) {
        whenReady(
                () -> {
                    if (document().getElementById(id) instanceof JSObject element) {
                        // A heading gets the keyboard to say where one is, wherever one reads.
                        boolean quietly = "-1".equals(((Element) element).getAttribute("tabindex"));
                        element.eval("this.focus({preventScroll:" + quietly + "})");
                    }
                });
    }

    /**
     * Where an element lies in the view, for tests and the tour.
     *
     * @return left, top, width, height in pixels
     */
    Optional<double[]> bounds(String id) {
        if (!ready.isDone() || !(document().getElementById(id) instanceof JSObject element)) {
            return Optional.empty();
        }
        JSObject box = (JSObject) element.call("getBoundingClientRect");
        return Optional.of(
                new double[] {
                    number(box, "left"),
                    number(box, "top"),
                    number(box, "width"),
                    number(box, "height")
                });
    }

    /** How many screens the page is long, for the tour. */
    int screenfuls() {
        double height =
                ((Number) engine.executeScript("document.documentElement.scrollHeight"))
                        .doubleValue();
        double seen = ((Number) engine.executeScript("window.innerHeight")).doubleValue();
        return (int) Math.max(1, Math.ceil(height / seen));
    }

    /** What stands out of the page to the right and cannot be scrolled to in its own box. */
    String cutOff() {
        return String.valueOf(
                engine.executeScript(
                        "(function(){var w=document.documentElement.clientWidth,out=[];"
                                + "document.querySelectorAll('#page *').forEach(function(e){"
                                + "var r=e.getBoundingClientRect();"
                                + "var boxed=e.closest('.numeric,.symbolic,.law,.eq,table,pre');"
                                + "var rolls=e.parentNode.closest('.scroll,.drawing>div');"
                                + "if(r.right>w+1&&!rolls&&(!boxed||boxed===e))"
                                + "out.push(e.tagName+' '+(e.id||e.className||e.textContent.slice(0,40)));});"
                                + "return out.slice(0,6).join(', ');})()"));
    }

    /** How many controls with a name of their own the page has, for tests. */
    long controls() {
        return ((Number)
                        engine.executeScript(
                                "document.querySelectorAll('#page button[id],#page select[id],"
                                        + "#page textarea[id],#page input[id]').length"))
                .longValue();
    }

    /** What a selector finds that is seen and not empty, for tests. */
    String seen(String selector) {
        return String.valueOf(
                engine.executeScript(
                        "(function(){var out=[];document.querySelectorAll('#page '+'"
                                + selector
                                + "').forEach(function(e){var r=e.getBoundingClientRect();"
                                + "if(r.height>0&&e.textContent.trim())"
                                + "out.push(e.textContent.trim().slice(0,80));});"
                                + "return out.slice(0,3).join(', ');})()"));
    }

    /**
     * What has the keyboard in the page, for tests: its id or its words, then what is wrong with
     * how that is seen; empty if nothing has it.
     */
    String withKeyboard() {
        return String.valueOf(
                engine.executeScript(
                        "(function(){var e=document.activeElement;"
                                + "if(!e||e===document.body||e.tabIndex<0)return '';"
                                + "var r=e.getBoundingClientRect(),s=getComputedStyle(e);"
                                + "var ring=s.outlineStyle!=='none'&&parseFloat(s.outlineWidth)>=2;"
                                + "var near=r.bottom>0&&r.top<window.innerHeight;"
                                + "return (e.id||e.tagName+' '+e.textContent.slice(0,30))"
                                + "+(ring?'':' without a ring')+(near?'':' out of sight');})()"));
    }

    /** Ids of what the keyboard can come to in the page, for tests. */
    List<String> stops() {
        String ids =
                String.valueOf(
                        engine.executeScript(
                                "(function(){var out=[],group={};"
                                        + "document.querySelectorAll('#page button,#page input,"
                                        + "#page select,#page textarea,#page [data-chart]')"
                                        + ".forEach(function(e){"
                                        + "if(!e.id||e.disabled||!e.getClientRects().length)return;"
                                        + "if(e.type==='radio'){if(group[e.name])return;group[e.name]=1;}"
                                        + "out.push(e.id);});return out.join(' ');})()"));
        return ids.isEmpty() ? List.of() : List.of(ids.split(" "));
    }

    /**
     * What is too small to hit, by WCAG 2.2, 2.5.8: 24 pixels each way. Links in a text are exempt
     * there; a tick is as large as the label around it.
     */
    String smallTargets() {
        return String.valueOf(
                engine.executeScript(
                        "(function(){var out=[];"
                                + "document.querySelectorAll('#page button,#page input,#page select,"
                                + "#page textarea,#page summary,#page [data-do]').forEach(function(e){"
                                + "var tick=e.type==='checkbox'||e.type==='radio';"
                                + "var r=((tick&&e.closest('label'))||e).getBoundingClientRect();"
                                + "if(r.width>0&&(r.width<24||r.height<24))"
                                + "out.push(e.tagName+' '+(e.id||e.textContent.slice(0,40))"
                                + "+' '+Math.round(r.width)+'x'+Math.round(r.height));});"
                                + "return out.slice(0,6).join(', ');})()"));
    }

    /** Scrolls to one of the page's screens, from 0. */
    void turnTo(int screen) {
        engine.executeScript("window.scrollTo(0, window.innerHeight * " + screen + ")");
    }

    /** How far down the page is scrolled, in pixels. */
    double scrolled() {
        return ready.isDone() ? number("window.scrollY") : 0;
    }

    /** How long the page is, in pixels. */
    double length() {
        return ready.isDone() ? number("document.documentElement.scrollHeight") : 0;
    }

    /** Scrolls so far down, in pixels. */
    void scroll(double down) {
        whenReady(() -> engine.executeScript("window.scrollTo(0," + Math.round(down) + ")"));
    }

    private double number(String script) {
        return ((Number) engine.executeScript(script)).doubleValue();
    }

    /** The text that the page shows, for tests and the tour. */
    String text() {
        return document().getElementById("page").getTextContent();
    }

    /** An attribute of the whole page, for tests. */
    String root(String attribute) {
        return document().getDocumentElement().getAttribute(attribute);
    }

    /** The text of one element, for tests and the tour. */
    Optional<String> text(String id) {
        return Optional.ofNullable(document().getElementById(id)).map(Element::getTextContent);
    }

    /** Which element has the keyboard, for tests. */
    String focusedId() {
        return String.valueOf(engine.executeScript("document.activeElement.id"));
    }

    /** Clicks an element as a person would, for tests and the tour. */
    void click(String id) {
        if (document().getElementById(id) instanceof JSObject element) {
            element.call("click");
        }
    }

    /** Follows the first link of the page as a person would, for tests. */
    void clickFirstLink() {
        if (((JSObject) document().getElementById("page")).call("querySelector", "a")
                instanceof JSObject link) {
            link.call("click");
        }
    }

    /** Types into a field, or chooses, as a person would, for tests and the tour. */
    void type(String id, String value) {
        Element field = document().getElementById(id);
        if (field instanceof HTMLInputElement input) {
            input.setValue(value);
            edited(field);
        } else if (field instanceof HTMLSelectElement select) {
            select.setValue(value);
            edited(field);
        }
    }

    /** Does something once the page stands: now, or after what waits for it already. */
    void whenReady(Runnable action) {
        if (ready.isDone()) {
            action.run();
        } else {
            waiting.add(action);
        }
    }

    private Document document() {
        return engine.getDocument();
    }

    private void inside(String id, String html) {
        if (document().getElementById(id) instanceof JSObject element) {
            element.setMember("innerHTML", html);
        }
    }

    private void listen() {
        EventTarget root = (EventTarget) document().getDocumentElement();
        EventListener heard = this::heard;
        HEARD.forEach(kind -> root.addEventListener(kind, heard, true));
    }

    private void heard(Event event) {
        if (!(event.getTarget() instanceof org.w3c.dom.Node target)) {
            return;
        }
        switch (event.getType()) {
            case "input", "change" -> {
                if (target instanceof Element field) {
                    edited(field);
                }
            }
            case "click" -> clicked(event, target);
            default -> event.preventDefault();
        }
    }

    private void edited(Element field) {
        if (field.hasAttribute("data-slot")) {
            listener.edit(
                    field.getAttribute("data-part"),
                    field.getAttribute("data-slot"),
                    field.getAttribute("data-kind"),
                    valueOf(field));
        }
    }

    private void clicked(Event event, org.w3c.dom.Node target) {
        for (org.w3c.dom.Node node = target;
                node instanceof Element element;
                node = node.getParentNode()) {
            if (element.hasAttribute("data-do")) {
                event.preventDefault();
                act(element);
                return;
            }
            if (element.hasAttribute("data-chart") && event instanceof MouseEvent mouse) {
                point(element, mouse);
                return;
            }
            if (element.getTagName().equalsIgnoreCase("a")) {
                event.preventDefault();
                listener.follow(element.getAttribute("href"));
                return;
            }
        }
    }

    private void act(Element element) {
        listener.act(
                element.getAttribute("data-do"),
                element.getAttribute("data-part"),
                element.getAttribute("data-arg"));
    }

    private void point(Element chart, MouseEvent mouse) {
        JSObject box = (JSObject) ((JSObject) chart).call("getBoundingClientRect");
        double across = (mouse.getClientX() - number(box, "left")) / number(box, "width");
        double down = (mouse.getClientY() - number(box, "top")) / number(box, "height");
        listener.point(chart.getAttribute("data-part"), isLevel(chart) ? down : across);
    }

    /** True for a chart whose heights are measured. */
    private static boolean isLevel(Element chart) {
        return "level".equals(chart.getAttribute("data-chart"));
    }

    /**
     * Enter in a field acts; arrows on a chart move its cursor. Page script is off, so the page
     * cannot do it itself.
     */
    private void pressed(KeyEvent event) {
        if (!ready.isDone()) {
            return;
        }
        boolean along = event.getCode() == KeyCode.LEFT || event.getCode() == KeyCode.RIGHT;
        boolean arrow = along || event.getCode() == KeyCode.UP || event.getCode() == KeyCode.DOWN;
        if (event.getCode() != KeyCode.ENTER && !arrow) {
            return;
        }
        Object focused = engine.executeScript("document.activeElement");
        if (!(focused instanceof Element element)) {
            return;
        }
        if (arrow && element.hasAttribute("data-chart") && along != isLevel(element)) {
            int steps = event.isShiftDown() ? 10 : 1;
            boolean less = event.getCode() == KeyCode.LEFT || event.getCode() == KeyCode.DOWN;
            listener.nudge(element.getAttribute("data-part"), less ? -steps : steps);
            event.consume();
        } else if (!arrow && element.hasAttribute("data-enter")) {
            listener.act(element.getAttribute("data-enter"), element.getAttribute("data-part"), "");
            event.consume();
        }
    }

    /** The engine does not bring a text field into sight when Tab comes to it as the first. */
    private void released(KeyEvent event) {
        if (ready.isDone() && event.getCode() == KeyCode.TAB) {
            engine.executeScript(
                    "(function(){var e=document.activeElement,r=e&&e.getBoundingClientRect();"
                            + "if(e&&e!==document.body&&(r.bottom<1||r.top>window.innerHeight-1))"
                            + "e.scrollIntoView({block:'center'});})()");
        }
    }

    private static String valueOf(Element field) {
        if (field instanceof HTMLInputElement input) {
            return input.getType().equals("checkbox")
                    ? Boolean.toString(input.getChecked())
                    : input.getValue();
        }
        if (field instanceof HTMLSelectElement select) {
            return select.getValue();
        }
        return field instanceof HTMLTextAreaElement area ? area.getValue() : "";
    }

    private static double number(JSObject object, String member) {
        return ((Number) object.getMember(member)).doubleValue();
    }

    /** True for an address that may be handed to the system's browser once the person agrees. */
    static boolean outside(String href) {
        try {
            String scheme = URI.create(href).getScheme();
            return scheme != null
                    && List.of("http", "https", "mailto")
                            .contains(scheme.toLowerCase(java.util.Locale.ROOT));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
