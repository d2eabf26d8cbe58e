// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.content.Findings;
import hotside.content.Nearest;
import hotside.content.ScalarNode;
import hotside.problem.Finish;
import hotside.problem.Given;
import hotside.problem.GivenReader;
import hotside.problem.NoVariantException;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.relation.Chain;
import hotside.relation.RelationException;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.commonmark.node.Node;

/**
 * Reads a faded example: which uses, how many of the last steps are left out, and the values that
 * stand in place of the lesson's.
 */
final class FadedReader {
    private static final String BLANK = "blank";

    private final Fence block;
    private final Findings findings;
    private final Chain chain;
    private final List<Given> named;
    private final double ambient;

    FadedReader(Fence block, Findings findings, Chain chain, List<Given> named, double ambient) {
        this.block = block;
        this.findings = findings;
        this.chain = chain;
        this.named = named;
        this.ambient = ambient;
    }

    Optional<Part> read(List<String> uses, String title) {
        Map<String, ScalarNode> lines = block.head();
        int blank = blank(lines.remove(BLANK));
        List<Given> givens = givens(lines);
        Node intro = block.markdown();
        if (!findings.isEmpty()) {
            return Optional.empty();
        }
        try {
            Template template =
                    Finish.template(chain, uses.get(uses.size() - 1), title, givens, ambient);
            if (!isWorkable(template, blank)) {
                return Optional.empty();
            }
            return Optional.of(new Part.FadedExample(uses, title, intro, blank, template));
        } catch (RelationException e) {
            findings.add(
                    block.start(),
                    "this example has no result: " + e.getMessage(),
                    "values that the relations can work with",
                    "");
            return Optional.empty();
        }
    }

    private int blank(ScalarNode line) {
        if (line == null) {
            return 1;
        }
        if (line.text().matches("[1-9]\\d?")) {
            return Integer.parseInt(line.text());
        }
        findings.add(
                line,
                "\"" + line.text() + "\" is no number of steps",
                "how many of the last steps are left out, 1 or more",
                "");
        return 1;
    }

    /** The lesson's values, with those of the block in their places. */
    private List<Given> givens(Map<String, ScalarNode> lines) {
        List<Given> givens = new ArrayList<>(named);
        GivenReader reader = new GivenReader(findings);
        List<String> known = named.stream().map(Given::name).toList();
        lines.forEach(
                (name, line) -> {
                    int index = known.indexOf(name);
                    if (index < 0) {
                        findings.add(
                                block.key(name),
                                "the lesson has no value \"" + name + "\"",
                                known.isEmpty()
                                        ? "a name under \"values\" in the front matter"
                                        : "one of " + String.join(", ", known),
                                Nearest.to(name, known)
                                        .map(near -> "write \"" + near + "\"")
                                        .orElse(""));
                        return;
                    }
                    reader.read(name, line, named.get(index).quantity())
                            .filter(given -> isOne(given, named.get(index), line))
                            .ifPresent(given -> givens.set(index, given));
                });
        return givens;
    }

    private boolean isOne(Given given, Given like, ScalarNode line) {
        boolean row = given.isFixedRow();
        if (row == like.isFixedRow() && (row || given.si().values().size() == 1)) {
            return true;
        }
        findings.add(
                line,
                given.name() + " is written otherwise than in the front matter",
                like.isFixedRow() ? "a row of readings" : "one value",
                "");
        return false;
    }

    /** The example is worked in both shops before anybody is asked to finish it. */
    private boolean isWorkable(Template template, int blank) {
        for (UnitSystem system : UnitSystem.values()) {
            try {
                Variant variant = Variants.draw(template, 1, system);
                int steps = Finish.last(variant).steps().size();
                if (blank > steps) {
                    findings.add(
                            block.key(BLANK),
                            "the last relation has " + steps + " steps, not " + blank,
                            "1 to " + steps,
                            "");
                    return false;
                }
            } catch (NoVariantException e) {
                findings.add(
                        block.start(),
                        "nobody can be asked to finish this example: " + e.getMessage(),
                        "values inside the good range of every relation, in SI and in US units",
                        "change the values");
                return false;
            }
        }
        return true;
    }
}
