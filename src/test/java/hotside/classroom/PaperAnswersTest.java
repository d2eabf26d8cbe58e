// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.classroom.ProblemSet.Numbers;
import hotside.content.Finding;
import hotside.problem.Answers;
import hotside.problem.Variant;
import hotside.unit.DecimalHabit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PaperAnswersTest {
    private static final ProblemSet SET = Classes.set(Numbers.OWN);
    private static final Regrader REGRADER = new Regrader(SET, Classes.BANK);

    @TempDir private Path folder;

    private static Roster roster(int learners) {
        return Roster.of(
                java.util.stream.IntStream.range(0, learners)
                        .mapToObj(i -> new Roster.Learner("K" + i, "Name " + i, ""))
                        .toList());
    }

    @Test
    void aCodeIsReadInAnyCaseWithoutHyphenAndWithLettersThatLookAlike() {
        String code = SET.paperCode("K3");
        for (String typed :
                List.of(
                        code,
                        code.toLowerCase(java.util.Locale.ROOT),
                        code.replace("-", " "),
                        code.replace('0', 'o').replace('1', 'l'),
                        "K3")) {
            assertEquals(
                    "K3", PaperCode.read(SET, roster(5), typed).whose().orElseThrow().id(), typed);
        }
    }

    @Test
    void oneSlipOfTheFingerLeadsToThePaperThatWasMeant() {
        String code = SET.paperCode("K3").replace("-", "");
        char other = code.charAt(2) == 'X' ? 'Y' : 'X';
        assertTrue(code.charAt(4) != code.charAt(5), "the two that are swapped below differ");
        for (String typed :
                List.of(
                        code.substring(0, 2) + other + code.substring(3),
                        code.substring(0, 4) + code.charAt(5) + code.charAt(4) + code.substring(6),
                        code.substring(1),
                        code.substring(0, 7),
                        code.substring(0, 3) + "Z" + code.substring(3),
                        code + "Z")) {
            PaperCode read = PaperCode.read(SET, roster(600), typed);
            assertTrue(read.whose().isEmpty(), typed);
            assertEquals("K3", read.meant().orElseThrow().id(), typed);
            assertTrue(read.said().contains(SET.paperCode("K3")), read.said());
            assertTrue(read.said().contains("Name 3 (K3)"), read.said());
        }
    }

    @Test
    void anotherCodeIsNobodysAndTheMessageSaysWhatToLookAt() {
        PaperCode nobody = PaperCode.read(SET, roster(5), SET.paperCode("somebody-else"));
        assertTrue(nobody.whose().isEmpty() && nobody.meant().isEmpty());
        assertTrue(nobody.said().contains("whether the right set and list are open"));
        assertTrue(PaperCode.read(SET, roster(5), "AB").said().contains("8 letters and digits"));
        assertTrue(PaperCode.read(SET, roster(5), "!").said().contains("these are 0"));
    }

    /** The premise of having no check digit: in a large class no two codes are one slip apart. */
    @Test
    void noSlipTurnsOnePaperOfSixHundredIntoAnother() {
        Set<String> codes = new HashSet<>();
        for (int i = 0; i < 600; i++) {
            codes.add(SET.paperCode("K" + i).replace("-", ""));
        }
        assertEquals(600, codes.size());
        List<String> all = List.copyOf(codes);
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                assertFalse(PaperCode.isOneSlip(all.get(i), all.get(j)));
            }
        }
    }

    @Test
    void theReadingTellsNumbersAndLettersButNeverWhetherTheyAreRight() {
        Variant push = REGRADER.variant("K1", 0);
        String right = Answers.told(push, 0);
        assertEquals("Read as " + right + ".", read(push, right).words());
        Variant.Slipped slip = push.slips().get(0);
        String wrong = Answers.told(push, 0, slip.value());
        assertEquals("Read as " + wrong + ".", read(push, wrong).words());
        assertEquals("Read as 123.4 N.", read(push, "0,1234 kN").words());
        assertEquals("Not answered.", read(push, " ").words());
        PaperReading bare = read(push, "123");
        assertFalse(bare.understood());
        assertTrue(bare.words().contains("In which unit?"), bare.words());
        assertTrue(bare.words().contains("earns no points"), bare.words());
        assertFalse(read(push, "about a lot").understood());
    }

    @Test
    void lettersAreReadHoweverTheyAreParted() {
        Variant order =
                hotside.problem.Variants.draw(
                        Classes.BANK.find("an-order-for-a-fair-test").orElseThrow(),
                        5,
                        hotside.unit.UnitSystem.SI_SHOP);
        String key = Answers.key(order, 0);
        String told = "Read as " + key.replace(" ", ", ") + ".";
        assertEquals(told, read(order, key.toLowerCase(java.util.Locale.ROOT)).words());
        assertEquals(told, read(order, key.replace(" ", "")).words());
        assertEquals(told, read(order, key.replace(" ", " > ")).words());
        assertEquals(told, read(order, key.replace(" ", " then ")).words());
        assertEquals(told, read(order, "Answer: " + key).words());
        String numbers =
                key.chars()
                        .mapToObj(c -> c == ' ' ? " " : "" + (c - 'A' + 1))
                        .collect(Collectors.joining());
        assertEquals(told, read(order, numbers).words());
        String response = Statements.response(order, 0, Double.NaN, key.replace(" ", ""));
        // xAPI 1.0.3, part two, interaction activities: "[,]" parts the items; from memory.
        assertEquals(key.replace(" ", "[,]"), response);
        assertEquals("A Q", Statements.response(order, 0, Double.NaN, "A Q"));
        assertFalse(read(order, "A Q").understood());
    }

    private static PaperReading read(Variant variant, String answer) {
        return PaperReading.of(variant, List.of(answer), 0, DecimalHabit.POINT);
    }

    @Test
    void everyKeyIsKeptAndTidyingLeavesTheLastOfThem() throws IOException {
        Path file = folder.resolve("new").resolve("paper.csv");
        for (String so : List.of("1", "13", "133", "133 N")) {
            PaperAnswers.add(file, "K1", 0, 0, so);
        }
        PaperAnswers.add(file, "K0", 2, 0, "=B");
        PaperAnswers.add(file, "K1", 0, 0, "134 N");
        PaperAnswers.tidy(file, REGRADER);
        PaperAnswers read = PaperAnswers.read(file, REGRADER, Optional.empty());
        assertEquals(List.of(), read.findings());
        assertEquals(List.of("K0", "K1"), read.learners());
        assertEquals(List.of("134 N"), read.of("K1", 0, 1));
        assertEquals("=B", read.of("K0", 2, 1).get(0));
        assertEquals(1, read.answered("K1"));
        assertFalse(Files.readString(file).contains("133"), "only the last counts");
    }

    @Test
    void whatDoesNotFitTheSetIsNeverTidiedAway() throws IOException {
        Path file = folder.resolve("paper.csv");
        PaperAnswers.add(file, "K1", 0, 0, "1 N");
        PaperAnswers.add(file, "K1", 0, 0, "2 N");
        PaperAnswers.add(file, "K1", 40, 0, "of another set?");
        byte[] before = Files.readAllBytes(file);
        PaperAnswers.tidy(file, REGRADER);
        assertTrue(java.util.Arrays.equals(before, Files.readAllBytes(file)));
    }

    @Test
    void aLineThatWasCutShortCostsOnlyItself() throws IOException {
        Path file = folder.resolve("paper.csv");
        PaperAnswers.add(file, "K1", 0, 0, "1 N");
        Files.writeString(file, Files.readString(file) + "K1,2");
        PaperAnswers.add(file, "K1", 1, 0, "5 kW");
        PaperAnswers read = PaperAnswers.read(file, REGRADER, Optional.empty());
        assertEquals("1 N", read.of("K1", 0, 1).get(0));
        assertEquals("5 kW", read.of("K1", 1, 2).get(0));
        assertEquals(1, read.findings().size());
    }

    @Test
    void aFileThatIsWrongFromEndToEndIsToldOfInAFewLines() throws IOException {
        Path file = folder.resolve("paper.csv");
        PaperAnswers.add(file, "K1", 0, 0, "1 N");
        Files.writeString(file, Files.readString(file) + "K1,40,1,what?\r\n".repeat(10_000));
        List<Finding> found = PaperAnswers.read(file, REGRADER, Optional.empty()).findings();
        assertEquals(CsvLines.MOST_FINDINGS + 1, found.size());
        assertEquals("more lines that do not fit: 9950", found.get(CsvLines.MOST_FINDINGS).what());
    }

    @Test
    void noMoreLearnersAreReadThanAClassCanHave() throws IOException {
        Path file = folder.resolve("paper.csv");
        PaperAnswers.add(file, "K1", 0, 0, "1 N");
        StringBuilder strangers = new StringBuilder(Files.readString(file));
        for (int i = 0; i < Roster.MOST; i++) {
            strangers.append("X").append(i).append(",1,1,2 N\r\n");
        }
        Files.writeString(file, strangers.append("K1,1,1,3 N\r\n"));
        PaperAnswers read = PaperAnswers.read(file, REGRADER, Optional.empty());
        assertEquals(Roster.MOST, read.learners().size());
        assertEquals("3 N", read.of("K1", 0, 1).get(0));
        assertEquals("more than 20000 learners", read.findings().get(0).what());
    }

    /** Only in the file of points is a line with a number sign a remark. */
    @Test
    void aLineThatLooksLikeARemarkIsNotTidiedAway() throws IOException {
        Path file = folder.resolve("paper.csv");
        PaperAnswers.add(file, "K1", 0, 0, "1 N");
        Files.writeString(file, Files.readString(file) + "#K1,1,1,2 N\r\n");
        String before = Files.readString(file);
        PaperAnswers.tidy(file, REGRADER);
        assertEquals(before, Files.readString(file));
    }
}
