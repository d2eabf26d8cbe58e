// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.problem.Given;
import hotside.relation.Chain;
import hotside.relation.Values;
import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.Node;

/**
 * A lesson as its file tells it.
 *
 * @param id strand and name without their numbers, such as {@code gate/what-opens-a-wastegate}
 * @param strand title of its strand
 * @param title for people
 * @param skills the skills it teaches
 * @param needs the skills it builds on
 * @param minutes reading and working time
 * @param sources where it comes from
 * @param cautions warnings for the top of the page
 * @param named how each named value was written, for showing it
 * @param values the named values, SI
 * @param chain the relations worked with them
 * @param body the text, with {@link PartBlock}s where living parts stand
 * @param parts the living parts in the order of the page
 */
public record Lesson(
        String id,
        String strand,
        String title,
        List<String> skills,
        List<String> needs,
        int minutes,
        List<String> sources,
        List<String> cautions,
        List<Given> named,
        Values values,
        Chain chain,
        Node body,
        List<Part> parts) {
    public Lesson {
        skills = List.copyOf(skills);
        needs = List.copyOf(needs);
        sources = List.copyOf(sources);
        cautions = List.copyOf(cautions);
        named = List.copyOf(named);
        parts = List.copyOf(parts);
    }

    /**
     * The same with other values in some places.
     *
     * @param others how they were written
     * @param si the same in SI
     */
    public Lesson with(List<Given> others, Values si) {
        List<Given> changed = new ArrayList<>(named);
        changed.replaceAll(
                given ->
                        others.stream()
                                .filter(other -> other.name().equals(given.name()))
                                .findFirst()
                                .orElse(given));
        Values all = values;
        for (String name : si.names()) {
            all = all.with(name, si.get(name));
        }
        return new Lesson(
                id, strand, title, skills, needs, minutes, sources, cautions, changed, all, chain,
                body, parts);
    }

    /** The text, and the texts inside its parts. */
    public List<Node> texts() {
        List<Node> texts = new ArrayList<>(List.of(body));
        for (Part part : parts) {
            if (part instanceof Part.Aside aside) {
                texts.add(aside.content());
            } else if (part instanceof Part.WorkedExample worked) {
                texts.add(worked.intro());
            } else if (part instanceof Part.FadedExample faded) {
                texts.add(faded.intro());
            } else if (part instanceof Part.Prediction prediction) {
                texts.add(prediction.explain());
            }
        }
        return texts;
    }

    /** The problems set in this lesson, in order. */
    public List<String> problems() {
        return parts.stream()
                .filter(Part.ProblemCard.class::isInstance)
                .map(part -> ((Part.ProblemCard) part).problem())
                .toList();
    }
}
