// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.course.Course;
import hotside.page.Maths;
import hotside.problem.ProblemBank;
import java.util.concurrent.CompletableFuture;

/** Reads the shipped content, using both of a small machine's cores. */
public final class Libraries {
    private Libraries() {}

    /** The shipped lessons and problems, with formulas ready to be set. */
    public static Library read() {
        Maths maths = new Maths();
        CompletableFuture<Void> warm = CompletableFuture.runAsync(maths::warmUp);
        ProblemBank bank = ProblemBank.shipped();
        Course course = Course.shipped();
        warm.join();
        return new Library(course, bank, maths);
    }
}
