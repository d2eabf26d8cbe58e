// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.content.ContentFile;
import hotside.content.Place;
import hotside.content.ScalarNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;

/** A fenced block of a lesson: the words of its opening line and what stands inside. */
final class Fence {
    private static final int LONGEST_LINE = 1_000;
    private static final Pattern HEAD = Pattern.compile("\\s*[a-z][A-Za-z0-9]*\\s*:.*");

    private final ContentFile file;
    private final FencedCodeBlock fence;
    private final List<String> words;
    private final String[] texts;
    private final Map<String, Place> keys = new LinkedHashMap<>();
    private int headLines;

    Fence(ContentFile file, FencedCodeBlock fence, String[] words) {
        this.file = file;
        this.fence = fence;
        this.words = List.of(words);
        this.texts = fence.getLiteral().split("\n");
    }

    /** The words of the opening line, the kind first. */
    List<String> words() {
        return words;
    }

    /** The word after the kind. */
    String subject() {
        return words.size() > 1 ? words.get(1) : "";
    }

    private int line() {
        return fence.getSourceSpans().get(0).getLineIndex();
    }

    private int column() {
        return fence.getSourceSpans().get(0).getColumnIndex();
    }

    Place start() {
        return Markup.place(file, line(), column());
    }

    /** Where a word of the opening line stands; its end where there is no such word. */
    Place word(int index) {
        if (file.findings().isFull()) {
            return Place.START;
        }
        String text = file.body().lines().skip(line()).findFirst().orElse("");
        int at = column();
        for (int i = 0; i <= index && i < words.size(); i++) {
            at = text.indexOf(words.get(i), i == 0 ? at : at + words.get(i - 1).length());
        }
        // A word with an escape in it is not found as it is spelt.
        int known = at < 0 ? column() : at;
        return Markup.place(file, line(), index < words.size() ? known : text.length());
    }

    /** What is inside, or stands after the lines that {@link #head} read; with its places. */
    Node markdown() {
        StringBuilder rest = new StringBuilder();
        for (int i = headLines; i < texts.length; i++) {
            rest.append(texts[i]).append('\n');
        }
        return Markup.parse(
                headLines == 0 ? fence.getLiteral() : rest.toString(),
                line() + 1 + headLines,
                column());
    }

    /** Every line as {@code key: value}. */
    Map<String, ScalarNode> keyed() {
        return keyed(texts.length);
    }

    /** The lines of {@code key: value} that the block begins with; Markdown follows. */
    Map<String, ScalarNode> head() {
        headLines = 0;
        while (headLines < texts.length && HEAD.matcher(texts[headLines]).matches()) {
            headLines++;
        }
        return keyed(headLines);
    }

    /** Where the key of a line stands. */
    Place key(String key) {
        return keys.getOrDefault(key, start());
    }

    private Map<String, ScalarNode> keyed(int count) {
        Map<String, ScalarNode> lines = new LinkedHashMap<>();
        for (int i = 0; i < count; i++) {
            // In front of it stand only marks of quotes and lists, one column each.
            Place place = file.inBody(line() + 2 + i, column() + 1);
            int colon = texts[i].indexOf(':');
            if (texts[i].isBlank()) {
                continue;
            }
            if (colon < 1 || texts[i].length() > LONGEST_LINE) {
                file.findings()
                        .add(
                                place,
                                colon < 1
                                        ? "this line says nothing"
                                        : "a line of " + texts[i].length() + " characters",
                                "slot: value",
                                "");
                continue;
            }
            String text = texts[i].substring(colon + 1);
            int start = colon + 1 + (text.length() - text.stripLeading().length());
            String key = texts[i].substring(0, colon).strip();
            ScalarNode value =
                    new ScalarNode(place.right(texts[i].codePointCount(0, start)), text.strip());
            if (lines.put(key, value) != null) {
                file.findings().add(place, "\"" + key + "\" stands here twice", "once", "");
            }
            keys.put(key, place);
        }
        return lines;
    }

    /** A part of a value, with its own place. */
    static ScalarNode part(ScalarNode whole, Matcher matcher, int group) {
        return new ScalarNode(whole.at(matcher.start(group)), matcher.group(group).strip());
    }
}
