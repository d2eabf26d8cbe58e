// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.bench.Failures;
import hotside.bench.Samples;
import hotside.bench.Scratch;
import hotside.course.Lesson;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicLong;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.image.WritableImage;
import javafx.scene.image.WritablePixelFormat;
import javafx.scene.robot.Robot;

/**
 * Turns the pages of the open desk through all lessons, again and again. What stands on the screen
 * is read off the screen itself, so a turn counts as painted when its picture is there.
 */
public final class PageTurning {
    /** As many as memory is judged after. */
    public static final int TURNS = 200;

    private final DeskWindow window;
    private final double[] busy = new double[TURNS];
    private final double[] painted = new double[TURNS];
    private final double[] frames = new double[TURNS];

    private PageTurning(DeskWindow window) {
        this.window = window;
    }

    public static void main(String[] args) throws IOException {
        Failures.endTheRun();
        Headless.install();
        NoNetwork.install();
        try (Scratch scratch = new Scratch()) {
            Library library = Libraries.read();
            Screen.start();
            AtomicLong seed = new AtomicLong();
            OpenDesk desk = OpenDesk.fresh(library, scratch.folder(), seed::incrementAndGet);
            new PageTurning(desk.window()).turn(library.course().lessons());
            desk.close();
        }
        Platform.exit();
    }

    private void turn(List<Lesson> lessons) throws IOException {
        Screen.frames(2);
        tell("memory-before", Memory.residentMegabytes());
        for (int i = 0; i < TURNS; i++) {
            turn(i, lessons.get(i % lessons.size()));
        }
        tell("memory-after", Memory.residentMegabytes());
        int unread = lessons.size();
        told("first-", 0, unread);
        told("again-", unread, TURNS);
        System.gc();
        Screen.frames(2);
        tell("memory-collected", Memory.residentMegabytes());
    }

    private void told(String which, int from, int to) {
        double[] work = Arrays.copyOfRange(busy, from, to);
        tell(which + "busy-median", Samples.median(work));
        tell(which + "busy-most", Samples.share(work, 0.95));
        double[] whole = Arrays.copyOfRange(painted, from, to);
        tell(which + "painted-median", Samples.median(whole));
        tell(which + "frames-median", Samples.median(Arrays.copyOfRange(frames, from, to)));
        tell(which + "frames-most", Samples.share(Arrays.copyOfRange(frames, from, to), 0.95));
    }

    private void turn(int index, Lesson lesson) {
        CompletableFuture<Void> done = new CompletableFuture<>();
        Screen.run(
                () -> {
                    Sight before = Sight.now(window);
                    long start = System.nanoTime();
                    window.open(lesson);
                    busy[index] = millisecondsSince(start);
                    new AnimationTimer() {
                        private int count = -1; // the first call begins the first frame

                        @Override
                        public void handle(long now) {
                            count++;
                            if (count > 0 && !Sight.now(window).equals(before)) {
                                frames[index] = count;
                                painted[index] = millisecondsSince(start);
                                stop();
                                done.complete(null);
                            }
                            Platform.requestNextPulse();
                        }
                    }.start();
                });
        done.join();
    }

    private static double millisecondsSince(long start) {
        return (System.nanoTime() - start) / 1e6;
    }

    private static void tell(String name, double value) {
        System.out.println(name + " " + value);
    }

    /** The picture around the lesson's title. */
    private record Sight(int hash) {
        private static final int WIDTH = 600;
        private static final int HEIGHT = 120;

        static Sight now(DeskWindow window) {
            double[] title = window.page().bounds("lesson-title").orElse(new double[] {0, 0, 0, 0});
            javafx.geometry.Point2D at =
                    window.page().node().localToScreen(title[0], title[1] - HEIGHT / 4.0);
            WritableImage image =
                    new Robot()
                            .getScreenCapture(
                                    null, new Rectangle2D(at.getX(), at.getY(), WIDTH, HEIGHT));
            int[] pixels = new int[WIDTH * HEIGHT];
            image.getPixelReader()
                    .getPixels(
                            0,
                            0,
                            WIDTH,
                            HEIGHT,
                            WritablePixelFormat.getIntArgbInstance(),
                            pixels,
                            0,
                            WIDTH);
            return new Sight(Arrays.hashCode(pixels));
        }
    }
}
