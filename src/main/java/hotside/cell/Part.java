// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Something off the shelf that can be fitted to a rig.
 *
 * @param id as typed
 * @param title for people
 * @param settings what it makes of the rig: values as typed, by path
 */
public record Part(String id, String title, Map<String, String> settings) {
    public Part {
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
    }

    /** In the language spoken, for what is shipped. */
    @Override
    public String title() {
        return CellWords.title("part." + id, title);
    }
}
