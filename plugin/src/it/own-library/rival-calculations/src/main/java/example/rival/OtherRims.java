package example.rival;

import java.util.List;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.calculation.Calculations;
import org.ricasso.shared.calculation.Definition;
import org.ricasso.shared.quantity.Measure;

/** A second library that offers a calculation of the same name. */
public final class OtherRims implements Calculations {
    @Override
    public List<Calculation> calculations() {
        return List.of(Definition.define("rim-burr", "Burr left on rims, told otherwise")
                .rises("burr", Measure.LENGTH, 0, 1e-3)
                .falls("passes", Measure.NUMBER, 0, 20)
                .gives(Measure.LENGTH, "invented: each pass takes half of what stands",
                        a -> a[0] * StrictMath.pow(0.5, a[1])));
    }
}
