// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.problem.Variants;
import hotside.unit.DecimalHabit;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The lines of a learner's work, in a draft as in a hand-in: a head, then one line for each thing
 * done, each with the hash of the line before it, and at the end of a hand-in that it is finished.
 */
final class WorkLines {
    static final String FORMAT = "hotside-hand-in";
    static final int VERSION = 1;

    /** Longer than any honest answer. */
    static final int LONGEST_ANSWER = 500;

    static final int MOST_ANSWERS = 40;

    private static final int LONGEST_ID = 100;
    private static final int CHAIN_BYTES = 8;
    private static final int MOST_RUNGS = 20;

    private WorkLines() {}

    /**
     * Whose work on what.
     *
     * @param set id of the set
     * @param edition of the set
     * @param of hash of the set file
     * @param learner id of the learner
     * @param generator version of the number generator
     * @param habit the learner's decimal mark
     * @param started when work began
     */
    record Head(
            String set,
            int edition,
            String of,
            String learner,
            int generator,
            DecimalHabit habit,
            Instant started) {}

    /**
     * All of it.
     *
     * @param finished empty in a draft
     */
    record Work(Head head, List<Entry> entries, Optional<Instant> finished) {
        Work {
            entries = List.copyOf(entries);
        }
    }

    static String head(Head head) {
        return JsonLine.write(
                "format", FORMAT,
                "version", VERSION,
                "set", head.set(),
                "edition", head.edition(),
                "of", head.of(),
                "learner", head.learner(),
                "generator", head.generator(),
                "decimal", Names.of(head.habit()),
                "started", told(head.started()));
    }

    static String entry(String before, Entry entry) {
        String what = "answers";
        Object value;
        if (entry instanceof Entry.Answered answered) {
            value = answered.answers();
        } else if (entry instanceof Entry.Typed typed) {
            what = "typed";
            value = typed.answers();
        } else {
            what = "hint";
            value = ((Entry.Hinted) entry).rung();
        }
        return JsonLine.write(
                "after", chain(before), "at", told(entry.at()), "slot", entry.slot(), what, value);
    }

    static String finished(String before, Instant at) {
        return JsonLine.write("after", chain(before), "at", told(at), "finished", true);
    }

    /** To the second: more says nothing about the work and something about the person. */
    private static String told(Instant at) {
        return at.truncatedTo(ChronoUnit.SECONDS).toString();
    }

    private static String chain(String before) {
        return Hashes.hex(Hashes.of(before.getBytes(StandardCharsets.UTF_8)), CHAIN_BYTES);
    }

    /**
     * @throws RefusedException with the reason
     */
    static Work read(List<String> lines) {
        Head head = readHead(JsonLine.read(1, lines.get(0)));
        List<Entry> entries = new ArrayList<>();
        Optional<Instant> finished = Optional.empty();
        for (int i = 1; i < lines.size(); i++) {
            JsonLine line = JsonLine.read(i + 1, lines.get(i));
            if (finished.isPresent()) {
                throw line.wrong(ClassWords.of("work.after-end"));
            }
            if (!line.text("after", LONGEST_ID).equals(chain(lines.get(i - 1)))) {
                throw line.wrong(ClassWords.of("work.broken"));
            }
            Instant at = line.time("at");
            if (line.has("finished")) {
                line.truth("finished");
                finished = Optional.of(at);
            } else {
                entries.add(entry(line, at));
            }
            line.noOthers();
        }
        return new Work(head, entries, finished);
    }

    private static Entry entry(JsonLine line, Instant at) {
        int slot = (int) line.whole("slot", 0, ProblemSet.MOST_ITEMS - 1L);
        if (line.has("hint")) {
            return new Entry.Hinted(at, slot, (int) line.whole("hint", 1, MOST_RUNGS));
        }
        return line.has("typed")
                ? new Entry.Typed(at, slot, line.texts("typed", MOST_ANSWERS, LONGEST_ANSWER))
                : new Entry.Answered(at, slot, line.texts("answers", MOST_ANSWERS, LONGEST_ANSWER));
    }

    private static Head readHead(JsonLine line) {
        line.text("format", LONGEST_ID);
        line.whole("version", VERSION, VERSION);
        int generator = (int) line.whole("generator", 0, Integer.MAX_VALUE);
        if (generator != Variants.GENERATOR_VERSION) {
            throw new RefusedException(
                    Reason.UNKNOWN_VERSION,
                    ClassWords.of("file.generator-work", generator, Variants.GENERATOR_VERSION));
        }
        Head head =
                new Head(
                        line.text("set", LONGEST_ID),
                        (int) line.whole("edition", 1, Integer.MAX_VALUE),
                        line.text("of", LONGEST_ID),
                        line.text("learner", LONGEST_ID),
                        generator,
                        line.oneOf("decimal", DecimalHabit.class),
                        line.time("started"));
        line.noOthers();
        if (!Ids.isId(head.learner()) || !Ids.isId(head.set())) {
            throw line.wrong(ClassWords.of("work.ids"));
        }
        return head;
    }
}
