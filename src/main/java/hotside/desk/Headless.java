// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.Locale;

/** Drawing into memory, for machines without a display. */
public final class Headless {
    private Headless() {}

    /** True on a Linux machine where no window can open. */
    public static boolean noDisplay() {
        boolean linux = System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("linux");
        return linux && empty("DISPLAY") && empty("WAYLAND_DISPLAY");
    }

    /** To be called before anything of the toolkit; windows are drawn into memory from then on. */
    public static void install() {
        System.setProperty("glass.platform", "Monocle");
        System.setProperty("monocle.platform", "Headless");
        System.setProperty("prism.order", "sw");
        System.setProperty("java.awt.headless", "true");
    }

    private static boolean empty(String variable) {
        String value = System.getenv(variable);
        return value == null || value.isBlank();
    }
}
