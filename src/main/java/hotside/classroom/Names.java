// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.util.Locale;

/** How constants are called in files: {@code AFTER_DUE} is {@code after-due}. */
final class Names {
    private Names() {}

    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
