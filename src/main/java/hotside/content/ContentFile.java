// SPDX-License-Identifier: Apache-2.0
package hotside.content;

/**
 * A content file as read: front matter, body, and what is wrong with it so far.
 *
 * @param path as shown to people, with {@code /} between its parts
 * @param text the whole text, line ends {@code \n}, characters that cannot be shown replaced
 * @param front the front matter; an empty map if there is none or it cannot be read
 * @param frontRead whether the front matter could be read to its end
 * @param body what follows the front matter; the whole text if there is none
 * @param bodyLine the line of the file where the body starts, from 1
 * @param findings where readers of this file add theirs
 */
public record ContentFile(
        String path,
        String text,
        MapNode front,
        boolean frontRead,
        String body,
        int bodyLine,
        Findings findings) {

    /**
     * The front matter for reading. Says nothing of missing keys if the front matter could not be
     * read: that finding has been made.
     */
    public Fields fields() {
        return Fields.of(front, frontRead ? findings : findings.silenced());
    }

    /** The place in the file of a place in the body, both from 1. */
    public Place inBody(int line, int column) {
        return new Place(bodyLine + line - 1, column);
    }

    /** The file's name without folders and without {@code .md} or {@code .yaml}. */
    public String name() {
        return name(path);
    }

    /** The name of the file of a path. */
    static String name(String path) {
        return last(path).replaceFirst("\\.(md|yaml)$", "");
    }

    /** The name of the folder that the file lies in; empty if its path names none. */
    public String folder() {
        int slash = path.lastIndexOf('/');
        return slash < 0 ? "" : last(path.substring(0, slash));
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }
}
