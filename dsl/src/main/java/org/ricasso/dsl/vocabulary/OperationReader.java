package org.ricasso.dsl.vocabulary;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.Checker;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Scope;
import org.ricasso.dsl.evaluate.TextNode;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Text;

/** Reads operations and checks them against the vocabulary. */
final class OperationReader {
    private static final Set<String> SECTIONS = Set.of("purpose", "at", "works", "disturbs", "measures", "joins");
    private final Vocabulary vocabulary;
    private final Findings findings;

    OperationReader(Vocabulary vocabulary, Findings findings) {
        this.vocabulary = vocabulary;
        this.findings = findings;
    }

    /** The settings' types, so that rules for every step can speak of them. */
    Map<String, EntryType> settings(Declaration.OperationDeclaration declaration) {
        Map<String, EntryType> typed = new FieldReader(vocabulary, findings).types(declaration.takes());
        typed.values().forEach(entry -> vocabulary.settings.putIfAbsent(entry.name(), entry.type()));
        return typed;
    }

    void read(Declaration.OperationDeclaration declaration, Map<String, EntryType> typed) {
        Map<String, Declaration.ValueEntry> entries = new LinkedHashMap<>();
        for (Declaration.ValueEntry entry : declaration.entries()) {
            if (entries.putIfAbsent(entry.name().text(), entry) != null) {
                findings.error("declared-twice", entry.name().span(), entry.name() + " stands twice");
            }
        }
        String works = works(entries.get("works"));
        Map<String, Value> attributes = attributes(entries);
        Set<String> roots = roots();
        Scope plain = new Scope(List.of(), new ArrayList<>(), null, false, null, roots, attributes, false, false);
        List<EntryType> takes = new FieldReader(vocabulary, findings).whole(declaration.takes(), typed, plain);
        names(takes, works);
        List<Scope.Let> lets = new ArrayList<>();
        Scope scope = new Scope(takes, lets, works, true, null, roots, attributes, true, false);
        Scope leaving = new Scope(takes, lets, works, true, null, roots, attributes, false, false);

        List<Operation.Need> needs = new ArrayList<>();
        for (Declaration.Need need : declaration.needs()) {
            Property property = property(works, need.path().text(), need.path().span());
            if (property == null) {
                continue;
            }
            Type asked = property.type() == Type.Plain.CLOCK ? vocabularyDuration()
                    : need.condition() instanceof Expression.ListOf ? new Type.ListOf(property.type()) : property.type();
            Checker.Checked condition = new Checker(vocabulary, scope, findings).check(need.condition(), asked);
            needs.add(new Operation.Need(property, condition.node(), need.complaint().written(), condition.reads(),
                    need.span()));
        }

        List<Node> letNodes = new ArrayList<>();
        List<org.ricasso.dsl.evaluate.Reads> letReads = new ArrayList<>();
        List<Operation.Leave> leaves = new ArrayList<>();
        for (Declaration.Effect effect : declaration.leaves()) {
            Checker checker = new Checker(vocabulary, leaving, findings);
            if (effect instanceof Declaration.Effect.Let let) {
                Checker.Checked checked = checker.check(let.value(), null);
                free(let.name().text(), let.name().span(), works, takes);
                letNodes.add(checked.node());
                letReads.add(checked.reads());
                lets.add(new Scope.Let(let.name().text(), checked.node().type()));
                continue;
            }
            Declaration.Effect.Leave leave = (Declaration.Effect.Leave) effect;
            Property property = property(works, leave.path().text(), leave.path().span());
            if (property == null) {
                continue;
            }
            Type asked = property.type() == Type.Plain.CLOCK ? vocabularyDuration() : property.type();
            Checker.Checked checked = checker.check(leave.value(), asked);
            if (leaves.stream().anyMatch(l -> l.property() == property)) {
                findings.error("declared-twice", leave.path().span(), property.path() + " is left twice");
            }
            leaves.add(new Operation.Leave(property, checked.node(), all(checked.reads(), leave.value(), lets, letReads)));
        }

        Node setUp = null;
        Node run = null;
        for (Declaration.ValueEntry entry : declaration.time()) {
            Node node = new Checker(vocabulary, scope, findings).check(entry.value(), null).node();
            switch (entry.name().text()) {
                case "set-up" -> setUp = node;
                case "run" -> run = node;
                default -> findings.unknownName(entry.name().span(), "time", entry.name().text(), List.of("set-up", "run"));
            }
        }
        List<TextNode> instruct = new ArrayList<>();
        for (Text text : declaration.instruct()) {
            instruct.add(new Checker(vocabulary, scope, findings).text(text));
        }
        String name = declaration.head().name().text();
        String title = declaration.head().title() == null ? name : declaration.head().title().written();
        String purpose = entries.containsKey("purpose") ? UnitReader.text(entries.get("purpose").value()) : "";
        vocabulary.operations.put(name, new Operation(name, title, purpose, at(entries.get("at")), works, takes, needs,
                letNodes, leaves, slots(entries.get("disturbs"), works), slots(entries.get("measures"), works), joins(entries.get("joins")), attributes,
                setUp, run, instruct, declaration.head().name().span(), lets.stream().map(Scope.Let::name).toList()));
        vocabulary.operationTexts.put(name, declaration);
    }

    private Type vocabularyDuration() {
        return new Type.Measured(org.ricasso.shared.quantity.Measure.DURATION, "duration");
    }

    private Set<String> roots() {
        Set<String> roots = new TreeSet<>(Set.of("operation"));
        if (vocabulary.kinds.containsKey("centre")) {
            roots.add("centre");
        }
        if (vocabulary.productKind != null) {
            roots.add(vocabulary.productKind);
        }
        return roots;
    }

    /** What an expression reads, with what the in-between values it names read. */
    private static org.ricasso.dsl.evaluate.Reads all(org.ricasso.dsl.evaluate.Reads own, Expression expression,
            List<Scope.Let> lets, List<org.ricasso.dsl.evaluate.Reads> letReads) {
        String text = expression.span().text();
        for (int i = lets.size() - 1; i >= 0; i--) {
            if (java.util.regex.Pattern.compile("(?<![\\w-])" + java.util.regex.Pattern.quote(lets.get(i).name())
                    + "(?![\\w-])").matcher(text).find()) {
                own.addAll(letReads.get(i));
            }
        }
        return own;
    }

    private String works(Declaration.ValueEntry entry) {
        if (entry == null) {
            return null;
        }
        String part = UnitReader.text(entry.value());
        if (!vocabulary.parts.containsKey(part)) {
            findings.unknownName(entry.value().span(), "part", part, vocabulary.parts.keySet());
            return null;
        }
        return part;
    }

    private Set<String> joins(Declaration.ValueEntry entry) {
        Set<String> result = new LinkedHashSet<>();
        if (entry == null) {
            return result;
        }
        for (Expression part : entry.value() instanceof Expression.ListOf list ? list.elements() : List.of(entry.value())) {
            String name = part.span().text().strip();
            if (vocabulary.parts.containsKey(name)) {
                result.add(name);
            } else {
                findings.unknownName(part.span(), "part", name, vocabulary.parts.keySet());
            }
        }
        return result;
    }

    private Map<String, Value> attributes(Map<String, Declaration.ValueEntry> entries) {
        Map<String, EntryType> known = vocabulary.entries.getOrDefault("operation", Map.of());
        Map<String, Value> result = new LinkedHashMap<>();
        for (EntryType attribute : known.values()) {
            Declaration.ValueEntry entry = entries.get(attribute.name());
            if (entry != null) {
                result.put(attribute.name(), new Checker(vocabulary, Scope.roots(Set.of()), findings)
                        .check(entry.value(), attribute.type()).node().eval(new Frame()));
            } else if (attribute.byDefault() != null) {
                result.put(attribute.name(), attribute.byDefault().eval(new Frame()));
            }
        }
        for (Declaration.ValueEntry entry : entries.values()) {
            if (!SECTIONS.contains(entry.name().text()) && !known.containsKey(entry.name().text())) {
                Set<String> all = new TreeSet<>(known.keySet());
                all.addAll(SECTIONS);
                findings.unknownName(entry.name().span(), "entry of operations", entry.name().text(), all);
            }
        }
        return result;
    }

    private List<Thing> at(Declaration.ValueEntry entry) {
        Map<String, EntryType> centre = vocabulary.entries.get("centre");
        if (entry == null || centre == null || !(centre.containsKey("is")
                && centre.get("is").type() instanceof Type.ThingOf kind)) {
            return List.of();
        }
        Value value = new Checker(vocabulary, Scope.roots(Set.of()), findings)
                .check(entry.value(), new Type.ListOf(kind)).node().eval(new Frame());
        List<Thing> result = new ArrayList<>();
        for (Value one : value instanceof Value.Several several ? several.values() : List.of(value)) {
            if (one instanceof Value.Ref ref) {
                result.add(ref.thing());
            }
        }
        return result;
    }

    private Set<Integer> slots(Declaration.ValueEntry entry, String works) {
        Set<Integer> result = new LinkedHashSet<>();
        if (entry == null) {
            return result;
        }
        List<Expression> paths = entry.value() instanceof Expression.ListOf list ? list.elements() : List.of(entry.value());
        for (Expression path : paths) {
            Property property = property(works, path.span().text().strip(), path.span());
            if (property != null) {
                result.add(property.slot());
            }
        }
        return result;
    }

    private Property property(String works, String path, Span span) {
        Property property = vocabulary.propertyFor(works, path);
        if (property == null) {
            findings.unknownName(span, "property", path, vocabulary.properties.stream()
                    .map(p -> p.part() == null || p.part().equals(works) ? p.name() : p.path()).toList());
        }
        return property;
    }

    private void names(List<EntryType> takes, String works) {
        for (EntryType setting : takes) {
            free(setting.name(), setting.span(), works, List.of());
        }
    }

    /** A setting or in-between value may not share its name with a property, a setting, or a word of a property. */
    private void free(String name, Span span, String works, List<EntryType> takes) {
        for (Property property : vocabulary.properties) {
            if (property.part() != null && !property.part().equals(works)) {
                continue;
            }
            boolean word = property.type() instanceof Type.WordsOf words && words.words().contains(name);
            if (property.name().equals(name) || word) {
                findings.add(Diagnostic.error("name-clash", new Mark(span, name + (word
                        ? " is also a word of the property " + property.path() : " is also a property of the piece")))
                        .and(new Mark(property.span(), "declared here")));
                return;
            }
        }
        if (takes.stream().anyMatch(s -> s.name().equals(name))) {
            findings.error("name-clash", span, name + " is also a setting");
        }
    }
}
