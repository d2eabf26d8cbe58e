// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import org.commonmark.node.CustomNode;

/** The first use of a term in a lesson. */
public final class TermUse extends CustomNode {
    private final Term term;
    private final String literal;

    TermUse(Term term, String literal) {
        this.term = term;
        this.literal = literal;
    }

    public Term term() {
        return term;
    }

    /** As it stands in the text. */
    public String literal() {
        return literal;
    }
}
