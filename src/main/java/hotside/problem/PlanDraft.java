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
import java.util.stream.Stream;

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

    private static final Set<String> FREE = Set.of("free", "frei");
    private static final Set<String> ALL = Set.of("all", "everything", "alle", "alles");
    private static final Set<String> NONE = Set.of("none", "nothing", "keine", "nichts");
    private static final String BETWEEN = "[,;\\n]|\\band\\b|\\bund\\b";

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
                throw new RigException(
                        ProblemWords.of("plan.too-long"),
                        ProblemWords.of("plan.too-long.wanted", LONGEST));
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
        String wanted = ProblemWords.of("plan.letter.wanted", String.join(", ", letters));
        for (int i = 0; i < order.length(); i++) {
            if (!letters.contains(order.substring(i, i + 1))) {
                throw new RigException(ProblemWords.of("plan.letter", order.charAt(i)), wanted);
            }
        }
        if (order.isEmpty() || order.length() > MOST_PULLS) {
            throw new RigException(
                    ProblemWords.of("plan.pulls", order.length()),
                    ProblemWords.of("plan.pulls.wanted", MOST_PULLS));
        }
        return order;
    }

    private static final int MOST_PULLS = 40;
    private static final int MOST_WARM_UP = 20;

    private static int warmUp(String text) {
        String number = text.strip().replaceFirst("\\s*(?i:pulls?|Messung(?:en)?)$", "");
        boolean whole = number.matches("\\d{1,3}");
        if (!whole || Integer.parseInt(number) > MOST_WARM_UP) {
            throw new RigException(
                    ProblemWords.of("plan.warm-up.unread", text.strip()),
                    ProblemWords.of("plan.warm-up.wanted", MOST_WARM_UP));
        }
        return Integer.parseInt(number);
    }

    private static void within(double interval) {
        if (!(interval >= 60 && interval <= 86_400)) {
            throw new RigException(
                    ProblemWords.of("plan.apart"), ProblemWords.of("plan.apart.wanted"));
        }
    }

    private static OptionalDouble hold(String text, UnitSystem system) {
        OptionalDouble boost =
                PlanText.boost(
                        FREE.contains(text.strip().toLowerCase(Locale.ROOT)) ? "" : text,
                        system,
                        hotside.unit.Units.STANDARD_ATMOSPHERE);
        if (boost.isPresent() && !(boost.getAsDouble() > 0 && boost.getAsDouble() < 4e5)) {
            throw new RigException(
                    ProblemWords.of("plan.held"), ProblemWords.of("plan.held.wanted"));
        }
        return boost;
    }

    /** Names as columns have them, or in words; joined by commas. */
    private static Set<Channel> log(String text) {
        String all = plain(text);
        if (ALL.contains(all)) {
            return EnumSet.allOf(Channel.class);
        }
        Set<Channel> channels = EnumSet.noneOf(Channel.class);
        if (NONE.contains(all)) {
            return channels;
        }
        for (String name : text.split(BETWEEN, -1)) {
            if (!name.isBlank()) {
                channels.add(channel(name));
            }
        }
        return channels;
    }

    private static Channel channel(String name) {
        String wanted = plain(name);
        return Arrays.stream(Channel.values())
                .filter(c -> names(c).anyMatch(n -> plain(n).equals(wanted)))
                .findFirst()
                .orElseThrow(
                        () ->
                                new RigException(
                                        ProblemWords.of("plan.channel", name.strip()),
                                        ProblemWords.of("plan.channel.wanted", known())));
    }

    /** In all languages: a plan may be marked at another desk than it was written at. */
    private static Stream<String> names(Channel channel) {
        return Stream.concat(Stream.of(channel.label()), channel.allWords().stream());
    }

    /** A line of a file with its words in the language spoken. */
    static String spoken(String line) {
        return FREE.contains(line)
                ? ProblemWords.of("plan.free")
                : Arrays.stream(line.split(", ", -1))
                        .map(PlanDraft::spokenName)
                        .collect(Collectors.joining(", "));
    }

    private static String spokenName(String name) {
        return Arrays.stream(Channel.values())
                .filter(c -> c.allWords().contains(name))
                .findFirst()
                .map(Channel::words)
                .orElse(name);
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]", "");
    }

    private static String known() {
        return Arrays.stream(Channel.values())
                .filter(c -> !ALWAYS.contains(c))
                .map(Channel::words)
                .collect(Collectors.joining(", "));
    }
}
