// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads the unit after a number, with the mark that says what a pressure is counted from. */
final class UnitReader {
    private static final Pattern MARK =
            Pattern.compile(
                    "(?<unit>.*?)[ ,(-]*(?:(?<gauge>gauge|gage|ga|g|überdruck|ü|relativ|rel)|(?<absolute>absolute|absolut|abs|a)|(?<difference>differenz|diff|d))[.)]*",
                    Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    private static final Pattern WORD =
            Pattern.compile(
                    "(gauge|gage|absolute|absolut|abs|überdruck|relativ|rel)\\.?",
                    Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    private static final Pattern VACUUM =
            Pattern.compile(".*(?:vac|vacuum|hgv|vakuum|unterdruck)\\.?", Pattern.CASE_INSENSITIVE);
    private static final double NEAR = 0.34;

    private final Expected expected;
    private final Quantity quantity;

    UnitReader(Expected expected) {
        this.expected = expected;
        this.quantity = expected.quantity();
    }

    /** The scale that a number with this after it is on; empty if that is no unit for it. */
    Optional<Scale> scale(String spelling) {
        if (spelling.isEmpty()) {
            return Optional.ofNullable(expected.scale()).or(this::pureNumber);
        }
        Optional<Scale> plain =
                Units.find(quantity.dimension(), spelling)
                        .map(unit -> new Scale(unit, expected.unmarked()));
        return plain.isPresent() || quantity.dimension() != Dimension.PRESSURE
                ? plain
                : marked(spelling);
    }

    private Optional<Scale> pureNumber() {
        boolean unitless = quantity.si().symbol().equals("1") && quantity != Quantity.PERCENTAGE;
        return unitless ? Optional.of(quantity.siScale()) : Optional.empty();
    }

    private Optional<Scale> marked(String spelling) {
        Matcher mark = MARK.matcher(spelling);
        if (!mark.matches()) {
            return Optional.empty();
        }
        boolean difference = quantity == Quantity.PRESSURE_DIFFERENCE;
        if (mark.group("difference") != null && !difference) {
            return Optional.empty();
        }
        Reference reference =
                difference
                        ? Reference.NONE
                        : mark.group("gauge") != null ? Reference.GAUGE : Reference.ABSOLUTE;
        Optional<Unit> unit =
                WORD.matcher(spelling).matches()
                        ? Optional.ofNullable(expected.scale()).map(Scale::unit)
                        : Units.find(Dimension.PRESSURE, mark.group("unit"));
        return unit.map(u -> new Scale(u, reference));
    }

    /** Why no unit was found after this number; whole sentences. */
    String complaint(NumberText number, String line) {
        String spelling = number.rest();
        if (spelling.isEmpty()) {
            return UnitWords.of("no-unit", Spelling.quote(line), expected.example());
        }
        if (startsANumber(spelling)) {
            return UnitWords.of("two-numbers", Spelling.quote(line), expected.sentence());
        }
        if (quantity.dimension() == Dimension.PRESSURE && VACUUM.matcher(spelling).matches()) {
            return UnitWords.of("vacuum", expected.written("12.5"));
        }
        return tooMuch(number).orElseGet(() -> complaint(spelling));
    }

    /** Why this is no unit of the quantity, and which are; whole sentences. */
    String complaint(String spelling) {
        return otherDimension(spelling).orElseGet(() -> unknown(spelling));
    }

    private static boolean startsANumber(String spelling) {
        return NumberText.read(spelling).isPresent();
    }

    private Optional<String> tooMuch(NumberText number) {
        String spelling = number.rest();
        for (int end = spelling.lastIndexOf(' ');
                end > 0;
                end = spelling.lastIndexOf(' ', end - 1)) {
            String unit = Spelling.tidy(spelling.substring(0, end));
            if (scale(unit).isPresent()) {
                return Optional.of(
                        UnitWords.of(
                                "too-much",
                                Spelling.quote(number.typed() + " " + unit),
                                Spelling.quote(spelling.substring(end + 1))));
            }
        }
        return Optional.empty();
    }

    private Optional<String> otherDimension(String spelling) {
        List<Dimension> measured =
                Arrays.stream(Dimension.values())
                        .filter(d -> d != Dimension.NONE && Units.find(d, spelling).isPresent())
                        .toList();
        if (measured.isEmpty()) {
            return Optional.empty();
        }
        String words =
                measured.stream()
                        .map(UnitReader::words)
                        .collect(Collectors.joining(UnitWords.of("or")));
        return Optional.of(
                UnitWords.of("other-dimension", Spelling.quote(spelling), words, candidates()));
    }

    private String unknown(String spelling) {
        return nearest(spelling)
                .map(
                        near ->
                                UnitWords.of(
                                        "unknown-near",
                                        Spelling.quote(spelling),
                                        near,
                                        candidates()))
                .orElseGet(() -> UnitWords.of("unknown", Spelling.quote(spelling), candidates()));
    }

    private String candidates() {
        if (quantity == Quantity.PERCENTAGE) {
            return expected.sentence();
        }
        if (quantity.dimension() == Dimension.RATIO) {
            return UnitWords.of(
                    "pure-or-percent", expected.expectation(), expected.written("0.12"));
        }
        List<String> symbols =
                Units.of(quantity.dimension()).stream()
                        .map(Unit::symbol)
                        .filter(symbol -> !symbol.equals("1"))
                        .toList();
        String sentence = expected.expectation();
        return symbols.isEmpty()
                ? UnitWords.of("without-unit", sentence)
                : UnitWords.of("in-units", sentence, listed(symbols));
    }

    private Optional<String> nearest(String spelling) {
        String wanted = spelling.toLowerCase(Locale.ROOT);
        record Near(String symbol, int distance, boolean longer) {}
        return Units.of(quantity.dimension()).stream()
                .flatMap(
                        unit ->
                                Stream.concat(Stream.of(unit.symbol()), unit.aliases().stream())
                                        .map(
                                                s ->
                                                        new Near(
                                                                unit.symbol(),
                                                                distance(wanted, s),
                                                                begins(s, wanted))))
                // Who writes "kg" for a force means kgf; kN would be a hundred times as much.
                .min(
                        Comparator.comparingInt(Near::distance)
                                .thenComparing(Near::longer, Comparator.reverseOrder()))
                .filter(near -> near.distance() <= Math.max(1, NEAR * wanted.length()))
                .filter(near -> !near.symbol().equals("1"))
                .map(Near::symbol);
    }

    private static boolean begins(String spelling, String wanted) {
        return spelling.toLowerCase(Locale.ROOT).startsWith(wanted);
    }

    private static int distance(String wanted, String spelling) {
        return Spelling.distance(wanted, spelling.toLowerCase(Locale.ROOT));
    }

    static String words(Dimension dimension) {
        return UnitWords.of("dimension." + dimension.name().toLowerCase(Locale.ROOT));
    }

    private static String listed(List<String> symbols) {
        int last = symbols.size() - 1;
        return last == 0
                ? symbols.get(0)
                : String.join(", ", symbols.subList(0, last))
                        + UnitWords.of("or")
                        + symbols.get(last);
    }
}
