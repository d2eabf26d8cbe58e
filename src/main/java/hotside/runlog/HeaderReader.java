// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.runlog.Dialect.SampleRow;
import hotside.unit.Quantity;
import hotside.unit.Reference;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes out what each column is, and says so where it cannot. */
final class HeaderReader {
    private static final String EXAMPLES =
            "a name such as speed, power, torque, boost, p3, p4, lambda or time";

    private final ChannelNames names;
    private final List<Mapping> mappings;
    private final LogFindings findings;
    private final List<String> notes;
    private final Map<Channel, String> taken = new EnumMap<>(Channel.class);
    private final Set<Mapping> used = new HashSet<>();

    HeaderReader(
            ChannelNames names, List<Mapping> mappings, LogFindings findings, List<String> notes) {
        this.names = names;
        this.mappings = mappings;
        this.findings = findings;
        this.notes = notes;
    }

    /**
     * Plans all columns.
     *
     * @param header the row of names, or null
     * @param units the row of units, or null
     * @param columns how many there are where nothing names them
     */
    List<ColumnPlan> plan(SampleRow header, SampleRow units, int columns) {
        SampleRow row = header == null ? numbered(columns) : header;
        mappings.forEach(m -> claim(m, row));
        List<ColumnPlan> plans = new ArrayList<>();
        int place = 1;
        for (int i = 0; i < row.cells().size(); i++) {
            String cell = row.cells().get(i);
            int found = row.text().indexOf(cell, place - 1);
            place = found < 0 ? place : found + 1;
            plans.add(column(new Cell(row, place, cell), unit(units, i)));
            place += cell.length();
        }
        return plans;
    }

    private record Cell(SampleRow row, int place, String text) {}

    private static SampleRow numbered(int columns) {
        List<String> cells = new ArrayList<>();
        for (int i = 1; i <= columns; i++) {
            cells.add("column " + i);
        }
        return new SampleRow(1, "", cells);
    }

    private static String unit(SampleRow units, int i) {
        return units == null || i >= units.cells().size()
                ? ""
                : HeaderName.bare(units.cells().get(i));
    }

    /** A mapped channel belongs to its column, whatever others are called. */
    private void claim(Mapping mapping, SampleRow row) {
        if (row.cells().stream().noneMatch(c -> c.equalsIgnoreCase(mapping.header()))) {
            findings.about(
                    "there is no column \"" + mapping.header() + "\" to map",
                    "one of " + String.join(", ", row.cells()),
                    "write the column's name as the file has it");
        } else {
            taken.put(mapping.channel(), mapping.header());
        }
    }

    private ColumnPlan column(Cell cell, String unitBelow) {
        for (Mapping mapping : mappings) {
            if (mapping.header().equalsIgnoreCase(cell.text) && used.add(mapping)) {
                return ColumnPlan.known(cell.text, mapping.channel(), mapping.scale());
            }
        }
        return HeaderName.of(cell.text, names)
                .map(name -> name.unit().isEmpty() ? name.withUnit(unitBelow) : name)
                .map(name -> known(cell, name))
                .orElseGet(() -> unknown(cell));
    }

    private ColumnPlan known(Cell cell, HeaderName name) {
        Channel channel = name.meaning().channel();
        String earlier = taken.get(channel);
        if (earlier != null) {
            report(
                    "second columns",
                    cell,
                    "column \""
                            + cell.text
                            + "\" is a second one for "
                            + channel.words()
                            + "; it is kept but not used",
                    "one column for it; \"" + earlier + "\" is the one that is used",
                    "to use this one, say so: --map \"" + cell.text + "=" + channel.id() + " …\"");
            return ColumnPlan.unknown(cell.text);
        }
        Optional<Scale> scale = name.scale();
        if (scale.isEmpty()) {
            return unitAmiss(cell, name);
        }
        taken.put(channel, cell.text);
        noteZero(cell, name, scale.get());
        return ColumnPlan.known(cell.text, channel, scale.get());
    }

    private void noteZero(Cell cell, HeaderName name, Scale scale) {
        boolean pressure = name.meaning().unmarked() != Reference.NONE;
        if (pressure && !name.saysItsZero() && scale.reference() == Reference.GAUGE) {
            notes.add(
                    "\""
                            + cell.text
                            + "\" was read as "
                            + scale.label()
                            + ": the file does not say gauge or absolute. Differences between parts do not"
                            + " depend on it.");
        }
    }

    private ColumnPlan unitAmiss(Cell cell, HeaderName name) {
        Channel channel = name.meaning().channel();
        String unit = HeaderName.bare(name.unit());
        Quantity quantity = channel.quantity();
        String symbol = quantity.shown(UnitSystem.SI_SHOP).label();
        report(
                "columns without a unit",
                cell,
                "column \""
                        + cell.text
                        + "\" "
                        + (unit.isEmpty()
                                ? "has no unit"
                                : "has \"" + unit + "\", which is no unit of " + quantity.words())
                        + "; it is kept but not used",
                "a unit in the name or in a row under it, such as \""
                        + bareName(cell.text)
                        + " ["
                        + symbol
                        + "]\"",
                "add the unit, or say what it is: --map \""
                        + cell.text
                        + "="
                        + channel.id()
                        + " "
                        + symbol
                        + "\"");
        return ColumnPlan.unknown(cell.text);
    }

    private static String bareName(String header) {
        return header.replaceAll("\\s*[\\[({].*", "");
    }

    private ColumnPlan unknown(Cell cell) {
        if (cell.text.isEmpty()) {
            return ColumnPlan.unknown("");
        }
        String near =
                names.nearest(bareName(cell.text)).map(n -> "; \"" + n + "\" is known").orElse("");
        report(
                "unknown columns",
                cell,
                "unknown column \"" + cell.text + "\"; it is kept but not used",
                EXAMPLES + near,
                "if it matters, say what it is: --map \"" + cell.text + "=power kW\"");
        return ColumnPlan.unknown(cell.text);
    }

    private void report(String kind, Cell cell, String what, String expected, String mend) {
        findings.add(kind, cell.row.line(), cell.place, cell.row.text(), what, expected, mend);
    }
}
