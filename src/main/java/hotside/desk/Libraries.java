// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.learner.OwnContent;
import hotside.page.Maths;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;

/** Reads the shipped content, using both of a small machine's cores. */
public final class Libraries {
    private Libraries() {}

    /** The shipped lessons and problems with a teacher's own, formulas ready to be set. */
    public static Library read() {
        Maths maths = new Maths();
        CompletableFuture<Void> warm = CompletableFuture.runAsync(maths::warmUp);
        Library library = read(maths);
        warm.join();
        return library;
    }

    /** The same read again, with formulas that are set already. */
    static Library read(Maths maths) {
        Path own = OwnContent.folder();
        return new Library(OwnContent.course(own), OwnContent.bank(own), maths);
    }
}
