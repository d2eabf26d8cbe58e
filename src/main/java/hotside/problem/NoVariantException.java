// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

/**
 * A template from which no sound variant could be drawn. The message says what stood in the way.
 */
public class NoVariantException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public NoVariantException(String message) {
        super(message);
    }
}
