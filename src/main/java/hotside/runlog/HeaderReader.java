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
            cells.add(LogWords.of("column.numbered", i));
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
                    LogWords.of("column.not-there", mapping.header()),
                    LogWords.of("column.not-there.wanted", String.join(", ", row.cells())),
                    LogWords.of("column.not-there.mend"));
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
                    LogWords.of("column.second.kind"),
                    cell,
                    LogWords.of("column.second", cell.text, channel.words()),
                    LogWords.of("column.second.wanted", earlier),
                    LogWords.of("column.second.mend", cell.text, channel.id()));
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
            notes.add(LogWords.of("column.zero", cell.text, scale.told()));
        }
    }

    private ColumnPlan unitAmiss(Cell cell, HeaderName name) {
        Channel channel = name.meaning().channel();
        String unit = HeaderName.bare(name.unit());
        Quantity quantity = channel.quantity();
        String symbol = quantity.shown(UnitSystem.SI_SHOP).label();
        report(
                LogWords.of("column.unit.kind"),
                cell,
                unit.isEmpty()
                        ? LogWords.of("column.no-unit", cell.text)
                        : LogWords.of("column.wrong-unit", cell.text, unit, quantity.words()),
                LogWords.of("column.unit.wanted", bareName(cell.text), symbol),
                LogWords.of("column.unit.mend", cell.text, channel.id(), symbol));
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
                names.nearest(bareName(cell.text))
                        .map(n -> LogWords.of("column.unknown.near", n))
                        .orElse("");
        report(
                LogWords.of("column.unknown.kind"),
                cell,
                LogWords.of("column.unknown", cell.text),
                LogWords.of("column.unknown.wanted") + near,
                LogWords.of("column.unknown.mend", cell.text));
        return ColumnPlan.unknown(cell.text);
    }

    private void report(String kind, Cell cell, String what, String expected, String mend) {
        findings.add(kind, cell.row.line(), cell.place, cell.row.text(), what, expected, mend);
    }
}
