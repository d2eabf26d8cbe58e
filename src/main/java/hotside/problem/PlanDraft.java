// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.cell.Channel;
import hotside.cell.RigException;
import hotside.trial.PlanText;
import hotside.unit.UnitSystem;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A plan as it was written, not yet tied to rigs.
 *
 * @param order a capital for each pull
 * @param warmUp pulls before the first that counts
 * @param interval between the starts of two pulls, s
 * @param hold boost that a control holds, Pa gauge; empty to leave the control alone
 * @param log channels besides speed and torque
 */
record PlanDraft(String order, int warmUp, double interval, OptionalDouble hold, Set<Channel> log) {
    private static final int LONGEST = 400;

    /** Never written down besides: they are always logged. */
    private static final Set<Channel> ALWAYS =
            EnumSet.of(Channel.ENGINE_SPEED, Channel.TORQUE, Channel.POWER);

    /**
     * Reads all lines.
     *
     * @param lines one for each {@link PlanLine}
     * @throws RigException if one is not understood
     */
    static PlanDraft read(List<String> lines, Set<String> letters, UnitSystem system) {
        return new PlanDraft(
                order(lines.get(PlanLine.ORDER.ordinal()), letters),
                warmUp(lines.get(PlanLine.WARM_UP.ordinal())),
                PlanText.interval(lines.get(PlanLine.INTERVAL.ordinal())),
                hold(lines.get(PlanLine.HOLD.ordinal()), system),
                log(lines.get(PlanLine.LOG.ordinal())));
    }

    /**
     * Why a line is not understood; empty if it is.
     *
     * @param letters of the parts
     */
    static Optional<String> trouble(
            PlanLine line, String text, Set<String> letters, UnitSystem system) {
        try {
            if (text.length() > LONGEST) {
                throw new RigException("this line is too long", "at most " + LONGEST + " letters");
            }
            switch (line) {
                case ORDER -> order(text, letters);
                case WARM_UP -> warmUp(text);
                case INTERVAL -> within(PlanText.interval(text));
                case HOLD -> hold(text, system);
                case LOG -> log(text);
            }
            return Optional.empty();
        } catch (RigException e) {
            return Optional.of(sentence(e));
        }
    }

    static String sentence(RigException e) {
        String text = e.getMessage();
        return text.substring(0, 1).toUpperCase(Locale.ROOT)
                + text.substring(1).replaceFirst("([^.])$", "$1.");
    }

    private static String order(String text, Set<String> letters) {
        String order = text.toUpperCase(Locale.ROOT).replaceAll("[\\s,;·–→>-]", "");
        String wanted = "the letters " + String.join(", ", letters) + ", one a pull, such as ABBA";
        for (int i = 0; i < order.length(); i++) {
            if (!letters.contains(order.substring(i, i + 1))) {
                throw new RigException("the order has a \"" + order.charAt(i) + "\"", wanted);
            }
        }
        if (order.isEmpty() || order.length() > MOST_PULLS) {
            throw new RigException(
                    "the order has " + order.length() + " pulls", "1 to " + MOST_PULLS);
        }
        return order;
    }

    private static final int MOST_PULLS = 40;
    private static final int MOST_WARM_UP = 20;

    private static int warmUp(String text) {
        String number = text.strip().replaceFirst("\\s*pulls?$", "");
        boolean whole = number.matches("\\d{1,3}");
        if (!whole || Integer.parseInt(number) > MOST_WARM_UP) {
            throw new RigException(
                    "the number of warm-up pulls is \"" + text.strip() + "\"",
                    "a whole number, 0 to " + MOST_WARM_UP);
        }
        return Integer.parseInt(number);
    }

    private static void within(double interval) {
        if (!(interval >= 60 && interval <= 86_400)) {
            throw new RigException("pulls cannot follow each other so", "one minute to a day");
        }
    }

    private static OptionalDouble hold(String text, UnitSystem system) {
        OptionalDouble boost =
                PlanText.boost(
                        text.strip().toLowerCase(Locale.ROOT).equals("free") ? "" : text,
                        system,
                        hotside.unit.Units.STANDARD_ATMOSPHERE);
        if (boost.isPresent() && !(boost.getAsDouble() > 0 && boost.getAsDouble() < 4e5)) {
            throw new RigException("this boost cannot be held", "0 to 400 kPa, or free");
        }
        return boost;
    }

    /** Names as columns have them, or in words; joined by commas. */
    private static Set<Channel> log(String text) {
        String all = plain(text);
        if (all.equals("all") || all.equals("everything")) {
            return EnumSet.allOf(Channel.class);
        }
        Set<Channel> channels = EnumSet.noneOf(Channel.class);
        if (all.equals("none") || all.equals("nothing")) {
            return channels;
        }
        for (String name : text.split("[,;\\n]|\\band\\b", -1)) {
            if (!name.isBlank()) {
                channels.add(channel(name));
            }
        }
        return channels;
    }

    private static Channel channel(String name) {
        String wanted = plain(name);
        return Arrays.stream(Channel.values())
                .filter(c -> plain(c.label()).equals(wanted) || plain(words(c)).equals(wanted))
                .findFirst()
                .orElseThrow(
                        () ->
                                new RigException(
                                        "nothing is called \"" + name.strip() + "\" in the cell",
                                        "names joined by commas out of: " + known()));
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
    }

    static String words(Channel channel) {
        return Figures.words(channel);
    }

    private static String known() {
        return Arrays.stream(Channel.values())
                .filter(c -> !ALWAYS.contains(c))
                .map(PlanDraft::words)
                .collect(Collectors.joining(", "));
    }
}
