// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One line of a file, a JSON object of known fields. Reading is strict because the line may come
 * from anybody: flat but for lists of texts, no field twice, none unknown, every text and number
 * within its bounds.
 */
final class JsonLine {
    private static final int DEPTH = 4;
    private static final int LONGEST_TEXT = 8_000;
    private static final int LONGEST_NAME = 40;
    private static final int LONGEST_NUMBER = 25;
    private static final ObjectMapper MAPPER = mapper();

    private final int number;
    private final JsonNode node;
    private final Set<String> read = new HashSet<>();

    private JsonLine(int number, JsonNode node) {
        this.number = number;
        this.node = node;
    }

    private static ObjectMapper mapper() {
        JsonFactory factory =
                JsonFactory.builder()
                        .streamReadConstraints(
                                StreamReadConstraints.builder()
                                        .maxNestingDepth(DEPTH)
                                        .maxStringLength(LONGEST_TEXT)
                                        .maxNameLength(LONGEST_NAME)
                                        .maxNumberLength(LONGEST_NUMBER)
                                        .build())
                        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                        .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
                        .build();
        return new ObjectMapper(factory).enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
    }

    /**
     * @param number of the line in its file, from 1
     * @throws RefusedException {@link Reason#ALTERED} if it is no such object
     */
    static JsonLine read(int number, String line) {
        try (JsonParser parser = MAPPER.createParser(line)) {
            JsonNode node = MAPPER.readTree(parser);
            if (node == null || !node.isObject()) {
                throw wrong(number, ClassWords.of("line.no-object"));
            }
            return new JsonLine(number, node);
        } catch (JsonProcessingException e) {
            throw wrong(number, ClassWords.of("line.no-json", e.getOriginalMessage()));
        } catch (java.io.IOException e) {
            throw wrong(number, ClassWords.of("line.unreadable", e.getMessage()));
        }
    }

    /** Key, value, key, value …; a value is a text, a number, a truth or a list of texts. */
    static String write(Object... keysAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            map.put((String) keysAndValues[i], keysAndValues[i + 1]);
        }
        try {
            return MAPPER.writeValueAsString(map);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("plain values can always be written", e);
        }
    }

    boolean has(String field) {
        return node.has(field);
    }

    String text(String field, int longest) {
        JsonNode value = field(field);
        if (!value.isTextual()) {
            throw wrong(ClassWords.of("field.no-text", field));
        }
        String text = value.textValue();
        if (text.length() > longest) {
            throw wrong(ClassWords.of("field.long", field, longest));
        }
        return text;
    }

    long whole(String field, long least, long most) {
        JsonNode value = field(field);
        if (!value.isIntegralNumber() || !value.canConvertToLong()) {
            throw wrong(ClassWords.of("field.no-whole", field));
        }
        long number = value.longValue();
        if (number < least || number > most) {
            throw wrong(ClassWords.of("field.range", field, least, most));
        }
        return number;
    }

    boolean truth(String field) {
        JsonNode value = field(field);
        if (!value.isBoolean()) {
            throw wrong(ClassWords.of("field.no-truth", field));
        }
        return value.booleanValue();
    }

    Instant time(String field) {
        try {
            return Instant.parse(text(field, LONGEST_NAME));
        } catch (DateTimeException e) {
            throw wrong(ClassWords.of("field.no-time", field));
        }
    }

    <E extends Enum<E>> E oneOf(String field, Class<E> type) {
        String word = text(field, LONGEST_NAME);
        for (E constant : type.getEnumConstants()) {
            if (Names.of(constant).equals(word)) {
                return constant;
            }
        }
        throw wrong(ClassWords.of("field.word", field, word));
    }

    List<String> texts(String field, int most, int longest) {
        JsonNode value = field(field);
        if (!value.isArray() || value.size() > most) {
            throw wrong(ClassWords.of("field.no-list", field, most));
        }
        List<String> texts = new ArrayList<>();
        for (JsonNode each : value) {
            if (!each.isTextual() || each.textValue().length() > longest) {
                throw wrong(ClassWords.of("field.no-texts", field, longest));
            }
            texts.add(each.textValue());
        }
        return texts;
    }

    /** Refuses fields that nobody asked for. */
    void noOthers() {
        Optional<String> other =
                node.properties().stream()
                        .map(Map.Entry::getKey)
                        .filter(name -> !read.contains(name))
                        .findFirst();
        if (other.isPresent()) {
            throw wrong(ClassWords.of("field.unknown", other.get()));
        }
    }

    private JsonNode field(String field) {
        read.add(field);
        JsonNode value = node.get(field);
        if (value == null) {
            throw wrong(ClassWords.of("field.missing", field));
        }
        return value;
    }

    /** For whoever finds more wrong with this line. */
    RefusedException wrong(String what) {
        return wrong(number, ClassWords.of("line.form", what));
    }

    private static RefusedException wrong(int number, String what) {
        return new RefusedException(Reason.ALTERED, ClassWords.of("line.told", number, what));
    }
}
