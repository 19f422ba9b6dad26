package org.ricasso.shared.geometry;

import static org.ricasso.shared.calculation.Definition.define;
import static org.ricasso.shared.calculation.Measures.AREA;
import static org.ricasso.shared.calculation.Measures.VOLUME;
import static org.ricasso.shared.quantity.Measure.ANGLE;
import static org.ricasso.shared.quantity.Measure.LENGTH;
import static org.ricasso.shared.quantity.Measure.NUMBER;

import java.util.List;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.calculation.Calculations;

/** The calculations on the shape of a blade that the language can call. */
public final class BladeGeometry implements Calculations {
    private static final String EXACT = "plain geometry, exact";
    private static final String POWER_LAW = "plain geometry of a power-law outline, exact for it; checked by Simpson's rule";
    private static final double THICK = 0.02;
    private static final double HIGH = 0.2;
    private static final double LONG = 0.6;
    private static final double SHALLOW = StrictMath.toRadians(2);
    private static final double STEEP = StrictMath.toRadians(60);

    @Override
    public List<Calculation> calculations() {
        return List.of(flankThickness(), thicknessAboveEdge(), flankAngle(), sectionArea(), hollowThickness(),
                define("bevel-height", "height of an edge bevel along the blade, from the thickness behind the edge")
                        .rises("behind", LENGTH, 0, THICK).falls("each-side", ANGLE, SHALLOW, STEEP)
                        .gives(LENGTH, EXACT, a -> EdgeBevel.height(a[0], a[1])),
                define("bevel-width", "width of the face of an edge bevel, from the thickness behind the edge")
                        .rises("behind", LENGTH, 0, THICK).falls("each-side", ANGLE, SHALLOW, STEEP)
                        .gives(LENGTH, EXACT, a -> EdgeBevel.width(a[0], a[1])),
                define("bevel-angle", "angle on each side of an edge bevel of known height")
                        .rises("behind", LENGTH, 0, THICK).falls("height", LENGTH, 1e-6, 0.05)
                        .gives(ANGLE, EXACT, a -> EdgeBevel.angle(a[0], a[1])),
                define("first-sharpening", "cross-section taken off by the first sharpening of a blunt edge")
                        .rises("behind", LENGTH, 0, THICK).falls("each-side", ANGLE, SHALLOW, STEEP)
                        .gives(AREA, EXACT, a -> EdgeBevel.firstSharpening(a[0], a[1])),
                define("scallop-chord", "chord of a circular hollow of known depth")
                        .rises("radius", LENGTH, 1e-3, 1).rises("depth", LENGTH, 0, 0.05)
                        .givesAtCorners(LENGTH, EXACT, a -> Scallop.chord(a[0], a[1])),
                define("scallop-depth", "depth of a circular hollow of known chord; also of a serration of known pitch")
                        .falls("radius", LENGTH, 1e-3, 1).rises("chord", LENGTH, 0, 0.1)
                        .gives(LENGTH, EXACT, a -> Scallop.depth(a[0], a[1])),
                define("serrated-length", "length of an edge of circular serrations over that of a straight edge")
                        .falls("radius", LENGTH, 1e-4, 0.1).rises("pitch", LENGTH, 1e-4, 0.1)
                        .gives(NUMBER, EXACT, a -> Scallop.serratedLength(a[0], a[1])),
                wheelJigDistance(), wheelJigAngle(),
                define("twin-wheel-distance", "centre distance of two equal interlocking wheels for an edge angle")
                        .rises("radius", LENGTH, 5e-3, 0.5).falls("each-side", ANGLE, SHALLOW, STEEP)
                        .gives(LENGTH, EXACT, a -> AngleSetting.twinWheelDistance(a[0], a[1])),
                define("stone-spine-height", "height of the spine's middle above a flat stone for an edge angle")
                        .rises("height", LENGTH, 1e-3, HIGH).rises("each-side", ANGLE, SHALLOW, STEEP)
                        .gives(LENGTH, EXACT, a -> AngleSetting.stoneSpineHeight(a[0], a[1])),
                define("guided-rod-height", "height of a guided rod's pivot above the edge for an edge angle")
                        .rises("reach", LENGTH, 1e-2, 1).rises("each-side", ANGLE, SHALLOW, STEEP)
                        .gives(LENGTH, "plain geometry; a sharpening fixture's note (2017) gives the same",
                                a -> AngleSetting.guidedRodHeight(a[0], a[1])),
                define("profile-area", "area of a blade's outline from heel height, length and fullness")
                        .rises("height", LENGTH, 0, HIGH).rises("length", LENGTH, 0, LONG).rises("fullness", NUMBER, 1, 50)
                        .gives(AREA, POWER_LAW, a -> BladeBody.profileArea(a[0], a[1], a[2])),
                define("profile-centroid", "distance of the centroid of a blade's outline from the heel")
                        .rises("length", LENGTH, 0, LONG).rises("fullness", NUMBER, 1, 50)
                        .gives(LENGTH, POWER_LAW, a -> BladeBody.profileCentroid(a[0], a[1])),
                define("blade-volume", "volume of a full flat ground blade that tapers from heel to tip")
                        .rises("height", LENGTH, 0, HIGH).rises("length", LENGTH, 0, LONG).rises("fullness", NUMBER, 1, 50)
                        .rises("heel", LENGTH, 1e-4, THICK).rises("tip", LENGTH, 0, THICK).rises("behind", LENGTH, 0, THICK)
                        .givesAtCorners(VOLUME, POWER_LAW, a -> BladeBody.volume(a[0], a[1], a[2], a[3], a[4], a[5])),
                define("blade-centre", "distance of a full flat ground blade's centre of mass in front of the heel")
                        .rises("length", LENGTH, 0, LONG).rises("fullness", NUMBER, 1, 50)
                        .falls("heel", LENGTH, 1e-4, THICK).rises("tip", LENGTH, 0, THICK).rises("behind", LENGTH, 0, THICK)
                        .gives(LENGTH, POWER_LAW, a -> BladeBody.centreOfMass(a[0], a[1], a[2], a[3], a[4])));
    }

    private static Calculation flankThickness() {
        return define("flank-thickness", "local thickness of a full flat ground blade at a height above the edge")
                .rises("spine", LENGTH, 0, THICK).rises("behind", LENGTH, 0, THICK)
                .either("height", LENGTH, 1e-3, HIGH).either("at", LENGTH, 0, HIGH)
                .givesAtCorners(LENGTH, EXACT, a -> Flank.thickness(a[0], a[1], a[2], a[3]));
    }

    private static Calculation thicknessAboveEdge() {
        return define("thickness-at", "thickness of a sharpened blade at a distance above the edge, such as 1 mm")
                .rises("spine", LENGTH, 0, THICK).either("behind", LENGTH, 0, THICK).falls("height", LENGTH, 1e-3, HIGH)
                .rises("each-side", ANGLE, SHALLOW, STEEP).rises("at", LENGTH, 0, HIGH)
                .gives(LENGTH, EXACT, a -> Flank.thicknessAboveEdge(a[0], a[1], a[2], a[3], a[4]),
                        b -> Flank.thicknessAboveEdge(b[0], b[1], b[2], b[3], b[4]));
    }

    private static Calculation flankAngle() {
        return define("flank-angle", "half the angle between the two flanks of a flat ground blade")
                .rises("spine", LENGTH, 0, THICK).falls("behind", LENGTH, 0, THICK).falls("height", LENGTH, 1e-3, HIGH)
                .gives(ANGLE, EXACT, a -> Flank.angle(a[0], a[1], a[2]));
    }

    private static Calculation sectionArea() {
        return define("section-area", "area of a cross-section whose flanks are ground flat up to a height")
                .rises("spine", LENGTH, 0, THICK).rises("behind", LENGTH, 0, THICK).rises("height", LENGTH, 1e-3, HIGH)
                .falls("ground", LENGTH, 0, HIGH)
                .givesAtCorners(AREA, EXACT, a -> Flank.sectionArea(a[0], a[1], a[2], a[3]));
    }

    private static Calculation hollowThickness() {
        return define("hollow-thickness", "thickness in the middle of a hollow ground flank; below zero the hollows meet")
                .rises("spine", LENGTH, 0, THICK).rises("behind", LENGTH, 0, THICK).falls("ground", LENGTH, 0, 0.1)
                .rises("radius", LENGTH, 5e-3, 2)
                .gives(LENGTH, EXACT, a -> Flank.hollowThickness(a[0], a[1], a[2], a[3]));
    }

    private static Calculation wheelJigDistance() {
        return define("wheel-jig-distance", "distance from support bar to wheel centre for an edge angle")
                .rises("radius", LENGTH, 0.02, 0.5).rises("reach", LENGTH, 0.02, 0.5)
                .rises("each-side", ANGLE, SHALLOW, STEEP)
                .gives(LENGTH, EXACT, a -> AngleSetting.wheelJigDistance(a[0], a[1], a[2]));
    }

    private static Calculation wheelJigAngle() {
        return define("wheel-jig-angle", "edge angle that a distance from support bar to wheel centre gives")
                .falls("radius", LENGTH, 0.02, 0.5).falls("reach", LENGTH, 0.02, 0.5).rises("distance", LENGTH, 0.02, 1)
                .gives(ANGLE, EXACT, a -> AngleSetting.wheelJigAngle(a[0], a[1], a[2]));
    }
}
