// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.classroom.GivePage;
import hotside.classroom.HandIn;
import hotside.classroom.RefusedException;
import hotside.page.Maths;
import hotside.page.Words;
import hotside.problem.ProblemBank;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.function.Supplier;

/** The class: one side for those who give work, one for those who were given it. */
final class ClassPlace implements Place {
    /** Width of charts at 100 % text. */
    private static final int CHART_WIDTH = 680;

    private final Worker worker;
    private final Supplier<ProblemBank> bank;
    private final Path data;
    private final ClassGiving giving;
    private final ClassWork work;
    private boolean gives = true;

    /**
     * @param bank the problems that sets are made of
     * @param data the folder that holds keys and drafts
     */
    ClassPlace(
            Page page,
            Worker worker,
            Chooser chooser,
            Supplier<ProblemBank> bank,
            Maths maths,
            Path data,
            Clock clock) {
        this.worker = worker;
        this.bank = bank;
        this.data = data;
        giving = new ClassGiving(page, worker, chooser, bank, maths, data, clock);
        work = new ClassWork(page, worker, chooser, bank, maths, data, clock);
    }

    /** From now on numbers are read by a habit that others share. */
    void habit(Habit shared) {
        work.habit(shared);
    }

    @Override
    public String id() {
        return "class";
    }

    /** Shows the side of those who give work, with this set open and a folder of work marked. */
    void give(Path set, Path folder) {
        gives = true;
        open();
        giving.openSet(set);
        giving.mark(folder);
    }

    /**
     * A file that was opened outside: an instructor's own set goes to those who give work, another
     * one to those who were given it.
     */
    void take(Path file) {
        gives = true;
        open();
        try {
            if (file.toString().endsWith(HandIn.ENDING)) {
                giving.told(Words.of("class.hand-in-alone"));
            } else if (giving.signed(file)) {
                giving.openSet(file);
            } else {
                gives = false;
                work.offer(file);
            }
        } catch (RefusedException e) {
            giving.told(e.getMessage());
        } catch (IOException e) {
            giving.told(Words.of("class.cannot-read", file, e.getMessage()));
        }
    }

    /** Shows the side of those who give work, with this set and this list of learners open. */
    void prepare(Path set, Path roster) {
        gives = true;
        open();
        giving.roster(roster);
        giving.openSet(set);
    }

    /** Long work on papers and marks ends where it is. */
    void stop() {
        giving.stop();
    }

    /** A class of nobody, to play with: its list and set are opened and its work marked. */
    private void sample() {
        worker.run(
                () -> SampleClass.anew(data.resolve("sample-class"), bank.get()),
                made -> {
                    prepare(made.set(), made.roster());
                    giving.mark(made.folder());
                },
                fault -> giving.told(Words.of("desk.cannot-write", data, fault.getMessage())));
    }

    /** Shows the side of those who were given work, with a learner's work open. */
    void work(Path set, String learner) {
        gives = false;
        open();
        work.openSet(set, learner);
    }

    @Override
    public void open() {
        if (gives) {
            giving.open();
        } else {
            work.open();
        }
    }

    @Override
    public void act(String action, String part, String argument) {
        if (part.equals(GivePage.PART) && action.startsWith("side-")) {
            gives = action.equals("side-give");
            open();
        } else if (part.equals(GivePage.PART) && action.equals("sample")) {
            sample();
        } else if (gives) {
            giving.act(action, argument);
        } else {
            work.act(action, part);
        }
    }

    @Override
    public void edit(String part, String slot, String kind, String value) {
        if (gives) {
            giving.edit(slot, value);
        } else {
            work.edit(part, slot, value);
        }
    }

    @Override
    public void point(String part, double across) {
        work.point(part, across);
    }

    @Override
    public void nudge(String part, int steps) {
        work.nudge(part, steps);
    }

    @Override
    public void finish() {
        if (gives) {
            giving.finish();
        }
    }

    @Override
    public void textSize(int percent) {
        work.chartWidth(CHART_WIDTH * 100 / percent);
    }
}
