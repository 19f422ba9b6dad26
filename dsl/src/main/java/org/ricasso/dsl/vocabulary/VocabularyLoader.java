package org.ricasso.dsl.vocabulary;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.evaluate.Axis;
import org.ricasso.dsl.evaluate.Checker;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Scope;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Declaration.ThingDeclaration;
import org.ricasso.dsl.syntax.ExpressionResult;
import org.ricasso.dsl.syntax.Head;
import org.ricasso.dsl.syntax.Name;
import org.ricasso.dsl.syntax.Parser;
import org.ricasso.dsl.syntax.SyntaxTree;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.quantity.Measure;

/**
 * Loads a vocabulary from the texts, stage by stage: units, kinds and the workpiece, tables, operations, rules. Things are
 * known by name before anything speaks of them; their entries are read later, by the house.
 */
public final class VocabularyLoader {
    private static final Set<String> BUILT_IN = Set.of("unit", "dimension", "axis", "family");
    private final Vocabulary vocabulary;
    private final Findings findings;
    private final List<Declaration.ThingDeclaration> things = new ArrayList<>();
    private final List<Family> families = new ArrayList<>();
    private final Set<String> finals = new TreeSet<>();
    private Map<String, Declaration.RouteDeclaration> routes = Map.of();
    private Map<String, SourceFile> elsewhere = Map.of();

    private VocabularyLoader(Vocabulary vocabulary, Findings findings) {
        this.vocabulary = vocabulary;
        this.findings = findings;
    }

    /**
     * A vocabulary and what is left for the house.
     *
     * @param vocabulary the vocabulary
     * @param things the declarations of things, each name once, by kind and name; a family's rows too
     * @param families the families
     * @param routes the routes that others take over, by name
     */
    public record Loaded(Vocabulary vocabulary, List<Declaration.ThingDeclaration> things, List<Family> families,
            Map<String, Declaration.RouteDeclaration> routes) {}

    public static Loaded load(List<SyntaxTree> trees, Map<String, SourceFile> data, List<Calculation> calculations,
            Findings findings) {
        return load(trees, data, calculations, findings, Map.of());
    }

    /** @param elsewhere names of products that are declared in other texts, with their text: things may name them */
    public static Loaded load(List<SyntaxTree> trees, Map<String, SourceFile> data, List<Calculation> calculations,
            Findings findings, Map<String, SourceFile> elsewhere) {
        VocabularyLoader loader = new VocabularyLoader(new Vocabulary(), findings);
        loader.elsewhere = elsewhere;
        loader.load(trees, data, calculations);
        return new Loaded(loader.vocabulary, List.copyOf(loader.things), List.copyOf(loader.families), loader.routes);
    }

    /**
     * What was loaded, with other products: those of more texts, which hold nothing else, beside its own.
     *
     * @param common whose things are filled
     * @param trees of the texts that it was loaded from, then of the others
     * @return its things are products alone
     */
    public static Loaded products(Loaded common, List<SyntaxTree> trees, Findings findings) {
        VocabularyLoader loader = new VocabularyLoader(new Vocabulary(common.vocabulary()), findings);
        String productKind = common.vocabulary().productKind();
        loader.things(loader.withFamilies(trees.stream().flatMap(tree -> tree.declarations().stream())
                .filter(ThingDeclaration.class::isInstance).map(ThingDeclaration.class::cast)
                .filter(thing -> thing.kind().text().equals(productKind) || thing.kind().text().equals("family")).toList()));
        return new Loaded(loader.vocabulary, List.copyOf(loader.things), List.copyOf(loader.families), common.routes());
    }

    private void load(List<SyntaxTree> trees, Map<String, SourceFile> data, List<Calculation> calculations) {
        List<Declaration> all = trees.stream().flatMap(t -> t.declarations().stream()).toList();
        new UnitReader(vocabulary, findings).read(of(all, Declaration.ThingDeclaration.class));
        calculations.forEach(c -> vocabulary.calculations.putIfAbsent(c.name(), c));
        Map<String, Declaration.KindDeclaration> kinds = named(of(all, Declaration.KindDeclaration.class), "kind");
        vocabulary.kinds.putAll(kinds);
        FieldReader fields = new FieldReader(vocabulary, findings);
        kinds.forEach((name, kind) -> vocabulary.entries.put(name, fields.types(kind.fields())));
        List<Declaration.WorkpieceDeclaration> pieces = of(all, Declaration.WorkpieceDeclaration.class);
        WorkpieceReader workpiece = new WorkpieceReader(vocabulary, findings);
        if (!pieces.isEmpty()) {
            workpiece.product(pieces.get(0));
            elsewhere.forEach((name, file) -> vocabulary.elsewhere.put(name,
                    new Thing(vocabulary.productKind, name, name, new Span(file, 0, 0))));
        }
        things(withFamilies(of(all, Declaration.ThingDeclaration.class)));
        routes = named(of(all, Declaration.RouteDeclaration.class), "route");
        if (!pieces.isEmpty()) {
            pieces.stream().skip(1).forEach(p -> findings.add(Diagnostic.error("declared-twice",
                    new Mark(p.span(), "the workpiece is declared twice")).and(new Mark(pieces.get(0).span(), "first here"))));
            workpiece.properties(pieces.get(0));
        }
        kinds.forEach((name, kind) -> {
            Map<String, EntryType> whole = new LinkedHashMap<>();
            fields.whole(kind.fields(), vocabulary.entries.get(name), Scope.roots(Set.of()))
                    .forEach(e -> whole.put(e.name(), e));
            vocabulary.entries.put(name, whole);
        });
        if (pieces.isEmpty() && findings.declarationLost()) {
            // without the workpiece nothing is known that an operation or a rule speaks of
            return;
        }
        axisLengths();

        Map<String, Declaration.TableDeclaration> tables = named(of(all, Declaration.TableDeclaration.class), "table");
        TableReader tableReader = new TableReader(vocabulary, findings, data);
        // a table before another adds its rows to it, so the other comes first
        List<Declaration.TableDeclaration> whole = tables.values().stream().filter(t -> !TableReader.isBefore(t)).toList();
        List<Declaration.TableDeclaration> before = tables.values().stream().filter(TableReader::isBefore).toList();
        whole.forEach(tableReader::read);
        // what is expected of a table is expected of its own rows
        whole.forEach(tableReader::expectations);
        before.forEach(tableReader::readBefore);
        before.forEach(tableReader::expectations);

        OperationReader operations = new OperationReader(vocabulary, findings);
        Map<String, Declaration.OperationDeclaration> written =
                named(of(all, Declaration.OperationDeclaration.class), "operation");
        Map<String, Map<String, EntryType>> settings = new HashMap<>();
        written.forEach((name, operation) -> settings.put(name, operations.settings(operation)));
        written.forEach((name, operation) -> operations.read(operation, settings.get(name)));

        RuleReader rules = new RuleReader(vocabulary, findings);
        named(of(all, Declaration.RuleDeclaration.class), "rule").values().forEach(rules::read);
        vocabulary.sortRules();
    }

    private static <T extends Declaration> List<T> of(List<Declaration> all, Class<T> type) {
        return all.stream().filter(type::isInstance).map(type::cast).toList();
    }

    /** The declarations by name in the order of the names; a second one of a name is a finding unless it replaces it. */
    private <T extends Declaration> Map<String, T> named(List<T> declarations, String what) {
        Map<String, T> result = new TreeMap<>();
        for (T declaration : declarations) {
            Head head = head(declaration);
            if (head.replaces() == null) {
                T earlier = result.putIfAbsent(head.name().text(), declaration);
                if (earlier != null) {
                    Replacements.twice(what, head.name(), head(earlier).name(), findings);
                }
            }
        }
        Replacements replacements = new Replacements(what, findings);
        for (T declaration : declarations) {
            Head head = head(declaration);
            if (head.replaces() != null && replacements.mayReplace(head, result.keySet())) {
                T earlier = result.put(head.name().text(), declaration);
                vocabulary.replaces(what, head.name().text(), head(earlier).name().span());
            }
        }
        return result;
    }

    /** The declarations of things, the rows of families among them. */
    private List<Declaration.ThingDeclaration> withFamilies(List<Declaration.ThingDeclaration> declarations) {
        List<Declaration.ThingDeclaration> result = new ArrayList<>(declarations);
        List<Family> all = new ArrayList<>();
        Set<String> products = new TreeSet<>();
        for (Declaration.ThingDeclaration declaration : declarations) {
            if (declaration.kind().text().equals(vocabulary.productKind)) {
                products.add(declaration.head().name().text());
            } else if (declaration.kind().text().equals("family") && vocabulary.productKind != null) {
                Family family = Family.read(declaration, vocabulary.productKind, findings);
                if (family != null) {
                    all.add(family);
                    family.rows().forEach(row -> finals.add(row.product().head().name().text()));
                }
            }
        }
        for (Family family : all) {
            if (finals.contains(family.like().text())) {
                isFinal(family.like());
            } else if (!products.contains(family.like().text())) {
                findings.unknownThing(family.like().span(), vocabulary.productKind, family.like().text(), products);
            } else {
                families.add(family);
                family.rows().forEach(row -> result.add(row.product()));
                continue;
            }
            family.rows().forEach(row -> findings.drop(row.product().head().name().text()));
        }
        return result;
    }

    private void isFinal(Name like) {
        findings.add(Diagnostic.error("family-row-final", new Mark(like.span(), like
                + " is a row of a family and cannot be taken over"))
                .because("a size is changed in its row alone, so that nothing else changes with it unseen"));
    }

    private static Head head(Declaration declaration) {
        if (declaration instanceof Declaration.RouteDeclaration route) {
            return route.head();
        }
        if (declaration instanceof Declaration.ThingDeclaration thing) {
            return thing.head();
        }
        if (declaration instanceof Declaration.KindDeclaration kind) {
            return kind.head();
        }
        if (declaration instanceof Declaration.TableDeclaration table) {
            return table.head();
        }
        if (declaration instanceof Declaration.OperationDeclaration operation) {
            return operation.head();
        }
        return ((Declaration.RuleDeclaration) declaration).head();
    }

    private void things(List<Declaration.ThingDeclaration> declarations) {
        Map<String, List<Declaration.ThingDeclaration>> byKind = new TreeMap<>();
        for (Declaration.ThingDeclaration declaration : declarations) {
            String kind = declaration.kind().text();
            if (BUILT_IN.contains(kind)) {
                continue;
            }
            if (!vocabulary.kinds.containsKey(kind)) {
                Set<String> known = new TreeSet<>(vocabulary.kinds.keySet());
                known.addAll(Set.of("kind", "workpiece", "operation", "table", "rule", "route", "family", "words"));
                findings.unknownName(declaration.kind().span(), "kind", kind, known);
                findings.drop(declaration.head().name().text());
                continue;
            }
            byKind.computeIfAbsent(kind, k -> new ArrayList<>()).add(declaration);
        }
        for (Declaration.ThingDeclaration declaration : byKind.getOrDefault(
                vocabulary.productKind == null ? "" : vocabulary.productKind, List.of())) {
            Name like = declaration.head().like();
            if (like != null && finals.contains(like.text()) && !finals.contains(declaration.head().name().text())) {
                isFinal(like);
            }
        }
        byKind.forEach((kind, all) -> named(all, kind).forEach((name, declaration) -> {
            things.add(declaration);
            Head head = declaration.head();
            String title = head.title() == null ? name : head.title().written();
            vocabulary.things.computeIfAbsent(kind, k -> new TreeMap<>()).put(name,
                    new Thing(kind, name, title, head.name().span(), vocabulary.replaced(kind, name)));
        }));
    }

    private void axisLengths() {
        Set<String> roots = vocabulary.productKind == null ? Set.of() : Set.of(vocabulary.productKind);
        for (Axis axis : vocabulary.axes.values()) {
            Map<String, Node> places = new HashMap<>();
            places.put(axis.end(), place(axis.length(), roots));
            axis.stations().forEach((name, place) -> places.put(name, place(place, roots)));
            vocabulary.stations.put(axis.name(), places);
        }
    }

    /** The distance of a place from the axis' start; null after a finding. */
    private Node place(Span text, Set<String> roots) {
        ExpressionResult parsed = Parser.parseCell(text.file(), text.start(), text.end());
        findings.addAll(parsed.diagnostics());
        return parsed.expression() == null ? null : new Checker(vocabulary, Scope.roots(roots), findings)
                .check(parsed.expression(), new Type.Measured(Measure.LENGTH, "length")).node();
    }
}
