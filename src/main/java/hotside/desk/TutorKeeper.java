// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.learner.Attempt;
import hotside.learner.Tutor;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/** Keeps what must outlive the window, and asks the tutor what it means. */
interface TutorKeeper extends Keeper {
    /**
     * Keeps tries.
     *
     * @param way how the problems were set
     * @param then as in {@link Keeper#keep}
     */
    void keep(List<Try> tries, Attempt.Way way, Runnable then);

    @Override
    default void keep(List<Try> tries, Runnable then) {
        keep(tries, Attempt.Way.FULL, then);
    }

    /**
     * Asks the tutor something.
     *
     * @param question runs beside the screen, after all that was handed over before
     * @param then is given the answer on the screen's thread; not run if the record failed, which
     *     the person is told
     */
    <T> void ask(Function<Tutor, T> question, Consumer<T> then);
}
