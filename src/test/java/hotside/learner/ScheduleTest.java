// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

// Gaps: growing ones keep as much as equal ones at the end and more on the way (Kang and others
// 2014, doi 10.3758/s13423-014-0636-z); 15 to 20 % of the time to a test a fortnight to months
// away lies within what Cepeda and others found best (2008, doi 10.1111/j.1467-9280.2008.02209.x).
class ScheduleTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    @ParameterizedTest
    @CsvSource({"0, 1", "1, 3", "2, 7", "3, 16", "4, 35", "9, 35"})
    void gapsGrow(int step, int days) {
        assertEquals(DAY.plusDays(days), due(DAY, step, false, Optional.empty(), DAY));
    }

    @Test
    void aMissBringsItBackTomorrow() {
        assertEquals(DAY.plusDays(1), due(DAY, 4, true, Optional.empty(), DAY));
    }

    @ParameterizedTest
    @CsvSource({"100, 18", "40, 7", "20, 4", "10, 2", "3, 1", "2, 1"})
    void anExamAheadSetsTheGap(int left, int days) {
        Optional<LocalDate> exam = Optional.of(DAY.plusDays(left));
        assertEquals(DAY.plusDays(days), due(DAY, 4, false, exam, DAY));
    }

    @Test
    void anExamTomorrowOrPastChangesNothing() {
        assertEquals(DAY.plusDays(7), due(DAY, 2, false, Optional.of(DAY.plusDays(1)), DAY));
        assertEquals(DAY.plusDays(7), due(DAY, 2, false, Optional.of(DAY.minusDays(9)), DAY));
    }

    @Test
    void aClockSetBackDoesNotPutAReviewOffForYears() {
        LocalDate earlier = DAY.minusYears(3);
        assertEquals(earlier.plusDays(7), due(DAY, 2, false, Optional.empty(), earlier));
    }

    private static LocalDate due(
            LocalDate seen, int step, boolean missed, Optional<LocalDate> exam, LocalDate today) {
        return Schedule.due(seen, step, missed, exam, today);
    }
}
