// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Scale;
import hotside.unit.Shown;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** A variant's numbers in the units of its shop, for people. */
public final class Answers {
    private static final int DIGITS = 4;

    private Answers() {}

    /** The right answer to an ask, such as {@code 133.0 N} or {@code B: the larger pipe}. */
    public static String told(Variant variant, int ask) {
        if (variant.template().task() instanceof Task.Devise devise) {
            return PlanJudge.model(devise, variant).get(ask);
        }
        if (variant.lettered().isEmpty()) {
            return told(variant, ask, variant.answers().get(ask).value());
        }
        return right(variant).stream()
                .map(option -> option.letter() + ": " + option.text())
                .collect(Collectors.joining("; "));
    }

    /** Some answer to an ask, SI. */
    public static String told(Variant variant, int ask, double value) {
        return told(variant, ask, value, DIGITS);
    }

    /**
     * The right answer to an ask as tables hold it, whatever the language: {@code 133.0 N}, with a
     * point.
     */
    public static String written(Variant variant, int ask) {
        if (!variant.lettered().isEmpty()) {
            return told(variant, ask);
        }
        Ask asked = variant.template().asks().get(ask);
        Scale scale = asked.scale(variant.system());
        double si = variant.answers().get(ask).value();
        String number =
                Numbers.significant(scale.fromSi(si, asked.quantity(), variant.ambient()), DIGITS);
        return (number + " " + scale.label()).strip();
    }

    static String told(Variant variant, int ask, double value, int digits) {
        Ask asked = variant.template().asks().get(ask);
        return Shown.of(
                        value,
                        asked.quantity(),
                        asked.scale(variant.system()),
                        variant.ambient(),
                        digits,
                        DecimalHabit.spoken())
                .text();
    }

    /**
     * An answer to an ask that is marked right: {@code 133.0 N}, {@code B}, {@code A C}, for an
     * order {@code B D A C}.
     */
    public static String key(Variant variant, int ask) {
        return variant.lettered().isEmpty()
                ? told(variant, ask)
                : right(variant).stream().map(Lettered::letter).collect(Collectors.joining(" "));
    }

    /**
     * The letters that an answer names, however they are parted: {@code B} and {@code D} for {@code
     * 2 and d}. None if it cannot be read.
     */
    public static List<String> letters(Variant variant, String typed) {
        return LetterMarker.named(variant, typed).stream()
                .flatMap(List::stream)
                .map(Lettered::letter)
                .toList();
    }

    /** The options to be taken, or all items in a right order. */
    public static List<Lettered> right(Variant variant) {
        if (variant.template().task() instanceof Task.Arrange arrange) {
            return inOrder(variant, arrange.items().stream().map(Task.Item::id).toList());
        }
        if (variant.template().task() instanceof Task.Rank rank) {
            return inOrder(variant, Orders.right(rank, variant.run().values()));
        }
        return variant.lettered().stream().filter(Lettered::right).toList();
    }

    private static List<Lettered> inOrder(Variant variant, List<String> ids) {
        return variant.lettered().stream()
                .sorted(Comparator.comparingInt(item -> ids.indexOf(item.id())))
                .toList();
    }
}
