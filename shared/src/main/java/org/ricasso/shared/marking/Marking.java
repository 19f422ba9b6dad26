package org.ricasso.shared.marking;

import static org.ricasso.shared.calculation.Definition.define;
import static org.ricasso.shared.calculation.Measures.AREA;
import static org.ricasso.shared.calculation.Measures.AREA_ENERGY;
import static org.ricasso.shared.calculation.Measures.DENSITY;
import static org.ricasso.shared.calculation.Measures.ENERGY;
import static org.ricasso.shared.calculation.Measures.FREQUENCY;
import static org.ricasso.shared.calculation.Measures.LINE_ENERGY;
import static org.ricasso.shared.calculation.Measures.POWER;
import static org.ricasso.shared.calculation.Measures.SPEED;
import static org.ricasso.shared.quantity.Measure.CURRENT;
import static org.ricasso.shared.quantity.Measure.DURATION;
import static org.ricasso.shared.quantity.Measure.LENGTH;
import static org.ricasso.shared.quantity.Measure.NUMBER;

import java.util.List;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.calculation.Calculations;

/** The calculations on marking that the language can call. */
public final class Marking implements Calculations {
    private static final String DEFINITION = "definition";

    @Override
    public List<Calculation> calculations() {
        return List.of(
                define("etch-depth", "depth of a mark etched by direct current; not for alternating current")
                        .rises("current", CURRENT, 0, 1000).rises("time", DURATION, 0, 3600)
                        .rises("efficiency", NUMBER, 0, 1).falls("area", AREA, 1e-7, 0.1)
                        .falls("density", DENSITY, 5000, 9000)
                        .gives(LENGTH, "Faraday's law, steel taken as iron of valence 2 (0.2894 mg/C, published);"
                                + " the current efficiency is the works' own",
                                a -> Electrolysis.depth(a[0], a[1], a[2], a[3], a[4])),
                define("pulse-energy", "energy of a laser pulse")
                        .rises("power", POWER, 0, 1e4).falls("frequency", FREQUENCY, 1, 1e8)
                        .gives(ENERGY, DEFINITION, a -> LaserMark.pulseEnergy(a[0], a[1])),
                define("pulse-overlap", "share of a laser spot that the next pulse covers again")
                        .falls("speed", SPEED, 0, 100).rises("frequency", FREQUENCY, 1, 1e8)
                        .rises("spot", LENGTH, 1e-6, 1e-2)
                        .gives(NUMBER, DEFINITION, a -> LaserMark.pulseOverlap(a[0], a[1], a[2])),
                define("line-energy", "energy per length of a laser line or weld")
                        .rises("power", POWER, 0, 1e5).falls("speed", SPEED, 1e-5, 100)
                        .gives(LINE_ENERGY, DEFINITION, a -> LaserMark.lineEnergy(a[0], a[1])),
                define("area-energy", "energy per area of a laser mark with parallel lines")
                        .rises("power", POWER, 0, 1e5).falls("speed", SPEED, 1e-5, 100).falls("hatch", LENGTH, 1e-6, 1e-2)
                        .gives(AREA_ENERGY, DEFINITION, a -> LaserMark.areaEnergy(a[0], a[1], a[2])));
    }
}
