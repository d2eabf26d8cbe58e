// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

/** Told how far long work has come, and may stop it. Called from several threads. */
@FunctionalInterface
public interface Watch {
    /** Nobody looks and nobody stops. */
    Watch NONE = (done, all) -> true;

    /** True to go on. */
    boolean goOn(int done, int all);
}
