// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.unit.DecimalHabit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * The decimal mark that the person at the desk writes: not known at first, and learned from what is
 * typed. The mark of the language spoken is taken for decimal until the person has shown another
 * habit; what stays open, such as {@code 1.234} on a German desk, is asked. What was shown is kept
 * with the settings of whoever sits here, so it need not be shown again tomorrow.
 */
final class Habit {
    /** As it is called among the settings. */
    static final String REMEMBERED = "decimal-mark";

    private final Supplier<Optional<String>> before;
    private final Consumer<String> keep;

    /** A habit that is forgotten with the window. */
    Habit() {
        this(new AtomicReference<>());
    }

    private Habit(AtomicReference<String> memory) {
        this(() -> Optional.ofNullable(memory.get()), memory::set);
    }

    private Habit(Supplier<Optional<String>> before, Consumer<String> keep) {
        this.before = before;
        this.keep = keep;
    }

    /** The habit of whoever sits at the desk, as a keeper remembers it. */
    static Habit keptBy(Keeper keeper) {
        return new Habit(
                () -> keeper.remembered(REMEMBERED), mark -> keeper.remember(REMEMBERED, mark));
    }

    /** Asked anew each time where it is kept, for another person may have sat down. */
    private DecimalHabit learned() {
        return before.get()
                .flatMap(
                        name ->
                                Arrays.stream(DecimalHabit.values())
                                        .filter(habit -> habit.name().equals(name))
                                        .findFirst())
                .orElse(DecimalHabit.UNKNOWN);
    }

    /** How to read this text, once what it shows is learned. */
    DecimalHabit of(String text) {
        DecimalHabit shown = DecimalHabit.shownIn(text);
        if (shown != DecimalHabit.UNKNOWN) {
            keep.accept(shown.name());
        }
        DecimalHabit own = learned();
        DecimalHabit spoken = DecimalHabit.spoken();
        boolean inSpokenMark = text.indexOf(spoken == DecimalHabit.COMMA ? ',' : '.') >= 0;
        if (!inSpokenMark) {
            return own;
        }
        return own == DecimalHabit.UNKNOWN ? spoken : agreed(List.of(own, spoken));
    }

    /** How to read several texts together; unknown where they would be read differently. */
    DecimalHabit of(List<String> texts) {
        return agreed(texts.stream().filter(text -> !text.isBlank()).map(this::of).toList());
    }

    private static DecimalHabit agreed(List<DecimalHabit> habits) {
        List<DecimalHabit> different = habits.stream().distinct().toList();
        return different.size() == 1 ? different.get(0) : DecimalHabit.UNKNOWN;
    }
}
