package example.works;

import java.util.List;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.calculation.Calculation.Argument;
import org.ricasso.shared.calculation.Calculation.Sense;
import org.ricasso.shared.calculation.Calculations;
import org.ricasso.shared.quantity.Measure;

/** A calculation of the works' own. */
public final class OwnCalculations implements Calculations {
    @Override
    public List<Calculation> calculations() {
        return List.of(new Calculation("box-for", "Length of the box for a knife",
                List.of(new Argument("knife-length", Measure.LENGTH, Sense.RISES, 0.05, 0.6)), Measure.LENGTH,
                "invented", arguments -> arguments[0] + 0.03, null));
    }
}
