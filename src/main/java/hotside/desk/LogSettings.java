// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.page.RunLogsState;
import hotside.page.RunLogsState.LogFile;
import hotside.page.Words;
import hotside.relation.Relation;
import hotside.runlog.Band;
import hotside.runlog.Comparison;
import hotside.runlog.Part;
import hotside.runlog.PowerCorrection;
import hotside.runlog.Pull;
import hotside.runlog.Run;
import hotside.runlog.Worth;
import hotside.trial.PlanText;
import hotside.unit.DecimalHabit;
import hotside.unit.Expected;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Typed;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What the fields of the run logs mean for a comparison. Whatever is not understood is an
 * IllegalArgumentException with a message for people.
 */
final class LogSettings {
    private LogSettings() {}

    static Comparison comparison(RunLogsState state) {
        Map<String, List<Run>> runs = new LinkedHashMap<>();
        for (LogFile file : state.files()) {
            String typed = state.field(file.key() + "-label").strip();
            String label = typed.isEmpty() ? file.name() : typed;
            file.reading()
                    .log()
                    .ifPresent(
                            log -> {
                                for (Pull pull : log.pulls()) {
                                    runs.computeIfAbsent(label, l -> new ArrayList<>())
                                            .add(new Run(pull, factor(state, file)));
                                }
                            });
        }
        if (runs.size() < 2) {
            throw new IllegalArgumentException(Words.of("logs.two-parts"));
        }
        List<Part> parts = new ArrayList<>();
        runs.forEach((label, made) -> parts.add(new Part(label, made)));
        return new Comparison(parts, settings(state));
    }

    private static Comparison.Settings settings(RunLogsState state) {
        Comparison.Settings settings = Comparison.Settings.PLAIN;
        String band = state.field("band");
        if (!band.isBlank()) {
            try {
                double[] ends = PlanText.band(band);
                settings = settings.withBand(new Band(ends[0], ends[1]));
            } catch (hotside.cell.RigException e) {
                throw new IllegalArgumentException(e.getMessage(), e);
            }
        }
        Optional<Worth> worth = worth(state);
        if (worth.isPresent()) {
            settings = settings.withWorth(worth.get());
        }
        OptionalDouble displacement = optional(state, "displacement", Quantity.VOLUME);
        return displacement.isPresent()
                ? settings.withDisplacement(displacement.getAsDouble())
                : settings;
    }

    private static Optional<Worth> worth(RunLogsState state) {
        OptionalDouble stated = optional(state, "worth", Quantity.POWER_PER_PRESSURE);
        if (stated.isPresent()) {
            return Optional.of(Worth.stated(stated.getAsDouble()));
        }
        OptionalDouble without = optional(state, "without", Quantity.POWER);
        return without.isPresent()
                ? Optional.of(
                        Worth.byRule(without.getAsDouble(), ambient(state, state.files().get(0))))
                : Optional.empty();
    }

    private static double ambient(RunLogsState state, LogFile file) {
        return optional(state, file.key() + "-barometer", Quantity.PRESSURE)
                .orElse(Units.STANDARD_ATMOSPHERE);
    }

    /** Which correction is on which log, with what the standard does not cover. */
    static List<String> notes(RunLogsState state) {
        Set<String> notes = new LinkedHashSet<>();
        for (LogFile file : state.files()) {
            correction(state, file)
                    .ifPresent(
                            c -> {
                                notes.add(
                                        Words.of(
                                                "logs.corrected",
                                                file.name(),
                                                c.standard(),
                                                DecimalHabit.spoken()
                                                        .write(
                                                                Numbers.significant(
                                                                        c.factor(), 4))));
                                notes.addAll(c.cautions());
                            });
        }
        return List.copyOf(notes);
    }

    private static double factor(RunLogsState state, LogFile file) {
        return correction(state, file).map(PowerCorrection::factor).orElse(1.0);
    }

    private static Optional<PowerCorrection> correction(RunLogsState state, LogFile file) {
        String standard = state.field("standard");
        if (standard.isEmpty()) {
            return Optional.empty();
        }
        Relation relation = PowerCorrection.byId(standard).orElseThrow();
        double temperature =
                optional(state, "air", Quantity.TEMPERATURE)
                        .orElseThrow(
                                () -> new IllegalArgumentException(Words.of("logs.needs-air")));
        if (state.field(file.key() + "-barometer").isBlank()) {
            throw new IllegalArgumentException(Words.of("logs.needs-barometer", file.name()));
        }
        double humidity = optional(state, "humidity", Quantity.PERCENTAGE).orElse(0);
        return Optional.of(
                PowerCorrection.of(relation, ambient(state, file), temperature, humidity));
    }

    /** How many readings are averaged; 1 for none. */
    static int smoothing(RunLogsState state) {
        String text = state.field("smooth").strip();
        if (text.isEmpty()) {
            return 1;
        }
        if (!text.matches("\\d{1,3}") || Integer.parseInt(text) % 2 == 0) {
            throw new IllegalArgumentException(Words.of("logs.smooth-unclear", text));
        }
        return Integer.parseInt(text);
    }

    private static OptionalDouble optional(RunLogsState state, String field, Quantity quantity) {
        String text = state.field(field);
        return text.isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        number(
                                field.endsWith("-barometer")
                                        ? Words.of("logs.barometer")
                                        : Words.of("logs." + field),
                                text,
                                quantity,
                                state.system()));
    }

    static double number(String what, String text, Quantity quantity, UnitSystem system) {
        Typed typed =
                Typed.read(
                        text,
                        new Expected(
                                quantity,
                                quantity.shown(system),
                                Units.STANDARD_ATMOSPHERE,
                                DecimalHabit.spoken()));
        if (typed instanceof Typed.Understood understood) {
            return understood.si();
        }
        String why =
                typed instanceof Typed.Ambiguous a
                        ? a.question()
                        : ((Typed.NotUnderstood) typed).message();
        throw new IllegalArgumentException(what + ": " + why);
    }
}
