// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.classroom.ClassResult;
import hotside.classroom.MarkedHandIn;
import hotside.classroom.Marking;
import hotside.classroom.Papers;
import hotside.classroom.Reason;
import hotside.classroom.RefusedException;
import hotside.classroom.Regrader;
import hotside.classroom.Roster;
import hotside.classroom.SetFile;
import hotside.course.Lesson;
import hotside.learner.RecordJson;
import hotside.page.Book;
import hotside.speech.Language;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a German desk prints, and what it says of files that it refuses. */
class GermanPaperTest {
    @TempDir private static Path data;
    private static Library library;
    private static EnglishWords english;
    private static SampleClass sample;

    @BeforeAll
    static void handIn() throws IOException {
        Language.speak(Language.GERMAN);
        library = Libraries.read(Language.GERMAN);
        english = EnglishWords.besides(library);
        sample = SampleClass.handedIn(data, library.bank(), "ground", "Luft, Woche 3");
    }

    @BeforeEach
    void speakGerman() {
        Language.speak(Language.GERMAN);
    }

    @AfterAll
    static void speakEnglishAgain() {
        Language.speak(Language.ENGLISH);
    }

    private static String words(String html) {
        return html.replaceAll("(?s)<style.*?</style>|<annotation.*?</annotation>", " ")
                .replaceAll("<[^>]*>", " ");
    }

    @Test
    void lessonsOfTheFirstStrandArePrintedInGerman() {
        List<String> findings = new ArrayList<>();
        for (UnitSystem system : UnitSystem.values()) {
            Book book = new Book(library.course(), library.bank(), library.maths(), system);
            for (Lesson lesson : library.course().lessons().subList(0, 5)) {
                String html = book.html(lesson);
                assertTrue(html.contains("<html lang=\"de\""), "the paper says its language");
                findings.addAll(english.in(lesson.id() + " " + system, words(html)));
            }
        }
        assertEquals(List.of(), findings);
    }

    @Test
    void papersKeysReportsAndTablesAreGerman() throws IOException {
        SetFile file = SetFile.read(sample.set());
        Regrader regrader = new Regrader(file.set(), library.bank());
        Marking marking = new Marking(file, regrader, Optional.empty(), false);
        ClassResult result =
                new ClassResult(
                        regrader,
                        Optional.empty(),
                        marking.mark(Marking.files(sample.folder()), (done, all) -> true));
        Papers papers = new Papers(regrader, library.maths());
        Roster.Learner learner = new Roster.Learner("L10", "L10", "");
        MarkedHandIn in = result.of("L10").orElseThrow();
        List<String> findings = new ArrayList<>();
        findings.addAll(english.in("paper", words(papers.paper(learner))));
        findings.addAll(english.in("key", words(papers.key(learner))));
        findings.addAll(english.in("report", words(papers.report(learner, in))));
        StringWriter aside = new StringWriter();
        result.asideCsv(aside);
        findings.addAll(english.in("set aside", aside.toString()));
        assertEquals(List.of(), findings);
        assertTrue(aside.toString().contains("fremd"), aside.toString());
    }

    @Test
    void whyAFileIsRefusedIsSaidInGerman() throws IOException {
        byte[] set = Files.readAllBytes(sample.set());
        byte[] spoilt = set.clone();
        spoilt[set.length / 2] ^= 1;
        byte[] newer =
                new String(set, StandardCharsets.UTF_8)
                        .replace("\"version\":1", "\"version\":9")
                        .getBytes(StandardCharsets.UTF_8);
        List<String> findings = new ArrayList<>();
        for (byte[] bytes :
                List.of(
                        Arrays.copyOf(set, set.length / 2),
                        spoilt,
                        newer,
                        "{}\n".getBytes(StandardCharsets.UTF_8),
                        new byte[] {(byte) 0xff, 10})) {
            Path file = Files.write(data.resolve("refused.set"), bytes);
            String said = refusal(file);
            assertTrue(said.length() > 10, said);
            findings.addAll(english.in("refused", said));
        }
        findings.addAll(english.in("no file", refusal(data.resolve("nowhere.set"))));
        for (Reason reason : Reason.values()) {
            findings.addAll(english.in("reason", reason.word()));
        }
        assertEquals(List.of(), findings);
    }

    private static String refusal(Path file) {
        try {
            SetFile.read(file);
            return "";
        } catch (RefusedException e) {
            return e.reason().word() + ": " + e.getMessage();
        }
    }

    @Test
    void aRecordThatIsNoneIsRefusedInGerman() throws IOException {
        Path file = Files.writeString(data.resolve("record.json"), "{\"format\": \"other\"}");
        String said = "";
        try {
            RecordJson.read(file);
        } catch (hotside.learner.RecordException e) {
            said = e.getMessage();
        }
        assertTrue(said.contains("ist keine Aufzeichnung, die sich lesen lässt"), said);
        assertEquals(List.of(), english.in("record", said));
    }
}
