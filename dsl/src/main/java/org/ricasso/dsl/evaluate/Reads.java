package org.ricasso.dsl.evaluate;

import java.util.Set;

/** What an expression reads, in the order of the text: it says which places a finding marks. */
public final class Reads {
    /** Indexes of settings. */
    public final Set<Integer> settings = new FewSet<>();
    /** Slots of properties, read before or after the step. */
    public final Set<Integer> properties = new FewSet<>();
    /** Dotted paths of the product's entries. */
    public final Set<String> product = new FewSet<>();
    /** Dotted paths of the work centre's entries. */
    public final Set<String> centre = new FewSet<>();
    /** Dotted paths of the entries of the thing a kind's rule speaks of. */
    public final Set<String> self = new FewSet<>();
    /** Tables and calculations called. */
    public final Set<String> calls = new FewSet<>();

    public void addAll(Reads other) {
        settings.addAll(other.settings);
        properties.addAll(other.properties);
        product.addAll(other.product);
        centre.addAll(other.centre);
        self.addAll(other.self);
        calls.addAll(other.calls);
    }
}
