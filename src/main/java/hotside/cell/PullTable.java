// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.unit.Numbers;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/** A pull as a table of text, CSV in SI: what any bench would hand over. */
public final class PullTable {
    private static final int DIGITS = 9;
    private static final String END = "\r\n";

    private PullTable() {}

    /** All that was read. */
    public static String of(Pull pull) {
        return table(pull, read(pull), List.of());
    }

    /** What was read on these channels. */
    public static String of(Pull pull, Collection<Channel> logged) {
        return table(pull, read(pull).stream().filter(logged::contains).toList(), List.of());
    }

    /** All that was read, and the truth beside it. */
    public static String withTruth(Pull pull) {
        return table(pull, read(pull), List.of(Channel.values()));
    }

    private static List<Channel> read(Pull pull) {
        return pull.rows().isEmpty()
                ? List.of()
                : List.copyOf(new TreeSet<>(pull.rows().get(0).readings().keySet()));
    }

    private static String table(Pull pull, List<Channel> read, List<Channel> truth) {
        List<String> head = new ArrayList<>(List.of("time [s]"));
        read.forEach(channel -> head.add(channel.label() + unit(channel)));
        truth.forEach(channel -> head.add("true" + capital(channel.label()) + unit(channel)));
        StringBuilder text = new StringBuilder(String.join(",", head)).append(END);
        for (Row row : pull.rows()) {
            List<String> cells = new ArrayList<>(List.of(cell(row.time())));
            read.forEach(channel -> cells.add(cell(row.readings().get(channel))));
            truth.forEach(channel -> cells.add(cell(row.truth().get(channel))));
            text.append(String.join(",", cells)).append(END);
        }
        return text.toString();
    }

    private static String unit(Channel channel) {
        String label = channel.quantity().siScale().label();
        return " [" + (label.isEmpty() ? "1" : label) + "]";
    }

    private static String cell(double value) {
        return Double.toString(Numbers.rounded(value, DIGITS));
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
