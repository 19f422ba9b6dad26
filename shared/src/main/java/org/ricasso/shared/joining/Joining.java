package org.ricasso.shared.joining;

import static org.ricasso.shared.calculation.Definition.define;
import static org.ricasso.shared.calculation.Measures.ENERGY;
import static org.ricasso.shared.calculation.Measures.FORCE;
import static org.ricasso.shared.calculation.Measures.LINE_ENERGY;
import static org.ricasso.shared.calculation.Measures.PRESSURE;
import static org.ricasso.shared.calculation.Measures.RESISTANCE;
import static org.ricasso.shared.calculation.Measures.SPEED;
import static org.ricasso.shared.calculation.Measures.VOLTAGE;
import static org.ricasso.shared.quantity.Measure.CURRENT;
import static org.ricasso.shared.quantity.Measure.DURATION;
import static org.ricasso.shared.quantity.Measure.LENGTH;
import static org.ricasso.shared.quantity.Measure.NUMBER;

import java.util.List;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.calculation.Calculations;

/** The calculations on joints that the language can call. */
public final class Joining implements Calculations {
    private static final String DEFINITION = "definition";
    private static final double LARGEST = 0.05;

    @Override
    public List<Calculation> calculations() {
        return List.of(
                define("grip", "clamped thickness of a full tang handle under the two heads of a rivet")
                        .rises("scale", LENGTH, 0, LARGEST).falls("counterbore", LENGTH, 0, LARGEST)
                        .rises("tang", LENGTH, 0, LARGEST)
                        .gives(LENGTH, "plain geometry, exact", a -> Rivet.grip(a[0], a[1], a[2])),
                define("rivet-length", "length of a solid rivet before its head is formed")
                        .rises("grip", LENGTH, 0, 0.2).rises("diameter", LENGTH, 0, LARGEST)
                        .gives(LENGTH, "NAVEDTRA 14018, riveting, published", a -> Rivet.solidLength(a[0], a[1])),
                define("rivet-pull-out", "greatest pull a pressed two-part rivet can resist, an upper bound")
                        .rises("yield", PRESSURE, 0, 3e9).rises("outside", LENGTH, 1e-3, LARGEST)
                        .falls("bore", LENGTH, 5e-4, LARGEST).rises("friction", NUMBER, 0, 1)
                        .rises("shank", LENGTH, 0, LARGEST).rises("engaged", LENGTH, 0, 0.1)
                        .gives(FORCE, "tube fully plastic by Tresca, exact for that case",
                                a -> Rivet.pullOut(a[0], a[1], a[2], a[3], a[4], a[5])),
                define("head-limit", "force that a rivet's head may press on a scale")
                        .rises("strength", PRESSURE, 0, 3e9).rises("head", LENGTH, 0, LARGEST)
                        .falls("hole", LENGTH, 0, LARGEST)
                        .gives(FORCE, DEFINITION, a -> Rivet.headLimit(a[0], a[1], a[2])),
                define("rivet-shear", "shear load of rivets, each in one section")
                        .rises("rivets", NUMBER, 0, 1000).rises("diameter", LENGTH, 0, LARGEST)
                        .rises("shear-strength", PRESSURE, 0, 3e9)
                        .gives(FORCE, "textbook formula; examination question, published",
                                a -> Rivet.shear(a[0], a[1], a[2])),
                define("wood-movement", "change in width of wood across the grain by moisture")
                        .rises("width", LENGTH, 0, 1).rises("coefficient", NUMBER, 0, 0.01).rises("change", NUMBER, 0, 0.3)
                        .gives(LENGTH, "USDA Wood Handbook GTR-190, table 13-5, published; 6 to 14 % moisture",
                                a -> HandleMaterial.woodMovement(a[0], a[1], a[2])),
                define("glue-peak", "peak over mean shear stress along a glued lap of equal parts")
                        .rises("shear-modulus", PRESSURE, 1e5, 1e10).falls("layer", LENGTH, 1e-5, 5e-3)
                        .falls("modulus", PRESSURE, 1e8, 1e12).falls("thickness", LENGTH, 1e-4, LARGEST)
                        .rises("overlap", LENGTH, 0, 0.5)
                        .gives(NUMBER, "O. Volkersen, textbook formula from memory",
                                a -> HandleMaterial.gluePeak(a[0], a[1], a[2], a[3], a[4])),
                define("resistance-heat", "heat of a resistance weld")
                        .rises("current", CURRENT, 0, 1e6).rises("resistance", RESISTANCE, 0, 1).rises("time", DURATION, 0, 100)
                        .gives(ENERGY, DEFINITION, a -> Welding.resistanceHeat(a[0], a[1], a[2])),
                define("arc-heat", "heat input of an arc weld per length")
                        .rises("voltage", VOLTAGE, 0, 200).rises("current", CURRENT, 0, 2000)
                        .rises("efficiency", NUMBER, 0, 1).falls("speed", SPEED, 1e-5, 1)
                        .gives(LINE_ENERGY, DEFINITION, a -> Welding.arcHeat(a[0], a[1], a[2], a[3])));
    }
}
