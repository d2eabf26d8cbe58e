// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which rows are a pull. All speeds are invented. */
class PullSplitterTest {
    private static LogReading speeds(int... rpm) {
        return Logs.read(
                IntStream.of(rpm)
                        .mapToObj(v -> v + ",100")
                        .collect(Collectors.joining("\n", "rpm,Power [kW]\n", "\n")));
    }

    private static String pulls(LogReading reading) {
        return reading.log().orElseThrow().pulls().stream()
                .map(p -> p.label() + ":" + p.from() + "-" + p.to())
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '!',
            textBlock =
                    """
            one that rises                      ! 3000 4000 5000 6000                          ! 1:0-4
            one that falls                      ! 6000 5000 4000 3000                          ! 1:0-4
            speed that jitters                  ! 3000 3900 3850 4500 4480 5200 5100 6000      ! 1:0-8
            speed that stands                   ! 3000 3000 3000                               ! 1:0-3
            two that jump back                  ! 3000 4500 6000 3000 4500 6000                ! 1:0-3 2:3-6
            three that jump back                ! 3000 4500 6000 3000 6000 3100 4500 6000      ! 1:0-3 2:3-5 3:5-8
            two that fall                       ! 6000 4500 3000 6000 4500 3000                ! 1:0-3 2:3-6
            top speed read again, then a jump   ! 3000 4500 6000 6000 3000 4500 6000           ! 1:0-4 2:4-7
            a short coast after it              ! 3000 3500 4000 4500 5000 5500 6000 5000 4000 ! 1:0-7
            a short coast between two           ! 3000 4000 5000 6000 4800 3000 4000 5000 6000 ! 1:0-4 2:5-9
            throttle closed at the top          ! 3000 4000 5000 6000 6000 4800 3000 4000 5000 6000 ! 1:0-4 2:6-10
            """)
    void findsThePulls(String what, String rpm, String expected) {
        int[] speeds = List.of(rpm.split(" ")).stream().mapToInt(Integer::parseInt).toArray();
        assertEquals(expected, pulls(speeds(speeds)));
    }

    @Test
    void saysWhichRowsBelongToNoPull() {
        assertEquals(
                List.of(
                        "Lines 6 to 7 belong to no pull: there speed runs the other way, from 5000 to 4000 rev/min."),
                speeds(3000, 4000, 5000, 6000, 5000, 4000, 3000, 4000, 5000, 6000).notes());
    }

    @Test
    void keepsPullsApartThatTheFileKeepsApart() {
        LogReading reading =
                Logs.read("Run,rpm,Power [kW]\nA,3000,1\nA,4000,1\nB,5000,1\nB,6000,1\n");
        assertEquals("A:0-2 B:2-4", pulls(reading));
    }

    @Test
    void takesTheNamesComingAgainForAnotherPull() {
        LogReading reading =
                Logs.read("rpm,Power [kW]\n3000,1\n4000,1\nrpm,Power [kW]\n5000,1\n6000,1\n");
        assertEquals(List.of(), Logs.texts(reading));
        assertEquals("1:0-2 2:2-4", pulls(reading));
    }

    @Test
    void tellsOfTimeThatGoesBackInsideAPull() {
        LogReading reading =
                Logs.read("Time [s],rpm,Power [kW]\n1,3000,1\n2,4000,1\n0.5,5000,1\n1.5,6000,1\n");
        assertEquals(
                "invented.csv:4:1: time goes back inside pull 1",
                reading.findings().get(0).oneLine());
    }
}
