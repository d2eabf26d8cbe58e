// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What is wrong with one file, collected while it is read, so that an author sees it all at once.
 * Keeps the first hundred and counts the rest. Not for several threads.
 */
public final class Findings {
    private static final int MOST = 100;

    private final String path;
    private final Lines lines;
    private final boolean silent;
    private final Set<Finding> found = new LinkedHashSet<>();
    private int more;

    /**
     * @param path the file as shown to people
     * @param text its text, line ends {@code \n}
     */
    public Findings(String path, String text) {
        this(path, new Lines(text), false);
    }

    private Findings(String path, Lines lines, boolean silent) {
        this.path = path;
        this.lines = lines;
        this.silent = silent;
    }

    /** A collector for the same file that forgets: for what follows from a finding already made. */
    Findings silenced() {
        return new Findings(path, lines, true);
    }

    /**
     * Adds a finding; the same one twice counts once.
     *
     * @param what a phrase without a full stop
     * @param expected what would have been right, or empty
     * @param mend how to put it right, or empty
     */
    public void add(Place place, String what, String expected, String mend) {
        if (silent) {
            return;
        }
        if (found.size() == MOST) {
            more++;
            return;
        }
        int line = Math.min(place.line(), lines.count());
        Excerpt excerpt = Excerpt.of(lines.line(line), place.column());
        found.add(new Finding(path, line, place.column(), what, excerpt, expected, mend));
    }

    /** Adds a finding at a node's place. */
    public void add(Node node, String what, String expected, String mend) {
        add(node.place(), what, expected, mend);
    }

    public String path() {
        return path;
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    /** Whether further findings would only be counted. */
    public boolean isFull() {
        return silent || found.size() == MOST;
    }

    /** The findings in the order of the file; the last one tells if some were left out. */
    public List<Finding> list() {
        List<Finding> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparing(Finding::place));
        if (more > 0) {
            Place last = sorted.get(sorted.size() - 1).place();
            String what = more + " more findings in this file are not shown";
            String mend = "mend those above first";
            sorted.add(new Finding(path, last.line(), last.column(), what, Excerpt.NONE, "", mend));
        }
        return List.copyOf(sorted);
    }

    /** Whether something was found on this line. */
    boolean onLine(int line) {
        return found.stream().anyMatch(finding -> finding.line() == line);
    }

    Lines lines() {
        return lines;
    }
}
