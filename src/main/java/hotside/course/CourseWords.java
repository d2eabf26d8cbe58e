// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.speech.Phrases;

/** The words of this room, kept in {@code words.properties} and its translations. */
final class CourseWords {
    private static final Phrases PHRASES = Phrases.of("hotside.course.words");

    private CourseWords() {}

    static String of(String key, Object... fillings) {
        return PHRASES.get(key, fillings);
    }
}
