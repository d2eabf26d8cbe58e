// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

/**
 * The record cannot be opened, read or written, and nothing in it was changed. The message says
 * what failed and what can be done, and is fit to be shown to a person.
 */
public final class RecordException extends RuntimeException {
    private static final long serialVersionUID = 1;

    public RecordException(String message, Throwable cause) {
        super(message, cause);
    }
}
