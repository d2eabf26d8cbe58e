// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Asks a person for files and folders. */
interface Chooser {
    /** Files to read; none if the person thinks better of it. */
    List<Path> files(String title);

    /** A folder to write into. */
    Optional<Path> folder(String title);

    /**
     * A file to write.
     *
     * @param name that is proposed
     */
    Optional<Path> save(String title, String name);
}
