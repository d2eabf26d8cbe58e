// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The table beside this test says which typical slips the shipped problems recognise. */
class MistakesThatPeopleMakeTest {
    private static final String TABLE = "mistakes-that-people-make.txt";
    private static final int ALL = 88;
    private static final int LEAST = 80;

    private record Row(String slip, String problem, String mistake) {
        /** The mistakes of the problem that the row names. */
        List<String> found() {
            Optional<Template> template = ProblemBank.shipped().find(problem);
            return template.stream()
                    .flatMap(t -> t.mistakeIds().stream())
                    .filter(id -> id.startsWith(mistake))
                    .toList();
        }
    }

    private static List<Row> rows() throws IOException {
        List<Row> rows = new ArrayList<>();
        try (BufferedReader in =
                new BufferedReader(
                        new InputStreamReader(
                                MistakesThatPeopleMakeTest.class.getResourceAsStream(TABLE),
                                StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                if (!line.startsWith("#") && !line.isBlank()) {
                    String[] cells = line.split("\\s*\\|\\s*", -1);
                    rows.add(
                            cells.length == 3
                                    ? new Row(cells[0], cells[1], cells[2])
                                    : new Row(cells[0], "", ""));
                }
            }
        }
        return rows;
    }

    @Test
    void eachNamedProblemRecognisesItsSlip() throws IOException {
        List<String> missing =
                rows().stream()
                        .filter(row -> !row.problem().isEmpty() && row.found().isEmpty())
                        .map(Row::toString)
                        .toList();
        assertEquals(List.of(), missing);
    }

    @Test
    void nearlyAllTypicalSlipsAreRecognisedSomewhere() throws IOException {
        List<Row> rows = rows();
        assertEquals(ALL, rows.size());
        assertEquals(ALL, rows.stream().map(Row::slip).distinct().count());
        long known = rows.stream().filter(row -> !row.found().isEmpty()).count();
        assertTrue(known >= LEAST, known + " of " + rows.size());
    }
}
