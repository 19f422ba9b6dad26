package org.ricasso.dsl.vocabulary;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.ricasso.dsl.evaluate.Type;

/**
 * How a limit of one type is judged.
 *
 * @param limit the type, along an axis that of a station
 * @param reading what reads it, or null
 * @param forms the form of each rule for measurements, in the order of these rules; null where a rule is not for such limits
 */
public record Measuring(Type limit, Reading reading, List<Rule.Form> forms) {
    static Measuring of(Vocabulary vocabulary, List<Rule> rules, Type measured) {
        Type limit = Reading.limit(measured);
        Rule.Form[] forms = rules.stream().map(rule -> rule.measured().get(limit))
                .toArray(Rule.Form[]::new);
        return new Measuring(limit, Reading.of(vocabulary, limit), Collections.unmodifiableList(Arrays.asList(forms)));
    }
}
