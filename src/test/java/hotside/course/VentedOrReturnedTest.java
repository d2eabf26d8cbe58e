// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotside.physics.turbine.TurbineExpansion;
import hotside.unit.UnitSystem;
import org.junit.jupiter.api.Test;

/**
 * The lesson on vented and returned gates starts from two numbers that its own pipe and turbine
 * have to agree with: no relation finds them, because each hangs on what follows from it.
 */
class VentedOrReturnedTest {
    private static final Computed LESSON =
            new Computed(
                    Course.shipped().find("gate/vented-or-returned").orElseThrow(),
                    UnitSystem.SI_SHOP);

    private static double at(String place) {
        return LESSON.run().number(place);
    }

    @Test
    void theVentedTurbineWorksAgainstTheTotalPressureOfItsPipe() {
        assertEquals(at("vented.inletTotal"), at("near"), 100);
    }

    /** First law for the two streams that meet, of one specific heat. */
    @Test
    void theMixtureIsAsHotAsItsTwoStreamsMakeIt() {
        double through = at("needFull.turbineFlow") / at("returned.massFlow");
        double wheel =
                TurbineExpansion.temperature(
                        at("fierce"),
                        at("needFull.turbineInletPressure") / at("returned.inletTotal"),
                        at("turbine"),
                        1.33);
        assertEquals(through * wheel + (1 - through) * at("fierce"), at("mixed"), 1);
    }

    /**
     * The same circle closed by a program of another hand: the friction integrated step by step,
     * the roots by halving; exhaust of 298.2 J/(kg K).
     */
    @Test
    void theNumbersAreThoseOfAnIndependentReckoning() {
        assertEquals(173.94e3, at("need.turbineInletPressure"), 200);
        assertEquals(192.62e3, at("needFull.turbineInletPressure"), 200);
        assertEquals(4.38e3, at("vented.drop"), 50);
        assertEquals(13.73e3, at("returned.drop"), 100);
        assertEquals(24.37e3, at("returned.inletTotal") - at("ambient"), 150);
        assertEquals(125.4, at("pushVented.force"), 0.5);
        assertEquals(115.9, at("pushReturned.force"), 0.5);
    }
}
