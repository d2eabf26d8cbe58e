// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.cell.OperatingPoint;
import hotside.cell.Rig;
import hotside.cell.RigException;
import hotside.cell.Stock;
import hotside.content.Findings;
import hotside.content.Nearest;
import hotside.content.ScalarNode;
import hotside.problem.Literal;
import hotside.unit.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a prediction: a rig, a change of it, an engine speed, what to watch, and the why. */
final class PredictReader {
    private static final List<String> LINES = List.of("rig", "change", "at", "watch", "question");
    private static final Pattern CHANGES = Pattern.compile("[^;\\s][^;]*");
    private static final Pattern CHANGE =
            Pattern.compile("([a-z][A-Za-z0-9]*(?:\\.[A-Za-z0-9]+)+)\\s*=\\s*(.+)");
    private static final Pattern WORDS = Pattern.compile("[^,\\s][^,]*");
    private static final String FORM = "path = value, such as exhaust.bore = 98.3 mm";
    private static final int MOST_WATCHED = 6;

    private static final class Shelf {
        /** Read once, when a lesson asks for a rig. */
        static final Stock STOCK = Stock.shipped();
    }

    private final Fence block;
    private final Findings findings;
    private final double ambient;

    PredictReader(Fence block, Findings findings, double ambient) {
        this.block = block;
        this.findings = findings;
        this.ambient = ambient;
    }

    Optional<Part> read() {
        Map<String, ScalarNode> lines = block.head();
        LINES.stream()
                .filter(key -> !lines.containsKey(key) || lines.get(key).text().isEmpty())
                .forEach(
                        key ->
                                findings.add(
                                        block.start(),
                                        "this prediction has no line \"" + key + "\"",
                                        "the lines " + String.join(", ", LINES),
                                        ""));
        lines.keySet().stream()
                .filter(key -> !LINES.contains(key))
                .forEach(
                        key ->
                                findings.add(
                                        block.key(key),
                                        "unknown line \"" + key + "\"",
                                        "one of " + String.join(", ", LINES),
                                        Nearest.to(key, LINES)
                                                .map(near -> "write \"" + near + "\"")
                                                .orElse("")));
        if (!lines.keySet().containsAll(LINES)) {
            return Optional.empty();
        }
        Optional<Rig> rig = rig(lines.get("rig"));
        Optional<Double> speed = speed(lines.get("at"));
        List<Watched> watched = watched(lines.get("watch"));
        if (rig.isEmpty() || speed.isEmpty() || watched.isEmpty()) {
            return Optional.empty();
        }
        Optional<Rig> changed = changed(rig.get(), lines.get("change"));
        if (changed.isEmpty() || !runs(rig.get(), changed.get(), speed.get())) {
            return Optional.empty();
        }
        return Optional.of(
                new Part.Prediction(
                        lines.get("question").text(),
                        rig.get(),
                        changed.get(),
                        lines.get("change").text(),
                        speed.get(),
                        watched,
                        block.markdown()));
    }

    private Optional<Rig> rig(ScalarNode line) {
        Optional<Rig> rig = Shelf.STOCK.rig(line.text());
        if (rig.isEmpty()) {
            List<String> known = Shelf.STOCK.rigs().stream().map(Rig::id).toList();
            findings.add(
                    line,
                    "there is no rig \"" + line.text() + "\"",
                    "one of " + String.join(", ", known),
                    Nearest.to(line.text(), known)
                            .map(near -> "write \"" + near + "\"")
                            .orElse(""));
        }
        return rig;
    }

    private Optional<Double> speed(ScalarNode line) {
        Optional<Double> speed =
                Literal.value(line.text(), Quantity.ROTATION, ambient)
                        .filter(value -> value > 0 && value < 1000);
        if (speed.isEmpty()) {
            findings.add(
                    line, "\"" + line.text() + "\" is no engine speed", "such as 5500 rpm", "");
        }
        return speed;
    }

    private List<Watched> watched(ScalarNode line) {
        Set<Watched> all = new LinkedHashSet<>();
        Matcher words = WORDS.matcher(line.text());
        while (words.find()) {
            ScalarNode word = Fence.part(line, words, 0);
            Optional<Watched> one = Watched.find(word.text());
            if (one.isEmpty()) {
                findings.add(
                        word,
                        "the cell does not watch \"" + word.text() + "\"",
                        "one of " + String.join(", ", Watched.ids()),
                        Nearest.to(word.text(), Watched.ids())
                                .map(near -> "write \"" + near + "\"")
                                .orElse(""));
            }
            one.ifPresent(all::add);
        }
        if (all.size() > MOST_WATCHED) {
            findings.add(
                    line,
                    all.size() + " things to watch at once",
                    "at most " + MOST_WATCHED,
                    "ask for the telling ones");
        }
        return new ArrayList<>(all);
    }

    private Optional<Rig> changed(Rig rig, ScalarNode line) {
        Rig changed = rig;
        Matcher changes = CHANGES.matcher(line.text());
        while (changes.find()) {
            ScalarNode one = Fence.part(line, changes, 0);
            Matcher form = CHANGE.matcher(one.text());
            if (!form.matches()) {
                findings.add(one, "\"" + one.text() + "\" changes nothing", FORM, "");
                return Optional.empty();
            }
            try {
                changed = changed.with(form.group(1), form.group(2));
            } catch (RigException e) {
                findings.add(one, e.getMessage(), FORM, "");
                return Optional.empty();
            }
        }
        return Optional.of(changed);
    }

    private boolean runs(Rig rig, Rig changed, double speed) {
        try {
            OperatingPoint.solve(rig, speed);
            OperatingPoint.solve(changed, speed);
            return true;
        } catch (RigException e) {
            findings.add(
                    block.start(),
                    "the rig cannot run so: " + e.getMessage(),
                    "a change that the cell can run",
                    "");
            return false;
        }
    }
}
