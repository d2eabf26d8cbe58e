// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import org.commonmark.node.CustomNode;

/** A formula between dollar signs. */
public final class Tex extends CustomNode {
    private final String source;
    private final boolean display;

    public Tex(String source, boolean display) {
        this.source = source;
        this.display = display;
    }

    public String source() {
        return source;
    }

    /** True for a formula on a line of its own, between double dollar signs. */
    public boolean display() {
        return display;
    }
}
