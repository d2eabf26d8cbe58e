// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.content.Visible;

/** A file of the class is refused; the message says what, what was expected, how to mend it. */
public final class RefusedException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final int LONGEST = 400;

    private final Reason reason;

    /** Text quoted from the file is made safe to show, and cut. */
    public RefusedException(Reason reason, String message) {
        super(Visible.cut(message, LONGEST), null, false, false);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
