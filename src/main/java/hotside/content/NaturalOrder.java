// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Paths in the order that people number them: folder by folder, {@code 2-gate} before {@code
 * 10-duct}, capitals without weight. Equal only if the texts are equal.
 */
final class NaturalOrder implements Comparator<String> {
    private static final Pattern PART = Pattern.compile("\\d+|[^\\d/]+|/");

    @Override
    public int compare(String one, String other) {
        Matcher a = PART.matcher(one);
        Matcher b = PART.matcher(other);
        while (a.find()) {
            int order = b.find() ? part(a.group(), b.group()) : 1;
            if (order != 0) {
                return order;
            }
        }
        return b.find() ? -1 : one.compareTo(other);
    }

    private static int part(String a, String b) {
        boolean numbers = isDigit(a.charAt(0)) && isDigit(b.charAt(0));
        if (numbers) {
            return number(a, b);
        }
        boolean ends = a.equals("/") != b.equals("/");
        return ends ? (a.equals("/") ? -1 : 1) : a.compareToIgnoreCase(b);
    }

    private static int number(String a, String b) {
        String first = a.replaceFirst("^0+", "");
        String second = b.replaceFirst("^0+", "");
        return first.length() != second.length()
                ? Integer.compare(first.length(), second.length())
                : first.compareTo(second);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
