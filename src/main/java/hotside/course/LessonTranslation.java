// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.content.ContentFile;
import java.util.Optional;
import java.util.function.Function;

/**
 * A lesson in another language. It stands where the original stands, in a folder named after the
 * language, and holds words only: every number comes from the original, so none can differ.
 */
public final class LessonTranslation {
    private LessonTranslation() {}

    /**
     * @param file findings are added to its own
     * @param originals finds a lesson by its id
     * @return the lesson in the other language, if the file is free of findings
     */
    public static Optional<Lesson> read(
            ContentFile file, Function<String, Optional<Lesson>> originals) {
        return original(file, originals)
                .flatMap(original -> LessonReader.translation(file, original));
    }

    /** What a file translates; that it is missing is a finding. */
    static Optional<Lesson> original(
            ContentFile file, Function<String, Optional<Lesson>> originals) {
        String id = LessonReader.id(file.path());
        Optional<Lesson> original = originals.apply(id);
        if (original.isEmpty()) {
            file.findings()
                    .add(
                            file.fields().place(),
                            "there is no lesson \"" + id + "\" to translate",
                            "the folder and the name of the original",
                            "");
        }
        return original;
    }
}
