// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import hotside.catalogue.Catalogue;
import hotside.relation.Relation;
import hotside.relation.Slot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NounPhraseTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    bore of the valve seat                               | the bore of the valve seat
                    push of the exhaust, positive opens the valve        | the push of the exhaust
                    the readings, two at least                           | the readings
                    a rise of the pressure behind the turbine            | the rise of the pressure behind the turbine
                    all readings, in the order in which they were taken  | all readings
                    one velocity head, half of density times velocity    | one velocity head
                    half the width of the interval                       | half the width of the interval
                    Darcy's friction factor                              | Darcy's friction factor
                    Reynolds number                                      | the Reynolds number
                    effectiveness of the charge cooler; 0 without one    | the effectiveness of the charge cooler
                    flow of what cools it: air or water                  | the flow of what cools it
                    work on, or from, each kilogram                      | the work on, or from, each kilogram
                    how far the valve stands off its seat                | the value for “how far the valve stands off its seat”
                    1 if the exit is choked, 0 if not                    | the value for “1 if the exit is choked, 0 if not”
                    is it boosted, with a control that holds boost?      | the value for “is it boosted, with a control that holds boost”
                    what the part brought, drift taken out               | the value for “what the part brought, drift taken out”
                    p3                                                   | the p3
                    """)
    void standsInASentence(String meaning, String phrase) {
        assertEquals(phrase, NounPhrase.of(meaning));
    }

    @Test
    void everySlotOfTheCatalogueMakesAPhraseWithoutDoubledArticles() {
        for (Relation relation : Catalogue.all()) {
            for (Slot slot : relation.inputs()) {
                assertSound(slot);
            }
            relation.outputs().forEach(NounPhraseTest::assertSound);
        }
    }

    private static void assertSound(Slot slot) {
        String phrase = NounPhrase.of(slot.meaning());
        assertFalse(
                phrase.matches("the (the|a|an|all|half|one|its|how|what|whether|is) .*"), phrase);
        assertFalse(phrase.isBlank() || phrase.endsWith(","), phrase);
    }
}
