// SPDX-License-Identifier: Apache-2.0
package hotside.page;

/** TeX that cannot be set. The message says what is wrong, for the person who wrote the TeX. */
public final class MathsException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final int position;

    /**
     * @param message what is wrong, without the place
     * @param position the character at fault, counted from 1; 0 where no one place is to blame
     */
    public MathsException(String message, int position) {
        super(message);
        this.position = position;
    }

    /** The character of the TeX at fault, counted from 1; 0 where no one place is to blame. */
    public int position() {
        return position;
    }
}
