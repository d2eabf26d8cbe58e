// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

/**
 * Logs that cannot be set against each other; the message is for people and says how to mend it.
 */
public final class ComparisonException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    ComparisonException(String message) {
        super(message);
    }
}
