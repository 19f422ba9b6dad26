package org.ricasso.dsl.vocabulary;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.evaluate.Checker;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Reads;
import org.ricasso.dsl.evaluate.Scope;
import org.ricasso.dsl.evaluate.TextNode;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.EntryReader;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.dsl.syntax.Path;
import org.ricasso.shared.quantity.Measure;

/** Reads rules: each is checked once for every operation it applies to, so that nothing is looked up when it runs. */
final class RuleReader {
    private static final List<String> ENTRIES =
            List.of("for", "when", "require", "say", "mark", "because", "source", "level");
    private final Vocabulary vocabulary;
    private final RuleScopes scopes;
    private final Findings findings;
    /** The vocabulary as examples see it. */
    private Vocabulary examples;

    RuleReader(Vocabulary vocabulary, Findings findings) {
        this.vocabulary = vocabulary;
        this.scopes = new RuleScopes(vocabulary);
        this.findings = findings;
    }

    void read(Declaration.RuleDeclaration declaration) {
        Map<String, Declaration.ValueEntry> entries = new HashMap<>();
        for (Declaration.ValueEntry entry : declaration.entries()) {
            if (!ENTRIES.contains(entry.name().text())) {
                findings.unknownName(entry.name().span(), "entry of rules", entry.name().text(), ENTRIES);
            }
            if (entries.putIfAbsent(entry.name().text(), entry) != null) {
                findings.error("declared-twice", entry.name().span(), entry.name() + " stands twice");
            }
        }
        for (String required : List.of("for", "require", "because")) {
            if (!entries.containsKey(required)) {
                findings.missing("missing-entry", declaration.span(), "a rule says " + required + ":");
                return;
            }
        }
        String subjectName = UnitReader.text(entries.get("for").value());
        Rule.Subject subject = subject(subjectName, entries.get("for"));
        if (subject == null) {
            return;
        }
        Map<Operation, Rule.Form> forms = new IdentityHashMap<>();
        if (subject == Rule.Subject.OPERATION) {
            Operation operation = vocabulary.operation(subjectName);
            forms.put(operation, form(declaration, entries, scopes.inOperation(operation), operation, findings).form());
        } else if (subject == Rule.Subject.STEP) {
            for (Operation operation : vocabulary.operations()) {
                // an operation whose setting of the name has another type says so, and is none of the rule's
                Findings own = new Findings();
                Applied applied = form(declaration, entries, scopes.atStep(operation), operation, own);
                if (applied.applies() && own.isEmpty()) {
                    forms.put(operation, applied.form());
                }
            }
        }
        Map<Type, Rule.Form> measured = subject == Rule.Subject.MEASUREMENT ? measured(declaration, entries) : Map.of();
        Map<Operation, Map<Integer, Rule.Form>> used = new IdentityHashMap<>();
        Map<Type, Rule.Form> kinds = subject == Rule.Subject.SETTING ? used(declaration, entries, used) : Map.of();
        if (subject == Rule.Subject.MEASUREMENT && measured.isEmpty() || subject == Rule.Subject.SETTING && kinds.isEmpty()) {
            return;
        }
        Scope scope = switch (subject) {
            case OPERATION -> scopes.inOperation(vocabulary.operation(subjectName));
            case STEP -> scopes.anyStep();
            case MEASUREMENT -> scopes.ofMeasurement(measured.keySet().iterator().next());
            case SETTING -> scopes.anySetting((Type.ThingOf) kinds.keySet().iterator().next());
            default -> scopes.ofThing(subjectName);
        };
        Rule.Form general = subject == Rule.Subject.OPERATION ? forms.values().iterator().next()
                : subject == Rule.Subject.MEASUREMENT ? measured.values().iterator().next()
                : subject == Rule.Subject.SETTING ? kinds.values().iterator().next()
                : form(declaration, entries, scope, null, findings).form();
        String name = declaration.head().name().text();
        String title = declaration.head().title() == null ? name : declaration.head().title().written();
        vocabulary.rules.put(name, new Rule(name, title, subject, subjectName, level(entries.get("level")),
                text(entries.get("because")), text(entries.get("source")), forms, measured, used, general,
                examples(declaration, scope, subject == Rule.Subject.SETTING ? kinds : measured), declaration));
    }

    /** The forms of a rule for measurements: one for each type of limit of which all that it says can be said. */
    private Map<Type, Rule.Form> measured(Declaration.RuleDeclaration declaration, Map<String, Declaration.ValueEntry> entries) {
        for (EntryType entry : vocabulary.entries(Reading.MEASUREMENT).values()) {
            if (List.of(Reading.LIMIT, Reading.READING, Reading.PROPERTY).contains(entry.name())) {
                findings.error("declared-twice", entry.span(), entry.name() + " means something of its own in rules for measurements");
            }
        }
        Map<Type, Rule.Form> forms = new LinkedHashMap<>();
        Findings least = null;
        for (Type type : Reading.limits(vocabulary)) {
            Findings own = new Findings();
            Rule.Form form = form(declaration, entries, scopes.ofMeasurement(type), null, own).form();
            if (own.isEmpty()) {
                forms.put(type, form);
            } else if (least == null || own.count() < least.count()) {
                least = own;
            }
        }
        if (forms.isEmpty() && least != null) {
            findings.addAll(least.all());
        }
        return forms;
    }

    /**
     * The forms of a rule for settings.
     *
     * @param used is filled: a form for each setting of which all that the rule says can be said
     * @return a form for each kind of things in such settings, for examples; empty after a finding
     */
    private Map<Type, Rule.Form> used(Declaration.RuleDeclaration declaration, Map<String, Declaration.ValueEntry> entries,
            Map<Operation, Map<Integer, Rule.Form>> used) {
        Map<Type, Rule.Form> kinds = new LinkedHashMap<>();
        Findings least = new Findings();
        for (Type.ThingOf kind : Used.kinds(vocabulary.operations())) {
            Findings own = new Findings();
            Rule.Form form = form(declaration, entries, scopes.anySetting(kind), null, own).form();
            if (own.isEmpty()) {
                kinds.put(kind, form);
            } else if (least.isEmpty() || own.count() < least.count()) {
                least = own;
            }
        }
        if (kinds.isEmpty() && least.isEmpty()) {
            findings.error("unknown-name", entries.get("for").value().span(), "no operation takes a setting that names a thing");
        } else if (kinds.isEmpty()) {
            findings.addAll(least.all());
        }
        for (Operation operation : vocabulary.operations()) {
            Map<Integer, Rule.Form> forms = new LinkedHashMap<>();
            for (int i = 0; i < operation.takes().size(); i++) {
                Type.ThingOf kind = Used.kind(operation.takes().get(i));
                Applied applied = !kinds.containsKey(kind) ? null
                        : form(declaration, entries, scopes.atStep(operation, Used.names(kind)), operation, new Findings());
                if (applied != null && applied.applies()) {
                    forms.put(i, applied.form());
                }
            }
            if (!forms.isEmpty()) {
                used.put(operation, forms);
            }
        }
        return kinds;
    }

    /** The type of limit that an example is for: the first that can be what the example writes. */
    private Type limit(Declaration.Example example, Map<Type, Rule.Form> measured) {
        for (Declaration.Binding binding : example.bindings()) {
            if (binding.path().text().equals(Reading.LIMIT)) {
                for (Type type : measured.keySet()) {
                    Findings own = new Findings();
                    new EntryReader(vocabulary, own, null).read(binding.value(),
                            EntryType.plain(Reading.LIMIT, type, null, binding.span()));
                    if (own.isEmpty()) {
                        return type;
                    }
                }
            }
        }
        return measured.keySet().iterator().next();
    }

    /** @param several the forms of a rule that has one for each of several types of what it speaks of */
    private List<Rule.Example> examples(Declaration.RuleDeclaration declaration, Scope general, Map<Type, Rule.Form> several) {
        List<Rule.Example> result = new ArrayList<>();
        for (Declaration.Example example : declaration.examples()) {
            String outcome = example.outcome().text();
            if (!outcome.equals("passes") && !outcome.equals("fails")) {
                findings.error("unknown-word", example.outcome().span(), "an example passes or fails");
                continue;
            }
            Type kind = several.isEmpty() ? null : several.keySet().iterator().next() instanceof Type.ThingOf
                    ? kind(example, several) : limit(example, several);
            Scope scope = kind == null ? general : kind instanceof Type.ThingOf of ? scopes.anySetting(of) : scopes.ofMeasurement(kind);
            result.add(new Rule.Example(outcome.equals("passes"), bound(example, scope, findings),
                    kind == null ? null : several.get(kind), example.outcome().span()));
        }
        return result;
    }

    /** The kind of thing that an example of a rule for settings is for: the first that can be what the example writes. */
    private Type kind(Declaration.Example example, Map<Type, Rule.Form> kinds) {
        for (Type kind : kinds.keySet()) {
            Findings own = new Findings();
            bound(example, scopes.anySetting((Type.ThingOf) kind), own);
            if (own.isEmpty()) {
                return kind;
            }
        }
        return kinds.keySet().iterator().next();
    }

    private Map<String, Value> bound(Declaration.Example example, Scope scope, Findings into) {
        if (examples == null) {
            examples = vocabulary.forExamples(example.outcome().span());
        }
        Map<String, Value> bound = new HashMap<>();
        for (Declaration.Binding binding : example.bindings()) {
            Type written = new Checker(examples, scope, into).check(expression(binding.path()), null).node().type();
            // a clock is bound by the time that it shows
            Type type = written == Type.Plain.CLOCK ? new Type.Measured(Measure.DURATION, vocabulary.nameOf(Measure.DURATION)) : written;
            Value read = new EntryReader(examples, into, null).read(binding.value(),
                    EntryType.plain(binding.path().text(), type, null, binding.span()));
            if (bound.putIfAbsent(binding.path().text(), read) != null) {
                into.error("declared-twice", binding.span(), binding.path().text() + " is bound twice");
            }
        }
        return bound;
    }

    /** The path as the expression that reads it. */
    private static Expression expression(Path path) {
        Expression result = new Expression.NameUse(path.names().get(0), path.names().get(0).span());
        for (Name name : path.names().subList(1, path.names().size())) {
            result = new Expression.Member(result, name, result.span().to(name.span()));
        }
        return result;
    }

    private Rule.Subject subject(String name, Declaration.ValueEntry entry) {
        if (name.equals("step") || name.equals(Used.SETTING)) {
            return name.equals("step") ? Rule.Subject.STEP : Rule.Subject.SETTING;
        }
        if (vocabulary.operation(name) != null) {
            return Rule.Subject.OPERATION;
        }
        if (vocabulary.kinds.containsKey(name)) {
            return name.equals(vocabulary.productKind()) ? Rule.Subject.PRODUCT
                    : name.equals(Reading.MEASUREMENT) ? Rule.Subject.MEASUREMENT : Rule.Subject.KIND;
        }
        Set<String> known = new TreeSet<>(vocabulary.kindNames());
        vocabulary.operations().forEach(o -> known.add(o.name()));
        known.addAll(List.of("step", Used.SETTING));
        findings.unknownName(entry.value().span(), "operation or kind", name, known);
        return null;
    }

    private Rule.Level level(Declaration.ValueEntry entry) {
        if (entry == null) {
            return Rule.Level.ERROR;
        }
        for (Rule.Level level : Rule.Level.values()) {
            if (level.name().toLowerCase(Locale.ROOT).equals(UnitReader.text(entry.value()))) {
                return level;
            }
        }
        findings.error("unknown-word", entry.value().span(), "a level is safety, error, warning or note");
        return Rule.Level.ERROR;
    }

    private static String text(Declaration.ValueEntry entry) {
        return entry == null ? "" : UnitReader.text(entry.value());
    }

    private record Applied(Rule.Form form, boolean applies) {}

    private Applied form(Declaration.RuleDeclaration declaration, Map<String, Declaration.ValueEntry> entries,
            Scope scope, Operation operation, Findings into) {
        Checker checker = new Checker(vocabulary, scope, into);
        boolean applies = true;
        Node when = null;
        Reads asked = new Reads();
        if (entries.containsKey("when")) {
            Checker.Checked checked = checker.check(entries.get("when").value(), Type.Plain.LOGIC);
            when = checked.node();
            asked = checked.reads();
            applies = checked.applies();
        }
        Reads reads = new Reads();
        List<Node> lets = new ArrayList<>();
        List<Reads> letReads = new ArrayList<>();
        for (Declaration.Effect.Let let : declaration.lets()) {
            Checker.Checked checked = checker.check(let.value(), null);
            lets.add(checked.node());
            letReads.add(checked.reads());
            applies &= checked.applies();
            scope.lets().add(new Scope.Let(let.name().text(), checked.node().type()));
        }
        Checker.Checked require = checker.check(entries.get("require").value(), Type.Plain.LOGIC);
        applies &= require.applies();
        reads.addAll(require.reads());
        letReads.forEach(reads::addAll);
        TextNode say = null;
        if (entries.get("say") != null && entries.get("say").value() instanceof Expression.TextLiteral text) {
            say = checker.text(text.text());
        }
        Rule.Mark mark = entries.containsKey("mark") ? mark(entries.get("mark"), scope, operation, into) : null;
        Rule.Remedy remedy = declaration.remedy().isEmpty() ? null
                : remedy(declaration, scope, operation, checker, into);
        return new Applied(new Rule.Form(when, lets, require.node(), say, reads, mark, remedy, asked), applies);
    }

    private Rule.Mark mark(Declaration.ValueEntry entry, Scope scope, Operation operation, Findings into) {
        String path = entry.value().span().text().strip();
        if (operation != null) {
            int setting = operation.setting(path.startsWith("step.") ? path.substring(5) : path);
            if (setting >= 0) {
                return new Rule.Mark(setting, null);
            }
        }
        if (scope.anyStep()) {
            return new Rule.Mark(-1, null);
        }
        String product = vocabulary.productKind();
        if (scope.given().containsKey(path)) {
            return new Rule.Mark(-1, path);
        }
        boolean ofThing = scope.self() != null;
        if (ofThing || product != null && path.startsWith(product + ".")) {
            new Checker(vocabulary, scope, into).check(entry.value(), null);
            return new Rule.Mark(-1, product != null && path.startsWith(product + ".")
                    ? path.substring(product.length() + 1) : path);
        }
        List<String> known = operation == null ? List.of() : operation.takes().stream().map(EntryType::name).toList();
        into.unknownName(entry.value().span(), "setting or entry", path, known);
        return null;
    }

    private Type entryType(String path) {
        EntryType entry = vocabulary.entryType(vocabulary.productKind(), path);
        return entry == null ? null : entry.type();
    }

    private Rule.Remedy remedy(Declaration.RuleDeclaration declaration, Scope scope, Operation operation, Checker checker,
            Findings into) {
        Rule.Mark target = null;
        Rule.Change change = null;
        Expression amount = null;
        for (Declaration.ValueEntry entry : declaration.remedy()) {
            String name = entry.name().text();
            if (name.equals("set")) {
                target = mark(entry, scope, operation, into);
                continue;
            }
            Rule.Change found = null;
            for (Rule.Change one : Rule.Change.values()) {
                if (one.name().toLowerCase(Locale.ROOT).equals(name)) {
                    found = one;
                }
            }
            if (found == null || change != null) {
                into.error("remedy-unclear", entry.span(),
                        "a remedy has set: and one of most: least: middle: tolerance: to:");
                return null;
            }
            change = found;
            amount = entry.value();
        }
        if (target == null || change == null) {
            into.error("remedy-unclear", declaration.remedySpan(),
                    "a remedy has set: and one of most: least: middle: tolerance: to:");
            return null;
        }
        Type type = change == Rule.Change.TOLERANCE ? null
                : target.setting() >= 0 && operation != null ? operation.takes().get(target.setting()).type()
                        : target.entry() == null ? null : entryType(target.entry());
        return new Rule.Remedy(target, change, checker.check(amount, type).node(), declaration.remedySpan());
    }
}
