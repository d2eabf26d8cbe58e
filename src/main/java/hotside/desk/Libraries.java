// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.learner.OwnContent;
import hotside.page.Maths;
import hotside.speech.Language;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;

/** Finds the content that the desk shows; most of it is read when it is wanted. */
public final class Libraries {
    private Libraries() {}

    /** The shipped lessons and problems with a teacher's own, formulas ready to be set. */
    public static Library read() {
        return read(Language.ENGLISH);
    }

    /** As {@link #read()}, in a language. */
    static Library read(Language language) {
        Maths maths = new Maths();
        CompletableFuture<Void> warm = CompletableFuture.runAsync(maths::warmUp);
        Library library = read(maths, language);
        warm.join();
        return library;
    }

    /** The same read again, with formulas that are set already. */
    static Library read(Maths maths, Language language) {
        Path own = OwnContent.folder();
        return new Library(OwnContent.course(own, language), OwnContent.bank(own, language), maths);
    }
}
