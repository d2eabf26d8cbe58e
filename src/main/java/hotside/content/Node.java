// SPDX-License-Identifier: Apache-2.0
package hotside.content;

/** A value of front matter with its place in the file. */
public sealed interface Node permits MapNode, ListNode, ScalarNode {
    /** Where it starts in the file (not in the front matter). */
    Place place();

    /** What it is, for messages: {@code a map}, {@code a list}, {@code text}, {@code empty}. */
    String kind();
}
