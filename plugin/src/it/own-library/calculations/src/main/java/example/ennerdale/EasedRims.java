package example.ennerdale;

import java.util.List;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.calculation.Calculations;
import org.ricasso.shared.calculation.Definition;
import org.ricasso.shared.quantity.Measure;

/** How rims become smooth; Ennerdale Blades and its numbers are invented. */
public final class EasedRims implements Calculations {
    @Override
    public List<Calculation> calculations() {
        return List.of(Definition.define("rim-burr", "Burr left on rims by a fine belt")
                .rises("burr", Measure.LENGTH, 0, 1e-3)
                .falls("passes", Measure.NUMBER, 0, 20)
                .gives(Measure.LENGTH, "invented: each pass takes half of what stands",
                        a -> a[0] * StrictMath.pow(0.5, a[1])));
    }
}
