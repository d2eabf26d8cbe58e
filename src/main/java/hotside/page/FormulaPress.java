// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.catalogue.Catalogue;
import hotside.course.Course;
import hotside.course.Lesson;
import hotside.course.RelationLessons;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variants;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Values;
import hotside.statistics.draw.SplitMix64;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes the book of formulas while the program is packed: draws every lesson, problem and working
 * once and keeps what had to be set for it.
 */
public final class FormulaPress {
    /** Numbers to draw each problem and each relation with, so that each of its cases comes up. */
    private static final int DRAWS = 20;

    /** Places to draw from between the ends of a range. */
    private static final int PLACES = 10_000;

    private final FormulaBook book = FormulaBook.open();
    private final Maths maths = new Maths(book);
    private final ProblemBank bank = ProblemBank.shipped();
    private final SplitMix64 random = new SplitMix64(1);

    private FormulaPress() {}

    /**
     * @param args where the book goes; its folder is made if need be
     */
    public static void main(String[] args) throws IOException {
        Path file = Path.of(args[0]);
        Files.createDirectories(file.toAbsolutePath().getParent());
        FormulaPress press = new FormulaPress();
        press.print();
        try (Writer out = Files.newBufferedWriter(file)) {
            press.book.write(out);
        }
    }

    private void print() {
        List<Lesson> lessons = new ArrayList<>(Course.shipped().lessons());
        lessons.addAll(RelationLessons.all());
        for (UnitSystem system : UnitSystem.values()) {
            lessons.forEach(lesson -> lesson(lesson, system));
            bank.all().forEach(template -> problem(template, system));
        }
        Catalogue.all().forEach(this::relation);
    }

    private void lesson(Lesson lesson, UnitSystem system) {
        new LessonPage(maths)
                .html(
                        lesson,
                        system,
                        new ContentCheck.NoCards(),
                        Optional.empty(),
                        Optional.empty());
        new LessonText(maths).of(lesson, bank, system);
    }

    private void problem(Template template, UnitSystem system) {
        ProblemCard card = new ProblemCard(maths);
        for (int seed = 1; seed <= DRAWS; seed++) {
            ProblemState state =
                    ProblemState.fresh("", Variants.draw(template, seed, system))
                            .rung(template.hints().size())
                            .working(true);
            card.html(state);
        }
    }

    private void relation(Relation relation) {
        maths.block(relation.tex());
        relation.inputs().forEach(slot -> maths.inline(slot.symbol()));
        relation.outputs().forEach(slot -> maths.inline(slot.symbol()));
        for (int i = 0; i < DRAWS; i++) {
            try {
                new WorkingHtml(maths)
                        .html(
                                relation.work(drawn(relation)),
                                UnitSystem.SI_SHOP,
                                Units.STANDARD_ATMOSPHERE);
            } catch (RelationException e) {
                // No working without a result.
            }
        }
    }

    private Values drawn(Relation relation) {
        Values values = relation.typical();
        for (Slot slot : relation.inputs()) {
            if (slot.kind() == Slot.Kind.CHOICE) {
                int choice = random.below(slot.choices().size());
                values = values.with(slot.name(), slot.choices().get(choice));
            } else if (slot.kind() == Slot.Kind.NUMBER && slot.usualMax() < Double.MAX_VALUE) {
                double low = Math.max(slot.usualMin(), -slot.usualMax());
                values =
                        values.with(
                                slot.name(),
                                low + random.below(PLACES) * (slot.usualMax() - low) / PLACES);
            }
        }
        return values;
    }
}
