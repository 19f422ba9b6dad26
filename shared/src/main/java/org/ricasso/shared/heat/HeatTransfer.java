package org.ricasso.shared.heat;

import static org.ricasso.shared.calculation.Definition.define;
import static org.ricasso.shared.calculation.Measures.CONDUCTIVITY;
import static org.ricasso.shared.calculation.Measures.DENSITY;
import static org.ricasso.shared.calculation.Measures.ENERGY;
import static org.ricasso.shared.calculation.Measures.EXPANSION;
import static org.ricasso.shared.calculation.Measures.HEAT_TRANSFER;
import static org.ricasso.shared.calculation.Measures.POWER;
import static org.ricasso.shared.calculation.Measures.PRESSURE;
import static org.ricasso.shared.calculation.Measures.SPECIFIC_HEAT;
import static org.ricasso.shared.quantity.Measure.DURATION;
import static org.ricasso.shared.quantity.Measure.LENGTH;
import static org.ricasso.shared.quantity.Measure.MASS;
import static org.ricasso.shared.quantity.Measure.NUMBER;
import static org.ricasso.shared.quantity.Measure.TEMPERATURE;
import static org.ricasso.shared.quantity.Measure.TEMPERATURE_DIFFERENCE;

import java.util.List;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.calculation.Calculations;
import org.ricasso.shared.calculation.Definition;

/** The calculations on heat that the language can call. */
public final class HeatTransfer implements Calculations {
    private static final String LUMPED = "lumped body, holds while the Biot number is below 0.1;"
            + " F. P. Incropera and D. P. DeWitt, chapter 5, published";
    private static final String DEFINITION = "definition";
    private static final double COLD = 77;
    private static final double HOT = 1600;
    private static final double LEAST_THICKNESS = 1e-4;
    private static final double MOST_THICKNESS = 0.05;

    @Override
    public List<Calculation> calculations() {
        return List.of(
                define("biot-number", "Biot number of a plate cooled on both faces; below 0.1 it has one temperature")
                        .rises("coefficient", HEAT_TRANSFER, 0, 1e5).rises("thickness", LENGTH, 0, 0.5)
                        .falls("conductivity", CONDUCTIVITY, 0.1, 500)
                        .gives(NUMBER, DEFINITION, a -> LumpedBody.biot(a[0], a[1], a[2])),
                define("radiative-coefficient", "heat transfer coefficient by radiation between surface and surroundings")
                        .rises("emissivity", NUMBER, 0, 1).rises("surface", TEMPERATURE, COLD, HOT)
                        .rises("surroundings", TEMPERATURE, COLD, HOT)
                        .gives(HEAT_TRANSFER, DEFINITION, a -> LumpedBody.radiativeCoefficient(a[0], a[1], a[2])),
                steel(define("cooling-time", "time of a thin blade to cool in a medium with a constant coefficient"))
                        .falls("coefficient", HEAT_TRANSFER, 1, 1e4).rises("from", TEMPERATURE, COLD, HOT)
                        .falls("to", TEMPERATURE, COLD, HOT).rises("medium", TEMPERATURE, COLD, 1000)
                        .gives(DURATION, LUMPED,
                                a -> LumpedBody.coolingTime(a[0], a[3], a[1], a[2], a[4], a[5], a[6])),
                steel(define("radiant-heating-time", "time of a thin blade to heat by radiation in a furnace"))
                        .falls("emissivity", NUMBER, 0.01, 1).falls("furnace", TEMPERATURE, 300, HOT)
                        .falls("from", TEMPERATURE, COLD, HOT).rises("to", TEMPERATURE, COLD, HOT)
                        .gives(DURATION, LUMPED,
                                a -> LumpedBody.radiantHeatingTime(a[0], a[3], a[4], a[5], a[6], a[1], a[2])),
                air(steel(define("air-cooling-time", "time of a thin blade to cool in still or moving gas")))
                        .rises("from", TEMPERATURE, COLD, HOT).falls("to", TEMPERATURE, COLD, HOT)
                        .rises("surroundings", TEMPERATURE, COLD, 600)
                        .gives(DURATION, LUMPED, a -> cooling(a).time(a[5], a[6])),
                air(steel(define("air-cooled", "temperature of a thin blade after a time in still or moving gas")))
                        .rises("from", TEMPERATURE, 373.15, HOT).falls("time", DURATION, 0, 600)
                        .rises("surroundings", TEMPERATURE, COLD, 353.15)
                        .gives(TEMPERATURE, LUMPED, a -> cooling(a).temperature(a[5], a[6])),
                define("thermal-expansion", "growth in length by a rise in temperature")
                        .rises("length", LENGTH, 0, 10).rises("coefficient", EXPANSION, 0, 1e-3)
                        .rises("rise", TEMPERATURE_DIFFERENCE, 0, HOT)
                        .gives(LENGTH, DEFINITION, a -> ThermalMovement.expansion(a[0], a[1], a[2])),
                define("bow", "bow of a blade that cools faster on one side")
                        .rises("coefficient", EXPANSION, 0, 1e-3).rises("difference", TEMPERATURE_DIFFERENCE, 0, HOT)
                        .falls("thickness", LENGTH, LEAST_THICKNESS, MOST_THICKNESS).rises("length", LENGTH, 0, 1)
                        .gives(LENGTH, "plain geometry of a circular arc, flat bows",
                                a -> ThermalMovement.bow(a[0], a[1], a[2], a[3])),
                define("thermal-mismatch", "how much more the first of two joined parts grows than the second")
                        .either("first", EXPANSION, 0, 1e-3).either("second", EXPANSION, 0, 1e-3)
                        .either("length", LENGTH, 0, 1).either("rise", TEMPERATURE_DIFFERENCE, -300, 300)
                        .givesAtCorners(LENGTH, DEFINITION, a -> ThermalMovement.mismatch(a[0], a[1], a[2], a[3])),
                define("elastic-radius", "least radius a blade can be bent to and still spring back flat")
                        .rises("thickness", LENGTH, LEAST_THICKNESS, MOST_THICKNESS).rises("modulus", PRESSURE, 1e8, 1e12)
                        .falls("yield", PRESSURE, 1e6, 5e9)
                        .gives(LENGTH, "beam theory, exact for a thin strip",
                                a -> ThermalMovement.elasticRadius(a[0], a[1], a[2])),
                define("heat-needed", "energy to heat a load, racks included")
                        .rises("mass", MASS, 0, 1e6).rises("specific-heat", SPECIFIC_HEAT, 0, 5000)
                        .rises("rise", TEMPERATURE_DIFFERENCE, 0, HOT).falls("efficiency", NUMBER, 0.01, 1)
                        .gives(ENERGY, DEFINITION, a -> Heating.energy(a[0], a[1], a[2], a[3])),
                define("heating-power", "power to heat a piece within a time")
                        .rises("mass", MASS, 0, 1e6).rises("specific-heat", SPECIFIC_HEAT, 0, 5000)
                        .rises("rise", TEMPERATURE_DIFFERENCE, 0, HOT).falls("time", DURATION, 0.01, 1e6)
                        .falls("efficiency", NUMBER, 0.01, 1)
                        .gives(POWER, DEFINITION, a -> Heating.power(a[0], a[1], a[2], a[3], a[4])));
    }

    private static Definition steel(Definition definition) {
        return definition.rises("thickness", LENGTH, LEAST_THICKNESS, MOST_THICKNESS)
                .rises("density", DENSITY, 1000, 2e4).rises("specific-heat", SPECIFIC_HEAT, 100, 2000);
    }

    private static Definition air(Definition definition) {
        return definition.falls("convection", HEAT_TRANSFER, 1, 1000).falls("emissivity", NUMBER, 0, 1);
    }

    private static AirCooling cooling(double[] a) {
        return new AirCooling(a[3], a[4], a[7], a[0], a[1], a[2]);
    }
}
