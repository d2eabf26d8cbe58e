// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.cell.Rig;
import hotside.cell.RigException;
import hotside.cell.Stock;
import hotside.speech.Language;
import hotside.unit.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class PlanTextTest {
    private static final UnitSystem SI = UnitSystem.SI_SHOP;
    private static final UnitSystem US = UnitSystem.US_SHOP;
    private static final Stock STOCK = Stock.shipped();
    private static final Rig RIG = STOCK.rig("eight-vented-bleed").orElseThrow();

    @Test
    void intervalsOfPowerComeInTheShopsUnitOrInTheirOwn() {
        assertEquals(new Conclusion.Interval(3e3, 9e3), PlanText.power("3 to 9", SI).orElseThrow());
        assertEquals(
                new Conclusion.Interval(-2e3, 4e3), PlanText.power("-2 .. 4 kW", SI).orElseThrow());
        Conclusion.Interval hp = PlanText.power("10 to 20 hp", SI).orElseThrow();
        assertEquals(7456.999, hp.low(), 0.01);
        assertEquals(14913.997, hp.high(), 0.01);
        assertEquals(7456.999, PlanText.power("10 to 20", US).orElseThrow().low(), 0.01);
        assertTrue(PlanText.power(" ", SI).isEmpty());
        refused(() -> PlanText.power("9 to 3 kW", SI), "the lower end first");
        refused(() -> PlanText.power("about 5", SI), "two powers such as");
    }

    @Test
    void timesBoostsBandsAndChannels() {
        assertEquals(720, PlanText.interval("12"));
        assertEquals(90, PlanText.interval("90 s"));
        assertEquals(60e3, PlanText.boost("60 kPa", SI, 98.5e3).orElseThrow(), 1e-6);
        assertEquals(8 * 6894.757, PlanText.boost("8", US, 98.5e3).orElseThrow(), 0.1);
        assertTrue(PlanText.boost("free", SI, 98.5e3).isEmpty());
        assertEquals(100, PlanText.band("4000..6000")[1]);
        assertEquals(100, PlanText.band("4000 to 6000 rpm")[1]);
        assertEquals(2, PlanText.channels("boost, airFlow").size());
        refused(() -> PlanText.band("fast"), "4000..6000");
        refused(() -> PlanText.channels("bost"), "boost");
        refused(() -> PlanText.interval("soon"), "the interval");
    }

    @Test
    void partsComeOffTheShelfOrAsValues() {
        Plan.Contestant b =
                PlanText.contestant(RIG, STOCK, "pipe-102 + control.signalShare = 60 %");
        assertEquals(98.3e-3, b.rig().exhaust().pipe().diameter(), 1e-12);
        assertEquals(0.6, b.rig().control().signalShare(), 1e-12);
        assertEquals("as it is", PlanText.contestant(RIG, STOCK, "as-it-is").title());
        refused(() -> PlanText.contestant(RIG, STOCK, "pipe-999"), "pipe-102");
    }

    @Test
    void aPredictionThatIsNotUnderstoodSaysHowOneLooks() {
        refused(() -> PlanText.prediction("power goes up", SI), "power rises 8 kW");
        refused(() -> PlanText.prediction("torque rises", SI), "turbine-inlet");
        refused(() -> PlanText.prediction("power rises lots", SI), "the size for power");
    }

    private static void refused(Executable what, String says) {
        RigException e = assertThrows(RigException.class, what);
        assertTrue(e.getMessage().contains(says), e.getMessage());
    }

    @Test
    void germanWordsAreUnderstoodAtAnyDesk() {
        assertEquals(100, PlanText.band("4000 bis 6000 1/min")[1]);
        assertTrue(PlanText.boost("frei", SI, 98.5e3).isEmpty());
        assertEquals(
                new Conclusion.Interval(3e3, 9e3), PlanText.power("3 bis 9 kW", SI).orElseThrow());
    }

    @Test
    void aGermanDeskIsToldInGermanWhatIsNotUnderstood() {
        Language.speak(Language.GERMAN);
        try {
            refused(
                    () -> PlanText.band("schnell"),
                    "der Drehzahlbereich ist „schnell“; erwartet: zwei Drehzahlen, zum Beispiel 4000 bis 6000");
            refused(
                    () -> PlanText.interval("12 kg"),
                    "der Abstand ist „12 kg“: Die Einheit „kg“ ist nicht bekannt. Erwartet wird eine Zeit");
            assertEquals(
                    "Rohr, außen 101,6 mm und Rohr ohne Schalldämpfer",
                    PlanText.contestant(RIG, STOCK, "pipe-102 + muffler-none").title());
            assertEquals("wie der Aufbau ist", PlanText.contestant(RIG, STOCK, "as-it-is").title());
        } finally {
            Language.speak(Language.ENGLISH);
        }
    }
}
