package org.ricasso.dsl.evaluate;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.ricasso.shared.calculation.Calculation;

/** The knowledge that evaluations used, in the order met. */
public final class Uses {
    /** Rows that were asked, each with its table. */
    public final Map<Table.Row, Table> rows = new LinkedHashMap<>();
    public final Set<Calculation> calculations = new LinkedHashSet<>();
}
