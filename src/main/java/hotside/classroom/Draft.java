// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.content.WholeFile;
import hotside.problem.Variants;
import hotside.unit.DecimalHabit;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A learner's work on a set, saved as it goes: what is answered is on the disk before the call
 * returns, and a line that was torn by a crash is dropped when work goes on. Not for several
 * threads.
 */
public final class Draft {
    private final Path file;
    private final WorkLines.Head head;
    private final List<String> lines;
    private final List<Entry> entries;

    private Draft(Path file, WorkLines.Head head, List<String> lines, List<Entry> entries) {
        this.file = file;
        this.head = head;
        this.lines = lines;
        this.entries = entries;
    }

    /**
     * Begins work in a new file.
     *
     * @param learner the id that the instructor gave
     * @throws IOException if the file cannot be made or is there already
     */
    public static Draft begin(
            Path file, SetFile set, String learner, DecimalHabit habit, Instant now)
            throws IOException {
        WorkLines.Head head =
                new WorkLines.Head(
                        set.set().id(),
                        set.set().edition(),
                        set.hash(),
                        Ids.require(ClassWords.of("id.learner"), learner),
                        Variants.GENERATOR_VERSION,
                        habit,
                        now);
        List<String> lines = new ArrayList<>(List.of(WorkLines.head(head)));
        if (file.toAbsolutePath().getParent() != null) {
            Files.createDirectories(file.toAbsolutePath().getParent());
        }
        Draft draft = new Draft(file, head, lines, new ArrayList<>());
        draft.append(lines.get(0), StandardOpenOption.CREATE_NEW);
        return draft;
    }

    /**
     * Goes on with work.
     *
     * @throws RefusedException if the file is no draft of this set
     */
    public static Draft resume(Path file, SetFile set) throws IOException {
        byte[] bytes = whole(SealedLines.bytes(file));
        SealedLines.requireFormat(bytes, WorkLines.FORMAT, WorkLines.VERSION);
        List<String> lines = new ArrayList<>(SealedLines.lines(bytes));
        WorkLines.Work work = WorkLines.read(lines);
        if (!work.head().of().equals(set.hash())) {
            throw new RefusedException(
                    Reason.FOREIGN, ClassWords.of("draft.other-set", work.head().set()));
        }
        if (bytes.length < Files.size(file)) {
            try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                channel.truncate(bytes.length);
                channel.force(true);
            }
        }
        return new Draft(file, work.head(), lines, new ArrayList<>(work.entries()));
    }

    /** Up to the last line end. */
    private static byte[] whole(byte[] bytes) {
        int end = bytes.length;
        while (end > 0 && bytes[end - 1] != '\n') {
            end--;
        }
        return Arrays.copyOf(bytes, end);
    }

    /** Keeps answers to a problem. Text beyond the longest answer is cut. */
    public void answer(int slot, List<String> answers, Instant now) throws IOException {
        add(new Entry.Answered(now, slot, fitted(answers)));
    }

    /** Keeps what stands in the fields of a problem, so that it is there again after a crash. */
    public void type(int slot, List<String> answers, Instant now) throws IOException {
        add(new Entry.Typed(now, slot, fitted(answers)));
    }

    private static List<String> fitted(List<String> answers) {
        return answers.stream()
                .limit(WorkLines.MOST_ANSWERS)
                .map(a -> a.substring(0, Math.min(a.length(), WorkLines.LONGEST_ANSWER)))
                .toList();
    }

    /** Keeps that a hint was read. */
    public void hint(int slot, int rung, Instant now) throws IOException {
        add(new Entry.Hinted(now, slot, rung));
    }

    private void add(Entry entry) throws IOException {
        String line = WorkLines.entry(lines.get(lines.size() - 1), entry);
        append(line, StandardOpenOption.APPEND);
        lines.add(line);
        entries.add(entry);
    }

    private void append(String line, StandardOpenOption how) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap((line + "\n").getBytes(StandardCharsets.UTF_8));
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE, how)) {
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
    }

    /** The learner's id. */
    public String learner() {
        return head.learner();
    }

    public DecimalHabit habit() {
        return head.habit();
    }

    /** What was done so far, in order. */
    public List<Entry> entries() {
        return List.copyOf(entries);
    }

    /** The latest answers to a problem; nothing if there are none yet. */
    public Optional<List<String>> answers(int slot) {
        List<String> latest = null;
        for (Entry entry : entries) {
            if (entry.slot() == slot && entry instanceof Entry.Answered answered) {
                latest = answered.answers();
            }
        }
        return Optional.ofNullable(latest);
    }

    /** What stood last in the fields of a problem, answered or not; nothing if they are empty. */
    public Optional<List<String>> fields(int slot) {
        List<String> latest = null;
        for (Entry entry : entries) {
            if (entry.slot() == slot && entry instanceof Entry.Answered answered) {
                latest = answered.answers();
            } else if (entry.slot() == slot && entry instanceof Entry.Typed typed) {
                latest = typed.answers();
            }
        }
        return Optional.ofNullable(latest);
    }

    /**
     * Writes the hand-in, which holds what was answered and which hints were read. The draft stays
     * as it is, so work may go on and be handed in again.
     *
     * @return the receipt, which the instructor sees too
     */
    public String handIn(Path to, SigningKey key, Instant now) throws IOException {
        List<String> all = new ArrayList<>(List.of(lines.get(0)));
        for (Entry entry : entries) {
            if (!(entry instanceof Entry.Typed)) {
                all.add(WorkLines.entry(all.get(all.size() - 1), entry));
            }
        }
        all.add(WorkLines.finished(all.get(all.size() - 1), now));
        byte[] bytes = SealedLines.seal(all, key);
        WholeFile.write(to, bytes);
        return HandIn.read(bytes).receipt();
    }
}
