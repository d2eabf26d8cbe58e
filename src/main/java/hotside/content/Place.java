// SPDX-License-Identifier: Apache-2.0
package hotside.content;

/**
 * A place in a file.
 *
 * @param line from 1
 * @param column from 1, counted in Unicode code points; a tab counts as one
 */
public record Place(int line, int column) implements Comparable<Place> {
    /** The start of a file. */
    public static final Place START = new Place(1, 1);

    public Place {
        if (line < 1 || column < 1) {
            throw new IllegalArgumentException("no place in a file: " + line + ":" + column);
        }
    }

    /** The place so many columns further right. */
    public Place right(int columns) {
        return new Place(line, column + columns);
    }

    @Override
    public int compareTo(Place other) {
        return line != other.line
                ? Integer.compare(line, other.line)
                : Integer.compare(column, other.column);
    }

    @Override
    public String toString() {
        return line + ":" + column;
    }
}
