// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import java.util.List;

/** What the learner does in a problem, with all that only this sort of problem has. */
public sealed interface Task {
    /** Works out numbers and types them. */
    record Work() implements Task {}

    /** Chooses among the right number and the numbers of the mistakes. */
    record Pick() implements Task {}

    /**
     * Chooses among statements.
     *
     * @param several true if all that hold are to be ticked, false if exactly one holds
     * @param statements in the order of the file
     */
    record Judge(boolean several, List<Statement> statements) implements Task {
        public Judge {
            statements = List.copyOf(statements);
        }
    }

    /**
     * Puts items into order.
     *
     * @param items in one of the right orders
     * @param rules what must come before what
     */
    record Arrange(List<Item> items, List<Rule> rules) implements Task {
        public Arrange {
            items = List.copyOf(items);
            rules = List.copyOf(rules);
        }
    }

    /**
     * Puts items into the order of a value that hangs on the numbers of the variant.
     *
     * @param items in the order of the file
     * @param falling true if the largest comes first
     * @param misranks orders that come of a wrong idea
     */
    record Rank(List<Ranked> items, boolean falling, List<Misrank> misranks) implements Task {
        public Rank {
            items = List.copyOf(items);
            misranks = List.copyOf(misranks);
        }
    }

    /**
     * Reads a chart.
     *
     * @param chart how it is made
     * @param reading what is read off it
     * @param misreadings how it may be misread
     */
    record Read(ChartPlan chart, Reading reading, List<Misreading> misreadings) implements Task {
        public Read {
            misreadings = List.copyOf(misreadings);
        }
    }

    /**
     * Says which fault made the curves.
     *
     * @param chart how it is made, without the fault
     * @param pull the pull that has the fault
     * @param faults what it may be; one of them is drawn
     */
    record Diagnose(ChartPlan.Pulls chart, String pull, List<Fault> faults) implements Task {
        public Diagnose {
            faults = List.copyOf(faults);
        }
    }

    /**
     * Writes a test plan.
     *
     * @param contest what is compared
     * @param model the lines of a plan that is right
     * @param wants what makes a plan right
     */
    record Devise(Contest contest, List<String> model, PlanWants wants) implements Task {
        public Devise {
            model = List.copyOf(model);
        }
    }

    /**
     * Works out numbers from pulls that are made in the cell for this variant.
     *
     * @param contest what is compared
     * @param plan the lines of the plan by which it is
     */
    record Split(Contest contest, List<String> plan) implements Task {
        public Split {
            plan = List.copyOf(plan);
        }
    }

    /** True if numbers of the working are asked for. */
    default boolean isWorked() {
        return this instanceof Work || this instanceof Split;
    }

    /**
     * Something that may hold or not.
     *
     * @param id what a learner believes who takes it wrongly
     * @param say Markdown-free text with {@code {{value}}}
     * @param holds when it does
     * @param because why it holds or does not; as {@code say}
     */
    record Statement(String id, String say, Condition holds, String because) {}

    /**
     * @param id its name in the rules
     * @param say text with {@code {{value}}}
     */
    record Item(String id, String say) {}

    /**
     * One item comes before another.
     *
     * @param mistake what is recorded where it is broken
     * @param because why
     */
    record Rule(String first, String then, String mistake, String because) {}

    /**
     * @param id its name
     * @param say text with {@code {{value}}}
     * @param value the place of the value by which it is ranked
     */
    record Ranked(String id, String say, String value) {}

    /**
     * An order by something else than what counts.
     *
     * @param id what a learner believes who orders so
     * @param values one place for each item, in the order of the file
     * @param falling true if the largest comes first
     * @param because why that is wrong; text with {@code {{value}}}
     */
    record Misrank(String id, List<String> values, boolean falling, String because) {
        public Misrank {
            values = List.copyOf(values);
        }
    }

    /**
     * Something that may be wrong with a rig.
     *
     * @param id what is recorded where it is wrongly suspected
     * @param say what it is, for people
     * @param change what it does to the rig
     * @param trace what it leaves in the curves
     */
    record Fault(String id, String say, RigChange change, String trace) {}
}
