// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.List;

/** Where counted tries go. */
interface Tries {
    /**
     * Keeps tries.
     *
     * @param then run once they are safe, on the thread of the screen: only then is the verdict
     *     shown
     */
    void keep(List<Try> tries, Runnable then);

    /** All questions of a problem are answered rightly, and that is safe. */
    default void solved(String problem) {}
}
