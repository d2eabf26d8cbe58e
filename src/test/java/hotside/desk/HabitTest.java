// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import hotside.unit.DecimalHabit;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The decimal mark that a person showed is known again after the program was closed. */
class HabitTest {
    @TempDir private Path data;

    private RecordKeeper keeper() {
        return RecordKeeper.open(data, Runnable::run);
    }

    @Test
    void aHabitThatNobodyKeepsIsLearnedAnew() {
        Habit habit = new Habit();
        assertEquals(DecimalHabit.UNKNOWN, habit.of("1,234"));
        assertEquals(DecimalHabit.COMMA, habit.of("12,5"));
        assertEquals(DecimalHabit.COMMA, habit.of("1,234"));
        assertEquals(DecimalHabit.UNKNOWN, new Habit().of("1,234"));
    }

    @Test
    void aKeptHabitOutlivesTheProgram() {
        try (RecordKeeper keeper = keeper()) {
            assertEquals(DecimalHabit.COMMA, Habit.keptBy(keeper).of("12,5"));
        }
        try (RecordKeeper keeper = keeper()) {
            assertEquals(DecimalHabit.COMMA, Habit.keptBy(keeper).of("1,234"));
            assertEquals(DecimalHabit.POINT, Habit.keptBy(keeper).of("12.5"));
        }
        try (RecordKeeper keeper = keeper()) {
            assertEquals(DecimalHabit.POINT, Habit.keptBy(keeper).of("1,234"));
            assertEquals(Map.of(), keeper.solved(), "a setting is no answer");
        }
    }

    @Test
    void whoSitsDownNextHasAHabitOfTheirOwn() {
        try (RecordKeeper keeper = keeper()) {
            Habit habit = Habit.keptBy(keeper);
            habit.of("12,5");
            keeper.another(() -> {});
            keeper.settle();
            assertEquals(DecimalHabit.UNKNOWN, habit.of("1,234"));
        }
    }

    @Test
    void aNumberInALessonIsReadByTheMarkOfTheDayBefore() {
        NoNetwork.install();
        Screen.start();
        Library library = Libraries.read();
        double asked = pressureAfterTyping(library, "98,765 kPa absolute");
        assertNotEquals(98_765, asked, 1e-6, "nobody can know which mark this is");
        pressureAfterTyping(library, "98,5 kPa absolute");
        assertEquals(98_765, pressureAfterTyping(library, "98,765 kPa absolute"), 1e-6);
    }

    /** In a desk that is opened and closed for it. */
    private double pressureAfterTyping(Library library, String text) {
        OpenDesk desk =
                OpenDesk.open(library, data, keeper -> Optional.of("ground/hot-cold-thin-dense"));
        double pressure =
                Screen.on(
                        () -> {
                            LessonPlace place = desk.window().lessonPlace();
                            place.edit("c1", "pressure", "text", text);
                            return place.calculator("c1").orElseThrow().values().number("pressure");
                        });
        desk.close();
        return pressure;
    }
}
