package org.ricasso.dsl.walk;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.rules.Verdict;
import org.ricasso.dsl.vocabulary.Rule;

/** Remedies of a rule that marks a thing which a setting or the product names: others of the kind with which the rule holds. */
final class OtherThings {
    private static final int MOST = 2;

    private OtherThings() {}

    static List<Finding.Attempt> attempts(Walk walk, Rule rule, Rule.Form form, Frame frame, int index) {
        Rule.Mark mark = form.mark();
        if (mark == null) {
            return List.of();
        }
        if (mark.setting() >= 0 && index >= 0) {
            return of(walk, frame.settings[mark.setting()], thing -> {
                Frame other = frame.copy();
                other.settings = frame.settings.clone();
                other.settings[mark.setting()] = new Value.Ref(thing);
                return holds(rule, form, other);
            }, thing -> new Finding.Attempt.Setting(index, mark.setting(), thing.name()));
        }
        return mark.entry() == null ? List.of() : of(walk, walk.product.at(mark.entry()), thing -> {
            Frame other = frame.copy();
            other.product = walk.product.with(mark.entry(), new Value.Ref(thing));
            other.self = frame.self == null ? null : other.product;
            return holds(rule, form, other);
        }, thing -> new Finding.Attempt.Entry(mark.entry(), thing.name()));
    }

    private static boolean holds(Rule rule, Rule.Form form, Frame frame) {
        return Verdict.of(rule, form, frame).outcome() == Verdict.Outcome.HOLDS;
    }

    private static List<Finding.Attempt> of(Walk walk, Value now, Predicate<Thing> holds,
            Function<Thing, Finding.Attempt> attempt) {
        return !(now instanceof Value.Ref ref) ? List.of() : walk.vocabulary.things(ref.thing().kind()).stream()
                .filter(thing -> thing != ref.thing() && holds.test(thing)).limit(MOST).map(attempt).toList();
    }
}
