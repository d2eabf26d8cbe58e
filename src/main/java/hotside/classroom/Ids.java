// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.content.Visible;
import java.security.SecureRandom;
import java.util.regex.Pattern;

/** Names of sets and learners: short, and fit for file names, spreadsheets and XML as they are. */
public final class Ids {
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,39}");
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int LETTERS = 10;

    private Ids() {}

    /** What an id looks like, for messages. */
    static String form() {
        return ClassWords.of("id.form");
    }

    /** An id that nobody else has: ten letters that are hard to misread. */
    public static String fresh() {
        byte[] bytes = new byte[Long.BYTES];
        RANDOM.nextBytes(bytes);
        return Hashes.letters(bytes, LETTERS);
    }

    public static boolean isId(String text) {
        return ID.matcher(text).matches();
    }

    static String require(String what, String text) {
        if (!isId(text)) {
            throw new IllegalArgumentException(
                    ClassWords.of("id.unfit", Visible.cut(text, 60), what, form()));
        }
        return text;
    }
}
