// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.util.ResourceBundle;

/**
 * The words of pages and of the desk around them, kept in {@code words.properties} so that they can
 * be translated.
 */
public final class Words {
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("hotside.page.words");

    private Words() {}

    /**
     * The words of this key, with {@code {0}}, {@code {1}} … filled in.
     *
     * @throws java.util.MissingResourceException if there are none; a test asks for every key that
     *     is used
     */
    public static String of(String key, Object... fillings) {
        String text = BUNDLE.getString(key);
        for (int i = 0; i < fillings.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(fillings[i]));
        }
        return text;
    }
}
