// SPDX-License-Identifier: Apache-2.0
package hotside.command;

/** A command was not used rightly; the message says how to mend it. */
final class UsageException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UsageException(String message) {
        super(message);
    }
}
