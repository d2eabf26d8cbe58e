// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotside.classroom.ProblemSet.Numbers;
import hotside.unit.DecimalHabit;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DraftTest {
    @TempDir private Path folder;
    private final SetFile file = Classes.file(Classes.set(Numbers.OWN));

    private Draft begun() throws IOException {
        return Draft.begin(folder.resolve("work"), file, "K1", DecimalHabit.COMMA, Classes.START);
    }

    @Test
    void workGoesOnWhereItStopped() throws IOException {
        Draft draft = begun();
        draft.answer(0, List.of("12,5 N"), Classes.START);
        draft.hint(1, 2, Classes.START);
        draft.answer(0, List.of("13 N"), Classes.END);
        Draft again = Draft.resume(folder.resolve("work"), file);
        assertEquals(draft.entries(), again.entries());
        assertEquals(Optional.of(List.of("13 N")), again.answers(0));
        assertEquals(Optional.empty(), again.answers(1));
        assertEquals("K1", again.learner());
        assertEquals(DecimalHabit.COMMA, again.habit());
    }

    @Test
    void atWhateverByteItIsTornWholeLinesAreKept() throws IOException {
        Draft draft = begun();
        draft.answer(0, List.of("12 N"), Classes.START);
        draft.answer(0, List.of("13 \u00b5N"), Classes.START);
        byte[] whole = Files.readAllBytes(folder.resolve("work"));
        List<String> lines = Files.readAllLines(folder.resolve("work"));
        int first = lines.get(0).length() + 1;
        int second = first + lines.get(1).length() + 1;
        Path torn = folder.resolve("torn");
        for (int length = first; length < whole.length; length++) {
            Files.write(torn, java.util.Arrays.copyOf(whole, length));
            Draft again = Draft.resume(torn, file);
            assertEquals(length < second ? 0 : 1, again.entries().size());
            again.answer(1, List.of("7"), Classes.START);
            assertEquals(Optional.of(List.of("7")), Draft.resume(torn, file).answers(1));
        }
    }

    @Test
    void neverBeginsOverOtherWork() throws IOException {
        begun();
        assertThrows(FileAlreadyExistsException.class, this::begun);
    }

    @Test
    void isOfOneSetOnly() throws IOException {
        begun();
        SetFile other = Classes.file(Classes.set(Numbers.SAME));
        RefusedException e =
                assertThrows(
                        RefusedException.class, () -> Draft.resume(folder.resolve("work"), other));
        assertEquals(Reason.FOREIGN, e.reason());
    }

    @Test
    void anAnswerLongerThanAnyIsCutAndTheHandInStaysReadable() throws IOException {
        Draft draft = begun();
        draft.answer(0, List.of("9".repeat(100_000)), Classes.START);
        draft.handIn(folder.resolve("in"), SigningKey.fresh(), Classes.END);
        HandIn in = HandIn.read(Files.readAllBytes(folder.resolve("in")));
        assertEquals(
                List.of("9".repeat(WorkLines.LONGEST_ANSWER)),
                ((Entry.Answered) in.entries().get(0)).answers());
    }

    @Test
    void whatIsTypedIsKeptAndIsAnAnswerOnceHandedIn() throws IOException {
        Draft draft = begun();
        draft.answer(0, List.of("12 N"), Classes.START);
        draft.type(0, List.of("13 N"), Classes.START);
        draft.type(1, List.of("0,1 kg/s", ""), Classes.START);
        Draft again = Draft.resume(folder.resolve("work"), file);
        assertEquals(Optional.of(List.of("13 N")), again.fields(0));
        assertEquals(Optional.of(List.of("12 N")), again.answers(0));
        new AtWork(again, new Regrader(file.set(), Classes.BANK))
                .handIn(folder.resolve("in"), SigningKey.fresh(), Classes.END);
        HandIn in = HandIn.read(Files.readAllBytes(folder.resolve("in")));
        assertEquals(
                List.of(
                        new Entry.Answered(Classes.START, 0, List.of("12 N")),
                        new Entry.Answered(Classes.END, 0, List.of("13 N")),
                        new Entry.Answered(Classes.END, 1, List.of("0,1 kg/s", ""))),
                in.entries());
    }
}
