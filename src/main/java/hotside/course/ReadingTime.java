// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import java.util.Arrays;

/**
 * How long a lesson may take: its words at {@value #WORDS_A_MINUTE} a minute, and two to eight
 * minutes for each part that a learner works. Figures for a careful reader of 16; common practice,
 * no source.
 *
 * @param words in running text
 * @param parts to work: calculators, problems, examples, predictions
 */
public record ReadingTime(int words, int parts) {
    static final int WORDS_A_MINUTE = 180;
    private static final int QUICK = 2;
    private static final int SLOW = 8;
    private static final int SLACK = 10;

    /** Of a lesson. */
    public static ReadingTime of(Lesson lesson) {
        long words =
                Arrays.stream(Search.words(lesson).split("\\s+"))
                        .filter(word -> word.chars().anyMatch(Character::isLetter))
                        .count();
        long parts =
                lesson.parts().stream()
                        .filter(
                                part ->
                                        part instanceof Part.Calculator
                                                || part instanceof Part.ProblemCard
                                                || part instanceof Part.WorkedExample
                                                || part instanceof Part.FadedExample
                                                || part instanceof Part.Prediction)
                        .count();
        return new ReadingTime((int) words, (int) parts);
    }

    private int reading() {
        return words / WORDS_A_MINUTE;
    }

    /** Minutes that it takes at least. */
    public int least() {
        return Math.min(120, reading() + QUICK * parts);
    }

    /** Minutes that it should take at most. */
    public int most() {
        return 2 * reading() + SLOW * parts + SLACK;
    }
}
