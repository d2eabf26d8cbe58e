// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.catalogue.Catalogue;
import hotside.content.Once;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.speech.Phrases;
import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Scale;
import hotside.unit.Shown;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.commonmark.node.Node;

/**
 * The appendix of relations: each as a page of its own with law, slots, validity, source and a
 * calculator. Made from the relations themselves, so that it cannot differ from them.
 */
public final class RelationLessons {
    /** What the ids of these pages begin with. */
    public static final String PREFIX = "relation/";

    /** A page to look things up in takes no time of its own. */
    private static final int MINUTES = 0;

    private static final int DIGITS = 4;
    private static final char NO_BREAK = '\u00a0';

    private static final Phrases WORDS = Phrases.of("hotside.course.relations");

    private RelationLessons() {}

    /** A page for each relation, in teaching order. */
    public static List<Lesson> all() {
        return Catalogue.all().stream().map(RelationLessons::of).toList();
    }

    /** The page of one relation. */
    public static Lesson of(Relation relation) {
        return Lesson.page(
                PREFIX + relation.id(),
                relation.topic(),
                relation.title(),
                List.of("relation." + relation.id()),
                relation.sources(),
                new Once<>(() -> content(relation)));
    }

    private static Lesson.Content content(Relation relation) {
        Node body = Markup.parse(text(relation));
        Part calculator =
                new Part.Calculator(
                        relation, relation.typical(), over(relation), relation.outputs().get(0));
        body.appendChild(new PartBlock(calculator));
        return Lesson.Content.of(body, List.of(calculator));
    }

    private static Optional<Slot> over(Relation relation) {
        return relation.inputs().stream()
                .filter(slot -> slot.kind() == Slot.Kind.NUMBER)
                .filter(slot -> slot.fallback().isEmpty())
                .findFirst();
    }

    private static String text(Relation relation) {
        StringBuilder out = new StringBuilder();
        out.append(plain(relation.says())).append("\n\n$$").append(relation.tex()).append("$$\n\n");
        out.append(heading("inputs"));
        out.append(table(relation.inputs(), true)).append('\n');
        out.append(heading("outputs"));
        out.append(table(relation.outputs(), false)).append('\n');
        out.append(heading("assumes"));
        relation.assumptions().forEach(line -> out.append("- ").append(plain(line)).append('\n'));
        List<String> reasons = reasons(relation);
        if (!reasons.isEmpty()) {
            out.append('\n').append(heading("doubtful"));
            reasons.forEach(line -> out.append("- ").append(line).append('\n'));
        }
        out.append('\n').append(WORDS.get("command", command(relation))).append("\n\n");
        return out.append(heading("try")).toString();
    }

    /** How the command line calls it, its slots in the order of the table. */
    private static String command(Relation relation) {
        StringBuilder out = new StringBuilder(relation.id());
        relation.inputs().forEach(slot -> out.append(' ').append(slot.name()).append("=…"));
        return out.toString();
    }

    private static String heading(String key) {
        return "## " + WORDS.get(key) + "\n\n";
    }

    private static String table(List<Slot> slots, boolean inputs) {
        StringBuilder out = new StringBuilder();
        out.append("| | ")
                .append(WORDS.get("column.meaning"))
                .append(" | ")
                .append(WORDS.get("column.unit"))
                .append(inputs ? " | " + WORDS.get("column.range") : "")
                .append(inputs ? " |\n|---|---|---|---|\n" : " |\n|---|---|---|\n");
        for (Slot slot : slots) {
            String unit = slot.quantity().siScale().told();
            out.append("| $")
                    .append(slot.symbol())
                    .append("$ | ")
                    .append(plain(slot.meaning()))
                    .append(optional(slot))
                    .append(" | ")
                    .append(unit.isEmpty() ? "–" : unit);
            out.append(inputs ? " | " + range(slot).replace(' ', NO_BREAK) : "");
            out.append(" |\n");
        }
        return out.toString();
    }

    private static String optional(Slot slot) {
        String choices = slot.choices().isEmpty() ? "" : ": " + String.join(", ", slot.choices());
        return choices
                + slot.fallback().map(value -> WORDS.get("left-out", told(slot, value))).orElse("");
    }

    private static String told(Slot slot, Object value) {
        return value instanceof Double number ? shown(slot, number) : String.valueOf(value);
    }

    /** In the units of an SI shop, the unit said once. */
    private static String range(Slot slot) {
        if (slot.kind() != Slot.Kind.NUMBER) {
            return "–";
        }
        String high = shown(slot, slot.usualMax());
        Scale scale = SlotScale.of(slot, UnitSystem.SI_SHOP);
        double low = scale.fromSi(slot.usualMin(), slot.quantity(), Units.STANDARD_ATMOSPHERE);
        return WORDS.get("range", DecimalHabit.spoken().write(Numbers.upTo(low, DIGITS)), high);
    }

    private static String shown(Slot slot, double value) {
        Scale scale = SlotScale.of(slot, UnitSystem.SI_SHOP);
        double number = scale.fromSi(value, slot.quantity(), Units.STANDARD_ATMOSPHERE);
        return new Shown(DecimalHabit.spoken().write(Numbers.upTo(number, DIGITS)), scale).text();
    }

    private static List<String> reasons(Relation relation) {
        List<String> reasons = new ArrayList<>();
        for (Slot slot : relation.inputs()) {
            if (!slot.usualReason().isEmpty()) {
                reasons.add(
                        WORDS.get(
                                "outside",
                                plain(slot.meaning()),
                                range(slot),
                                plain(slot.usualReason())));
            }
        }
        return reasons;
    }

    /** Text that Markdown leaves as it is. */
    private static String plain(String text) {
        return text.replaceAll("([\\\\`*_{}\\[\\]<>#|$])", "\\\\$1");
    }
}
