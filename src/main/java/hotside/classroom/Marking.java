// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Marks a folder of hand-ins. Whatever is wrong with a file, the others are marked; nothing is
 * changed in the folder.
 */
public final class Marking {
    /** Nobody's class is larger. */
    private static final int MOST_FILES = 100_000;

    private final SetFile file;
    private final Regrader regrader;
    private final Optional<Roster> roster;
    private final boolean acceptLate;

    /**
     * @param file the set as it was handed out
     * @param regrader for that set
     * @param roster who belongs to the class; everybody if there is none
     * @param acceptLate marks late ones too, with a remark
     */
    public Marking(SetFile file, Regrader regrader, Optional<Roster> roster, boolean acceptLate) {
        this.file = file;
        this.regrader = regrader;
        this.roster = roster;
        this.acceptLate = acceptLate;
    }

    /**
     * What came of a folder.
     *
     * @param marked by learner's id
     * @param aside by file name
     */
    public record Result(List<MarkedHandIn> marked, List<SetAside> aside) {
        public Result {
            marked = List.copyOf(marked);
            aside = List.copyOf(aside);
        }
    }

    /**
     * A file that was not marked.
     *
     * @param source the file's name
     * @param learner whom it says it is of; empty if it cannot be told
     */
    public record SetAside(String source, String learner, Reason reason, String why) {}

    /**
     * The plain files of a folder by name, hidden ones left out.
     *
     * @throws IOException if the folder cannot be read
     */
    public static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> files =
                    all.filter(f -> !f.getFileName().toString().startsWith("."))
                            .filter(f -> !Files.isDirectory(f, LinkOption.NOFOLLOW_LINKS))
                            .limit(MOST_FILES + 1L)
                            .sorted(Comparator.comparing(f -> f.getFileName().toString()))
                            .toList();
            if (files.size() > MOST_FILES) {
                throw new IOException(ClassWords.of("folder.large", folder, MOST_FILES));
            }
            return files;
        }
    }

    /**
     * Marks these files.
     *
     * @throws StoppedException if the watch says so
     */
    public Result mark(List<Path> files, Watch watch) {
        AtomicInteger done = new AtomicInteger();
        AtomicBoolean stopped = new AtomicBoolean();
        List<Taken> taken =
                IntStream.range(0, files.size())
                        .parallel()
                        .mapToObj(
                                i -> {
                                    if (stopped.get()) {
                                        return null;
                                    }
                                    Taken one = take(files.get(i));
                                    if (!watch.goOn(done.incrementAndGet(), files.size())) {
                                        stopped.set(true);
                                    }
                                    return one;
                                })
                        .toList();
        if (stopped.get()) {
            throw new StoppedException();
        }
        return sorted(taken);
    }

    /** One of the two. */
    private record Taken(MarkedHandIn marked, SetAside aside) {}

    private Taken take(Path path) {
        String source = hotside.content.Visible.cut(path.getFileName().toString(), 100);
        String learner = "";
        try {
            HandIn in = HandIn.read(SealedLines.bytes(path));
            learner = in.learner();
            requireOurs(in);
            return new Taken(regrader.mark(source, in), null);
        } catch (RefusedException e) {
            return aside(source, learner, e.reason(), e.getMessage());
        } catch (RuntimeException e) {
            // A file that makes the marker stumble must not cost the others their marks.
            return aside(source, learner, Reason.UNMARKABLE, ClassWords.of("aside.stumbled", e));
        }
    }

    private static Taken aside(String source, String learner, Reason reason, String why) {
        return new Taken(null, new SetAside(source, learner, reason, why));
    }

    private void requireOurs(HandIn in) {
        if (!in.set().equals(file.set().id())) {
            throw new RefusedException(Reason.FOREIGN, ClassWords.of("aside.other-set", in.set()));
        }
        if (in.edition() != file.set().edition()) {
            throw new RefusedException(
                    Reason.UNKNOWN_VERSION,
                    ClassWords.of("aside.edition", in.edition(), file.set().edition()));
        }
        if (!in.of().equals(file.hash())) {
            throw new RefusedException(Reason.FOREIGN, ClassWords.of("aside.other-file"));
        }
        if (roster.isPresent() && roster.get().find(in.learner()).isEmpty()) {
            throw new RefusedException(
                    Reason.FOREIGN, ClassWords.of("aside.stranger", in.learner()));
        }
    }

    private Result sorted(List<Taken> taken) {
        List<SetAside> aside = new ArrayList<>();
        Map<String, List<MarkedHandIn>> byLearner = new LinkedHashMap<>();
        for (Taken one : taken) {
            if (one.aside != null) {
                aside.add(one.aside);
            } else if (isLate(one.marked) && !acceptLate) {
                aside.add(late(one.marked));
            } else {
                byLearner
                        .computeIfAbsent(one.marked.learner(), l -> new ArrayList<>())
                        .add(one.marked);
            }
        }
        List<MarkedHandIn> marked = new ArrayList<>();
        byLearner.values().forEach(all -> choose(all, marked, aside));
        marked.sort(Comparator.comparing(MarkedHandIn::learner));
        aside.sort(Comparator.comparing(SetAside::source));
        return new Result(marked, aside);
    }

    private boolean isLate(MarkedHandIn in) {
        return file.set().rules().due().map(due -> in.finished().isAfter(due)).orElse(false);
    }

    private SetAside late(MarkedHandIn in) {
        Instant due = file.set().rules().due().orElseThrow();
        return new SetAside(
                in.source(),
                in.learner(),
                Reason.LATE,
                ClassWords.of("aside.late", in.finished(), due));
    }

    /** Of several files of one learner the last one counts, unless two keys claim the name. */
    private void choose(List<MarkedHandIn> all, List<MarkedHandIn> marked, List<SetAside> aside) {
        long keys = all.stream().map(MarkedHandIn::fingerprint).distinct().count();
        if (keys > 1) {
            all.forEach(in -> aside.add(claimed(in)));
            return;
        }
        MarkedHandIn last =
                all.stream()
                        .reduce((a, b) -> b.finished().isAfter(a.finished()) ? b : a)
                        .orElseThrow();
        marked.add(
                isLate(last)
                        ? withRemark(last, ClassWords.of("remark.late", last.finished()))
                        : last);
        for (MarkedHandIn in : all) {
            if (in != last) {
                aside.add(
                        new SetAside(
                                in.source(),
                                in.learner(),
                                Reason.DUPLICATE,
                                in.receipt().equals(last.receipt())
                                        ? ClassWords.of("aside.copy", last.source())
                                        : ClassWords.of("aside.later", last.source())));
            }
        }
    }

    private static SetAside claimed(MarkedHandIn in) {
        return new SetAside(
                in.source(),
                in.learner(),
                Reason.DUPLICATE,
                ClassWords.of("aside.keys", in.receipt()));
    }

    private static MarkedHandIn withRemark(MarkedHandIn in, String remark) {
        List<String> remarks = new ArrayList<>(in.remarks());
        remarks.add(remark);
        return new MarkedHandIn(
                in.source(),
                in.learner(),
                in.started(),
                in.finished(),
                in.fingerprint(),
                in.receipt(),
                in.items(),
                remarks);
    }
}
