// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.classroom.ProblemSet.Numbers;
import hotside.statistics.draw.SplitMix64;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files from somebody who means harm, with a seal of their own where that helps them. */
class HostileHandInTest {
    private static final int MUTANTS = 10_000;
    private static final int RESEALED = 2_000;
    private static final long SEED = 20261125;

    @TempDir private Path drafts;
    @TempDir private Path folder;
    private final SigningKey key = SigningKey.fresh();
    private final SetFile file = Classes.file(Classes.set(Numbers.OWN));
    private final Regrader regrader = new Regrader(file.set(), Classes.BANK);
    private byte[] good;
    private List<String> lines;

    @BeforeEach
    void oneGoodHandIn() throws IOException {
        Classes.worked(drafts, file, "K1").handIn(drafts.resolve("good"), key, Classes.END);
        good = Files.readAllBytes(drafts.resolve("good"));
        lines = new String(good, StandardCharsets.UTF_8).lines().toList();
        lines = lines.subList(0, lines.size() - 1);
    }

    private Reason reason(byte[] bytes) {
        return assertThrows(RefusedException.class, () -> HandIn.read(bytes)).reason();
    }

    /** The refusal of the good file with one line exchanged and sealed again. */
    private RefusedException refused(int line, String instead) {
        List<String> changed = new ArrayList<>(lines);
        changed.set(line, instead);
        byte[] bytes = SealedLines.seal(changed, key);
        return assertThrows(RefusedException.class, () -> HandIn.read(bytes));
    }

    private String first() {
        return lines.get(1);
    }

    @Test
    void whatJsonAllowsToBeSaidBadlyIsRefusedWithItsReason() {
        Map<String, String> said = new TreeMap<>();
        said.put(first().replace("\"slot\":0", "\"slot\":NaN"), "NaN");
        said.put(first().replace("\"slot\":0", "\"slot\":-Infinity"), "is no JSON");
        said.put(first().replace("\"slot\":0", "\"slot\":0,\"slot\":1"), "Duplicate field 'slot'");
        said.put(first().replace("\"slot\":0", "\"slot\":0,\"score\":6"), "\"score\" is not known");
        said.put(first().replace("\"slot\":0", "\"slot\":-1"), "not within 0 to 99");
        said.put(first().replace("\"slot\":0", "\"slot\":1e3"), "no whole number");
        said.put(first().replace("\"slot\":0", "\"slot\":99999999999999999999"), "no whole number");
        said.put(first().replace("\"slot\":0", "\"slot\":" + "9".repeat(5000)), "is no JSON");
        said.put(first().replaceFirst("\\[.*]", "[".repeat(100_000)), "is no JSON");
        said.put(first().replaceFirst("\\[.*]", "[[[[[1]]]]]"), "is no JSON");
        said.put(first().replaceFirst("\\[.*]", "[null]"), "something other than texts");
        said.put(first().replaceFirst("\\[.*]", "\"133 N\""), "no list");
        said.put(
                first().replaceFirst("\\[.*]", "[\"" + "x".repeat(501) + "\"]"),
                "texts of at most 500 characters");
        said.put(first().replaceFirst("\\[.*]", "[\"" + "x".repeat(100_000) + "\"]"), "is no JSON");
        said.put(
                first().replaceFirst("\\[.*]", "[" + "\"\",".repeat(60) + "\"\"]"),
                "no list of at most 40");
        said.put(first() + "{}", "is no JSON");
        said.put("[]", "is no JSON object");
        said.put("", "is no JSON object");
        said.put("null", "is no JSON object");
        said.put(first().replaceFirst("\"at\":\"[^\"]*\"", "\"at\":\"yesterday\""), "is no time");
        said.forEach(
                (line, part) -> {
                    RefusedException e = refused(1, line);
                    assertEquals(Reason.ALTERED, e.reason());
                    assertTrue(e.getMessage().contains(part), e.getMessage());
                    assertTrue(e.getMessage().length() <= 400, e.getMessage());
                });
    }

    @Test
    void aLearnersIdIsNeverAPathNorHidesItsDirection() {
        for (String id :
                List.of("../../etc/x", "a/b", "C:x", "\\u202eabc", "", "K1\\u0000", " K1")) {
            RefusedException e = refused(0, lines.get(0).replace("\"K1\"", "\"" + id + "\""));
            assertEquals(Reason.ALTERED, e.reason(), id);
        }
    }

    @Test
    void aFileNameThatHidesItsDirectionIsShownPlainly() throws IOException {
        Files.write(folder.resolve("a\u202egnp.exe"), new byte[] {1});
        Marking.Result result = mark();
        assertEquals("a\ufffdgnp.exe", result.aside().get(0).source());
    }

    @Test
    void aSealOfAnotherKindOfKeyOrNoneAtAllIsAnAlteration() {
        String text = new String(good, StandardCharsets.UTF_8);
        String seal = text.lines().reduce((a, b) -> b).orElseThrow();
        for (String instead :
                List.of(
                        seal.replaceFirst("\"key\":\"[^\"]*\"", "\"key\":\"AAAA\""),
                        seal.replaceFirst("\"key\":\"[^\"]*\"", "\"key\":\"%%%\""),
                        seal.replaceFirst("\"seal\":\"[^\"]*\"", "\"seal\":\"\""),
                        seal.replaceFirst(
                                "\"key\":\"[^\"]*\"",
                                "\"key\":\"" + SigningKey.fresh().open().base64() + "\""))) {
            byte[] bytes = text.replace(seal, instead).getBytes(StandardCharsets.UTF_8);
            assertEquals(Reason.ALTERED, reason(bytes), instead);
        }
    }

    /** Nothing here unpacks anything, so an archive is a stranger like any other file. */
    @Test
    void anArchiveIsNotUnpacked() throws IOException {
        try (OutputStream out = Files.newOutputStream(folder.resolve("slip.handin"));
                ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("../../slipped.txt"));
            zip.write(new byte[1_000_000]);
        }
        assertEquals(Reason.FOREIGN, mark().aside().get(0).reason());
        assertEquals(List.of("slip.handin"), names(folder));
    }

    /** Every byte-wise mutant is refused for a reason, unless nothing was changed after all. */
    @Test
    void tenThousandMutantsAreRefused() {
        SplitMix64 random = new SplitMix64(SEED);
        Map<Reason, Integer> reasons = new EnumMap<>(Reason.class);
        for (int i = 0; i < MUTANTS; i++) {
            byte[] mutant = mutant(random);
            if (!Arrays.equals(mutant, good)) {
                reasons.merge(reason(mutant), 1, Integer::sum);
            }
        }
        assertTrue(reasons.getOrDefault(Reason.ALTERED, 0) > 1_000, reasons.toString());
        assertTrue(reasons.getOrDefault(Reason.TRUNCATED, 0) > 1_000, reasons.toString());
        assertTrue(reasons.getOrDefault(Reason.FOREIGN, 0) > 100, reasons.toString());
    }

    private byte[] mutant(SplitMix64 random) {
        int at = random.below(good.length);
        return switch (random.below(5)) {
            case 0 -> Arrays.copyOf(good, at);
            case 1 -> {
                byte[] flipped = good.clone();
                flipped[at] ^= (byte) (1 << random.below(8));
                yield flipped;
            }
            case 2 -> joined(at, Math.min(good.length, at + 1 + random.below(40)), new byte[0]);
            case 3 -> {
                byte[] noise = new byte[1 + random.below(60)];
                for (int i = 0; i < noise.length; i++) {
                    noise[i] = (byte) random.below(256);
                }
                yield joined(at, at, noise);
            }
            default -> {
                int from = random.below(good.length);
                int to = Math.min(good.length, from + random.below(300));
                yield joined(at, at, Arrays.copyOfRange(good, from, to));
            }
        };
    }

    private byte[] joined(int until, int from, byte[] between) {
        byte[] out = Arrays.copyOf(good, until + between.length + good.length - from);
        System.arraycopy(between, 0, out, until, between.length);
        System.arraycopy(good, from, out, until + between.length, good.length - from);
        return out;
    }

    /** Behind a good seal, too, a file is read or refused, and never makes the reader stumble. */
    @Test
    void mutantsWithASealOfTheirOwnAreReadOrRefused() {
        SplitMix64 random = new SplitMix64(SEED);
        String[] tokens = {
            "null",
            "[]",
            "{}",
            "\"\"",
            "-1",
            "1e9",
            "true",
            "NaN",
            "{\"a\":[[[1]]]}",
            "\"\\ud800\"",
            "0",
            "\n"
        };
        int refused = 0;
        for (int i = 0; i < RESEALED; i++) {
            List<String> changed = new ArrayList<>(lines);
            int line = random.below(changed.size());
            String text = changed.get(line);
            int at = random.below(text.length());
            int to = Math.min(text.length(), at + random.below(12));
            changed.set(
                    line,
                    text.substring(0, at)
                            + tokens[random.below(tokens.length)]
                            + text.substring(to));
            if (random.below(4) == 0) {
                changed.remove(random.below(changed.size()));
            }
            try {
                HandIn.read(SealedLines.seal(changed, key));
            } catch (RefusedException e) {
                refused++;
            }
        }
        assertTrue(refused > RESEALED * 9 / 10, refused + " of " + RESEALED);
    }

    /** Whatever is typed as an answer is marked; it makes nothing stumble. */
    @Test
    void answersOfAnyLettersAreMarked() throws IOException {
        SplitMix64 random = new SplitMix64(SEED);
        String letters =
                "0123456789.,-+eE×^ \u00a0/%NkPabsgmr°\u2212\u202e\ud83d\ude00\"'<&=()\t\u0000½";
        for (int i = 0; i < 150; i++) {
            List<String> answers = new ArrayList<>();
            for (int ask = 0; ask < 6; ask++) {
                StringBuilder answer = new StringBuilder();
                int length = random.below(ask == 5 ? 500 : 20);
                for (int c = 0; c < length; c++) {
                    answer.append(letters.charAt(random.below(letters.length())));
                }
                answers.add(answer.toString());
            }
            Draft draft =
                    Draft.begin(
                            drafts.resolve("d" + i),
                            file,
                            "L" + i,
                            hotside.unit.DecimalHabit.UNKNOWN,
                            Classes.START);
            draft.answer(0, List.of("1e999999999 N"), Classes.START);
            for (int slot = 0; slot < 3; slot++) {
                draft.answer(slot, answers.subList(slot, slot + 3), Classes.START);
            }
            draft.handIn(folder.resolve("h" + i), key, Classes.END);
        }
        Marking.Result result = mark();
        assertEquals(List.of(), result.aside());
        assertEquals(150, result.marked().size());
    }

    @Test
    void goodFilesAreMarkedAmongHundredsOfMutants() throws IOException {
        SplitMix64 random = new SplitMix64(SEED);
        for (int i = 0; i < 150; i++) {
            Files.write(folder.resolve("m" + i), mutant(random));
        }
        for (String learner : List.of("K2", "K3")) {
            Classes.worked(drafts, file, learner).handIn(folder.resolve(learner), key, Classes.END);
        }
        List<String> before = names(folder);
        Marking.Result result = mark();
        assertEquals(
                List.of("K2", "K3"),
                result.marked().stream()
                        .map(MarkedHandIn::learner)
                        .filter(l -> !l.equals("K1"))
                        .toList());
        result.marked().forEach(m -> assertEquals(6, m.reached()));
        assertEquals(before, names(folder));
    }

    private Marking.Result mark() throws IOException {
        return new Marking(file, regrader, Optional.empty(), false)
                .mark(Marking.files(folder), Watch.NONE);
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }
}
