package org.ricasso.shared.quality;

import static org.ricasso.shared.calculation.Definition.define;
import static org.ricasso.shared.quantity.Measure.HARDNESS;
import static org.ricasso.shared.quantity.Measure.LENGTH;
import static org.ricasso.shared.quantity.Measure.NUMBER;

import java.util.List;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.calculation.Calculations;

/** The calculations on inspection that the language can call. */
public final class Inspection implements Calculations {
    private static final String BINOMIAL = "binomial distribution, exact for a lot much larger than the sample";
    private static final String SPACING = "ISO 6508-1 as a tester's manual quotes it, published";

    @Override
    public List<Calculation> calculations() {
        return List.of(
                define("rockwell-depth", "permanent depth of a Rockwell C indentation")
                        .falls("hardness", HARDNESS, 20, 70)
                        .gives(LENGTH, "definition of the scale", a -> HardnessTest.rockwellDepth(a[0])),
                define("rockwell-thickness", "least thickness for a Rockwell C test, ten times the indentation's depth")
                        .falls("hardness", HARDNESS, 20, 70)
                        .gives(LENGTH, "ISO 6508-1, from memory", a -> HardnessTest.rockwellThickness(a[0])),
                define("indent-spacing", "least distance between the centres of two indentations")
                        .rises("diameter", LENGTH, 0, 0.01)
                        .gives(LENGTH, SPACING, a -> HardnessTest.indentSpacing(a[0])),
                define("indent-to-edge", "least distance from an indentation's centre to an edge")
                        .rises("diameter", LENGTH, 0, 0.01)
                        .gives(LENGTH, SPACING, a -> HardnessTest.indentToEdge(a[0])),
                define("acceptance-probability", "probability that a lot is accepted with so many bad pieces in it")
                        .falls("sample", NUMBER, 1, AttributeSample.LARGEST)
                        .rises("accept", NUMBER, 0, AttributeSample.LARGEST).falls("bad", NUMBER, 0, 1)
                        .gives(NUMBER, BINOMIAL, a -> AttributeSample.acceptance(a[0], a[1], a[2])),
                define("detection-probability", "chance that a sample holds at least one bad piece")
                        .rises("sample", NUMBER, 1, AttributeSample.LARGEST).rises("bad", NUMBER, 0, 1)
                        .gives(NUMBER, BINOMIAL, a -> AttributeSample.detection(a[0], a[1])),
                define("sample-for", "smallest sample that holds a bad piece with at least this chance")
                        .falls("bad", NUMBER, 1e-4, 0.99).rises("chance", NUMBER, 0, 0.9999)
                        .gives(NUMBER, BINOMIAL, a -> AttributeSample.sampleFor(a[0], a[1])));
    }
}
