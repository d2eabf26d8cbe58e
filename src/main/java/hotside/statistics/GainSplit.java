// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Splits a gain between the boost that moved with it and the part that was changed, and leaves what
 * neither explains as a remainder.
 *
 * <p>Source: the difference of a gain and a worth times a change, with uncertainties carried by the
 * law of propagation, JCGM 100:2008 (GUM) equation (10), first order. The second-order term of the
 * product is left out; a caution says when it would widen the interval by more than 2 %. The three
 * uncertainties are taken as independent and as well known, so the interval uses the normal
 * distribution.
 */
public final class GainSplit {
    private static final double WIDEST_MISSED = 1.02;

    public static final Relation RELATION =
            Relation.named("gain-split", "What of a gain belongs to the part", "Test design")
                    .says(
                            "When boost moved along with the part, the gain is not the part's alone. The boost's"
                                    + " share is the worth of boost times its change; the rest is the part's, and what"
                                    + " of that nobody expected stays unexplained.")
                    .tex(
                            "\\Delta P_e = \\Delta P - w\\,\\Delta p, \\quad"
                                    + " u_e = \\sqrt{u_P^2 + (w\\,u_p)^2 + (\\Delta p\\,u_w)^2}")
                    .input(
                            Slot.number(
                                            "gain",
                                            "\\Delta P",
                                            Quantity.POWER,
                                            "power after less power before")
                                    .range(-5e6, 5e6)
                                    .usual(
                                            -200e3,
                                            200e3,
                                            "a bolt-on part seldom moves power by more than 200 kW; look for a change"
                                                    + " in the test first")
                                    .typical(46_200))
                    .input(
                            uncertainty("gain", "the gain", "u_P", Quantity.POWER, 5e6)
                                    .usual(
                                            0,
                                            50e3,
                                            "a gain known no better than 50 kW decides nothing")
                                    .typical(1_500))
                    .input(
                            Slot.number(
                                            "boostChange",
                                            "\\Delta p",
                                            Quantity.PRESSURE_DIFFERENCE,
                                            "boost after less boost before")
                                    .range(-1e6, 1e6)
                                    .usual(
                                            -50e3,
                                            50e3,
                                            "over more than 50 kPa the worth of boost does not stay one number")
                                    .typical(5_500))
                    .input(
                            uncertainty(
                                            "boostChange",
                                            "the change of boost",
                                            "u_p",
                                            Quantity.PRESSURE_DIFFERENCE,
                                            1e6)
                                    .usual(
                                            0,
                                            10e3,
                                            "boost gauges are good to a few kPa; 10 kPa needs a better one")
                                    .typical(400))
                    .input(
                            Slot.number(
                                            "worth",
                                            "w",
                                            Quantity.POWER_PER_PRESSURE,
                                            "power that a unit of boost is worth")
                                    .range(0, 100)
                                    .usual(
                                            0,
                                            10,
                                            "an engine of 1000 kW unboosted would be needed for 10 kW per kPa")
                                    .typical(3.2))
                    .input(
                            uncertainty(
                                            "worth",
                                            "the worth of boost",
                                            "u_w",
                                            Quantity.POWER_PER_PRESSURE,
                                            100)
                                    .usual(
                                            0,
                                            3,
                                            "a worth of boost known no better than 3 kW per kPa splits nothing")
                                    .typical(0.4))
                    .input(
                            Slot.number(
                                            "expectedAtEqualBoost",
                                            "\\Delta P_x",
                                            Quantity.POWER,
                                            "gain foreseen for the part at equal boost")
                                    .range(-5e6, 5e6)
                                    .usual(
                                            -200e3,
                                            200e3,
                                            "a bolt-on part seldom moves power by more than 200 kW")
                                    .orElse(0))
                    .input(
                            uncertainty(
                                            "expectedAtEqualBoost",
                                            "the gain foreseen",
                                            "u_x",
                                            Quantity.POWER,
                                            5e6)
                                    .usual(
                                            0,
                                            50e3,
                                            "an expectation no better than 50 kW explains anything")
                                    .orElse(0))
                    .input(Confidence.slot())
                    .output(
                            "boostPart",
                            "\\Delta P_b",
                            Quantity.POWER,
                            "gain that belongs to boost")
                    .output("boostPartHalfWidth", "h_b", Quantity.POWER, "half its interval")
                    .output("boostPartLow", "\\Delta P_{b,l}", Quantity.POWER, "its lower end")
                    .output("boostPartHigh", "\\Delta P_{b,u}", Quantity.POWER, "its upper end")
                    .output(
                            "exhaustPart",
                            "\\Delta P_e",
                            Quantity.POWER,
                            "gain that does not belong to boost")
                    .output("exhaustPartHalfWidth", "h_e", Quantity.POWER, "half its interval")
                    .output("exhaustPartLow", "\\Delta P_{e,l}", Quantity.POWER, "its lower end")
                    .output("exhaustPartHigh", "\\Delta P_{e,u}", Quantity.POWER, "its upper end")
                    .output(
                            "unexplained",
                            "\\Delta P_r",
                            Quantity.POWER,
                            "exhaust part less what was foreseen")
                    .output("unexplainedHalfWidth", "h_r", Quantity.POWER, "half its interval")
                    .output("unexplainedLow", "\\Delta P_{r,l}", Quantity.POWER, "its lower end")
                    .output("unexplainedHigh", "\\Delta P_{r,u}", Quantity.POWER, "its upper end")
                    .assumes(
                            "power grows in proportion to boost over the change",
                            "the three uncertainties are independent and well known",
                            "nothing else that moves power was changed")
                    .source(
                            "JCGM 100:2008 (GUM), 5.1.2, equation (10), first order",
                            "that boost has a worth is common practice, no source")
                    .by(GainSplit::work);

    private GainSplit() {}

    /**
     * One part of a gain.
     *
     * @param value W
     * @param uncertainty standard uncertainty, W
     */
    public record Part(double value, double uncertainty) {
        /** This part less another that is known independently of it. */
        Part less(Part other) {
            return new Part(value - other.value, Math.hypot(uncertainty, other.uncertainty));
        }
    }

    /**
     * The part of a gain that belongs to a change of boost.
     *
     * @param boostChange boost after less boost before, Pa
     * @param boostChangeUncertainty its standard uncertainty, Pa, at least 0
     * @param worth power per boost, W/Pa
     * @param worthUncertainty its standard uncertainty, W/Pa, at least 0
     */
    public static Part boostPart(
            double boostChange,
            double boostChangeUncertainty,
            double worth,
            double worthUncertainty) {
        return new Part(
                worth * boostChange,
                Math.hypot(worth * boostChangeUncertainty, boostChange * worthUncertainty));
    }

    private static Slot uncertainty(
            String of, String said, String symbol, Quantity quantity, double max) {
        return Slot.number(of + "Uncertainty", symbol, quantity, "standard uncertainty of " + said)
                .range(0, max);
    }

    private static void work(Working w) {
        double factor =
                w.step(
                        "k",
                        "k",
                        Quantity.RATIO,
                        "",
                        Confidence.normal(w.in("confidence")),
                        "From the table of the normal distribution for this confidence.");
        Part boost = boost(w, factor);
        Part gain = new Part(w.in("gain"), w.in("gainUncertainty"));
        Part exhaust = exhaust(w, factor, gain, boost);
        unexplained(w, factor, exhaust);
    }

    private static Part boost(Working w, double factor) {
        double uChange = w.in("boostChangeUncertainty");
        double uWorth = w.in("worthUncertainty");
        Part boost = boostPart(w.in("boostChange"), uChange, w.in("worth"), uWorth);
        w.out(
                "boostPart",
                "@worth \\cdot @boostChange",
                boost.value,
                "What the change of boost alone would have brought.");
        w.step(
                "uBoost",
                "u_b",
                Quantity.POWER,
                "\\sqrt{(@worth \\cdot @boostChangeUncertainty)^2 + (@boostChange \\cdot @worthUncertainty)^2}",
                boost.uncertainty,
                "Both factors are uncertain, and each counts with the size of the other.");
        ends(w, "boostPart", "@uBoost", factor, boost);
        double exact = Math.hypot(boost.uncertainty, uChange * uWorth);
        w.caution(
                exact > WIDEST_MISSED * boost.uncertainty,
                "boostPart",
                () ->
                        "boost change and worth are both so uncertain that first-order propagation makes the"
                                + " interval of the boost part too narrow by more than 2 %");
        return boost;
    }

    private static Part exhaust(Working w, double factor, Part gain, Part boost) {
        Part exhaust = gain.less(boost);
        w.out(
                "exhaustPart",
                "@gain - @boostPart",
                exhaust.value,
                "What is left of the gain does not belong to boost.");
        w.step(
                "uExhaust",
                "u_e",
                Quantity.POWER,
                "\\sqrt{@gainUncertainty^2 + @uBoost^2}",
                exhaust.uncertainty,
                "A difference is less sure than either of its terms.");
        ends(w, "exhaustPart", "@uExhaust", factor, exhaust);
        return exhaust;
    }

    private static void unexplained(Working w, double factor, Part exhaust) {
        Part rest =
                exhaust.less(
                        new Part(
                                w.in("expectedAtEqualBoost"),
                                w.in("expectedAtEqualBoostUncertainty")));
        w.out(
                "unexplained",
                "@exhaustPart - @expectedAtEqualBoost",
                rest.value,
                "What nobody foresaw stays a remainder; it is not shared out.");
        w.step(
                "uRest",
                "u_r",
                Quantity.POWER,
                "\\sqrt{@uExhaust^2 + @expectedAtEqualBoostUncertainty^2}",
                rest.uncertainty,
                "The expectation adds its own doubt.");
        ends(w, "unexplained", "@uRest", factor, rest);
    }

    private static void ends(Working w, String slot, String u, double factor, Part part) {
        double half =
                w.out(
                        slot + "HalfWidth",
                        "@k \\cdot " + u,
                        factor * part.uncertainty,
                        "So far to either side.");
        w.out(
                slot + "Low",
                "@" + slot + " - @" + slot + "HalfWidth",
                part.value - half,
                "Lower end.");
        w.out(
                slot + "High",
                "@" + slot + " + @" + slot + "HalfWidth",
                part.value + half,
                "Upper end.");
    }
}
