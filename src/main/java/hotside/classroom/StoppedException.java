// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

/** Somebody stopped the work through its {@link Watch}; what was done is thrown away. */
public final class StoppedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    StoppedException() {
        super("stopped", null, false, false);
    }
}
