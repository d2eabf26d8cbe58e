// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import org.commonmark.node.CustomBlock;

/** The place of a living part in a page. */
public final class PartBlock extends CustomBlock {
    private final Part part;

    public PartBlock(Part part) {
        this.part = part;
    }

    public Part part() {
        return part;
    }
}
