package org.ricasso.shared.blanking;

import static org.ricasso.shared.calculation.Definition.define;
import static org.ricasso.shared.calculation.Measures.DENSITY;
import static org.ricasso.shared.calculation.Measures.FORCE;
import static org.ricasso.shared.calculation.Measures.POWER;
import static org.ricasso.shared.calculation.Measures.PRESSURE;
import static org.ricasso.shared.calculation.Measures.SPECIFIC_ENERGY;
import static org.ricasso.shared.calculation.Measures.SPEED;
import static org.ricasso.shared.quantity.Measure.DURATION;
import static org.ricasso.shared.quantity.Measure.LENGTH;
import static org.ricasso.shared.quantity.Measure.NUMBER;

import java.util.List;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.calculation.Calculations;

/** The calculations on cutting blanks that the language can call. */
public final class Blanking implements Calculations {
    private static final String PRESS = "M. P. Groover, Fundamentals of Modern Manufacturing, sheet metal, published";
    private static final double THICK = 0.02;

    @Override
    public List<Calculation> calculations() {
        return List.of(
                define("blanking-force", "force to cut a whole perimeter at once, without shear on the tool")
                        .rises("perimeter", LENGTH, 0, 10).rises("thickness", LENGTH, 0, THICK)
                        .rises("shear-strength", PRESSURE, 0, 2e9)
                        .gives(FORCE, PRESS, a -> PressCutting.force(a[0], a[1], a[2])),
                define("blanking-clearance", "clearance on each side between punch and die")
                        .rises("thickness", LENGTH, 0, THICK).rises("allowance", NUMBER, 0, 0.2)
                        .gives(LENGTH, PRESS, a -> PressCutting.clearance(a[0], a[1])),
                define("punch-diameter", "punch for a blank; the die has the blank's size")
                        .rises("blank", LENGTH, 1e-3, 1).falls("thickness", LENGTH, 0, THICK)
                        .falls("allowance", NUMBER, 0, 0.2)
                        .gives(LENGTH, PRESS, a -> PressCutting.punch(a[0], a[1], a[2])),
                define("die-diameter", "die for a hole; the punch has the hole's size")
                        .rises("hole", LENGTH, 1e-3, 1).rises("thickness", LENGTH, 0, THICK)
                        .rises("allowance", NUMBER, 0, 0.2)
                        .gives(LENGTH, PRESS, a -> PressCutting.die(a[0], a[1], a[2])),
                define("strip-pitch", "pitch of parts along a strip with the usual bridge")
                        .rises("part", LENGTH, 1e-3, 1).rises("thickness", LENGTH, 0.8e-3, THICK)
                        .gives(LENGTH, "course notes on tool design, strip layout, published",
                                a -> PressCutting.stripPitch(a[0], a[1])),
                define("laser-cutting-time", "time to cut a length with pierces and moves")
                        .rises("length", LENGTH, 0, 1000).falls("speed", SPEED, 1e-4, 10)
                        .rises("pierces", NUMBER, 0, 1e4).rises("pierce-time", DURATION, 0, 60)
                        .rises("moves", NUMBER, 0, 1e4).rises("move-time", DURATION, 0, 60)
                        .gives(DURATION, "sum of times", a -> LaserCutting.time(a[0], a[1], a[2], a[3], a[4], a[5])),
                define("laser-cutting-speed", "cutting speed by energy balance, a lower bound")
                        .rises("power", POWER, 0, 1e5).rises("coupling", NUMBER, 0, 1).falls("density", DENSITY, 1000, 2e4)
                        .falls("melting", SPECIFIC_ENERGY, 1e5, 1e7).falls("kerf", LENGTH, 1e-5, 2e-3)
                        .falls("thickness", LENGTH, 1e-4, THICK)
                        .gives(SPEED, "energy balance, published; energy to melt and coupling from memory",
                                a -> LaserCutting.speed(a[0], a[1], a[2], a[3], a[4], a[5])));
    }
}
