// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.content.Fields;
import hotside.content.Findings;
import hotside.content.Nearest;
import hotside.content.ScalarNode;
import hotside.unit.Quantity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads items that a value puts into order, and the orders that come of a wrong idea. */
final class RankReader {
    private static final List<String> ENDS = List.of("least", "most");

    private final Fields fields;
    private final Findings findings;
    private final Function<String, Optional<Quantity>> quantities;
    private final List<String> places;

    /**
     * @param quantities what the value at a place measures; nothing if there is none
     * @param places all places that have a value
     */
    RankReader(
            Fields fields, Function<String, Optional<Quantity>> quantities, List<String> places) {
        this.fields = fields;
        this.findings = fields.findings();
        this.quantities = quantities;
        this.places = places;
    }

    Task.Rank read() {
        boolean falling = fields.oneOf("first", ENDS).equals("most");
        Fields map = fields.map("items");
        List<Task.Ranked> items = new ArrayList<>();
        List<ScalarNode> values = new ArrayList<>();
        for (String id : map.names()) {
            Fields item = map.map(id);
            String say = item.text("say").strip().replaceAll("\\s+", " ");
            item.scalar("value").ifPresent(values::add);
            items.add(new Task.Ranked(id, say, item.text("value").strip()));
            item.noOthers();
        }
        refuseMixed(values);
        return new Task.Rank(items, falling, misranks(items.size()));
    }

    private List<Task.Misrank> misranks(int count) {
        List<Task.Misrank> misranks = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Fields one : fields.optionalMaps("mistakes")) {
            String id = one.text("mistake").strip();
            if (!ids.add(id)) {
                findings.add(one.place("mistake"), "\"" + id + "\" a second time", "once each", "");
            }
            List<ScalarNode> values = one.scalars("values");
            if (values.size() != count && !values.isEmpty()) {
                findings.add(
                        one.place("values"),
                        values.size() + " values for " + count + " items",
                        "one for each item, in the order of the list of items",
                        "");
            }
            refuseMixed(values);
            boolean falling = one.oneOf("first", ENDS).equals("most");
            String because = one.text("because").strip().replaceAll("\\s+", " ");
            one.noOthers();
            misranks.add(
                    new Task.Misrank(
                            id,
                            values.stream().map(value -> value.text().strip()).toList(),
                            falling,
                            because));
        }
        return misranks;
    }

    /** What is put into order must be there, and all of one kind. */
    private void refuseMixed(List<ScalarNode> values) {
        Optional<Quantity> first = Optional.empty();
        for (ScalarNode value : values) {
            String place = value.text().strip();
            Optional<Quantity> quantity = quantities.apply(place);
            if (quantity.isEmpty()) {
                findings.add(
                        value,
                        "there is no value \"" + place + "\"",
                        "one of " + String.join(", ", places),
                        Nearest.to(place, places).map(near -> "write \"" + near + "\"").orElse(""));
            } else if (first.isPresent() && !ChainReader.fits(quantity.get(), first.get())) {
                findings.add(
                        value,
                        place
                                + " is "
                                + Literal.a(quantity.get())
                                + ", the others are not: "
                                + Literal.a(first.get()),
                        "values of one kind, so that they can be compared",
                        "");
            }
            first = first.or(() -> quantity);
        }
    }
}
