// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A whole record as a JSON file, to be taken to another machine or looked into. A file that comes
 * in is not trusted: it is read with limits, an unknown or doubled field is refused, and nothing is
 * stored unless all of it could be read.
 */
public final class RecordJson {
    static final String FORMAT = "hotside-record";
    static final int VERSION = 1;

    private static final long MOST_BYTES = 100L * 1024 * 1024;
    private static final int MOST_ATTEMPTS = 1_000_000;
    private static final int MOST_SETTINGS = 200;
    private static final int LONGEST_TEXT = 4_000;
    private static final int DEEPEST = 4;

    private static final JsonFactory JSON =
            JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxNestingDepth(DEEPEST)
                                    .maxStringLength(LONGEST_TEXT)
                                    .maxNameLength(100)
                                    .maxNumberLength(40)
                                    .build())
                    .build();

    private RecordJson() {}

    /**
     * What a file holds.
     *
     * @param learner whose it is
     * @param settings by name
     * @param attempts oldest first
     */
    public record Content(String learner, Map<String, String> settings, List<Attempt> attempts) {}

    /** Writes a record. The writer is flushed, not closed. */
    public static void write(LearnerRecord record, Writer out) throws IOException {
        JsonGenerator json = JSON.createGenerator(out);
        json.useDefaultPrettyPrinter();
        json.writeStartObject();
        json.writeStringField("format", FORMAT);
        json.writeNumberField("version", VERSION);
        json.writeStringField("learner", record.learner());
        json.writeObjectFieldStart("settings");
        for (Map.Entry<String, String> setting : record.settings().entrySet()) {
            json.writeStringField(setting.getKey(), setting.getValue());
        }
        json.writeEndObject();
        json.writeArrayFieldStart("attempts");
        for (Attempt attempt : record.attempts()) {
            write(json, attempt);
        }
        json.writeEndArray();
        json.writeEndObject();
        json.flush();
        out.write("\n");
        out.flush();
    }

    private static void write(JsonGenerator json, Attempt a) throws IOException {
        json.writeStartObject();
        json.writeStringField("problem", a.problem());
        json.writeStringField("seed", a.seed());
        json.writeStringField("generator", a.generator());
        json.writeStringField("fingerprint", a.fingerprint());
        json.writeStringField("units", a.unitSystem());
        json.writeNumberField("ask", a.ask());
        json.writeStringField("answer", a.answer());
        json.writeStringField("verdict", a.verdict());
        json.writeStringField("mistake", a.mistake());
        json.writeBooleanField("correct", a.correct());
        json.writeNumberField("hints", a.hints());
        json.writeNumberField("seconds", a.seconds());
        json.writeStringField("time", a.time().toString());
        json.writeStringField("lesson", a.lesson());
        json.writeStringField("way", a.way().id());
        json.writeEndObject();
    }

    /**
     * Reads a file.
     *
     * @throws RecordException if it is too large, is no such file or is damaged; the message says
     *     where and what was expected
     */
    public static Content read(Path file) {
        try {
            long size = Files.size(file);
            if (size > MOST_BYTES) {
                throw new RecordException(
                        LearnerWords.of("json.large", file, MOST_BYTES / 1_048_576), null);
            }
            try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8);
                    JsonParser json = JSON.createParser(in)) {
                return new Reading(json).content();
            }
        } catch (IOException | IllegalArgumentException | java.time.DateTimeException e) {
            throw new RecordException(LearnerWords.of("json.unread", file, firstLine(e)), e);
        }
    }

    private static String firstLine(Exception e) {
        String text = String.valueOf(e.getMessage());
        return text.lines().findFirst().orElse("");
    }

    private static final class Reading {
        private final JsonParser json;

        Reading(JsonParser json) {
            this.json = json;
        }

        Content content() throws IOException {
            expect(json.nextToken(), JsonToken.START_OBJECT, LearnerWords.of("json.object"));
            Map<String, Object> head = new HashMap<>();
            Map<String, String> settings = new LinkedHashMap<>();
            List<Attempt> attempts = new ArrayList<>();
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String name = json.currentName();
                json.nextToken();
                switch (name) {
                    case "format", "version", "learner" -> head.put(name, scalar());
                    case "settings" -> settings(settings);
                    case "attempts" -> attempts(head, attempts);
                    default -> throw wrong(LearnerWords.of("json.unknown", name));
                }
            }
            expect(json.nextToken(), null, LearnerWords.of("json.end"));
            requireHead(head);
            return new Content((String) head.get("learner"), settings, attempts);
        }

        private void requireHead(Map<String, Object> head) throws IOException {
            if (!FORMAT.equals(head.get("format"))) {
                throw wrong(LearnerWords.of("json.format", FORMAT));
            }
            if (!Long.valueOf(VERSION).equals(head.get("version"))) {
                throw wrong(LearnerWords.of("json.version", VERSION));
            }
            if (!(head.get("learner") instanceof String id) || !LearnerRecord.isId(id)) {
                throw wrong(LearnerWords.of("json.learner"));
            }
        }

        private void settings(Map<String, String> settings) throws IOException {
            expect(json.currentToken(), JsonToken.START_OBJECT, LearnerWords.of("json.object"));
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String name = json.currentName();
                expect(json.nextToken(), JsonToken.VALUE_STRING, LearnerWords.of("json.text"));
                settings.put(name, json.getText());
                if (settings.size() > MOST_SETTINGS) {
                    throw wrong(LearnerWords.of("json.settings", MOST_SETTINGS));
                }
            }
        }

        private void attempts(Map<String, Object> head, List<Attempt> attempts) throws IOException {
            requireHead(head);
            expect(json.currentToken(), JsonToken.START_ARRAY, LearnerWords.of("json.list"));
            while (json.nextToken() != JsonToken.END_ARRAY) {
                attempts.add(attempt());
                if (attempts.size() > MOST_ATTEMPTS) {
                    throw wrong(LearnerWords.of("json.answers", MOST_ATTEMPTS));
                }
            }
        }

        private Attempt attempt() throws IOException {
            expect(json.currentToken(), JsonToken.START_OBJECT, LearnerWords.of("json.object"));
            Map<String, Object> fields = new HashMap<>();
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String name = json.currentName();
                json.nextToken();
                fields.put(name, scalar());
            }
            Attempt attempt =
                    new Attempt(
                            text(fields, "problem"),
                            text(fields, "seed"),
                            text(fields, "generator"),
                            text(fields, "fingerprint"),
                            text(fields, "units"),
                            number(fields, "ask").intValue(),
                            text(fields, "answer"),
                            text(fields, "verdict"),
                            textOrNull(fields, "mistake"),
                            truth(fields, "correct"),
                            number(fields, "hints").intValue(),
                            number(fields, "seconds").doubleValue(),
                            Instant.ofEpochMilli(
                                    Instant.parse(text(fields, "time")).toEpochMilli()),
                            textOrNull(fields, "lesson"),
                            Rows.way(text(fields, "way")));
            if (!fields.isEmpty()) {
                throw wrong(LearnerWords.of("json.unknown", fields.keySet().iterator().next()));
            }
            return attempt;
        }

        private Object scalar() throws IOException {
            return switch (json.currentToken()) {
                case VALUE_STRING -> json.getText();
                case VALUE_NUMBER_INT -> json.getLongValue();
                case VALUE_NUMBER_FLOAT -> json.getDoubleValue();
                case VALUE_TRUE -> Boolean.TRUE;
                case VALUE_FALSE -> Boolean.FALSE;
                case VALUE_NULL -> Nothing.NULL;
                default -> throw wrong(LearnerWords.of("json.value"));
            };
        }

        private String text(Map<String, Object> fields, String name) throws IOException {
            if (fields.remove(name) instanceof String text) {
                return text;
            }
            throw wrong(LearnerWords.of("json.no-text", name));
        }

        private String textOrNull(Map<String, Object> fields, String name) throws IOException {
            Object value = fields.get(name);
            if (value == Nothing.NULL) {
                fields.remove(name);
                return null;
            }
            return text(fields, name);
        }

        private Number number(Map<String, Object> fields, String name) throws IOException {
            if (fields.remove(name) instanceof Number number
                    && Math.abs(number.doubleValue()) <= Integer.MAX_VALUE) {
                return number;
            }
            throw wrong(LearnerWords.of("json.no-number", name));
        }

        private boolean truth(Map<String, Object> fields, String name) throws IOException {
            if (fields.remove(name) instanceof Boolean truth) {
                return truth;
            }
            throw wrong(LearnerWords.of("json.no-truth", name));
        }

        private void expect(JsonToken is, JsonToken wanted, String told) throws IOException {
            if (is != wanted) {
                throw wrong(LearnerWords.of("json.expected", told));
            }
        }

        private IOException wrong(String what) {
            return new IOException(
                    LearnerWords.of("json.line", json.currentLocation().getLineNr(), what));
        }
    }

    private enum Nothing {
        NULL
    }
}
