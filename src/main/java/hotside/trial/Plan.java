// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

import hotside.cell.Channel;
import hotside.cell.Rig;
import hotside.cell.RigException;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * What somebody means to do in the cell, before seeing anything.
 *
 * @param parts two to six; the first, A, is what the others are measured by
 * @param order one letter a pull, such as {@code ABBA}; capitals, nothing else
 * @param warmUp pulls with A before the first that counts
 * @param interval between the starts of two pulls, s
 * @param heldBoost that a regulating control holds with every part, Pa gauge; empty to leave the
 *     rig's own control as it is
 * @param logged what is logged besides engine speed and torque
 * @param fromSpeed low end of the band that is averaged, turns per second
 * @param toSpeed its high end
 */
public record Plan(
        List<Contestant> parts,
        String order,
        int warmUp,
        double interval,
        OptionalDouble heldBoost,
        Set<Channel> logged,
        double fromSpeed,
        double toSpeed) {
    private static final int MOST_PARTS = 6;
    private static final int MOST_PULLS = 40;
    private static final int MOST_WARM_UP = 20;
    private static final double LONGEST_INTERVAL = 86_400;

    /**
     * One of the things compared.
     *
     * @param words what it is called, in the language spoken when they are asked for
     * @param rig with it fitted
     */
    public record Contestant(Supplier<String> words, Rig rig) {
        /** One that is called the same in all languages. */
        public Contestant(String title, Rig rig) {
            this(() -> title, rig);
        }

        /** For people. */
        public String title() {
            return words.get();
        }
    }

    /**
     * @throws RigException if it cannot be run; the message says what to change
     */
    public Plan {
        parts = List.copyOf(parts);
        order = order.toUpperCase(Locale.ROOT).replaceAll("[\\s,;·-]", "");
        logged = Set.copyOf(logged);
        require(
                parts.size() >= 2 && parts.size() <= MOST_PARTS,
                TrialWords.of("plan.parts", parts.size()),
                TrialWords.of("plan.parts.wanted"));
        require(
                order.length() <= MOST_PULLS,
                TrialWords.of("plan.pulls", order.length()),
                TrialWords.of("plan.pulls.wanted", MOST_PULLS));
        for (char letter : order.toCharArray()) {
            require(
                    letter >= 'A' && letter < 'A' + parts.size(),
                    TrialWords.of("plan.letter", letter),
                    TrialWords.of("plan.letter.wanted", (char) ('A' + parts.size() - 1)));
        }
        for (int i = 0; i < parts.size(); i++) {
            char letter = (char) ('A' + i);
            require(
                    order.indexOf(letter) >= 0,
                    TrialWords.of("plan.unused", letter),
                    TrialWords.of("plan.unused.wanted", parts.size() == 2 ? "ABBA" : "ABCCBA"));
        }
        require(
                warmUp >= 0 && warmUp <= MOST_WARM_UP,
                TrialWords.of("plan.warm-up", warmUp),
                TrialWords.of("plan.warm-up.wanted", MOST_WARM_UP));
        require(
                interval >= 60 && interval <= LONGEST_INTERVAL,
                TrialWords.of("plan.interval", Math.round(interval)),
                TrialWords.of("plan.interval.wanted"));
        require(fromSpeed < toSpeed, TrialWords.of("plan.band"), TrialWords.of("plan.band.wanted"));
    }

    private static void require(boolean sound, String what, String expected) {
        if (!sound) {
            throw new RigException(what, expected);
        }
    }

    /** Which part a pull is made with. */
    int part(int pull) {
        return order.charAt(pull) - 'A';
    }

    /** How many pulls are made with a part. */
    public int pulls(int part) {
        return (int) order.chars().filter(letter -> letter == 'A' + part).count();
    }

    /** The letter and title of a part: {@code B, pipe of 98.3 mm}. */
    public String name(int part) {
        return (char) ('A' + part) + ", " + parts.get(part).title();
    }

    /** The rig of a part, with the plan's interval and control. */
    Rig rig(int part) {
        Rig rig = parts.get(part).rig().with("cell.interval", interval);
        return heldBoost.isEmpty() ? rig : holding(rig, heldBoost.getAsDouble());
    }

    /** A rig whose control holds a boost as long as the gate can. */
    static Rig holding(Rig rig, double boost) {
        return rig.with("control.kind", "regulated")
                .with("control.leastShare", 0)
                .with("control.targetBoost", boost);
    }

    /** Channels written to the log. */
    Set<Channel> columns() {
        EnumSet<Channel> columns = EnumSet.of(Channel.ENGINE_SPEED, Channel.TORQUE, Channel.POWER);
        columns.addAll(logged);
        return columns;
    }

    /** Sections of the rig in which a part differs from A: {@code exhaust}, {@code gate} … */
    public List<String> changes(int part) {
        Rig a = parts.get(0).rig();
        Rig b = parts.get(part).rig();
        return a.paths().stream()
                .filter(path -> b.paths().contains(path) && !a.value(path).equals(b.value(path)))
                .map(path -> path.substring(0, path.indexOf('.')))
                .distinct()
                .toList();
    }

    /** As {@link #changes}, in the language spoken. */
    public List<String> changesInWords(int part) {
        return changes(part).stream().map(TrialWords::section).toList();
    }

    /** Speeds over the band at which truth is worked out, turns per second. */
    double[] speeds() {
        int steps = 12;
        return IntStream.rangeClosed(0, steps)
                .mapToDouble(i -> fromSpeed + (toSpeed - fromSpeed) * i / steps)
                .toArray();
    }
}
