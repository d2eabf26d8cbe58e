// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotside.content.WholeFile;
import hotside.problem.Answers;
import hotside.problem.Ask;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.problem.Verdict;
import hotside.speech.Language;
import hotside.unit.Quantity;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * Marked work as xAPI statements (IEEE 9274.1.1, data model 1.0.3) in a file: {@code answered}, one
 * for each answer. A learner is an opaque id and nothing else; nothing is sent anywhere.
 */
public final class Statements {
    /** A name for things of ours that leads nowhere by RFC 2606. */
    static final String OURS = "https://hotside.invalid/";

    static final String ANSWERED = "http://adlnet.gov/expapi/verbs/answered";
    private static final String INTERACTION = "http://adlnet.gov/expapi/activities/cmi.interaction";

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private Statements() {}

    /** Writes the statements of a class as one JSON array. */
    public static void write(Path file, Regrader regrader, List<MarkedHandIn> marked)
            throws IOException {
        WholeFile.stream(file, out -> write(out, regrader, marked));
    }

    static void write(OutputStream out, Regrader regrader, List<MarkedHandIn> marked)
            throws IOException {
        JsonGenerator json = MAPPER.getFactory().createGenerator(out);
        json.writeStartArray();
        for (MarkedHandIn in : marked) {
            for (int slot = 0; slot < in.items().size(); slot++) {
                MarkedItem item = in.items().get(slot);
                Variant variant = regrader.variant(in.learner(), slot);
                for (int ask = 0; ask < item.verdicts().size(); ask++) {
                    if (item.verdicts().get(ask).isPresent()) {
                        MAPPER.writeValue(json, statement(regrader.set(), in, slot, ask, variant));
                    }
                }
            }
        }
        json.writeEndArray();
        json.flush();
    }

    private static Map<String, Object> statement(
            ProblemSet set, MarkedHandIn in, int slot, int ask, Variant variant) {
        String attempt = set.id() + "/" + set.edition() + "/" + in.learner() + "/" + in.receipt();
        Map<String, Object> statement = new LinkedHashMap<>();
        statement.put("id", uuid(attempt + "/" + slot + "/" + ask));
        statement.put("actor", actor(in.learner()));
        statement.put("verb", verb(ANSWERED, "answered"));
        statement.put("object", object(ask, variant));
        statement.put("result", result(in, in.items().get(slot), ask, variant));
        statement.put("context", context(attempt, "set/" + set.id() + "/" + set.edition()));
        statement.put("timestamp", in.finished().toString());
        return statement;
    }

    /** A learner is an opaque id and nothing else. */
    static Map<String, Object> actor(String learner) {
        return Map.of(
                "objectType",
                "Agent",
                "account",
                Map.of("homePage", OURS + "learner", "name", learner));
    }

    static Map<String, Object> verb(String id, String display) {
        return Map.of("id", id, "display", Map.of("en", display));
    }

    /**
     * @param attempt what was one go, by any name that nothing else has
     * @param parent what it is part of, below {@link #OURS}
     */
    static Map<String, Object> context(String attempt, String parent) {
        return Map.of(
                "registration",
                uuid(attempt),
                "contextActivities",
                Map.of("parent", List.of(Map.of("objectType", "Activity", "id", OURS + parent))));
    }

    /** Words in the language spoken, marked as such. */
    static Map<String, String> words(String text) {
        return Map.of(Language.spoken().code(), text);
    }

    static Map<String, Object> object(int ask, Variant variant) {
        Ask asked = variant.template().asks().get(ask);
        Variant.Answer right = variant.answers().get(ask);
        Map<String, Object> definition = new LinkedHashMap<>();
        definition.put("type", INTERACTION);
        definition.put("name", words(variant.template().title()));
        definition.put(
                "description",
                words(
                        asked.phrase()
                                + (!variant.template().kind().isNumeric()
                                                || asked.scale(variant.system()).label().isEmpty()
                                        ? ""
                                        : ", in " + asked.scale(variant.system()).label())));
        definition.put("interactionType", type(variant));
        definition.put(
                "correctResponsesPattern",
                List.of(
                        variant.template().kind().isNumeric()
                                ? number(variant, ask, right.low())
                                        + "[:]"
                                        + number(variant, ask, right.high())
                                : variant.lettered().isEmpty()
                                        ? Answers.key(variant, ask)
                                        : Answers.key(variant, ask).replace(" ", "[,]")));
        if (!variant.lettered().isEmpty()) {
            definition.put(
                    "choices",
                    variant.lettered().stream()
                            .map(o -> Map.of("id", o.letter(), "description", words(o.text())))
                            .toList());
        }
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("objectType", "Activity");
        object.put(
                "id",
                OURS
                        + "problem/"
                        + variant.template().id()
                        + "/"
                        + Long.toUnsignedString(variant.seed())
                        + "/"
                        + (ask + 1));
        object.put("definition", definition);
        return object;
    }

    private static Map<String, Object> result(
            MarkedHandIn in, MarkedItem item, int ask, Variant variant) {
        Verdict verdict = item.verdicts().get(ask).orElseThrow();
        Map<String, Object> extensions = new LinkedHashMap<>();
        extensions.put(OURS + "extension/seed", Long.toUnsignedString(variant.seed()));
        extensions.put(OURS + "extension/generator", Variants.GENERATOR_VERSION);
        extensions.put(OURS + "extension/typed", item.answers().get(ask));
        extensions.put(OURS + "extension/hints", item.rung());
        extensions.put(OURS + "extension/verdict", Names.of(verdict.kind()));
        verdict.mistake().ifPresent(m -> extensions.put(OURS + "extension/mistake", m));
        Map<String, Object> result = new LinkedHashMap<>();
        result.put("success", verdict.kind().good());
        result.put("score", Map.of("scaled", verdict.kind().good() ? 1 : 0));
        result.put("response", response(variant, ask, verdict.value(), item.answers().get(ask)));
        item.byHand().ifPresent(h -> extensions.put(OURS + "extension/points-by-hand", h.points()));
        if (ask == 0 && !in.fromPaper()) {
            result.put("duration", "PT" + Math.round(60 * item.minutes()) + "S");
        }
        result.put("extensions", extensions);
        return result;
    }

    private static String type(Variant variant) {
        return switch (variant.template().kind()) {
            case NUMBER, STEPS, GRAPH, SPLIT -> "numeric";
            case PLAN -> "fill-in";
            case ORDER -> "sequencing";
            case CHOICE, SEVERAL, FAULT -> "choice";
        };
    }

    /**
     * As the pattern of right responses has it; what cannot be read stays as it was typed.
     *
     * @param value as understood, SI; NaN if it is no number
     */
    static String response(Variant variant, int ask, double value, String typed) {
        if (Double.isFinite(value)) {
            return number(variant, ask, value);
        }
        List<String> letters =
                variant.lettered().isEmpty() ? List.of() : Answers.letters(variant, typed);
        return letters.isEmpty() ? typed : String.join("[,]", letters);
    }

    private static String number(Variant variant, int ask, double si) {
        Ask asked = variant.template().asks().get(ask);
        Quantity quantity = asked.quantity();
        double shown = asked.scale(variant.system()).fromSi(si, quantity, variant.ambient());
        return new java.math.BigDecimal(shown, new java.math.MathContext(10)).toPlainString();
    }

    static String uuid(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
    }
}
