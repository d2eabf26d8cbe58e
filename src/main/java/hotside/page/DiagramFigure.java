// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.course.Part;
import hotside.page.diagram.Drawings;
import hotside.page.diagram.Picture;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Values;
import hotside.unit.UnitSystem;
import java.util.Optional;

/** Draws a diagram; one that follows a calculator is drawn again whenever that one moves. */
public final class DiagramFigure {
    private DiagramFigure() {}

    /** The whole figure. */
    public static String html(
            String id, Part.DiagramFigure part, Values in, UnitSystem system, double ambient) {
        return "<figure class=\"drawing\"><div"
                + Html.attribute("id", id)
                + (part.follows().isPresent() ? " aria-live=\"polite\"" : "")
                + ">"
                + inside(id, part, in, system, ambient)
                + "</div>"
                + Html.element("figcaption", "", caption(part))
                + "</figure>";
    }

    /** The drawing alone, or why there is none for these values. */
    public static String inside(
            String id, Part.DiagramFigure part, Values in, UnitSystem system, double ambient) {
        try {
            return picture(part, in, system, ambient).svg(id + "-svg", part.diagram().title());
        } catch (RelationException e) {
            return Html.element("p", "class=\"quiet\"", Words.of("diagram.none", e.getMessage()));
        }
    }

    /** In words. */
    static String text(Part.DiagramFigure part, UnitSystem system, double ambient) {
        String title = part.diagram().title();
        try {
            return Words.of(
                    "text.diagram", title, picture(part, atRest(part), system, ambient).words());
        } catch (RelationException e) {
            return Words.of("text.diagram", title, Words.of("diagram.none", e.getMessage()));
        }
    }

    /**
     * What a diagram is drawn from while a calculator stands at some values.
     *
     * @param leader the calculator's values, SI
     */
    public static Values following(Part.DiagramFigure part, Values leader) {
        Values in = part.start();
        Optional<Part.Calculator> follows = part.follows();
        if (follows.isEmpty()) {
            return in;
        }
        Values all = leader;
        try {
            for (var out : follows.get().relation().solve(leader).asMap().entrySet()) {
                all = all.with(out.getKey(), out.getValue());
            }
        } catch (RelationException e) {
            // Its inputs are still worth drawing.
            all = leader;
        }
        for (Slot slot : part.diagram().shared(follows.get().relation())) {
            if (all.has(slot.name())) {
                in = in.with(slot.name(), all.get(slot.name()));
            }
        }
        return in;
    }

    /** What a diagram is drawn from where nothing moves: as its calculator stands at first. */
    public static Values atRest(Part.DiagramFigure part) {
        return part.follows().map(c -> following(part, c.start())).orElse(part.start());
    }

    private static String caption(Part.DiagramFigure part) {
        return part.follows()
                .map(c -> Words.of("diagram.follows", part.diagram().title(), c.relation().title()))
                .orElse(part.diagram().title());
    }

    private static Picture picture(
            Part.DiagramFigure part, Values in, UnitSystem system, double ambient) {
        return Drawings.of(part.diagram(), in, system, ambient);
    }
}
