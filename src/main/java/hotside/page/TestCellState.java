// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.cell.Stock;
import hotside.trial.Judgement;
import hotside.unit.UnitSystem;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What the page of the test cell holds.
 *
 * @param stock what can be run and fitted
 * @param typed what stands in the fields, by name
 * @param result of the last trial
 * @param judged what was said of plan, prediction and conclusion; empty before
 * @param fault what stands in the way of running or judging
 * @param running true while a trial runs
 */
public record TestCellState(
        Stock stock,
        Map<String, String> typed,
        Optional<ComparisonView> result,
        Optional<Judgement> judged,
        Optional<String> fault,
        boolean running,
        UnitSystem system) {
    /** What the fields hold at the start: a plan that somebody without experience would make. */
    public static TestCellState fresh(Stock stock, UnitSystem system) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("rig", stock.rigs().get(0).id());
        typed.put("a", "as-it-is");
        typed.put("b", "as-it-is");
        typed.put("order", "");
        typed.put("warm-up", "0");
        typed.put("interval", "10 min");
        typed.put("hold", "");
        typed.put("band", Words.of("cell.band-hint"));
        typed.put("log-boost", "true");
        return new TestCellState(
                stock, typed, Optional.empty(), Optional.empty(), Optional.empty(), false, system);
    }

    public TestCellState {
        typed = Map.copyOf(typed);
    }

    public String field(String name) {
        return typed.getOrDefault(name, "");
    }

    public TestCellState typed(String name, String value) {
        Map<String, String> other = new LinkedHashMap<>(typed);
        other.put(name, value);
        return new TestCellState(stock, other, result, judged, fault, running, system);
    }

    public TestCellState running(boolean now) {
        return new TestCellState(stock, typed, result, judged, Optional.empty(), now, system);
    }

    public TestCellState fault(String text) {
        return new TestCellState(stock, typed, result, judged, Optional.of(text), false, system);
    }

    /** With the pulls of a trial; what was judged before belongs to other pulls. */
    public TestCellState result(ComparisonView view) {
        return new TestCellState(
                stock, typed, Optional.of(view), Optional.empty(), Optional.empty(), false, system);
    }

    public TestCellState judged(Judgement told) {
        return new TestCellState(
                stock, typed, result, Optional.of(told), Optional.empty(), false, system);
    }

    /** Nothing judged yet. */
    public TestCellState unjudged() {
        return new TestCellState(stock, typed, result, Optional.empty(), fault, running, system);
    }

    /** In other units; the view of the pulls has to be made anew. */
    public TestCellState in(UnitSystem other, Optional<ComparisonView> view) {
        return new TestCellState(stock, typed, view, judged, fault, running, other);
    }
}
