// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Marks an exported item by its own response processing, as the QTI 3.0 information model tells a
 * player to: the operators that the exports use and no others.
 */
final class QtiPlayer {
    private final Element item;
    private final Map<String, List<String>> responses = new HashMap<>();
    private final Map<String, List<String>> correct = new HashMap<>();
    private final Map<String, String> cardinalities = new HashMap<>();
    private double score;
    private final List<String> feedback = new ArrayList<>();

    /** What came out: the points, and the texts that are shown. */
    record Outcome(double score, List<String> feedback) {}

    private QtiPlayer(Element item, List<String> typed) {
        this.item = item;
        int i = 0;
        for (Element declaration : children(item, "qti-response-declaration")) {
            String name = declaration.getAttribute("identifier");
            cardinalities.put(name, declaration.getAttribute("cardinality"));
            Element right = children(declaration, "qti-correct-response").get(0);
            correct.put(name, elements(right).stream().map(Element::getTextContent).toList());
            if (i < typed.size() && !typed.get(i).isEmpty()) {
                responses.put(name, List.of(typed.get(i).split(" ")));
            }
            i++;
        }
    }

    static Outcome play(Element item, List<String> typed) {
        QtiPlayer player = new QtiPlayer(item, typed);
        Element processing = children(item, "qti-response-processing").get(0);
        elements(processing).forEach(player::condition);
        List<String> shown = new ArrayList<>();
        for (Element modal : children(item, "qti-modal-feedback")) {
            if (player.feedback.contains(modal.getAttribute("identifier"))) {
                shown.add(modal.getTextContent());
            }
        }
        return new Outcome(player.score, shown);
    }

    private void condition(Element condition) {
        for (Element branch : elements(condition)) {
            List<Element> parts = elements(branch);
            boolean otherwise = branch.getLocalName().equals("qti-response-else");
            if (otherwise || holds(parts.get(0)).orElse(false)) {
                parts.subList(otherwise ? 0 : 1, parts.size()).forEach(this::set);
                return;
            }
        }
    }

    private Optional<Boolean> holds(Element test) {
        List<Element> operands = elements(test);
        Optional<List<String>> first = value(operands.get(0));
        return switch (test.getLocalName()) {
            case "qti-is-null" -> Optional.of(first.isEmpty());
            case "qti-equal" -> equal(test, number(first), number(value(operands.get(1))));
            case "qti-match" ->
                    first.map(f -> match(operands.get(0), f, value(operands.get(1)).orElseThrow()));
            default -> throw new AssertionError("unknown operator " + test.getLocalName());
        };
    }

    /** Within [x - t0, x + t1] of the first operand; null if an operand is. */
    private static Optional<Boolean> equal(Element test, Optional<Double> x, Optional<Double> y) {
        if (!test.getAttribute("tolerance-mode").equals("absolute")) {
            throw new AssertionError("only absolute tolerances are known");
        }
        String[] tolerance = test.getAttribute("tolerance").split(" ");
        if (x.isEmpty() || y.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                y.get() >= x.get() - Double.parseDouble(tolerance[0])
                        && y.get() <= x.get() + Double.parseDouble(tolerance[1]));
    }

    /** The same values: in the same order unless they are of cardinality multiple. */
    private boolean match(Element variable, List<String> one, List<String> other) {
        boolean unordered =
                "multiple".equals(cardinalities.get(variable.getAttribute("identifier")));
        return unordered
                ? one.stream().sorted().toList().equals(other.stream().sorted().toList())
                : one.equals(other);
    }

    private static Optional<Double> number(Optional<List<String>> value) {
        return value.map(v -> Double.parseDouble(v.get(0)));
    }

    private Optional<List<String>> value(Element expression) {
        return switch (expression.getLocalName()) {
            case "qti-variable" ->
                    Optional.ofNullable(responses.get(expression.getAttribute("identifier")));
            case "qti-correct" -> Optional.of(correct.get(expression.getAttribute("identifier")));
            case "qti-base-value" -> Optional.of(List.of(expression.getTextContent()));
            case "qti-ordered" ->
                    Optional.of(
                            elements(expression).stream().map(Element::getTextContent).toList());
            default -> throw new AssertionError("unknown " + expression.getLocalName());
        };
    }

    private void set(Element set) {
        Element operator = elements(set).get(0);
        String value = elements(operator).get(1).getTextContent();
        String outcome = elements(operator).get(0).getAttribute("identifier");
        if (!outcome.equals(set.getAttribute("identifier"))) {
            throw new AssertionError("an outcome is only ever added to itself");
        }
        switch (operator.getLocalName()) {
            case "qti-sum" -> score += Double.parseDouble(value);
            case "qti-multiple" -> feedback.add(value);
            default -> throw new AssertionError("unknown operator " + operator.getLocalName());
        }
    }

    static List<Element> elements(Node node) {
        List<Element> found = new ArrayList<>();
        for (Node n = node.getFirstChild(); n != null; n = n.getNextSibling()) {
            if (n instanceof Element element) {
                found.add(element);
            }
        }
        return found;
    }

    static List<Element> children(Element parent, String name) {
        return elements(parent).stream().filter(e -> e.getLocalName().equals(name)).toList();
    }
}
