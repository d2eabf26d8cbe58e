// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.classroom.Roster.Learner;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class RosterTest {
    private static Roster read(String text) {
        return Roster.read("class.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> findings(Roster roster) {
        return roster.findings().stream().map(f -> f.oneLine()).toList();
    }

    @Test
    void columnsStandInAnyOrderAndOthersAreLetBe() {
        Roster roster =
                read(
                        "\ufeffgroup,born,Display_Name,LEARNER_ID\r\nevening,1999,\"Kim, the tall\",K7\r\n,,,K8\r\n");
        assertEquals(
                List.of(new Learner("K7", "Kim, the tall", "evening"), new Learner("K8", "K8", "")),
                roster.all());
        assertEquals(List.of(), roster.findings());
    }

    @Test
    void sourcedIdIsALearnersIdToo() {
        assertEquals("K7", read("sourcedId\nK7\n").all().get(0).id());
    }

    @Test
    void wrongRowsAreNamedAndTheOthersKept() {
        Roster roster = read("learner_id,display_name\nK7,a\nK7,b\n../x,c\nK9,d\n");
        assertEquals(List.of("K7", "K9"), roster.all().stream().map(Learner::id).toList());
        assertEquals(
                List.of(
                        "class.csv:3:1: the id \"K7\" stands there twice",
                        "class.csv:4:1: \"../x\" cannot be a learner's id"),
                findings(roster));
    }

    @Test
    void aFileWithoutIdsIsRefused() {
        assertEquals(
                List.of("class.csv:1:1: no column is called learner_id"),
                findings(read("name\nKim\n")));
        assertEquals(
                List.of("class.csv:1:1: it holds no learners"), findings(read("learner_id\n")));
        assertTrue(findings(read("learner_id\n\"K7\n")).get(0).contains("it is no CSV"));
    }

    @Test
    void directionMarksAreTakenOutOfNames() {
        Roster roster = read("learner_id,display_name\nK7,\u202eevil\u0000 name\n");
        assertEquals("evil\u2400 name", roster.all().get(0).name());
    }

    /** A spreadsheet takes a cell that begins with one of = + - @ for a formula, see CWE-1236. */
    @Test
    void namesThatLookLikeFormulasComeBackAsTheyWent() {
        for (String name : List.of("=1+1", "+49", "-x", "@home", "'=x", "plain", "a \"b\", c")) {
            Roster roster = Roster.of(List.of(new Learner("K7", name, "")));
            assertEquals(roster.all(), read(roster.csv()).all());
        }
        Roster hostile = Roster.of(List.of(new Learner("K7", "=HYPERLINK(1)", "")));
        assertTrue(hostile.csv().contains("\"'=HYPERLINK(1)\""));
    }

    @Test
    void freshLearnersHaveIdsOfTenReadableLetters() {
        Roster roster = Roster.fresh(25);
        assertEquals(25, roster.all().size());
        roster.all().forEach(l -> assertTrue(l.id().matches("[0-9A-HJKMNP-TV-Z]{10}"), l.id()));
    }
}
