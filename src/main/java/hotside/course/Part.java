// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.cell.Rig;
import hotside.problem.SkillMap;
import hotside.problem.Template;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Values;
import java.util.List;
import java.util.Optional;
import org.commonmark.node.Node;

/** A living piece of a lesson, embedded by a fenced block. */
public sealed interface Part {
    /**
     * A relation to play with.
     *
     * @param relation which
     * @param start the value each input starts from, SI; complete
     * @param over the input that the curve runs over, if a curve is drawn
     * @param curve the output that the curve shows
     */
    record Calculator(Relation relation, Values start, Optional<Slot> over, Slot curve)
            implements Part {}

    /**
     * A problem to work.
     *
     * @param problem its id
     */
    record ProblemCard(String problem) implements Part {}

    /**
     * A worked example: the working of some of the lesson's relations with the lesson's values.
     *
     * @param uses names in the lesson's chain, in order
     * @param title what the example is about
     * @param intro Markdown before the working
     */
    record WorkedExample(List<String> uses, String title, Node intro) implements Part {}

    /**
     * A worked example whose last steps are left out, with numbers of its own.
     *
     * @param uses names in the lesson's chain, in order
     * @param title what the example is about
     * @param intro Markdown before the working
     * @param blank how many of the last steps are left out, 1 at least
     * @param template the example as a problem that asks for its last result
     */
    record FadedExample(List<String> uses, String title, Node intro, int blank, Template template)
            implements Part {
        public FadedExample {
            uses = List.copyOf(uses);
        }
    }

    /**
     * A picture that the program draws.
     *
     * @param diagram which
     * @param start the inputs of its relation, SI; none if it has no relation
     * @param follows the calculator before it whose values it takes as they move
     */
    record DiagramFigure(Diagram diagram, Values start, Optional<Calculator> follows)
            implements Part {}

    /**
     * A change of a rig whose effect is foretold before it is run.
     *
     * @param question for people
     * @param before the rig as it is
     * @param after the rig with the change
     * @param change how the lesson writes the change
     * @param speed of the crankshaft, turns per second
     * @param watched what is foretold
     * @param explain Markdown that is shown after the run
     */
    record Prediction(
            String question,
            Rig before,
            Rig after,
            String change,
            double speed,
            List<Watched> watched,
            Node explain)
            implements Part {
        public Prediction {
            watched = List.copyOf(watched);
        }
    }

    /**
     * Curves of a relation.
     *
     * @param relation which
     * @param title of the figure
     * @param x the input along the axis
     * @param from where the axis starts, SI
     * @param to where the axis ends, SI
     * @param y the output that is drawn
     * @param fixed the other inputs, SI
     * @param by the input that tells the curves apart, if there is more than one curve
     * @param each its values, SI
     */
    record ChartFigure(
            Relation relation,
            String title,
            Slot x,
            double from,
            double to,
            Slot y,
            Values fixed,
            Optional<Slot> by,
            List<Double> each)
            implements Part {
        public ChartFigure {
            each = List.copyOf(each);
        }
    }

    /**
     * The skills as a picture.
     *
     * @param map which
     */
    record SkillPicture(SkillMap map) implements Part {}

    /**
     * Something beside the line of thought.
     *
     * @param caution true for a warning of harm, false for a note
     * @param content Markdown
     */
    record Aside(boolean caution, Node content) implements Part {}
}
