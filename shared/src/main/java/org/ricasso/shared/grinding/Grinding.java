package org.ricasso.shared.grinding;

import static org.ricasso.shared.calculation.Definition.define;
import static org.ricasso.shared.calculation.Measures.AREA_RATE;
import static org.ricasso.shared.calculation.Measures.FORCE;
import static org.ricasso.shared.calculation.Measures.FREQUENCY;
import static org.ricasso.shared.calculation.Measures.PRESSURE;
import static org.ricasso.shared.calculation.Measures.SPEED;
import static org.ricasso.shared.calculation.Measures.VOLUME;
import static org.ricasso.shared.calculation.Measures.VOLUME_RATE;
import static org.ricasso.shared.quantity.Measure.DURATION;
import static org.ricasso.shared.quantity.Measure.LENGTH;
import static org.ricasso.shared.quantity.Measure.NUMBER;

import java.util.List;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.calculation.Calculations;

/** The calculations on grinding that the language can call. */
public final class Grinding implements Calculations {
    private static final String DEFINITION = "definition";
    private static final String REMOVAL = "M. P. Groover, Fundamentals of Modern Manufacturing, grinding, published";

    @Override
    public List<Calculation> calculations() {
        return List.of(
                define("wheel-speed", "peripheral speed of a wheel; the limit marked on the wheel comes first")
                        .rises("diameter", LENGTH, 0, 2).rises("turns", FREQUENCY, 0, 2000)
                        .gives(SPEED, DEFINITION, a -> WheelGrinding.speed(a[0], a[1])),
                define("wheel-turns", "turns per time at which a wheel reaches a peripheral speed")
                        .rises("speed", SPEED, 0, 500).falls("diameter", LENGTH, 1e-3, 2)
                        .gives(FREQUENCY, DEFINITION, a -> WheelGrinding.turns(a[0], a[1])),
                define("specific-removal", "removal rate per width of cut")
                        .rises("depth", LENGTH, 0, 0.02).rises("feed", SPEED, 0, 10)
                        .gives(AREA_RATE, REMOVAL, a -> WheelGrinding.specificRemoval(a[0], a[1])),
                define("removal-rate", "volume removed per time")
                        .rises("depth", LENGTH, 0, 0.02).rises("feed", SPEED, 0, 10).rises("width", LENGTH, 0, 1)
                        .gives(VOLUME_RATE, REMOVAL, a -> WheelGrinding.removal(a[0], a[1], a[2])),
                define("grinding-time", "time in the cut for a volume")
                        .rises("volume", VOLUME, 0, 1e-3).falls("specific-removal", AREA_RATE, 1e-8, 1e-3)
                        .falls("width", LENGTH, 1e-4, 1)
                        .gives(DURATION, DEFINITION, a -> WheelGrinding.time(a[0], a[1], a[2])),
                define("wheel-wear", "volume of wheel worn by a volume of steel, without dressing")
                        .rises("volume", VOLUME, 0, 1).falls("grinding-ratio", NUMBER, 0.1, 1e5)
                        .gives(VOLUME, DEFINITION, a -> WheelGrinding.wear(a[0], a[1])),
                define("grinding-energy", "energy per volume removed")
                        .rises("force", FORCE, 0, 1e5).rises("speed", SPEED, 0, 500)
                        .falls("removal", VOLUME_RATE, 1e-12, 1e-3)
                        .gives(PRESSURE, REMOVAL, a -> WheelGrinding.specificEnergy(a[0], a[1], a[2])),
                define("burn-threshold", "energy per volume above which ground steel burns")
                        .rises("diameter", LENGTH, 0.01, 2).falls("depth", LENGTH, 1e-6, 0.01).falls("feed", SPEED, 1e-3, 10)
                        .gives(PRESSURE, "form of S. Malkin, constants from memory",
                                a -> WheelGrinding.burnThreshold(a[0], a[1], a[2])));
    }
}
