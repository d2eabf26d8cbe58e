// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.unit.DecimalHabit;
import java.util.List;

/**
 * The decimal mark that the person at the desk writes: not known at first, and learned from what is
 * typed. The mark of the language spoken is taken for decimal until the person has shown another
 * habit; what stays open, such as {@code 1.234} on a German desk, is asked.
 */
final class Habit {
    private DecimalHabit learned = DecimalHabit.UNKNOWN;

    /** How to read this text, once what it shows is learned. */
    DecimalHabit of(String text) {
        DecimalHabit shown = DecimalHabit.shownIn(text);
        if (shown != DecimalHabit.UNKNOWN) {
            learned = shown;
        }
        DecimalHabit spoken = DecimalHabit.spoken();
        boolean inSpokenMark = text.indexOf(spoken == DecimalHabit.COMMA ? ',' : '.') >= 0;
        if (!inSpokenMark) {
            return learned;
        }
        return learned == DecimalHabit.UNKNOWN ? spoken : agreed(List.of(learned, spoken));
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
