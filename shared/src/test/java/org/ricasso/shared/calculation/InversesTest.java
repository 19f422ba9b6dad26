package org.ricasso.shared.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.ricasso.shared.forging.Stock;
import org.ricasso.shared.geometry.AngleSetting;
import org.ricasso.shared.geometry.EdgeBevel;
import org.ricasso.shared.geometry.Flank;
import org.ricasso.shared.geometry.Scallop;
import org.ricasso.shared.grinding.WheelGrinding;
import org.ricasso.shared.heat.AirCooling;
import org.ricasso.shared.heat.LumpedBody;
import org.ricasso.shared.metallurgy.MartensiteHardness;
import org.ricasso.shared.metallurgy.RetainedAustenite;
import org.ricasso.shared.metallurgy.Tempering;
import org.ricasso.shared.quality.AttributeSample;

/** What one calculation does, its inverse undoes; and two ways to one value meet. */
class InversesTest {

    /** A value from two shares of 0..1, and the way there and back. */
    private interface RoundTrip {
        double[] of(double a, double b);
    }

    static Stream<Arguments> roundTrips() {
        return Stream.of(
                trip("bevel height and angle", (a, b) -> {
                    double angle = 0.1 + 0.6 * a;
                    double behind = 1e-4 + 1e-3 * b;
                    return pair(angle, EdgeBevel.angle(behind, EdgeBevel.height(behind, angle)));
                }),
                trip("chord and depth of a scallop", (a, b) -> {
                    double radius = 0.01 + 0.2 * a;
                    double depth = radius * b;
                    return pair(depth, Scallop.depth(radius, Scallop.chord(radius, depth)));
                }),
                trip("wheel jig", (a, b) -> {
                    double radius = 0.05 + 0.1 * a;
                    double angle = 0.05 + 0.8 * b;
                    return pair(angle, AngleSetting.wheelJigAngle(radius, 0.14,
                            AngleSetting.wheelJigDistance(radius, 0.14, angle)));
                }),
                trip("flank angle and thickness", (a, b) -> {
                    double spine = 2e-3 + 2e-3 * a;
                    double at = 0.045 * b;
                    return pair(Flank.thickness(spine, 3e-4, 0.045, at),
                            3e-4 + 2 * at * StrictMath.tan(Flank.angle(spine, 3e-4, 0.045)));
                }),
                trip("tempers", (a, b) -> {
                    double hold = 60 + 1e4 * a;
                    double other = 420 + 100 * b;
                    double there = Tempering.equivalentHold(453, hold, other, 20);
                    return pair(453, Tempering.equivalentTemperature(other, there, hold, 20));
                }),
                trip("parameter and hold", (a, b) -> {
                    double temperature = 400 + 300 * a;
                    double hold = 1 + 1e5 * b;
                    return pair(hold, Tempering.holdFor(Tempering.parameter(temperature, hold, 20), temperature, 20));
                }),
                trip("retained austenite", (a, b) -> {
                    double coldest = 200 + 200 * a;
                    double start = coldest + 300 * b;
                    return pair(coldest,
                            RetainedAustenite.coldestFor(start, RetainedAustenite.fraction(start, coldest)));
                }),
                trip("hardness of martensite", (a, b) -> {
                    double carbon = 0.001 + 0.005 * a;
                    return pair(carbon, MartensiteHardness.justCarbon(MartensiteHardness.just(carbon)));
                }),
                trip("wheel speed", (a, b) -> {
                    double turns = 1 + 100 * a;
                    double diameter = 0.1 + b;
                    return pair(turns, WheelGrinding.turns(WheelGrinding.speed(diameter, turns), diameter));
                }),
                trip("removal and grinding time", (a, b) -> {
                    double volume = 1e-6 * (0.1 + a);
                    double rate = WheelGrinding.specificRemoval(2e-5, 0.1 + b);
                    double time = WheelGrinding.time(volume, rate, 0.04);
                    return pair(volume, time * WheelGrinding.removal(2e-5, 0.1 + b, 0.04));
                }),
                trip("bar", (a, b) -> {
                    double mass = 0.1 + a;
                    return pair(mass, Stock.billetMass(Stock.barLength(mass, 2e-4, 7700) * 2e-4, 0, 0, 0, 7700));
                }),
                trip("air cooling", (a, b) -> {
                    AirCooling air = new AirCooling(10, 0.8, 293, 1e-3 + 3e-3 * a, 7700, 600);
                    double to = 300 + 900 * b;
                    return pair(to, air.temperature(1323, air.time(1323, to)));
                }),
                trip("air cooling without radiation is the lumped body", (a, b) -> {
                    double to = 300 + 900 * b;
                    return pair(LumpedBody.coolingTime(2e-3, 50 + 100 * a, 7700, 600, 1323, to, 293),
                            new AirCooling(50 + 100 * a, 0, 293, 2e-3, 7700, 600).time(1323, to));
                }),
                trip("heating by radiation, closed form and small steps", (a, b) -> {
                    double to = 400 + 800 * a;
                    double sum = 0;
                    int steps = 2000;
                    for (int i = 0; i < steps; i++) {
                        double temperature = 293 + (to - 293) * (i + 0.5) / steps;
                        sum += (to - 293) / steps * 7700 * 460 * 1e-3
                                / (LumpedBody.radiativeCoefficient(0.8, temperature, 1323) * (1323 - temperature));
                    }
                    double closed = LumpedBody.radiantHeatingTime(2e-3, 0.8, 1323, 293, to, 7700, 460);
                    return new double[] {closed, sum, 1e-6};
                }),
                trip("acceptance at nought and detection", (a, b) -> {
                    double sample = 1 + StrictMath.rint(200 * a);
                    return pair(1 - AttributeSample.acceptance(sample, 0, b), AttributeSample.detection(sample, b));
                }),
                trip("smallest sample", (a, b) -> {
                    double bad = 0.01 + 0.5 * a;
                    double chance = 0.05 + 0.9 * b;
                    double sample = AttributeSample.sampleFor(bad, chance);
                    boolean enough = AttributeSample.detection(sample, bad) >= chance - 1e-9;
                    boolean fewer = sample == 1 || AttributeSample.detection(sample - 1, bad) < chance;
                    return pair(1, enough && fewer ? 1 : 0);
                }));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("roundTrips")
    void thereAndBack(String name, RoundTrip trip) {
        Random random = new Random(17);
        for (int i = 0; i < 300; i++) {
            double[] values = trip.of(random.nextDouble(), random.nextDouble());
            double tolerance = values.length > 2 ? values[2] : 1e-9;
            assertThat(Math.abs(values[0] - values[1])).as("%s: %s and %s", name, values[0], values[1])
                    .isLessThanOrEqualTo(tolerance * Math.max(1e-3, Math.abs(values[0])));
        }
    }

    private static Arguments trip(String name, RoundTrip trip) {
        return Arguments.of(name, trip);
    }

    private static double[] pair(double there, double back) {
        return new double[] {there, back};
    }
}
