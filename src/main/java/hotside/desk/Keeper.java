// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.learner.Attempt;
import hotside.learner.Tutor;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** Keeps what must outlive the window: tries and settings. Never on the screen's thread. */
interface Keeper {
    /**
     * @param way how the problems were set
     * @param then run on the screen's thread once the tries are on disk, or once that has failed
     *     and the person was told
     */
    void keep(List<Try> tries, Attempt.Way way, Runnable then);

    /** Keeps tries at problems with nothing shown beforehand. */
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

    /** Remembers a setting. */
    void remember(String key, String value);

    /** A remembered setting. */
    Optional<String> remembered(String key);

    /** How many problems were ever answered rightly, by problem id: 1 if so. */
    Map<String, Boolean> solved();
}
