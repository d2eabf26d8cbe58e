// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import org.commonmark.node.CustomNode;

/** A value in double braces, computed when the page is drawn. */
public final class ComputedValue extends CustomNode {
    private final String expression;

    public ComputedValue(String expression) {
        this.expression = expression;
    }

    /** What stands between the braces, trimmed. */
    public String expression() {
        return expression;
    }
}
