// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

/**
 * A relation cannot work with what it was given. The message names the relation, the slot, the
 * value and what was expected, and is fit to be shown to a person. It comes in the language spoken,
 * where that has the words.
 */
public class RelationException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String slot;

    /**
     * @param slot the slot concerned, or the empty text
     * @param message for people
     */
    public RelationException(String slot, String message) {
        super(CardWords.refusal(slot, message));
        this.slot = slot;
    }

    RelationException(String slot, String message, Throwable cause) {
        super(CardWords.refusal(slot, message), cause);
        this.slot = slot;
    }

    public String slot() {
        return slot;
    }
}
