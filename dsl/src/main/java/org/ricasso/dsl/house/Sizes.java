package org.ricasso.dsl.house;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.EntryValue;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Grid;
import org.ricasso.dsl.vocabulary.Family;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;

/**
 * Every row of a family says what another size needs another value of: entries and settings marked {@code sized}. A setting
 * that is worked out from the product follows its size by itself.
 */
final class Sizes {
    private static final int MARKS = 3;
    private final Vocabulary vocabulary;
    private final Findings findings;
    /** What the row that is looked at says nothing of, with the values it would take over. */
    private final Map<String, Span> missing = new LinkedHashMap<>();
    /** The settings that sizes say nothing of, as number and name, by the size's name. */
    private final Map<String, Set<String>> open = new HashMap<>();

    Sizes(Vocabulary vocabulary, Findings findings) {
        this.vocabulary = vocabulary;
        this.findings = findings;
    }

    /**
     * Asks each row of a family for what is sized. What it does not say is not known: what would follow from the value of
     * another size is no finding of its own.
     *
     * @param base the product that the family takes over, with its route; nothing is asked where it is not known
     */
    void check(Family family, Thing base, ResolvedRoute route) {
        if (base == null) {
            return;
        }
        for (Family.Row row : family.rows()) {
            missing.clear();
            entries(row, base, base.kind(), "");
            Thing size = vocabulary.thing(base.kind(), row.product().head().name().text());
            if (size != null) {
                missing.keySet().forEach(path -> size.leaveOpen(entry(base.kind(), path)));
            }
            if (route != null) {
                Stream.concat(route.steps().stream(), route.parts().stream().flatMap(p -> p.steps().stream()))
                        .forEach(step -> settings(row, step));
            }
            tell(row);
        }
    }

    /** The entry itself; of a value along an axis all is open where a station is. */
    private String entry(String kind, String path) {
        String entry = path;
        while (vocabulary.entryType(kind, entry) == null) {
            entry = entry.substring(0, entry.lastIndexOf('.'));
        }
        return entry;
    }

    private void entries(Family.Row row, Thing base, String kind, String prefix) {
        for (EntryType entry : vocabulary.entries(kind).values()) {
            String path = prefix + entry.name();
            Value value = base.at(path);
            if (value instanceof Value.Absent || value instanceof Value.Unknown) {
                continue;
            }
            Span place = base.places().containsKey(path) ? base.places().get(path).value() : base.span();
            if (entry.sized() && value instanceof Value.Along along && !row.written().containsKey(path)) {
                along.stations().forEach(station -> ask(row, path + "." + station.name(), place));
            } else if (entry.sized()) {
                ask(row, path, place);
            } else if (entry.type() instanceof Type.ThingOf of && value instanceof Value.Entries) {
                entries(row, base, of.kind(), path + ".");
            }
        }
    }

    private void settings(Family.Row row, ResolvedStep step) {
        Operation operation = vocabulary.operation(step.step().operation().text());
        if (operation == null) {
            return;
        }
        for (Block.Item item : step.step().block().items()) {
            if (item instanceof Block.Item.Entry entry && operation.setting(entry.path().text()) >= 0
                    && operation.takes().get(operation.setting(entry.path().text())).sized()) {
                setting(row, "route." + step.step().number() + "." + entry.path().text(), entry.value());
            }
        }
    }

    private void setting(Family.Row row, String path, EntryValue value) {
        int known = missing.size();
        settingAsked(row, path, value);
        if (missing.size() > known) {
            open.computeIfAbsent(row.product().head().name().text(), name -> new HashSet<>()).add(path);
        }
    }

    private void settingAsked(Family.Row row, String path, EntryValue value) {
        if (row.written().containsKey(path)) {
            return;
        }
        if (value instanceof Grid grid) {
            for (Grid.Row station : grid.rows()) {
                if (station.cells().size() == 2 && station.cells().get(0) != null && station.cells().get(1) != null
                        && !follows(station.cells().get(1))) {
                    ask(row, path + "." + station.cells().get(0).span().text().strip(), station.cells().get(1).span());
                }
            }
        } else if (!follows((Expression) value)) {
            ask(row, path, value.span());
        }
    }

    /** Whether a value is worked out from the product, and so from what its row says. */
    private boolean follows(Expression value) {
        if (value instanceof Expression.NameUse use) {
            return use.name().text().equals(vocabulary.productKind());
        }
        return inside(value).stream().anyMatch(this::follows);
    }

    private static List<Expression> inside(Expression value) {
        if (value instanceof Expression.Member member) {
            return List.of(member.target());
        }
        if (value instanceof Expression.Call call) {
            List<Expression> arguments = call.arguments().stream().map(Expression.Argument::value).toList();
            return call.target() == null ? arguments : List.of(call.target());
        }
        if (value instanceof Expression.Prefix prefix) {
            return List.of(prefix.operand());
        }
        if (value instanceof Expression.Infix infix) {
            return List.of(infix.left(), infix.right());
        }
        if (value instanceof Expression.Limit limit) {
            return List.of(limit.bound());
        }
        if (value instanceof Expression.Choice choice) {
            return List.of(choice.condition(), choice.then(), choice.otherwise());
        }
        if (value instanceof Expression.Per per) {
            return List.of(per.amount());
        }
        return value instanceof Expression.ListOf list ? list.elements() : List.of();
    }

    private void ask(Family.Row row, String path, Span base) {
        if (!row.written().containsKey(path)) {
            missing.putIfAbsent(path, base);
        }
    }

    /** Says of the settings that a size says nothing of that they are not known. */
    void leaveOpen(Thing size, Route route) {
        Set<String> settings = open.getOrDefault(size.name(), Set.of());
        if (settings.isEmpty() || route == null) {
            return;
        }
        for (RouteStep step : route.all()) {
            for (int i = 0; step.operation() != null && i < step.settings().length; i++) {
                if (settings.contains("route." + step.number() + "." + step.operation().takes().get(i).name())) {
                    step.settings()[i] = new Value.Unknown("a fault reported elsewhere", true);
                }
            }
        }
    }

    private void tell(Family.Row row) {
        if (missing.isEmpty()) {
            return;
        }
        // in the grid that has the cell, else in the first
        Span name = missing.keySet().stream().map(row.empty()::get).filter(Objects::nonNull).findFirst()
                .orElse(row.product().head().name().span());
        Diagnostic diagnostic = Diagnostic.error("size-missing", new Mark(name,
                row.product().head().name() + " says nothing of " + String.join(", ", missing.keySet())
                        + ", which every size has its own of"));
        for (Span base : missing.values().stream().distinct().limit(MARKS).toList()) {
            diagnostic = diagnostic.and(new Mark(base, "the value it would take over"));
        }
        findings.add(diagnostic.because("a size that keeps another size's value is made wrong without a sign"));
    }
}
