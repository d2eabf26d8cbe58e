// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Moves labels apart, each as little as can be, so that none covers another. */
final class Spread {
    private Spread() {}

    /** Labels that touch and so move as one. */
    private static final class Block {
        final List<Integer> members = new ArrayList<>();
        double wishes;
        double height;

        double top(double from, double to) {
            double free = wishes / members.size() - height / 2;
            return Math.max(from, Math.min(to - height, free));
        }
    }

    /**
     * @param wished the wished centre of each label
     * @param heights the height of each label
     * @param from the upper edge of the room
     * @param to the lower edge; the heights must fit in between
     * @return the centre of each label
     */
    static double[] apart(double[] wished, double[] heights, double from, double to) {
        List<Block> blocks = new ArrayList<>();
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < wished.length; i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> wished[i]));
        for (int i : order) {
            Block block = new Block();
            block.members.add(i);
            block.height = heights[i];
            block.wishes = wished[i];
            blocks.add(block);
            joinTouching(blocks, from, to);
        }
        return centres(blocks, heights, from, to);
    }

    private static void joinTouching(List<Block> blocks, double from, double to) {
        while (blocks.size() > 1) {
            Block last = blocks.get(blocks.size() - 1);
            Block before = blocks.get(blocks.size() - 2);
            if (before.top(from, to) + before.height <= last.top(from, to)) {
                return;
            }
            before.members.addAll(last.members);
            before.wishes += last.wishes;
            before.height += last.height;
            blocks.remove(blocks.size() - 1);
        }
    }

    private static double[] centres(List<Block> blocks, double[] heights, double from, double to) {
        double[] centres = new double[heights.length];
        for (Block block : blocks) {
            double top = block.top(from, to);
            for (int i : block.members) {
                centres[i] = top + heights[i] / 2;
                top += heights[i];
            }
        }
        return centres;
    }
}
