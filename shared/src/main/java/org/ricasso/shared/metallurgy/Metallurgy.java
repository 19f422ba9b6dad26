package org.ricasso.shared.metallurgy;

import static org.ricasso.shared.calculation.Definition.define;
import static org.ricasso.shared.calculation.Measures.AREAL_MASS;
import static org.ricasso.shared.calculation.Measures.AREA_RATE;
import static org.ricasso.shared.calculation.Measures.DENSITY;
import static org.ricasso.shared.calculation.Measures.HEATING_RATE;
import static org.ricasso.shared.quantity.Measure.DURATION;
import static org.ricasso.shared.quantity.Measure.HARDNESS;
import static org.ricasso.shared.quantity.Measure.LENGTH;
import static org.ricasso.shared.quantity.Measure.NUMBER;
import static org.ricasso.shared.quantity.Measure.TEMPERATURE;
import static org.ricasso.shared.quantity.Measure.TEMPERATURE_DIFFERENCE;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.calculation.Calculations;

/** The metallurgical calculations that the language can call. */
public final class Metallurgy implements Calculations {
    private static final String ANDREWS = "K. W. Andrews, J. Iron Steel Inst. 203 (1965) 721;"
            + " coefficients published, limits from memory; ± 20 to 30 K on real steels";
    private static final String TEMPERING = "J. H. Hollomon and L. D. Jaffe, Trans. AIME 162 (1945) 223, constant 20;"
            + " published; not through secondary hardening";
    private static final String DIFFUSION = "W. D. Callister, diffusion data (2.3e-5 m²/s, 148 kJ/mol), published;"
            + " austenite with free oxygen only, an upper bound";
    private static final double HOUR = 3600;
    /** 100..700 °C, the tempers of the 1945 study. */
    private static final double COOLEST_TEMPER = 373.15;
    private static final double HOTTEST_TEMPER = 973.15;
    private static final double SHORTEST_TEMPER = 0.1;
    private static final double LONGEST_TEMPER = 1000 * HOUR;
    /** 727..1300 °C: austenite. */
    private static final double COOLEST_AUSTENITE = 1000.15;
    private static final double HOTTEST_AUSTENITE = 1573.15;

    @Override
    public List<Calculation> calculations() {
        List<Calculation> result = new ArrayList<>(martensite());
        result.addAll(tempering());
        result.addAll(diffusion());
        result.addAll(others());
        return List.copyOf(result);
    }

    private static List<Calculation> martensite() {
        return List.of(
                define("martensite-start-andrews", "martensite start of a low-alloy steel from dissolved contents, linear")
                        .falls("carbon", NUMBER, 0, 0.006).falls("manganese", NUMBER, 0, 0.049)
                        .falls("nickel", NUMBER, 0, 0.05).falls("chromium", NUMBER, 0, 0.05)
                        .falls("molybdenum", NUMBER, 0, 0.054)
                        .gives(TEMPERATURE, ANDREWS, a -> MartensiteStart.andrews(a[0], a[1], a[2], a[3], a[4])),
                define("martensite-start-andrews-product", "martensite start of a low-alloy steel, with products")
                        .falls("carbon", NUMBER, 0, 0.006).falls("manganese", NUMBER, 0, 0.049)
                        .falls("nickel", NUMBER, 0, 0.05).either("chromium", NUMBER, 0, 0.05)
                        .falls("molybdenum", NUMBER, 0, 0.054)
                        .givesAtCorners(TEMPERATURE, ANDREWS,
                                a -> MartensiteStart.andrewsProduct(a[0], a[1], a[2], a[3], a[4])),
                define("martensite-start-finkler-schirra", "martensite start of a chromium steel from dissolved contents")
                        .falls("carbon", NUMBER, 0, 0.006).falls("nitrogen", NUMBER, 0, 0.004)
                        .falls("chromium", NUMBER, 0.08, 0.14).falls("manganese", NUMBER, 0, 0.02)
                        .falls("molybdenum", NUMBER, 0, 0.03).falls("nickel", NUMBER, 0, 0.03)
                        .falls("vanadium", NUMBER, 0, 0.01).falls("tungsten", NUMBER, 0, 0.03)
                        .gives(TEMPERATURE, "C. Finkler and M. Schirra, Steel Research 67 (1996) 328; magnitudes published,"
                                + " structure from memory; ± 20 to 30 K on real steels",
                                a -> MartensiteStart.finklerSchirra(a[0], a[1], a[2], a[3], a[4], a[5], a[6], a[7])),
                define("retained-austenite", "fraction of austenite left in the matrix after cooling to a temperature")
                        .falls("martensite-start", TEMPERATURE, 200, 900).rises("coldest", TEMPERATURE, 77, 900)
                        .gives(NUMBER, "D. P. Koistinen and R. E. Marburger, Acta Metall. 7 (1959) 59, constant published;"
                                + " an estimate for chromium steels, ± 5 percentage points",
                                a -> RetainedAustenite.fraction(a[0], a[1])),
                define("coldest-for", "temperature to cool to for a fraction of retained austenite")
                        .rises("martensite-start", TEMPERATURE, 300, 900).rises("fraction", NUMBER, 0.01, 1)
                        .gives(TEMPERATURE, "D. P. Koistinen and R. E. Marburger, Acta Metall. 7 (1959) 59, solved",
                                a -> RetainedAustenite.coldestFor(a[0], a[1])),
                define("just-hardness", "hardness of untempered martensite from its carbon, also of 13 % chromium steels")
                        .rises("carbon", NUMBER, 0.001, 0.006)
                        .gives(HARDNESS, "E. Just (1968), from memory", a -> MartensiteHardness.just(a[0])),
                define("just-carbon", "carbon in the martensite for a hardness before tempering")
                        .rises("hardness", HARDNESS, 38.9737, 66.4758)
                        .gives(NUMBER, "E. Just (1968), from memory, solved", a -> MartensiteHardness.justCarbon(a[0])),
                define("initial-hardness", "hardness of 100 % martensite of a low-alloy steel from its carbon")
                        .either("carbon", NUMBER, 0.001, 0.007)
                        .gives(HARDNESS, "ASTM A255, polynomial from memory", a -> MartensiteHardness.astmA255(a[0]),
                                b -> MartensiteHardness.astmA255(b[0])));
    }

    private static List<Calculation> tempering() {
        return List.of(
                define("tempering-parameter", "tempering parameter of Hollomon and Jaffe with the constant 20")
                        .rises("temperature", TEMPERATURE, COOLEST_TEMPER, HOTTEST_TEMPER)
                        .rises("hold", DURATION, SHORTEST_TEMPER, LONGEST_TEMPER)
                        .gives(TEMPERATURE_DIFFERENCE, TEMPERING,
                                a -> Tempering.parameter(a[0], a[1], Tempering.CONSTANT)),
                define("equivalent-temperature", "temperature at which another hold tempers as much")
                        .rises("temperature", TEMPERATURE, COOLEST_TEMPER, HOTTEST_TEMPER)
                        .rises("hold", DURATION, SHORTEST_TEMPER, LONGEST_TEMPER)
                        .falls("other-hold", DURATION, SHORTEST_TEMPER, LONGEST_TEMPER)
                        .gives(TEMPERATURE, TEMPERING,
                                a -> Tempering.equivalentTemperature(a[0], a[1], a[2], Tempering.CONSTANT)),
                define("equivalent-hold", "hold that tempers as much at another temperature")
                        .rises("temperature", TEMPERATURE, COOLEST_TEMPER, HOTTEST_TEMPER)
                        .rises("hold", DURATION, SHORTEST_TEMPER, LONGEST_TEMPER)
                        .falls("other-temperature", TEMPERATURE, COOLEST_TEMPER, HOTTEST_TEMPER)
                        .gives(DURATION, TEMPERING,
                                a -> Tempering.equivalentHold(a[0], a[1], a[2], Tempering.CONSTANT)),
                define("ramp-hold", "hold at temperature that a steady heating up to it is worth")
                        .rises("temperature", TEMPERATURE, COOLEST_TEMPER, HOTTEST_TEMPER)
                        .falls("rate", HEATING_RATE, 1 / HOUR, 10)
                        .gives(DURATION, "Kirkaldy's form of the Hollomon-Jaffe parameter, constant 20; published",
                                a -> Tempering.rampHold(a[0], a[1])),
                define("tempering-constant", "constant of the tempering parameter from the martensite's carbon")
                        .falls("carbon", NUMBER, 0.0025, 0.012)
                        .gives(NUMBER, "J. H. Hollomon and L. D. Jaffe (1945), line from memory",
                                a -> Tempering.constant(a[0])));
    }

    private static List<Calculation> diffusion() {
        return List.of(
                define("carbon-diffusivity", "diffusion coefficient of carbon in austenite")
                        .rises("temperature", TEMPERATURE, COOLEST_AUSTENITE, HOTTEST_AUSTENITE)
                        .gives(AREA_RATE, DIFFUSION, a -> CarbonDiffusion.diffusivity(a[0])),
                define("carbon-diffusion", "diffusion length of carbon in austenite")
                        .rises("temperature", TEMPERATURE, COOLEST_AUSTENITE, HOTTEST_AUSTENITE)
                        .rises("hold", DURATION, 0, 100 * HOUR)
                        .gives(LENGTH, DIFFUSION, a -> CarbonDiffusion.length(a[0], a[1])),
                define("decarburisation-bound", "depth below which at least nine tenths of the carbon stay, in air")
                        .rises("temperature", TEMPERATURE, COOLEST_AUSTENITE, HOTTEST_AUSTENITE)
                        .rises("hold", DURATION, 0, 100 * HOUR)
                        .gives(LENGTH, DIFFUSION, a -> CarbonDiffusion.decarburisationBound(a[0], a[1])));
    }

    private static List<Calculation> others() {
        return List.of(
                define("pren", "pitting resistance equivalent from chromium, molybdenum and nitrogen")
                        .rises("chromium", NUMBER, 0, 0.35).rises("molybdenum", NUMBER, 0, 0.08)
                        .rises("nitrogen", NUMBER, 0, 0.01)
                        .gives(NUMBER, "Cr + 3.3 Mo + 16 N, published; not meant to rank martensitic grades",
                                a -> Corrosion.pren(a[0], a[1], 0, a[2])),
                define("pren-tungsten", "pitting resistance equivalent of a grade with tungsten")
                        .rises("chromium", NUMBER, 0, 0.35).rises("molybdenum", NUMBER, 0, 0.08)
                        .rises("tungsten", NUMBER, 0, 0.05).rises("nitrogen", NUMBER, 0, 0.01)
                        .gives(NUMBER, "Cr + 3.3 (Mo + 0.5 W) + 16 N, published; not meant to rank martensitic grades",
                                a -> Corrosion.pren(a[0], a[1], a[2], a[3])),
                define("martensite-expansion", "growth in volume from austenite to martensite")
                        .falls("carbon", NUMBER, 0, 0.015)
                        .gives(NUMBER, "ASM Handbook 4, published; newer atomic volumes give one percentage point less",
                                a -> SizeChange.austeniteToMartensite(a[0])),
                define("hardening-growth", "growth in length from annealed to hardened with some retained austenite")
                        .rises("carbon", NUMBER, 0, 0.015).falls("retained", NUMBER, 0, 1)
                        .gives(NUMBER, "ASM Handbook 4, published, and B. S. Lement (1959), from memory",
                                a -> SizeChange.hardening(a[0], a[1])),
                define("grain-number", "ASTM grain size number from the mean intercept")
                        .falls("intercept", LENGTH, 1e-6, 1e-3)
                        .gives(NUMBER, "ASTM E112, from memory", a -> GrainSize.fromIntercept(a[0])),
                define("scale-loss", "depth of metal lost to scale from the oxygen taken up")
                        .rises("uptake", AREAL_MASS, 0, 10).falls("ratio", NUMBER, 1.2, 1.5)
                        .falls("density", DENSITY, 5000, 9000)
                        .gives(LENGTH, "Tetsu-to-Hagane 40 (1954) 592, relation published",
                                a -> ScaleLoss.depth(a[0], a[1], a[2])));
    }
}
