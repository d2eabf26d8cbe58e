// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.course.Course;
import hotside.course.Lesson;
import hotside.page.Maths;
import hotside.page.ProblemState;
import hotside.page.Words;
import hotside.problem.Answers;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.speech.Language;
import hotside.unit.UnitSystem;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The main job in German, without a window. */
class GermanDeskTest {
    private static Course course;
    private static ProblemBank bank;
    private static Maths maths;

    private final PageNotes page = new PageNotes();
    private final List<Try> kept = new ArrayList<>();
    private LessonPlace place;

    @BeforeAll
    static void read() {
        Language.speak(Language.GERMAN);
        course = Course.shipped(Language.GERMAN);
        bank = ProblemBank.shipped(Language.GERMAN);
        maths = new Maths();
        Language.speak(Language.ENGLISH);
    }

    @BeforeEach
    void sitDown() {
        Language.speak(Language.GERMAN);
        AtomicLong seeds = new AtomicLong();
        Tries tries =
                new Tries() {
                    @Override
                    public void keep(List<Try> made, Runnable then) {
                        kept.addAll(made);
                        then.run();
                    }

                    @Override
                    public void solved(String problem) {}
                };
        place =
                new LessonPlace(
                        course,
                        bank,
                        maths,
                        page,
                        tries,
                        seeds::incrementAndGet,
                        Clock.systemUTC(),
                        new Worker(Runnable::run, Runnable::run));
    }

    @AfterEach
    void getUp() {
        Language.speak(Language.ENGLISH);
    }

    private String open(String id) {
        place.open(course.find(id).orElseThrow());
        return page.shown;
    }

    /** The card of a problem in the open lesson. */
    private ProblemState card(String problem) {
        return IntStream.rangeClosed(1, 9)
                .mapToObj(i -> place.problem("p" + i))
                .flatMap(java.util.Optional::stream)
                .filter(state -> state.variant().template().id().equals(problem))
                .findFirst()
                .orElseThrow();
    }

    private String answer(ProblemState card, String typed) {
        place.edit(card.id(), "0", "answer", typed);
        place.act("check", card.id());
        return page.element(card.id() + "-verdict-0");
    }

    @Test
    void allThatIsTranslatedIsRead() {
        assertEquals(List.of(), course.findings());
        assertEquals(List.of(), bank.findings());
        assertEquals(
                Course.shipped().lessons().stream().map(Lesson::id).toList(),
                course.lessons().stream().map(Lesson::id).toList());
        assertEquals(
                5, course.lessons().stream().filter(l -> l.strand().equals("Grundlagen")).count());
    }

    @Test
    void everyProblemOfTheFirstStrandIsInGerman() {
        for (Lesson lesson : course.lessons().subList(0, 5)) {
            for (String id : lesson.problems()) {
                Template german = bank.find(id).orElseThrow();
                Template english = ProblemBank.shipped().find(id).orElseThrow();
                assertFalse(german.title().equals(english.title()), id);
                assertEquals(english.fingerprint(), german.fingerprint(), id);
            }
        }
    }

    @Test
    void aSeedGivesTheSameNumbersInBothLanguages() {
        for (Template english : ProblemBank.shipped().all()) {
            Template german = bank.find(english.id()).orElseThrow();
            if (!english.skill().startsWith("ground.")) {
                continue;
            }
            for (long seed = 1; seed <= 3; seed++) {
                Variant one = Variants.draw(english, seed, UnitSystem.SI_SHOP);
                Variant other = Variants.draw(german, seed, UnitSystem.SI_SHOP);
                assertEquals(one.answers(), other.answers(), english.id());
                assertEquals(
                        one.slips().stream().map(s -> s.mistake().id() + s.value()).toList(),
                        other.slips().stream().map(s -> s.mistake().id() + s.value()).toList());
            }
        }
    }

    @Test
    void anAnswerWithADecimalCommaIsRight() {
        open("ground/four-words-for-pressure");
        ProblemState card = card("ratio-of-a-boost");
        String right = Answers.told(card.variant(), 0);
        assertTrue(right.matches("\\d,\\d{3}"), right);
        String verdict = answer(card, right);
        assertTrue(verdict.contains("Richtig."), verdict);
        assertTrue(verdict.contains("Auf vier Ziffern sind es " + right), verdict);
        assertEquals(1, kept.size());
    }

    @Test
    void aPointThatCouldGroupIsAskedAboutUntilAHabitIsShown() {
        open("ground/four-words-for-pressure");
        ProblemState card = card("ratio-of-a-boost");
        String pointed = Answers.told(card.variant(), 0).replace(',', '.');
        String asked = answer(card, pointed);
        assertTrue(asked.contains("Erst eine Frage."), asked);
        assertTrue(asked.contains("lässt sich auf zwei Arten lesen"), asked);
        assertEquals(0, kept.size());
        assertTrue(answer(card, pointed + "0").contains("Richtig."));
        assertTrue(answer(card, pointed).contains("Richtig."));
    }

    @Test
    void aMistakeIsNamedInGerman() {
        open("ground/four-words-for-pressure");
        ProblemState card = card("ratio-of-a-boost");
        Variant.Slipped slip =
                card.variant().slips().stream()
                        .filter(s -> s.mistake().id().startsWith("one-left-out"))
                        .findFirst()
                        .orElseThrow();
        String verdict = answer(card, Answers.told(card.variant(), 0, slip.value()));
        assertTrue(
                verdict.contains(
                        "Deine Zahl kommt heraus, wenn der Ladedruck durch die Luft ringsum das"
                                + " Verhältnis wäre. Prüfe, ob der Druck hinter dem Verdichter von"
                                + " nichts zählt oder von der Luft ringsum."),
                verdict);
        assertEquals(slip.mistake().id(), kept.get(0).verdict().mistake().orElseThrow());
    }

    @Test
    void aCalculatorTakesCommasAndShowsThem() {
        open("ground/hot-cold-thin-dense");
        place.edit("c1", "pressure", "text", "99,5 kPa absolut");
        assertEquals(
                99_500, place.calculator("c1").orElseThrow().values().number("pressure"), 1e-9);
        assertTrue(page.element("c1-out").contains("Dichte der feuchten Luft"));
        assertTrue(
                page.element("c1-out").matches("(?s).*>\\d,\\d{3} <span class=\"unit\">kg/m³.*"),
                page.element("c1-out"));
        place.edit("c1", "pressure", "text", "12 Liter");
        assertTrue(
                page.element("c1-pressure-fault").contains("ist eine Einheit für Volumen"),
                page.element("c1-pressure-fault"));
    }

    @Test
    void askMeAsksInGerman() {
        open("ground/units-and-percent");
        place.act("ask-me", "c1");
        String card = page.element("c1-ask");
        assertTrue(card.contains("Gesucht: „"), card);
        assertTrue(card.contains("Drehmoment, Drehzahl und Leistung"), card);
        assertTrue(card.contains("1/min"), card);
    }

    /** No word that the page's bundle says otherwise in German is left in English. */
    @Test
    void noEnglishIsLeftAroundTheFirstStrand() throws Exception {
        Properties english = new Properties();
        try (Reader in =
                Files.newBufferedReader(
                        Path.of("src/main/resources/hotside/page/words.properties"))) {
            english.load(in);
        }
        for (Lesson lesson : course.lessons().subList(0, 5)) {
            String html = open(lesson.id()).replaceAll("<[^>]*>", "\n");
            for (String key : english.stringPropertyNames()) {
                String said = english.getProperty(key).strip();
                boolean told = said.length() > 5 && !said.contains("{");
                if (told && !said.equals(Words.of(key))) {
                    assertFalse(html.contains("\n" + said + "\n"), lesson.id() + ": " + key);
                }
            }
            assertFalse(
                    html.matches("(?s).*\\b(the|and|with|gauge|pressure)\\b.*"),
                    () -> english(lesson, html));
        }
    }

    private static String english(Lesson lesson, String html) {
        var m =
                java.util.regex.Pattern.compile("[^\\n]*\\b(the|and|with|gauge|pressure)\\b[^\\n]*")
                        .matcher(html);
        return lesson.id() + ": " + (m.find() ? m.group() : "");
    }

    @Test
    void whatIsNotTranslatedStaysEnglish() {
        assertTrue(open("gate/crack-and-lift").contains("the "));
    }

    @Test
    void theMachineChoosesTheLanguageAtFirst() {
        assertEquals(Language.GERMAN, Language.of(java.util.Locale.forLanguageTag("de-AT")));
        assertEquals(Language.ENGLISH, Language.of(java.util.Locale.forLanguageTag("fr-FR")));
    }
}
