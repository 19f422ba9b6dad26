package org.ricasso.shared.quantity;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The units that a text may use, by sign. Compound units (<code>N/mm²</code>, <code>g/cm^3</code>,
 * <code>kg·m/s²</code>, <code>W/m²·K</code>, <code>1/min</code>) are read from their parts; all behind the first
 * stroke stands below it. Immutable once built; look-ups are safe from several threads.
 */
public final class UnitTable {
    private final Map<String, Unit> units;
    private final Collection<Unit> inOrder;
    private final Map<Dimension, Unit> shown;
    private final Map<String, Optional<Unit>> compounds = new java.util.concurrent.ConcurrentHashMap<>();

    private UnitTable(Map<String, Unit> units, Map<Dimension, Unit> shown) {
        this.units = Map.copyOf(units);
        this.inOrder = Collections.unmodifiableCollection(new TreeMap<>(units).values());
        this.shown = Map.copyOf(shown);
    }

    /** A table under construction; holds the coherent units of the base dimensions from the start. */
    public static Builder builder() {
        return new Builder();
    }

    /** The unit with this sign, or the compound unit that it spells; empty if a part of it is not known. */
    public Optional<Unit> find(String sign) {
        Unit unit = units.get(sign);
        return unit != null ? Optional.of(unit) : compounds.computeIfAbsent(sign, s -> compound(units, s));
    }

    /** The unit in which a computed value of the dimension is shown: the declared one, else the coherent unit. */
    public Unit shownFor(Dimension dimension) {
        Unit unit = shown.get(dimension);
        if (unit != null) {
            return unit;
        }
        if (dimension.isNumber()) {
            return Unit.NONE;
        }
        Unit coherent = units.get(dimension.toString());
        return coherent != null ? coherent : Unit.of(dimension.toString(), dimension, 1, 3);
    }

    /** All declared units in the order of their signs. */
    public Collection<Unit> all() {
        return inOrder;
    }

    /** The declared units of a dimension, in the order of their signs. */
    public List<Unit> of(Dimension dimension) {
        List<Unit> result = new ArrayList<>();
        for (Unit unit : inOrder) {
            if (unit.dimension().equals(dimension)) {
                result.add(unit);
            }
        }
        return result;
    }

    private static Optional<Unit> compound(Map<String, Unit> units, String sign) {
        Dimension dimension = Dimension.NUMBER;
        double factor = 1;
        int sense = 1;
        int start = 0;
        int parts = 0;
        for (int i = 0; i <= sign.length(); i++) {
            if (i < sign.length() && sign.charAt(i) != '·' && sign.charAt(i) != '/') {
                continue;
            }
            String part = sign.substring(start, i);
            int power = 1;
            if (part.endsWith("²")) {
                power = 2;
                part = part.substring(0, part.length() - 1);
            } else if (part.endsWith("³")) {
                power = 3;
                part = part.substring(0, part.length() - 1);
            } else if (part.length() > 2 && part.charAt(part.length() - 2) == '^') {
                power = part.charAt(part.length() - 1) - '0';
                part = part.substring(0, part.length() - 2);
            }
            // 1/min, 1/K: nothing above the stroke
            Unit unit = part.equals("1") && start == 0 && power == 1 && i < sign.length() ? Unit.NONE : units.get(part);
            if (unit == null || power < 1 || power > 9) {
                return Optional.empty();
            }
            dimension = dimension.times(unit.dimension().power(sense * power));
            factor = sense > 0 ? factor * StrictMath.pow(unit.factor(), power)
                    : factor / StrictMath.pow(unit.factor(), power);
            if (i < sign.length()) {
                // as the trade writes it, all behind the first stroke stands below: W/m²·K is W/(m²·K)
                sense = sign.charAt(i) == '/' ? -1 : sense;
                start = i + 1;
            }
            parts++;
        }
        // an offset unit inside a product means its differences: W/m²·K, °C/h
        return parts == 0 ? Optional.empty() : Optional.of(Unit.of(sign, dimension, factor, 3));
    }

    /** Collects units; a sign is declared once. */
    public static final class Builder {
        private final Map<String, Unit> units = new HashMap<>();
        private final Map<Dimension, Unit> shown = new HashMap<>();

        private Builder() {
            for (Base base : Base.values()) {
                Dimension dimension = Dimension.of(base);
                units.put(base.symbol(),
                        new Unit(base.symbol(), dimension, 1, 0, dimension.isHardness(), dimension.isHardness() ? 1 : 3));
            }
        }

        /** Adds a unit. @return whether its sign was free */
        public boolean add(Unit unit) {
            return units.putIfAbsent(unit.sign(), unit) == null;
        }

        /** Says in which unit computed values of its dimension are shown. */
        public void show(Unit unit) {
            shown.put(unit.dimension(), unit);
        }

        public Optional<Unit> find(String sign) {
            Unit unit = units.get(sign);
            return unit != null ? Optional.of(unit) : compound(units, sign);
        }

        public UnitTable build() {
            return new UnitTable(units, shown);
        }
    }
}
