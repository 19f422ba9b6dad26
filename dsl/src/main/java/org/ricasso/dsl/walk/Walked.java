package org.ricasso.dsl.walk;

import org.ricasso.dsl.evaluate.Derivation;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.Thing;

/** A product's route, walked once for questions: its states, and how a property came about. */
public final class Walked {
    private final Walk walk;

    private Walked(Walk walk) {
        this.walk = walk;
    }

    public static Walked of(House house, Thing product) {
        return new Walked(new Walk(house.vocabulary(), house.routes().getOrDefault(product, Route.NONE),
                Changes.none(product)).withPasses().run());
    }

    /** The state at the start of the route, by slot. */
    public Value[] first() {
        return walk.first().clone();
    }

    /** The state at the end of the route, by slot. */
    public Value[] last() {
        return walk.last().clone();
    }

    /** How the final value of a property came about, or null where no step left it. */
    public Derivation why(int slot) {
        return new Why(walk.passes).property(slot, walk.last());
    }

    /** How every value of a product's route comes about. */
    public static Account account(House house, Thing product) {
        Walk walk = of(house, product).walk;
        return walk.passes.account(walk.last());
    }

    /** The product that a name or a text of its own such as a number means, or null. */
    public static Thing product(House house, String name) {
        return house.routes().keySet().stream().filter(p -> HouseCheck.isMeant(p, java.util.Set.of(name))).findFirst()
                .orElse(null);
    }
}
