// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import java.util.Optional;

/** A mistake that leads to a number of its own, and has a name in verdicts and records. */
public sealed interface NamedMistake permits Mistake, Misreading {
    /** How verdicts and records call it. */
    String id();

    /** What the world would look like if the wrong number were true; {@code {value}} is it. */
    Optional<String> world();
}
