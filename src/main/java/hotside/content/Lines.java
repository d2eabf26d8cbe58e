// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.util.Arrays;

/** The lines of a text whose line ends are all {@code \n}. */
final class Lines {
    private final String text;
    private final int[] starts;

    Lines(String text) {
        this.text = text;
        int[] found = new int[16];
        int count = 1;
        for (int i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) {
            if (count == found.length) {
                found = Arrays.copyOf(found, 2 * count);
            }
            found[count++] = i + 1;
        }
        this.starts = Arrays.copyOf(found, count);
    }

    int count() {
        return starts.length;
    }

    /** The line without its end; empty if there is no such line. */
    String line(int number) {
        return number < 1 || number > starts.length
                ? ""
                : text.substring(starts[number - 1], end(number));
    }

    /** Where a line starts in the text; the text's end if there is no such line. */
    int start(int number) {
        return number > starts.length ? text.length() : starts[number - 1];
    }

    /** The place of an offset in the text. */
    Place place(int offset) {
        int found = Arrays.binarySearch(starts, offset);
        int line = found >= 0 ? found + 1 : -found - 1;
        return new Place(line, 1 + text.codePointCount(starts[line - 1], offset));
    }

    private int end(int number) {
        return number < starts.length ? starts[number] - 1 : text.length();
    }
}
