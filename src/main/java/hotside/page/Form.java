// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.util.Map;

/** Fields of a page that is one form; what is typed reaches Java as edits of its part. */
public final class Form {
    private final String part;
    private final Map<String, String> typed;

    /**
     * @param part of all its fields
     * @param typed what they hold, by name
     */
    public Form(String part, Map<String, String> typed) {
        this.part = part;
        this.typed = typed;
    }

    /** A field for text; Enter in it does {@code enter}. */
    public String text(String name, String label, String placeholder, String enter) {
        return open(name, label)
                + "<input type=\"text\" autocomplete=\"off\""
                + common(name)
                + Html.attribute("data-enter", enter)
                + Html.attribute("value", typed.getOrDefault(name, ""))
                + Html.attribute("placeholder", placeholder)
                + "></div>";
    }

    /** A field for text in a cell of a table, whose column says what it is. */
    public String cell(String name, String spoken, String placeholder, String enter) {
        return "<input type=\"text\" autocomplete=\"off\" class=\"cell\""
                + common(name)
                + Html.attribute("aria-label", spoken)
                + Html.attribute("data-enter", enter)
                + Html.attribute("value", typed.getOrDefault(name, ""))
                + Html.attribute("placeholder", placeholder)
                + ">";
    }

    /**
     * A choice of one.
     *
     * @param options what is shown, by what is typed, in order
     */
    public String select(String name, String label, Map<String, String> options) {
        StringBuilder out =
                new StringBuilder(open(name, label))
                        .append("<select")
                        .append(common(name))
                        .append(">");
        options.forEach(
                (value, shown) ->
                        out.append("<option")
                                .append(Html.attribute("value", value))
                                .append(value.equals(typed.get(name)) ? " selected" : "")
                                .append(">")
                                .append(Xml.escape(shown))
                                .append("</option>"));
        return out.append("</select></div>").toString();
    }

    /** Something to tick; holds {@code true} or {@code false}. */
    public String tick(String name, String label) {
        return "<label class=\"tick\"><input type=\"checkbox\""
                + common(name)
                + ("true".equals(typed.get(name)) ? " checked" : "")
                + "> "
                + Xml.escape(label)
                + "</label>";
    }

    /** A button. */
    public String button(String action, String label, boolean primary) {
        return button(action, "", label, primary);
    }

    /** A button with something to tell. */
    public String button(String action, String argument, String label, boolean primary) {
        return "<button type=\"button\""
                + (primary ? " class=\"primary\"" : "")
                + Html.attribute("id", id(action + (argument.isEmpty() ? "" : "-" + argument)))
                + Html.attribute("data-part", part)
                + Html.attribute("data-do", action)
                + Html.attribute("data-arg", argument)
                + ">"
                + Xml.escape(label)
                + "</button>";
    }

    private String open(String name, String label) {
        return "<div class=\"field\"><label"
                + Html.attribute("for", id(name))
                + ">"
                + Xml.escape(label)
                + "</label>";
    }

    private String common(String name) {
        return Html.attribute("id", id(name))
                + Html.attribute("data-part", part)
                + Html.attribute("data-slot", name)
                + Html.attribute("data-kind", "form");
    }

    private String id(String name) {
        return part + "-" + name;
    }
}
