package org.ricasso.plugin;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.apache.maven.plugin.MojoFailureException;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.walk.CheckedProduct;

/** The products that were asked for by name or number. */
final class Chosen {
    private Chosen() {}

    /** The names as given, without blanks around them; none if nothing is chosen. */
    static Set<String> of(List<String> products) {
        Set<String> result = new TreeSet<>();
        if (products != null) {
            products.stream().filter(Objects::nonNull).map(String::strip).filter(p -> !p.isEmpty())
                    .forEach(result::add);
        }
        return result;
    }

    /** @throws MojoFailureException if one of them is none of the house: a build that checked less must not pass */
    static void require(Ricasso ricasso, Set<String> only) throws MojoFailureException {
        for (String one : only) {
            if (ricasso.checked().products().stream().noneMatch(product -> is(product, one))) {
                List<String> near = ricasso.near(one);
                throw new MojoFailureException("No product of the house has the name or number " + one
                        + (near.isEmpty() ? "" : "; the nearest name is " + near.get(0)));
            }
        }
    }

    private static boolean is(CheckedProduct product, String asked) {
        return product.product().name().equals(asked) || Shows.show(product.product().at("number")).equals(asked);
    }
}
