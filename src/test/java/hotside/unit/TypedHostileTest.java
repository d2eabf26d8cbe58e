// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever is typed or pasted, there is an answer. */
class TypedHostileTest {
    private static final double AMBIENT = 98_000;

    @Property(tries = 3000, seed = "20261125")
    void noTextMakesItThrow(
            @ForAll("lines") String text,
            @ForAll Quantity quantity,
            @ForAll DecimalHabit habit,
            @ForAll boolean unitBeside) {
        Expected expected =
                new Expected(
                        quantity,
                        unitBeside ? quantity.shown(UnitSystem.US_SHOP) : null,
                        AMBIENT,
                        habit);
        assertSound(Typed.read(text, expected));
        assertNotNull(Typed.list(text, expected));
        assertNotNull(DecimalHabit.shownIn(text));
    }

    private void assertSound(Typed typed) {
        if (typed instanceof Typed.Understood u) {
            assertTrue(Double.isFinite(u.si()) && u.significantDigits() >= 1);
        } else if (typed instanceof Typed.NotUnderstood n) {
            assertTrue(n.message().endsWith(".") && n.message().length() < 400, n.message());
        } else {
            assertTrue(((Typed.Ambiguous) typed).question().endsWith("?"));
        }
    }

    @Provide
    Arbitrary<String> lines() {
        Arbitrary<String> fromPieces =
                Arbitraries.of(
                                "1", "234", "0", "12", ".", ",", " ", "'", "\u00a0", "\u2009", "-",
                                "−", "e", "x10^", "⁵", "/", "½", "psi", "kPa", "g", " gauge", "abs",
                                "in", "\"", "°C", "%", ";", "\n", "yes", "μ", "(", ")", "\u0000")
                        .list()
                        .ofMaxSize(12)
                        .map(pieces -> String.join("", pieces));
        return Arbitraries.oneOf(fromPieces, Arbitraries.strings().ofMaxLength(250));
    }
}
