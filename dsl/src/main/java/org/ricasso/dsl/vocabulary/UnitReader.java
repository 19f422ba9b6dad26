package org.ricasso.dsl.vocabulary;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.evaluate.Arithmetic;
import org.ricasso.dsl.evaluate.Axis;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.Declaration.ThingDeclaration;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.shared.quantity.Base;
import org.ricasso.shared.quantity.Dimension;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Unit;
import org.ricasso.shared.quantity.UnitTable;

/** Reads {@code unit}, {@code dimension} and {@code axis}. Units are resolved in the order of need. */
final class UnitReader {
    private final Vocabulary vocabulary;
    private final Findings findings;
    private final UnitTable.Builder units = UnitTable.builder();

    UnitReader(Vocabulary vocabulary, Findings findings) {
        this.vocabulary = vocabulary;
        this.findings = findings;
        builtIn("number", Measure.NUMBER);
        builtIn("count", Measure.NUMBER);
        builtIn("length", Measure.LENGTH);
        builtIn("mass", Measure.MASS);
        builtIn("duration", Measure.DURATION);
        builtIn("current", Measure.CURRENT);
        builtIn("angle", Measure.ANGLE);
        builtIn("temperature", Measure.TEMPERATURE);
        builtIn("temperature-difference", Measure.TEMPERATURE_DIFFERENCE);
        builtIn("hardness", Measure.HARDNESS);
        builtIn("hardness-difference", Measure.HARDNESS_DIFFERENCE);
        for (Base scale : List.of(Base.VICKERS, Base.BRINELL)) {
            vocabulary.name(new Measure(Dimension.of(scale), true), "hardness");
            vocabulary.name(new Measure(Dimension.of(scale), false), "hardness-difference");
        }
    }

    private void builtIn(String name, Measure measure) {
        vocabulary.dimensions.put(name, measure);
        vocabulary.name(measure, name);
    }

    void read(List<ThingDeclaration> declarations) {
        List<ThingDeclaration> waiting = new ArrayList<>();
        for (ThingDeclaration declaration : declarations) {
            if (declaration.kind().text().equals("unit")) {
                waiting.add(declaration);
            }
        }
        boolean moved = true;
        while (moved && !waiting.isEmpty()) {
            moved = waiting.removeIf(this::unit);
        }
        for (ThingDeclaration declaration : waiting) {
            findings.error("unit-not-understood", declaration.span(),
                    "as: wants a number and a unit that is declared, such as as: \"0.001 m\"");
        }
        vocabulary.units = units.build();
        vocabulary.arithmetic = new Arithmetic(vocabulary.units);
        for (ThingDeclaration declaration : declarations) {
            if (declaration.kind().text().equals("dimension")) {
                dimension(declaration);
            } else if (declaration.kind().text().equals("axis")) {
                axis(declaration);
            }
        }
    }

    /** @return whether the unit could be read, or has been reported */
    private boolean unit(ThingDeclaration declaration) {
        Map<String, Expression> entries = entries(declaration);
        String sign = text(entries.get("sign"));
        Amount as = amount(text(entries.get("as")));
        Amount zero = entries.containsKey("zero") ? amount(text(entries.get("zero"))) : new Amount(0, null);
        if (sign.isEmpty() || as == null || zero == null) {
            return false;
        }
        int decimals = entries.get("decimals") instanceof Expression.Literal literal
                ? Math.min(9, Integer.parseInt(literal.first().digits())) : 3;
        Dimension dimension = as.unit == null ? Dimension.NUMBER : as.unit.dimension();
        double factor = as.number * (as.unit == null ? 1 : as.unit.factor());
        boolean point = entries.containsKey("zero");
        Unit unit = new Unit(sign, dimension, factor, point ? zero.number * zero.unit.factor() : 0, point, decimals);
        add(unit, declaration.span());
        String also = text(entries.get("also"));
        if (!also.isEmpty()) {
            add(new Unit(also, dimension, factor, unit.offset(), point, decimals), declaration.span());
        }
        if (text(entries.get("shown")).equals("yes")) {
            units.show(unit);
        }
        return true;
    }

    private void add(Unit unit, Span span) {
        if (!units.add(unit)) {
            findings.error("declared-twice", span, "the unit " + unit.sign() + " is declared twice");
        }
    }

    private record Amount(double number, Unit unit) {}

    /** {@code 0.001 m}, {@code 1/1.8 K} or a plain number; null where a unit is not known yet. */
    private Amount amount(String text) {
        int blank = text.indexOf(' ');
        String digits = blank < 0 ? text : text.substring(0, blank);
        Unit unit = blank < 0 ? null : units.find(text.substring(blank + 1).strip()).orElse(null);
        if (blank >= 0 && unit == null || !digits.matches("[0-9]+(\\.[0-9]+)?(/[0-9]+(\\.[0-9]+)?)?")) {
            return null;
        }
        int slash = digits.indexOf('/');
        double number = slash < 0 ? Double.parseDouble(digits)
                : Double.parseDouble(digits.substring(0, slash)) / Double.parseDouble(digits.substring(slash + 1));
        return new Amount(number, unit);
    }

    private void dimension(ThingDeclaration declaration) {
        String of = text(entries(declaration).get("of"));
        Unit unit = vocabulary.units.find(of).orElse(null);
        if (unit == null) {
            findings.error("unit-not-understood", declaration.span(),
                    "of: wants the coherent unit in quotes, such as of: \"kg·m/s²\"");
            return;
        }
        String name = declaration.head().name().text();
        Measure measure = new Measure(unit.dimension(), false);
        if (vocabulary.dimensions.putIfAbsent(name, measure) != null) {
            findings.error("declared-twice", declaration.head().name().span(), "a type is named " + name + " already");
        }
        vocabulary.name(measure, name);
    }

    private void axis(ThingDeclaration declaration) {
        Map<String, Expression> entries = entries(declaration);
        String start = text(entries.get("start"));
        String end = text(entries.get("end"));
        if (start.isEmpty() || end.isEmpty() || text(entries.get("length")).isEmpty()) {
            findings.error("missing-entry", declaration.span(), "an axis has start, end and length, each in quotes");
            return;
        }
        String name = declaration.head().name().text();
        vocabulary.axes.put(name, new Axis(name, start, end, inside(entries.get("length")), stations(declaration)));
    }

    /** What stands between the quotes; without quotes all of it. */
    private static Span inside(Expression expression) {
        Span span = expression.span();
        return expression instanceof Expression.TextLiteral && span.text().startsWith("\"")
                ? new Span(span.file(), span.start() + 1, span.end() - 1) : span;
    }

    /** Named places: {@code stations { middle: "…" }}. */
    private Map<String, Span> stations(ThingDeclaration declaration) {
        Map<String, Span> result = new HashMap<>();
        for (Block.Item item : declaration.block().items()) {
            if (item instanceof Block.Item.Nested nested && nested.name().text().equals("stations")) {
                entries(nested.block()).forEach((name, place) -> result.put(name, inside(place)));
            } else if (item instanceof Block.Item.Nested nested) {
                findings.unknownName(nested.name().span(), "entry of axis", nested.name().text(),
                        List.of("start", "end", "length", "stations"));
            }
        }
        return result;
    }

    static Map<String, Expression> entries(ThingDeclaration declaration) {
        return entries(declaration.block());
    }

    private static Map<String, Expression> entries(Block block) {
        Map<String, Expression> result = new HashMap<>();
        for (Block.Item item : block.items()) {
            if (item instanceof Block.Item.Entry entry && entry.value() instanceof Expression expression) {
                result.put(entry.path().text(), expression);
            }
        }
        return result;
    }

    /** A text or a name as text, several joined; empty for nothing. */
    static String text(Expression expression) {
        if (expression instanceof Expression.TextLiteral literal) {
            return literal.text().written();
        }
        if (expression instanceof Expression.ListOf list) {
            return String.join(", ", list.elements().stream().map(UnitReader::text).toList());
        }
        return expression == null ? "" : expression.span().text();
    }
}
