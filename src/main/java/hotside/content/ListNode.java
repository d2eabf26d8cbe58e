// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.util.List;

/** A list of front matter, in its order. */
public record ListNode(Place place, List<Node> items) implements Node {
    public ListNode {
        items = List.copyOf(items);
    }

    @Override
    public String kind() {
        return "a list";
    }
}
