// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Keeps what must outlive the window: tries and settings. Never on the screen's thread. */
interface Keeper extends Tries {
    /**
     * {@inheritDoc}
     *
     * @param then run on the screen's thread once the tries are on disk, or once that has failed
     *     and the person was told
     */
    @Override
    void keep(List<Try> tries, Runnable then);

    /** Remembers a setting. */
    void remember(String key, String value);

    /** A remembered setting. */
    Optional<String> remembered(String key);

    /** How many problems were ever answered rightly, by problem id: 1 if so. */
    Map<String, Boolean> solved();
}
