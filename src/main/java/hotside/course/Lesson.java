// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.content.Once;
import hotside.problem.Given;
import hotside.relation.Chain;
import hotside.relation.Values;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.commonmark.node.Node;

/**
 * A lesson as its file tells it: what an outline shows of it, and what stands on its page, which
 * need not be read before the page is opened. Two lessons are the same if they are one object.
 */
public final class Lesson {
    /**
     * What an outline shows.
     *
     * @param id strand and name without their numbers, such as {@code gate/what-opens-a-wastegate}
     * @param strand title of its strand
     * @param title for people
     * @param skills the skills it teaches
     * @param needs the skills it builds on
     * @param minutes reading and working time
     * @param sources where it comes from
     * @param cautions warnings for the top of the page
     * @param problems the problems set in it, in order
     */
    record Head(
            String id,
            String strand,
            String title,
            List<String> skills,
            List<String> needs,
            int minutes,
            List<String> sources,
            List<String> cautions,
            List<String> problems) {
        Head {
            skills = List.copyOf(skills);
            needs = List.copyOf(needs);
            sources = List.copyOf(sources);
            cautions = List.copyOf(cautions);
            problems = List.copyOf(problems);
        }
    }

    /**
     * What stands on the page.
     *
     * @param named how each named value was written, for showing it
     * @param values the named values, SI
     * @param chain the relations worked with them
     * @param body the text, with {@link PartBlock}s where living parts stand
     * @param parts the living parts in the order of the page
     */
    record Content(List<Given> named, Values values, Chain chain, Node body, List<Part> parts) {
        /** For a page on which nothing is worked. */
        static Content of(Node body, List<Part> parts) {
            return new Content(List.of(), Values.NONE, new Chain(List.of()), body, parts);
        }

        Content {
            named = List.copyOf(named);
            parts = List.copyOf(parts);
        }

        /** The problems set on it, in order. */
        List<String> problems() {
            return parts.stream()
                    .filter(Part.ProblemCard.class::isInstance)
                    .map(part -> ((Part.ProblemCard) part).problem())
                    .toList();
        }
    }

    private final Head head;
    private final Once<Content> content;

    Lesson(Head head, Once<Content> content) {
        this.head = head;
        this.content = content;
    }

    /** A page to look something up on, which teaches no skill and takes no time of its own. */
    static Lesson page(
            String id,
            String strand,
            String title,
            List<String> skills,
            List<String> sources,
            Once<Content> content) {
        Head head =
                new Head(id, strand, title, skills, List.of(), 0, sources, List.of(), List.of());
        return new Lesson(head, content);
    }

    Content content() {
        return content.get();
    }

    public String id() {
        return head.id();
    }

    public String strand() {
        return head.strand();
    }

    public String title() {
        return head.title();
    }

    public List<String> skills() {
        return head.skills();
    }

    public List<String> needs() {
        return head.needs();
    }

    public int minutes() {
        return head.minutes();
    }

    public List<String> sources() {
        return head.sources();
    }

    public List<String> cautions() {
        return head.cautions();
    }

    public List<Given> named() {
        return content.get().named();
    }

    public Values values() {
        return content.get().values();
    }

    public Chain chain() {
        return content.get().chain();
    }

    public Node body() {
        return content.get().body();
    }

    public List<Part> parts() {
        return content.get().parts();
    }

    /** The problems set in this lesson, in order. */
    public List<String> problems() {
        return head.problems();
    }

    /** The same lesson, to which something is done as soon as its page is read. */
    Lesson onceRead(Consumer<Lesson> then) {
        return new Lesson(
                head,
                new Once<>(
                        () -> {
                            then.accept(this);
                            return content.get();
                        }));
    }

    /**
     * The same with other values in some places.
     *
     * @param others how they were written
     * @param si the same in SI
     */
    public Lesson with(List<Given> others, Values si) {
        List<Given> changed = new ArrayList<>(named());
        changed.replaceAll(
                given ->
                        others.stream()
                                .filter(other -> other.name().equals(given.name()))
                                .findFirst()
                                .orElse(given));
        Values all = values();
        for (String name : si.names()) {
            all = all.with(name, si.get(name));
        }
        return new Lesson(head, Once.of(new Content(changed, all, chain(), body(), parts())));
    }

    /** The same under another heading. */
    Lesson headed(String strand, String title) {
        return new Lesson(
                new Head(
                        id(),
                        strand,
                        title,
                        skills(),
                        needs(),
                        minutes(),
                        sources(),
                        cautions(),
                        problems()),
                content);
    }

    /** The text, and the texts inside its parts. */
    public List<Node> texts() {
        List<Node> texts = new ArrayList<>(List.of(body()));
        for (Part part : parts()) {
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
}
