package org.ricasso.dsl.vocabulary;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ricasso.dsl.evaluate.Arithmetic;
import org.ricasso.dsl.evaluate.Axis;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Lexicon;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Table;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.UnitTable;

/**
 * All that the texts declare: units, kinds, the workpiece, tables, operations, rules, and the things by name. Filled by
 * the {@link VocabularyLoader} stage by stage and never changed after.
 */
public final class Vocabulary implements Lexicon {
    UnitTable units;
    Arithmetic arithmetic;
    final Map<String, Measure> dimensions = new LinkedHashMap<>();
    private final Map<Measure, String> dimensionNames = new HashMap<>();
    final Map<String, Axis> axes = new TreeMap<>();
    /** The places of named stations by axis and name. */
    final Map<String, Map<String, Node>> stations = new HashMap<>();
    final Map<String, Declaration.KindDeclaration> kinds = new TreeMap<>();
    final Map<String, Map<String, EntryType>> entries = new TreeMap<>();
    final Map<String, TreeMap<String, Thing>> things = new TreeMap<>();
    final Map<String, Calculation> calculations = new TreeMap<>();
    final Map<String, Table> tables = new TreeMap<>();
    final Map<String, Declaration.TableDeclaration> tableTexts = new TreeMap<>();
    final Map<String, Operation> operations = new TreeMap<>();
    final Map<String, Declaration.OperationDeclaration> operationTexts = new TreeMap<>();
    final Map<String, Rule> rules = new TreeMap<>();
    private final Map<Operation, List<Rule.Judged>> rulesByOperation = new IdentityHashMap<>();
    /** By the very type of each property and setting: words of one type may be many, and asked for is it at every measurement. */
    private final Map<Type, Measuring> measuring = new IdentityHashMap<>();
    private final Map<Operation, List<Rule>> settingRules = new IdentityHashMap<>();
    final List<Property> properties = new ArrayList<>();
    private final Map<String, Property> byPath = new HashMap<>();
    final Map<String, String> parts = new LinkedHashMap<>();
    final Map<String, Type> settings = new TreeMap<>();
    private final Map<String, Span> replaced = new HashMap<>();
    String productKind;
    /** Products that are declared in texts which are not read here: of these nothing is known but the name. */
    final TreeMap<String, Thing> elsewhere = new TreeMap<>();
    /** In rules' examples, which are no houses, any name is a product's; the place of such a one, else null. */
    private Span anyProduct;

    Vocabulary() {}

    /** The same for the examples of rules. */
    Vocabulary forExamples(Span place) {
        Vocabulary examples = new Vocabulary(this);
        examples.anyProduct = place;
        return examples;
    }

    /** The same with other products: all else is shared, and none of it is changed by that. */
    Vocabulary(Vocabulary common) {
        units = common.units;
        arithmetic = common.arithmetic;
        dimensions.putAll(common.dimensions);
        dimensionNames.putAll(common.dimensionNames);
        axes.putAll(common.axes);
        stations.putAll(common.stations);
        kinds.putAll(common.kinds);
        entries.putAll(common.entries);
        things.putAll(common.things);
        calculations.putAll(common.calculations);
        tables.putAll(common.tables);
        tableTexts.putAll(common.tableTexts);
        operations.putAll(common.operations);
        operationTexts.putAll(common.operationTexts);
        rules.putAll(common.rules);
        rulesByOperation.putAll(common.rulesByOperation);
        measuring.putAll(common.measuring);
        settingRules.putAll(common.settingRules);
        properties.addAll(common.properties);
        byPath.putAll(common.byPath);
        parts.putAll(common.parts);
        settings.putAll(common.settings);
        replaced.putAll(common.replaced);
        productKind = common.productKind;
        elsewhere.putAll(common.elsewhere);
        things.remove(productKind);
    }

    void name(Measure measure, String name) {
        dimensionNames.putIfAbsent(measure, name);
    }

    void replaces(String what, String name, Span earlier) {
        replaced.put(what + " " + name, earlier);
    }

    /** Whether any declaration stands in place of another. */
    public boolean replacesSomething() {
        return !replaced.isEmpty();
    }

    /** Where the declaration stands that a works replaced by its own, or null; {@code what} is its kind of declaration. */
    public Span replaced(String what, String name) {
        return replaced.get(what + " " + name);
    }

    void add(Property property) {
        properties.add(property);
        byPath.put(property.path(), property);
    }

    @Override
    public UnitTable units() {
        return units;
    }

    @Override
    public Arithmetic arithmetic() {
        return arithmetic;
    }

    @Override
    public Thing thing(String kind, String name) {
        TreeMap<String, Thing> ofKind = things.get(kind);
        Thing thing = ofKind == null ? null : ofKind.get(name);
        if (thing != null || !kind.equals(productKind)) {
            return thing;
        }
        return anyProduct == null ? elsewhere.get(name) : new Thing(kind, name, name, anyProduct);
    }

    @Override
    public Collection<String> thingNames(String kind) {
        TreeMap<String, Thing> ofKind = things.get(kind);
        Collection<String> names = ofKind == null ? List.of() : ofKind.keySet();
        if (elsewhere.isEmpty() || !kind.equals(productKind)) {
            return names;
        }
        Set<String> all = new TreeSet<>(names);
        all.addAll(elsewhere.keySet());
        return all;
    }

    /** All things of a kind in the order of their names. */
    public Collection<Thing> things(String kind) {
        TreeMap<String, Thing> ofKind = things.get(kind);
        return ofKind == null ? List.of() : ofKind.values();
    }

    /** All things, by kind and name. */
    public List<Thing> things() {
        return things.values().stream().flatMap(m -> m.values().stream()).toList();
    }

    @Override
    public Map<String, EntryType> entries(String kind) {
        return entries.get(kind);
    }

    /** The entry at a dotted path of a kind, through the kinds of its blocks; or null. */
    public EntryType entryType(String kind, String path) {
        EntryType entry = null;
        for (String name : path.split("\\.")) {
            entry = entries.containsKey(kind) ? entries.get(kind).get(name) : null;
            if (entry == null) {
                return null;
            }
            kind = entry.type() instanceof Type.ThingOf of ? of.kind() : "";
        }
        return entry;
    }

    public Collection<String> kindNames() {
        return kinds.keySet();
    }

    public Declaration.KindDeclaration kind(String name) {
        return kinds.get(name);
    }

    @Override
    public String productKind() {
        return productKind;
    }

    @Override
    public Property property(String part, String name) {
        return byPath.get(part == null ? name : part + "." + name);
    }

    /**
     * The property that a step of an operation means by a plain name or path: of the part it works, of the whole piece, or
     * the only one of that name. {@code null} if there is none, or several.
     */
    public Property propertyFor(String works, String path) {
        Property own = byPath.get(works == null ? path : works + "." + path);
        if (own == null) {
            own = byPath.get(path);
        }
        if (own != null) {
            return own;
        }
        List<Property> named = properties.stream().filter(p -> p.name().equals(path)).toList();
        return named.size() == 1 ? named.get(0) : null;
    }

    @Override
    public Collection<String> parts() {
        return parts.keySet();
    }

    /** A part's title; the product's kind for the whole piece. */
    public String partTitle(String part) {
        return part == null ? productKind : parts.get(part);
    }

    @Override
    public List<Property> properties() {
        return Collections.unmodifiableList(properties);
    }

    @Override
    public Table table(String name) {
        return tables.get(name);
    }

    @Override
    public Collection<String> tableNames() {
        return tables.keySet();
    }

    public Declaration.TableDeclaration tableText(String name) {
        return tableTexts.get(name);
    }

    @Override
    public Calculation calculation(String name) {
        return calculations.get(name);
    }

    @Override
    public Collection<String> calculationNames() {
        return calculations.keySet();
    }

    public Operation operation(String name) {
        return operations.get(name);
    }

    public Collection<Operation> operations() {
        return operations.values();
    }

    public Declaration.OperationDeclaration operationText(String name) {
        return operationTexts.get(name);
    }

    /** Rules by what they are judged at, worked out once everything is loaded. */
    void sortRules() {
        for (Operation operation : operations.values()) {
            rulesByOperation.put(operation, rules.values().stream().filter(r -> r.forms().containsKey(operation))
                    .map(r -> new Rule.Judged(r, r.forms().get(operation))).toList());
            settingRules.put(operation, rules.values().stream().filter(r -> r.used().containsKey(operation)).toList());
        }
        List<Rule> ofMeasurement = rulesFor(Rule.Subject.MEASUREMENT);
        properties().forEach(property ->
                measuring.computeIfAbsent(property.type(), type -> Measuring.of(this, ofMeasurement, type)));
        operations().forEach(operation -> operation.takes().forEach(taken ->
                measuring.computeIfAbsent(taken.type(), type -> Measuring.of(this, ofMeasurement, type))));
    }

    /** The rules judged at every step of an operation, by name. */
    public List<Rule.Judged> rulesAt(Operation operation) {
        return rulesByOperation.getOrDefault(operation, List.of());
    }

    /** How the limit of a property or setting is judged, by its type as the vocabulary has it. */
    public Measuring measuring(Type measured) {
        return measuring.get(measured);
    }

    /** The rules judged at settings of every step of an operation, by name. */
    public List<Rule> settingRulesAt(Operation operation) {
        return settingRules.getOrDefault(operation, List.of());
    }

    /** The rules for the product or for a kind, by name. */
    public List<Rule> rulesFor(Rule.Subject subject) {
        return rules.values().stream().filter(r -> r.subject() == subject).toList();
    }

    public Rule rule(String name) {
        return rules.get(name);
    }

    public Collection<Rule> rules() {
        return rules.values();
    }

    @Override
    public Collection<Axis> axes() {
        return axes.values();
    }

    @Override
    public double station(Axis axis, String name, Thing product) {
        if (name.equals(axis.start())) {
            return 0;
        }
        Node node = stations.getOrDefault(axis.name(), Map.of()).get(name);
        if (node == null || product == null) {
            return Double.NaN;
        }
        Frame frame = new Frame();
        frame.product = product;
        return node.eval(frame) instanceof Value.Num num ? num.quantity().aim().middle() : Double.NaN;
    }

    /** How far a named place along an axis is from its start, as an expression of the product; null where that is not known. */
    public Node stationOf(Axis axis, String name) {
        return stations.getOrDefault(axis.name(), Map.of()).get(name);
    }

    @Override
    public Type anySetting(String name) {
        return settings.get(name);
    }

    @Override
    public String nameOf(Measure measure) {
        String name = dimensionNames.get(measure);
        if (name != null) {
            return name;
        }
        if (measure.dimension().isHardness()) {
            return measure.point() ? "hardness" : "hardness-difference";
        }
        return "quantity in " + units.shownFor(measure.dimension()).sign();
    }
}
