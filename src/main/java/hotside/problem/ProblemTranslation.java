// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.content.ContentFile;
import hotside.content.Fields;
import hotside.content.Findings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A problem's words in another language: title, questions, mistakes, text. It holds no numbers and
 * no relations; those are the original's, with its fingerprint, so that a seed gives the same
 * numbers and the same marks in every language.
 */
public final class ProblemTranslation {
    private final ContentFile file;
    private final Findings findings;
    private final Template original;

    private ProblemTranslation(ContentFile file, Template original) {
        this.file = file;
        this.findings = file.findings();
        this.original = original;
    }

    /**
     * @param file findings are added to its own
     * @param originals finds a problem by its id
     * @return the problem in the other language, if the file is free of findings
     */
    public static Optional<Template> read(
            ContentFile file, Function<String, Optional<Template>> originals) {
        String id = file.fields().text("id");
        Optional<Template> original = originals.apply(id);
        if (original.isEmpty()) {
            file.findings()
                    .add(
                            file.fields().place("id"),
                            "there is no problem \"" + id + "\" to translate",
                            "the id of the original",
                            "");
            return Optional.empty();
        }
        return new ProblemTranslation(file, original.get()).template();
    }

    private Optional<Template> template() {
        Fields fields = file.fields();
        fields.text("id");
        if (!(original.task() instanceof Task.Work) && !(original.task() instanceof Task.Pick)) {
            findings.add(
                    fields.place("id"),
                    "a problem of this kind has words that this file cannot hold",
                    "the translation of a problem that is worked in numbers",
                    "leave the original as it is");
            return Optional.empty();
        }
        String title = fields.text("title");
        List<Ask> asks = asks(fields);
        List<Mistake> mistakes = mistakes(fields);
        fields.noOthers();
        TemplateReader.Body body = new TemplateReader.Body(file);
        new TemplateReader(file)
                .checkText(
                        body,
                        original.givens(),
                        original.givens().stream().map(Given::name).toList(),
                        original.task());
        if (!findings.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Template(
                        original.id(),
                        title,
                        original.skill(),
                        original.level(),
                        original.kind(),
                        original.givens(),
                        original.chain(),
                        asks,
                        mistakes,
                        original.strict(),
                        body.prompt(),
                        body.hints(),
                        body.why(),
                        original.task(),
                        original.fingerprint()));
    }

    private List<Ask> asks(Fields fields) {
        List<String> phrases = fields.words("ask");
        List<Ask> asks = new ArrayList<>();
        if (isCount(fields, "ask", phrases.size(), original.asks().size())) {
            for (int i = 0; i < phrases.size(); i++) {
                Ask ask = original.asks().get(i);
                asks.add(
                        new Ask(
                                ask.place(),
                                phrases.get(i),
                                ask.quantity(),
                                ask.siScale(),
                                ask.usScale(),
                                ask.tolerance()));
            }
        }
        return asks;
    }

    private List<Mistake> mistakes(Fields fields) {
        List<Fields> words = fields.maps("mistakes");
        List<Mistake> mistakes = new ArrayList<>();
        if (isCount(fields, "mistakes", words.size(), original.mistakes().size())) {
            for (int i = 0; i < words.size(); i++) {
                mistakes.add(mistake(words.get(i), original.mistakes().get(i)));
            }
        }
        return mistakes;
    }

    /** Says what the original says, no more and no less. */
    private static Mistake mistake(Fields words, Mistake mistake) {
        Mistake translated =
                new Mistake(
                        mistake.slip(),
                        mistake.at(),
                        mistake.with(),
                        mistake.factor(),
                        mistake.ifText().map(text -> words.text("if")),
                        mistake.checkText().map(text -> words.text("check")),
                        mistake.world().map(text -> words.text("world")));
        words.noOthers();
        return translated;
    }

    private boolean isCount(Fields fields, String key, int count, int wanted) {
        if (count != wanted) {
            findings.add(
                    fields.has(key) ? fields.place(key) : fields.place(),
                    count + " under " + key,
                    wanted + ", in the order of the original",
                    "");
        }
        return count == wanted;
    }
}
