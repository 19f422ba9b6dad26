package org.ricasso.dsl.evaluate;

import java.math.BigDecimal;
import java.util.List;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Numbers;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.Shown;
import org.ricasso.shared.quantity.Unit;
import org.ricasso.shared.quantity.UnitTable;

/** Reads numbers with units and tolerances. */
public final class Literals {
    private final UnitTable units;

    public Literals(UnitTable units) {
        this.units = units;
    }

    /**
     * The quantity a literal writes, or null after a finding.
     *
     * @param unitBy the unit of a later element of the same list, used where none is written, or null
     * @param asDifference whether numbers in point units are differences here
     */
    public Quantity read(Expression.Literal literal, Name unitBy, boolean asDifference, Findings findings) {
        Name lastName = literal.unit() != null ? literal.unit() : literal.firstUnit() != null ? literal.firstUnit() : unitBy;
        Name firstName = literal.firstUnit() != null ? literal.firstUnit() : lastName;
        Unit last = unit(lastName, findings);
        Unit first = unit(firstName, findings);
        if (last == null || first == null) {
            return null;
        }
        boolean relative = literal.form() == Expression.Form.PLUS_MINUS && last.dimension().isNumber()
                && !first.dimension().isNumber();
        if (literal.form() == Expression.Form.PLUS_MINUS && lastName != null && literal.firstUnit() == null) {
            first = last;
            relative = false;
        }
        if (!relative && !first.dimension().equals(last.dimension())) {
            findings.error("units-differ", literal.span(),
                    firstName + " and " + lastName + " do not measure the same");
            return null;
        }
        boolean point = first.point() && !asDifference;
        Measure measure = new Measure(first.dimension(), point);
        double a = first.toCoherent(number(literal.first()), point);
        Interval band;
        double nominal = a;
        switch (literal.form()) {
            case SINGLE -> band = Interval.of(a);
            case PLUS_MINUS -> {
                double deviation = Math.abs(relative ? a * last.toCoherent(number(literal.second()), false)
                        : last.toCoherent(number(literal.second()), false));
                band = Interval.of(a).widened(deviation);
            }
            case DEVIATIONS -> {
                double upper = last.toCoherent(number(literal.second()), false);
                double lower = last.toCoherent(number(literal.third()), false);
                if (Numbers.compare(lower, upper) > 0) {
                    findings.error("tolerance-upside-down", literal.span(),
                            "the upper deviation stands first: (+0.5/-0.3)");
                    return null;
                }
                band = new Interval(a + lower, a + upper);
            }
            default -> {
                double b = last.toCoherent(number(literal.second()), point);
                if (Numbers.compare(a, b) > 0) {
                    findings.error("range-upside-down", literal.span(), "the lower end of a range stands first");
                    return null;
                }
                band = Interval.between(a, b);
                nominal = Double.NaN;
            }
        }
        // blanks that set numbers below each other are the table's
        String written = literal.span().text().strip().replaceAll("\\s+", " ");
        if (literal.unit() == null && literal.firstUnit() == null && unitBy != null) {
            written = written + " " + unitBy.text();
        }
        return new Quantity(measure, band, band, nominal, new Shown(first, decimals(literal), written));
    }

    private Unit unit(Name name, Findings findings) {
        if (name == null) {
            return Unit.NONE;
        }
        Unit unit = units.find(name.text()).orElse(null);
        if (unit == null) {
            List<String> signs = units.all().stream().map(Unit::sign).toList();
            findings.unknownName(name.span(), "unit", name.text(), signs);
        }
        return unit;
    }

    private static double number(Expression.Number number) {
        return new BigDecimal(number.digits()).doubleValue();
    }

    private static int decimals(Expression.Literal literal) {
        int decimals = scale(literal.first());
        if (literal.second() != null) {
            decimals = Math.max(decimals, scale(literal.second()));
        }
        return literal.third() == null ? decimals : Math.max(decimals, scale(literal.third()));
    }

    private static int scale(Expression.Number number) {
        return Math.min(9, Math.max(0, new BigDecimal(number.digits()).scale()));
    }

    /** The finding for a quantity outside the sensible range, with the unit in which the same digits would fit. */
    public Diagnostic outside(Expression.Literal literal, Quantity quantity, Quantity within, String what) {
        Diagnostic diagnostic = Diagnostic.error("outside-range", new Mark(literal.span(),
                written(quantity, within) + " is outside the sensible range of " + what + ", "
                        + org.ricasso.shared.quantity.QuantityFormat.show(within)));
        Name name = literal.unit() != null ? literal.unit() : literal.firstUnit();
        if (name == null) {
            return diagnostic;
        }
        for (Unit unit : units.of(quantity.measure().dimension())) {
            if (unit.sign().equals(name.text()) || unit.point() != quantity.shown().unit().point() || isOtherSign(unit)) {
                continue;
            }
            Unit own = quantity.shown().unit();
            boolean point = quantity.measure().point();
            double least = unit.toCoherent(own.fromCoherent(quantity.aim().least(), point), point);
            double most = unit.toCoherent(own.fromCoherent(quantity.aim().most(), point), point);
            if (least <= most && new Interval(least, most).isInside(within.aim())) {
                diagnostic = diagnostic.remedy(new Remedy("the same digits in " + unit.sign() + " fit: write "
                        + literal.span().text().replace(name.text(), unit.sign()), edits(literal, unit)));
            }
        }
        return diagnostic;
    }

    /** Whether the unit is only another sign of the one that its dimension is shown in. */
    private boolean isOtherSign(Unit unit) {
        Unit shown = units.shownFor(unit.dimension());
        return !unit.equals(shown) && unit.factor() == shown.factor() && unit.offset() == shown.offset();
    }

    private static List<Edit> edits(Expression.Literal literal, Unit unit) {
        List<Edit> edits = new java.util.ArrayList<>();
        if (literal.firstUnit() != null) {
            edits.add(new Edit(literal.firstUnit().span(), unit.sign()));
        }
        if (literal.unit() != null) {
            edits.add(new Edit(literal.unit().span(), unit.sign()));
        }
        return edits;
    }

    private static String written(Quantity quantity, Quantity within) {
        String own = org.ricasso.shared.quantity.QuantityFormat.show(quantity);
        if (quantity.shown().unit().equals(within.shown().unit())) {
            return own;
        }
        Quantity converted = new Quantity(quantity.measure(), quantity.aim(), quantity.reach(), quantity.nominal(),
                Shown.in(within.shown().unit()));
        return own + " (" + org.ricasso.shared.quantity.QuantityFormat.aim(converted) + ")";
    }
}
