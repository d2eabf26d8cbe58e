// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

/** Ends a measured run at once when something in it fails, on whatever thread. */
public final class Failures {
    private Failures() {}

    public static void endTheRun() {
        Thread.setDefaultUncaughtExceptionHandler(
                (thread, failure) -> {
                    failure.printStackTrace();
                    Runtime.getRuntime().halt(1);
                });
    }
}
