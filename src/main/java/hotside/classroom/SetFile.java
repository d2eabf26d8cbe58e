// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.classroom.ProblemSet.Item;
import hotside.classroom.ProblemSet.Rules;
import hotside.content.WholeFile;
import hotside.problem.Variants;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A problem set as it is handed out: sealed with the instructor's key.
 *
 * @param set what it holds
 * @param key whose seal it bears; that it is the instructor's has to be asked by other ways
 * @param hash of the sealed content, which hand-ins refer to
 */
public record SetFile(ProblemSet set, PublicKeyText key, String hash) {
    /** How the names of such files end. */
    public static final String ENDING = ".hotset";

    static final String FORMAT = "hotside-set";
    static final int VERSION = 1;
    private static final int LONGEST_ID = 100;

    /** The file's bytes. */
    public static byte[] bytes(ProblemSet set, SigningKey key) {
        List<String> lines = new ArrayList<>();
        Rules rules = set.rules();
        lines.add(
                JsonLine.write(
                        "format", FORMAT,
                        "version", VERSION,
                        "set", set.id(),
                        "edition", set.edition(),
                        "title", set.title(),
                        "generator", set.generator(),
                        "units", Names.of(rules.units()),
                        "numbers", Names.of(rules.numbers()),
                        "tries", rules.tries(),
                        "hints", rules.hints(),
                        "feedback", Names.of(rules.feedback()),
                        "due", rules.due().map(Instant::toString).orElse("")));
        for (Item item : set.items()) {
            lines.add(
                    JsonLine.write(
                            "problem", item.problem(),
                            "text", item.fingerprint(),
                            "points", item.points()));
        }
        return SealedLines.seal(lines, key);
    }

    /** Seals a set into a file. */
    public static SetFile write(Path file, ProblemSet set, SigningKey key) throws IOException {
        byte[] bytes = bytes(set, key);
        WholeFile.write(file, bytes);
        return read(bytes);
    }

    /**
     * @throws RefusedException with the reason
     */
    public static SetFile read(Path file) {
        return read(SealedLines.bytes(file));
    }

    static SetFile read(byte[] bytes) {
        SealedLines sealed = SealedLines.open(bytes, FORMAT, VERSION);
        JsonLine head = JsonLine.read(1, sealed.lines().get(0));
        head.text("format", LONGEST_ID);
        head.whole("version", VERSION, VERSION);
        int generator = (int) head.whole("generator", 0, Integer.MAX_VALUE);
        if (generator != Variants.GENERATOR_VERSION) {
            throw new RefusedException(
                    Reason.UNKNOWN_VERSION,
                    ClassWords.of("file.generator-set", generator, Variants.GENERATOR_VERSION));
        }
        try {
            ProblemSet set = set(head, generator, items(sealed.lines()));
            head.noOthers();
            return new SetFile(set, sealed.key(), sealed.hash());
        } catch (IllegalArgumentException e) {
            throw new RefusedException(Reason.ALTERED, e.getMessage());
        }
    }

    private static ProblemSet set(JsonLine head, int generator, List<Item> items) {
        return new ProblemSet(
                head.text("set", LONGEST_ID),
                (int) head.whole("edition", 1, Integer.MAX_VALUE),
                head.text("title", ProblemSet.LONGEST_TITLE),
                generator,
                rules(head),
                items);
    }

    private static Rules rules(JsonLine head) {
        return new Rules(
                head.oneOf("units", UnitSystem.class),
                head.oneOf("numbers", ProblemSet.Numbers.class),
                (int) head.whole("tries", 0, Rules.MOST_TRIES),
                head.truth("hints"),
                head.oneOf("feedback", ProblemSet.Feedback.class),
                head.text("due", LONGEST_ID).isEmpty()
                        ? Optional.empty()
                        : Optional.of(head.time("due")));
    }

    private static List<Item> items(List<String> lines) {
        List<Item> items = new ArrayList<>();
        for (int i = 1; i < lines.size() && i <= ProblemSet.MOST_ITEMS + 1; i++) {
            JsonLine line = JsonLine.read(i + 1, lines.get(i));
            items.add(
                    new Item(
                            line.text("problem", LONGEST_ID),
                            line.text("text", LONGEST_ID),
                            (int) line.whole("points", 1, Item.MOST_POINTS)));
            line.noOthers();
        }
        return items;
    }
}
