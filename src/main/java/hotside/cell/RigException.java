// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

/** A rig was asked for what it has not, or cannot run so. The message is fit for people. */
public final class RigException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String what;
    private final String expected;

    /**
     * @param what is the matter, a phrase
     * @param expected what would have been right, a phrase; empty if the first says it
     */
    public RigException(String what, String expected) {
        super(expected.isEmpty() ? what : CellWords.of("expected", what, expected));
        this.what = what;
        this.expected = expected;
    }

    /** What is the matter, a phrase. */
    public String what() {
        return what;
    }

    /** What would have been right, a phrase; empty if {@link #what} says it. */
    public String expected() {
        return expected;
    }
}
