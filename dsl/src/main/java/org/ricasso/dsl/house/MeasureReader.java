package org.ricasso.dsl.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Reading;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** Reads the blocks of a step: properties of the piece that it measures, and settings of its own that it watches. */
final class MeasureReader {
    private static final Value FAULT = new Value.Unknown("a fault reported elsewhere", true);
    private final Vocabulary vocabulary;
    private final Findings findings;
    private final Thing product;
    private final Operation operation;
    private final boolean damaged;
    private final Map<Integer, RouteStep.Measure> measures = new LinkedHashMap<>();
    private final List<RouteStep.Watch> watches = new ArrayList<>();

    /** @param damaged whether something in the step could not be read */
    MeasureReader(Vocabulary vocabulary, Findings findings, Thing product, Operation operation, boolean damaged) {
        this.vocabulary = vocabulary;
        this.findings = findings;
        this.product = product;
        this.operation = operation;
        this.damaged = damaged;
    }

    /** The names of what may stand in a measuring block. */
    static Set<String> entries(Vocabulary vocabulary) {
        TreeSet<String> names = new TreeSet<>();
        names.add(Reading.LIMIT);
        Map<String, EntryType> declared = vocabulary.entries(Reading.MEASUREMENT);
        if (declared != null) {
            names.addAll(declared.keySet());
        }
        return names;
    }

    List<RouteStep.Measure> measures() {
        return List.copyOf(measures.values());
    }

    List<RouteStep.Watch> watches() {
        return List.copyOf(watches);
    }

    /** Reads a block; false if the operation neither measures nor takes anything of its name. */
    boolean read(Block.Item.Nested block) {
        Name name = block.name();
        Property property = property(name.text());
        int setting = operation.setting(name.text());
        if (property == null && setting < 0) {
            TreeSet<String> known = new TreeSet<>();
            operation.measures().forEach(slot -> known.add(vocabulary.properties().get(slot).name()));
            operation.takes().forEach(taken -> known.add(taken.name()));
            findings.unknownName(name.span(), "property that " + operation.name() + " measures or setting that it takes",
                    name.text(), known);
            return false;
        }
        Span earlier = property == null ? watched(setting) : measured(property);
        if (earlier != null) {
            findings.add(Diagnostic.error("declared-twice", new Mark(name.span(), name + " stands twice"))
                    .and(new Mark(earlier, "first here")));
            return true;
        }
        Content content = content(block, property);
        if (property != null) {
            measures.put(property.slot(), new RouteStep.Measure(property, content.entries(), content.limit(), name.span(),
                    block.span(), content.places()));
        } else {
            watches.add(new RouteStep.Watch(setting, content.entries(), name.span(), content.places()));
        }
        return true;
    }

    private Span measured(Property property) {
        RouteStep.Measure earlier = measures.get(property.slot());
        return earlier == null ? null : earlier.span();
    }

    private Span watched(int setting) {
        return watches.stream().filter(w -> w.setting() == setting).map(RouteStep.Watch::span).findFirst().orElse(null);
    }

    /** A step that was not read whole may measure whatever its operation can. */
    void mayMeasureAll(Span at) {
        for (int slot : operation.measures()) {
            measures.putIfAbsent(slot, new RouteStep.Measure(vocabulary.properties().get(slot), new Value.Entries(Map.of()),
                    FAULT, at, at, Map.of()));
        }
    }

    /** The measurable property of a name: that of the part which is worked, before others. */
    private Property property(String name) {
        Property found = null;
        for (int slot : operation.measures()) {
            Property one = vocabulary.properties().get(slot);
            boolean own = one.part() == null || one.part().equals(operation.works());
            if (one.name().equals(name) && (found == null || own)) {
                found = one;
            }
        }
        return found;
    }

    /** What stands in a block; {@code limit} is null where none does. */
    private record Content(Value.Entries entries, Value limit, Map<String, Span> places) {}

    /** @param property what is measured, or null where a setting is watched */
    private Content content(Block.Item.Nested block, Property property) {
        Name name = block.name();
        Map<String, EntryType> types = vocabulary.entries(Reading.MEASUREMENT);
        if (types == null) {
            findings.error("kind-missing", name.span(), "the vocabulary declares no kind measurement");
            return new Content(new Value.Entries(Map.of()), FAULT, Map.of());
        }
        Map<String, Value> entries = new LinkedHashMap<>();
        Map<String, Span> places = new LinkedHashMap<>();
        EntryReader reader = new EntryReader(vocabulary, findings, product);
        Value limit = null;
        boolean open = damaged;
        for (Block.Item item : block.block().items()) {
            if (!(item instanceof Block.Item.Entry entry)) {
                findings.error("wrong-type", item.span(), "a measurement has entries only");
                open = true;
                continue;
            }
            String key = entry.path().text();
            if (key.equals(Reading.LIMIT) && property == null) {
                findings.add(Diagnostic.error("watched-limit", new Mark(entry.span(), "the limit of " + name
                        + " is the setting itself, with its tolerance"))
                        .because("two limits for one reading differ one day, and then nobody knows which one holds")
                        .remedy(new Remedy("take the line out", List.of(new Edit(entry.span(), "")))));
                continue;
            }
            places.put(key, entry.value().span());
            if (key.equals(Reading.LIMIT)) {
                limit = reader.read(entry.value(), EntryType.plain(Reading.LIMIT, limitType(property), null, entry.span()));
            } else if (types.containsKey(key)) {
                entries.put(key, reader.read(entry.value(), types.get(key)));
            } else {
                findings.unknownName(entry.path().span(), "entry of a measurement", key, entries(vocabulary));
                open = true;
            }
        }
        complete(name, types, entries, open);
        return new Content(new Value.Entries(entries), limit == null && open ? FAULT : limit, places);
    }

    private void complete(Name name, Map<String, EntryType> types, Map<String, Value> entries, boolean open) {
        for (EntryType type : types.values()) {
            if (entries.containsKey(type.name())) {
                continue;
            }
            if (type.byDefault() != null) {
                entries.put(type.name(), type.byDefault().eval(new Frame()));
            } else if (!type.optional() && !open) {
                findings.error("missing-entry", name.span(), "the measurement of " + name + " says nothing of "
                        + type.name() + ": " + Type.describe(type.type()) + " is asked for");
                entries.put(type.name(), FAULT);
            }
        }
    }

    private static Type limitType(Property property) {
        return property.type() instanceof Type.WordsOf ? new Type.ListOf(property.type()) : property.type();
    }
}
