package org.ricasso.dsl.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.Axis;
import org.ricasso.dsl.evaluate.Checker;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Literals;
import org.ricasso.dsl.evaluate.Scope;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.syntax.EntryValue;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Grid;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Numbers;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.QuantityFormat;

/** Reads written values of entries and settings: type, sensible range, stations along an axis. */
public final class EntryReader {
    private static final Value FAULT = new Value.Unknown("a fault reported elsewhere", true);
    private final Vocabulary vocabulary;
    private final Findings findings;
    private final Thing product;
    private final boolean setting;

    /** @param product the product whose axes give stations their places, or null while it is not known */
    public EntryReader(Vocabulary vocabulary, Findings findings, Thing product) {
        this(vocabulary, findings, product, false);
    }

    /** @param setting whether settings of steps are read, by which the spec may not prove itself */
    public EntryReader(Vocabulary vocabulary, Findings findings, Thing product, boolean setting) {
        this.setting = setting;
        this.vocabulary = vocabulary;
        this.findings = findings;
        this.product = product;
    }

    /** The value written for an entry; a reported unknown after a finding. */
    public Value read(EntryValue written, EntryType entry) {
        if (written instanceof Grid grid) {
            return entry.type() instanceof Type.AlongAxis along ? stations(grid, along, entry) : notAGrid(grid, entry);
        }
        Expression expression = (Expression) written;
        Set<String> roots = product == null ? Set.of() : Set.of(product.kind());
        Scope scope = setting ? Scope.made(roots) : Scope.roots(roots);
        Frame frame = new Frame();
        frame.product = product;
        Value value = new Checker(vocabulary, scope, findings).check(expression, entry.type()).node().eval(frame);
        if (!within(expression, value, entry) || !whole(expression, value, entry.type())) {
            return FAULT;
        }
        usual(expression, value, entry);
        return value;
    }

    private Value notAGrid(Grid grid, EntryType entry) {
        findings.error("wrong-type", grid.span(), "rows stand where " + Type.describe(entry.type()) + " is asked for");
        return FAULT;
    }

    private boolean whole(Expression expression, Value value, Type type) {
        if (type instanceof Type.Measured measured && measured.name().equals("count") && value instanceof Value.Num num
                && Numbers.compare(num.quantity().aim().least(), StrictMath.rint(num.quantity().aim().least())) != 0) {
            findings.error("not-whole", expression.span(), "a count is a whole number");
            return false;
        }
        return true;
    }

    private boolean within(Expression expression, Value value, EntryType entry) {
        if (entry.within() == null) {
            return true;
        }
        if (expression instanceof Expression.ListOf list && value instanceof Value.Several several) {
            boolean all = true;
            for (int i = 0; i < list.elements().size(); i++) {
                all &= within(list.elements().get(i), several.values().get(i), entry);
            }
            return all;
        }
        if (!(value instanceof Value.Num num) || num.quantity().measure().dimension().isHardness()
                && !num.quantity().measure().equals(entry.within().measure())) {
            return true;
        }
        Quantity quantity = num.quantity();
        if (quantity.aim().clampedTo(entry.within().aim()).equals(quantity.aim())
                || quantity.aim().isInside(entry.within().aim())
                || !quantity.aim().isBounded() && quantity.aim().overlaps(entry.within().aim())) {
            return true;
        }
        Expression bare = expression instanceof Expression.Limit limit ? limit.bound() : expression;
        if (bare instanceof Expression.Literal literal) {
            findings.add(new Literals(vocabulary.units()).outside(literal, quantity, entry.within(), entry.name()));
        } else {
            findings.error("outside-range", expression.span(),
                    QuantityFormat.show(quantity) + " is outside the sensible range of "
                            + entry.name() + ", " + QuantityFormat.show(entry.within()));
        }
        return false;
    }

    /** What it is set to is told of where it lies outside of the usual; a tolerance may reach out, and a limit says nothing. */
    private void usual(Expression expression, Value value, EntryType entry) {
        if (entry.usual() == null || !(value instanceof Value.Num num) || !num.quantity().aim().isBounded()
                || !num.quantity().measure().equals(entry.usual().measure())) {
            return;
        }
        Quantity quantity = num.quantity();
        double set = quantity.hasNominal() ? quantity.nominal() : (quantity.aim().least() + quantity.aim().most()) / 2;
        if (!Interval.of(set).isInside(entry.usual().aim())) {
            findings.add(Diagnostic.warning("outside-usual", new Mark(expression.span(), expression.span().text() + " is not usual for "
                    + entry.name() + ", which is mostly " + QuantityFormat.show(entry.usual()))));
        }
    }

    private Value stations(Grid grid, Type.AlongAxis along, EntryType entry) {
        Axis axis = along.axis();
        double length = vocabulary.station(axis, axis.end(), product);
        if (grid.head().size() != 2 || !grid.head().get(0).text().equals("at")) {
            findings.error("grid-head", grid.span(), "a value along " + axis.name()
                    + " has the columns at and one more: | at | " + entry.name() + " |");
            return FAULT;
        }
        EntryType element = EntryType.plain(entry.name(), along.element(), entry.within(), entry.span());
        List<Value.Station> stations = new ArrayList<>();
        boolean sound = true;
        for (Grid.Row row : grid.rows()) {
            if (row.cells().get(0) == null || row.cells().get(1) == null) {
                findings.error("cells-missing", row.span(), "a station has a place and a value");
                sound = false;
                continue;
            }
            double position = position(row.cells().get(0), axis);
            Value value = read(row.cells().get(1), element);
            if (Double.isNaN(position) || !(value instanceof Value.Num num)) {
                sound = false;
                continue;
            }
            if (position < -1e-9 || position > length + 1e-9) {
                findings.error("station-off-axis", row.cells().get(0).span(),
                        row.cells().get(0).span().text().strip() + " is not between " + axis.start() + " and " + axis.end());
                sound = false;
                continue;
            }
            stations.add(new Value.Station(label(row.cells().get(0), axis, position), position, num.quantity()));
        }
        stations.sort(java.util.Comparator.comparingDouble(Value.Station::position));
        return sound && !stations.isEmpty() ? new Value.Along(stations) : FAULT;
    }

    /** The place as written; a named one between start and end with its distance, which nobody at the bench knows. */
    private String label(Expression place, Axis axis, double position) {
        String written = place.span().text().strip();
        return !axis.stations().containsKey(written) ? written
                : written + " (" + QuantityFormat.show(Quantity.of(Measure.LENGTH, position,
                        vocabulary.units().shownFor(Measure.LENGTH.dimension()))).replaceFirst("[.]0+ ", " ") + ")";
    }

    /** A place: a named station, a length from the start, or a sum of these; NaN after a finding. */
    private double position(Expression place, Axis axis) {
        if (place instanceof Expression.NameUse use) {
            if (axis.hasStation(use.name().text())) {
                return vocabulary.station(axis, use.name().text(), product);
            }
            findings.unknownName(use.span(), "station of " + axis.name(), use.name().text(), axis.stationNames());
            return Double.NaN;
        }
        if (place instanceof Expression.Infix infix) {
            double left = position(infix.left(), axis);
            double right = position(infix.right(), axis);
            return switch (infix.operator()) {
                case PLUS -> left + right;
                case MINUS -> left - right;
                default -> Double.NaN;
            };
        }
        Value value = new Checker(vocabulary, Scope.roots(Set.of()), findings)
                .check(place, new Type.Measured(Measure.LENGTH, "length")).node().eval(new Frame());
        return value instanceof Value.Num num ? num.quantity().aim().middle() : Double.NaN;
    }
}
