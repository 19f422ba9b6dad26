package org.ricasso.shared.forging;

import static org.ricasso.shared.calculation.Definition.define;
import static org.ricasso.shared.calculation.Measures.AREA;
import static org.ricasso.shared.calculation.Measures.DENSITY;
import static org.ricasso.shared.calculation.Measures.FORCE;
import static org.ricasso.shared.calculation.Measures.PRESSURE;
import static org.ricasso.shared.calculation.Measures.VOLUME;
import static org.ricasso.shared.quantity.Measure.LENGTH;
import static org.ricasso.shared.quantity.Measure.MASS;
import static org.ricasso.shared.quantity.Measure.NUMBER;

import java.util.List;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.calculation.Calculations;
import org.ricasso.shared.calculation.Definition;

/** The calculations on forging that the language can call. */
public final class Forging implements Calculations {
    private static final String UPSETTING =
            "M. P. Groover, Fundamentals of Modern Manufacturing, problems 19.14 and 19.15, published";

    @Override
    public List<Calculation> calculations() {
        return List.of(
                define("billet-mass", "mass of the billet for a forging with flash, tong hold and scale")
                        .rises("part", VOLUME, 0, 0.1).rises("flash", NUMBER, 0, 2).rises("tong", VOLUME, 0, 0.1)
                        .rises("scale", NUMBER, 0, 0.2).rises("density", DENSITY, 1000, 2e4)
                        .gives(MASS, "balance of volumes", a -> Stock.billetMass(a[0], a[1], a[2], a[3], a[4])),
                define("bar-length", "length of bar with this mass and cross-section")
                        .rises("mass", MASS, 0, 1000).falls("area", AREA, 1e-6, 0.1).falls("density", DENSITY, 1000, 2e4)
                        .gives(LENGTH, "balance of volumes", a -> Stock.barLength(a[0], a[1], a[2])),
                cylinder(define("upset-force", "force to upset a cylinder that hardens as it is worked"))
                        .rises("strength", PRESSURE, 0, 5e9).either("hardening", NUMBER, 0, 0.6)
                        .rises("friction", NUMBER, 0, 1)
                        .givesAtCorners(FORCE, UPSETTING, a -> Upsetting.force(a[0], a[1], a[2], a[3], a[4], a[5])),
                cylinder(define("hot-upset-force", "force to upset a cylinder at a known flow stress"))
                        .rises("flow-stress", PRESSURE, 0, 5e9).rises("friction", NUMBER, 0, 1)
                        .gives(FORCE, UPSETTING, a -> Upsetting.force(a[0], a[1], a[2], a[3], a[4])),
                define("closed-die-load", "load of a closed die from projected area and shape factor")
                        .rises("area", AREA, 0, 1).rises("flow-stress", PRESSURE, 0, 5e9).rises("factor", NUMBER, 1, 15)
                        .gives(FORCE, "usual estimate; the shape factor is from memory",
                                a -> Upsetting.closedDieLoad(a[0], a[1], a[2])));
    }

    private static Definition cylinder(Definition definition) {
        return definition.rises("diameter", LENGTH, 1e-3, 1).rises("height", LENGTH, 1e-3, 1)
                .falls("to", LENGTH, 1e-3, 1);
    }
}
