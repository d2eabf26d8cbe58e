// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.content.Finding;
import hotside.relation.Relation;
import hotside.runlog.Band;
import hotside.runlog.Comparison;
import hotside.runlog.ComparisonException;
import hotside.runlog.LogReader;
import hotside.runlog.LogReading;
import hotside.runlog.Mapping;
import hotside.runlog.Part;
import hotside.runlog.PowerCorrection;
import hotside.runlog.ReadOptions;
import hotside.runlog.Run;
import hotside.runlog.RunLog;
import hotside.runlog.Worth;
import hotside.unit.DecimalHabit;
import hotside.unit.Expected;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.Typed;
import hotside.unit.Units;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Sets run logs against each other and says what of the difference can be trusted. */
@Command(
        name = "compare",
        description = {
            "Compares two to six parts by their run logs: CSV from any bench or logger. The first is what the others are"
                    + " measured by. Each FILE is a part; files with the same --label are pulls of one part.",
            "Exit code 1 if something in the files is odd or they cannot be compared."
        },
        mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
    private static final Pattern BAND =
            Pattern.compile(
                    "\\s*([0-9]+(?:\\.[0-9]+)?)\\s*\\.\\.\\s*([0-9]+(?:\\.[0-9]+)?)\\s*(?:rpm)?\\s*");
    private static final Pattern PLUS_MINUS = Pattern.compile("±|\\+/?-");

    @Parameters(index = "0..*", paramLabel = "FILE", description = "run logs, two at least")
    private List<Path> files = List.of();

    @Option(names = "--label", description = "a part's name, one for each FILE in order")
    private List<String> labels = List.of();

    @Option(names = "--band", paramLabel = "LOW..HIGH", description = "rev/min to average over")
    private String band;

    @Option(
            names = "--worth",
            description = "what boost is worth, such as \"5.4 kW/kPa\" or \"5.4 +- 0.5 kW/kPa\"")
    private String worth;

    @Option(
            names = "--na-power",
            description =
                    "power this engine would give without boost, for the trade's rule of a worth")
    private String naturallyAspirated;

    @Option(names = "--displacement", description = "of the engine, to work out pumping")
    private String displacement;

    @Option(names = "--response", description = "manifold pressure that response is timed to")
    private String response;

    @Option(
            names = "--correct",
            paramLabel = "STANDARD",
            description = "correct power: sae-j1349, iso-1585, din-70020 or sae-j607")
    private String standard;

    @Option(
            names = "--pressure",
            description =
                    "barometer, one for all or one for each FILE; gauge readings count from it too")
    private List<String> pressures = List.of();

    @Option(names = "--temperature", description = "inlet air, one for all or one for each FILE")
    private List<String> temperatures = List.of();

    @Option(names = "--humidity", description = "relative, one for all or one for each FILE")
    private List<String> humidities = List.of();

    @Option(
            names = "--map",
            paramLabel = "COL=QUANTITY UNIT",
            description = "what a column is, such as \"Ch7=p3 psi gauge\"")
    private List<String> mappings = List.of();

    @Option(
            names = "--decimal",
            description = "decimal mark of the files, point or comma; else as they show")
    private Mark decimal;

    @Option(names = "--units", description = "si or us, for the report", defaultValue = "si")
    private WorkCommand.Shop shop;

    @Option(names = "--json", description = "for another program: SI, pressures absolute")
    private boolean json;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        check();
        List<Finding> findings = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        Map<String, List<Run>> runs = new LinkedHashMap<>();
        Comparison.Settings settings = settings();
        for (int i = 0; i < files.size(); i++) {
            LogReading reading = read(i);
            findings.addAll(reading.findings());
            String name = files.get(i).getFileName().toString();
            reading.notes().forEach(note -> notes.add(name + ": " + note));
            double factor = factor(i, name, notes);
            List<Run> part = runs.computeIfAbsent(label(i), l -> new ArrayList<>());
            reading.log().map(RunLog::pulls).orElse(List.of()).stream()
                    .map(pull -> new Run(pull, factor))
                    .forEach(part::add);
        }
        List<Part> parts =
                runs.entrySet().stream().map(e -> new Part(e.getKey(), e.getValue())).toList();
        if (parts.size() < 2) {
            throw new UsageException("All files have one label, so there is nothing to compare.");
        }
        return report(parts, settings, findings, notes);
    }

    private int report(
            List<Part> parts,
            Comparison.Settings settings,
            List<Finding> findings,
            List<String> notes) {
        PrintWriter out = spec.commandLine().getOut();
        try {
            CompareReport report =
                    new CompareReport(
                            new Comparison(parts, settings), findings, notes, shop.system());
            if (json) {
                out.println(Json.text(report.object()));
            } else {
                report.print(out);
            }
            return findings.isEmpty() ? CommandLineDoor.FINE : CommandLineDoor.FINDINGS;
        } catch (ComparisonException e) {
            findings.forEach(finding -> spec.commandLine().getErr().println(finding.text()));
            spec.commandLine().getErr().println(e.getMessage());
            return CommandLineDoor.FINDINGS;
        }
    }

    private void check() {
        if (files.size() < 2) {
            throw new UsageException("Name two run logs at least: compare before.csv after.csv");
        }
        oneEach("--label", labels, false);
        oneEach("--pressure", pressures, true);
        oneEach("--temperature", temperatures, true);
        oneEach("--humidity", humidities, true);
        for (Path file : files) {
            if (!Files.isRegularFile(file)) {
                throw new UsageException("There is no file " + file + ".");
            }
        }
        if (standard != null && (pressures.isEmpty() || temperatures.isEmpty())) {
            throw new UsageException(
                    "--correct needs the weather of the test: --pressure \"98.2 kPa\" --temperature \"24 °C\".");
        }
        if (worth != null && naturallyAspirated != null) {
            throw new UsageException(
                    "--worth and --na-power both say what boost is worth; give one.");
        }
    }

    private void oneEach(String option, List<String> values, boolean oneForAll) {
        boolean fits =
                values.isEmpty()
                        || values.size() == files.size()
                        || oneForAll && values.size() == 1;
        if (!fits) {
            throw new UsageException(
                    option
                            + " was given "
                            + values.size()
                            + " times for "
                            + files.size()
                            + " files; give it "
                            + (oneForAll ? "once, or " : "")
                            + "once for each.");
        }
    }

    private LogReading read(int file) throws IOException {
        List<Mapping> maps = new ArrayList<>();
        for (String text : mappings) {
            try {
                maps.add(Mapping.parse(text));
            } catch (IllegalArgumentException e) {
                throw new UsageException("--map: " + e.getMessage());
            }
        }
        DecimalHabit habit = decimal == null ? DecimalHabit.UNKNOWN : decimal.habit();
        try {
            return new LogReader(new ReadOptions(ambient(file), habit, maps)).read(files.get(file));
        } catch (IOException e) {
            throw new UsageException(files.get(file) + " cannot be read: " + e.getMessage());
        }
    }

    private String label(int file) {
        return labels.isEmpty()
                ? files.get(file).getFileName().toString().replaceFirst("\\.[^.]*$", "")
                : labels.get(file);
    }

    private double ambient(int file) {
        return pressures.isEmpty()
                ? Units.STANDARD_ATMOSPHERE
                : number("--pressure", each(pressures, file), Quantity.PRESSURE);
    }

    private static String each(List<String> values, int file) {
        return values.get(values.size() == 1 ? 0 : file);
    }

    private double factor(int file, String name, List<String> notes) {
        if (standard == null) {
            return 1;
        }
        Relation relation =
                PowerCorrection.byId(standard)
                        .orElseThrow(
                                () ->
                                        Lookups.unknown(
                                                "correction",
                                                standard,
                                                PowerCorrection.standards(),
                                                "relations"));
        double temperature =
                number("--temperature", each(temperatures, file), Quantity.TEMPERATURE);
        double humidity =
                humidities.isEmpty()
                        ? 0
                        : number("--humidity", each(humidities, file), Quantity.PERCENTAGE);
        PowerCorrection correction =
                PowerCorrection.of(relation, ambient(file), temperature, humidity);
        notes.add(
                name
                        + ": "
                        + correction.standard()
                        + ", factor "
                        + Numbers.significant(correction.factor(), 4)
                        + (humidities.isEmpty() ? "; the air was taken as dry." : "."));
        correction.cautions().stream().filter(c -> !notes.contains(c)).forEach(notes::add);
        return correction.factor();
    }

    private Comparison.Settings settings() {
        Comparison.Settings plain = Comparison.Settings.PLAIN;
        return new Comparison.Settings(
                band == null ? Optional.empty() : Optional.of(band()),
                plain.step(),
                plain.confidence(),
                worth(),
                optional("--displacement", displacement, Quantity.VOLUME),
                optional("--response", response, Quantity.PRESSURE));
    }

    private Band band() {
        Matcher m = BAND.matcher(band);
        try {
            if (m.matches()) {
                return Band.rpm(Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2)));
            }
        } catch (IllegalArgumentException e) {
            throw new UsageException("--band " + band + " must run from the lower to the higher.");
        }
        throw new UsageException("--band " + band + " is not of the form 4000..6500, in rev/min.");
    }

    private Optional<Worth> worth() {
        if (naturallyAspirated != null) {
            double power = number("--na-power", naturallyAspirated, Quantity.POWER);
            return Optional.of(Worth.byRule(power, ambient(0)));
        }
        if (worth == null) {
            return Optional.empty();
        }
        String[] both = PLUS_MINUS.split(worth, 2);
        if (both.length == 1) {
            return Optional.of(Worth.stated(number("--worth", worth, Quantity.POWER_PER_PRESSURE)));
        }
        Typed doubt = Typed.read(both[1], expected(Quantity.POWER_PER_PRESSURE, null));
        double uncertainty = number("--worth", both[1], Quantity.POWER_PER_PRESSURE);
        Scale scale = ((Typed.Understood) doubt).scale();
        Typed value = Typed.read(both[0], expected(Quantity.POWER_PER_PRESSURE, scale));
        return Optional.of(Worth.stated(si("--worth", value), uncertainty));
    }

    private OptionalDouble optional(String option, String text, Quantity quantity) {
        return text == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(number(option, text, quantity));
    }

    private double number(String option, String text, Quantity quantity) {
        return si(option, Typed.read(text, expected(quantity, null)));
    }

    private static Expected expected(Quantity quantity, Scale scale) {
        return new Expected(quantity, scale, Units.STANDARD_ATMOSPHERE, DecimalHabit.POINT);
    }

    private static double si(String option, Typed typed) {
        if (typed instanceof Typed.Understood understood) {
            return understood.si();
        }
        throw new UsageException(
                option
                        + ": "
                        + (typed instanceof Typed.Ambiguous a
                                ? a.question()
                                : ((Typed.NotUnderstood) typed).message()));
    }

    /** A decimal mark. */
    enum Mark {
        POINT,
        COMMA;

        DecimalHabit habit() {
            return this == POINT ? DecimalHabit.POINT : DecimalHabit.COMMA;
        }
    }
}
