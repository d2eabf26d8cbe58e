// SPDX-License-Identifier: Apache-2.0
package hotside.content;

/** How a content file is laid out. */
enum FileForm {
    /** Front matter between two {@code ---} lines, then text. */
    TEXT(".md") {
        @Override
        ContentFile split(String path, SafeText text) {
            return FrontMatter.split(path, text);
        }
    },
    /** Keys and values only. */
    DATA(".yaml") {
        @Override
        ContentFile split(String path, SafeText text) {
            return FrontMatter.all(path, text);
        }
    };

    private final String suffix;

    FileForm(String suffix) {
        this.suffix = suffix;
    }

    /** How the names of such files end. */
    String suffix() {
        return suffix;
    }

    abstract ContentFile split(String path, SafeText text);
}
