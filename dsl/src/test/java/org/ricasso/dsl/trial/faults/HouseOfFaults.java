package org.ricasso.dsl.trial.faults;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.Set;
import java.util.stream.Collectors;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Shows;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.solve.Lock;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Damage;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.ParseResult;
import org.ricasso.dsl.syntax.Parser;
import org.ricasso.dsl.syntax.SyntaxTree;
import org.ricasso.dsl.trial.TrialHouse;
import org.ricasso.dsl.vocabulary.VocabularyLoader;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.HouseCheck;
import org.ricasso.dsl.walk.LockedHouse;

/**
 * The demonstration house without its products, loaded once, and its products written out. One knife at a time is
 * checked in it, which takes milliseconds.
 */
final class HouseOfFaults {
    private static final Set<String> PRODUCTS = Set.of("knife", "family");
    private final List<ParseResult> common;
    private final VocabularyLoader.Loaded loaded;
    private final List<WrittenKnife> knives;
    private final House house;

    /** @param more a text with more things, such as centres that no knife uses yet */
    HouseOfFaults(String more) {
        Texts whole = TrialHouse.whole().texts();
        Findings findings = new Findings(Damage.of(List.of()));
        house = whole(whole, findings);
        knives = house.routes().entrySet().stream().map(e -> written(e.getKey(), e.getValue()))
                .sorted(Comparator.comparing(WrittenKnife::name)).toList();
        List<SourceFile> files = new ArrayList<>(whole.files().stream().map(HouseOfFaults::withoutProducts).toList());
        files.add(new SourceFile("trial-things.ricasso", more, false));
        common = files.stream().map(Parser::parse).toList();
        common.forEach(p -> findings.addSyntax(p.diagnostics()));
        loaded = VocabularyLoader.load(common.stream().map(ParseResult::tree).toList(), whole.data(),
                Ricasso.calculations(HouseOfFaults.class.getClassLoader()), findings, house.routes().keySet().stream()
                        .collect(Collectors.toMap(Thing::name, knife -> knife.span().file())));
        House.load(loaded, Damage.of(common), findings);
        if (!findings.all().isEmpty()) {
            throw new AssertionError(findings.all());
        }
    }

    List<WrittenKnife> knives() {
        return knives;
    }

    /** The vocabulary's things of a kind, by name. */
    Map<String, Thing> things(String kind) {
        Map<String, Thing> result = new TreeMap<>();
        loaded.vocabulary().things(kind).forEach(thing -> result.put(thing.name(), thing));
        return result;
    }

    /** The properties that a step of an operation may measure. */
    List<String> measurable(String operation) {
        return loaded.vocabulary().properties().stream().filter(p -> loaded.vocabulary().operation(operation).measures().contains(p.slot()))
                .map(Property::name).toList();
    }

    /** What is found when a text with one knife and its parts' routes is checked. */
    List<Diagnostic> check(String text) {
        ParseResult own = Parser.parse(new SourceFile("knife.ricasso", text, false));
        List<ParseResult> all = new ArrayList<>(common);
        all.add(own);
        Damage damage = Damage.of(all);
        Findings findings = new Findings(damage);
        findings.addSyntax(own.diagnostics());
        List<SyntaxTree> trees = all.stream().map(ParseResult::tree).toList();
        VocabularyLoader.Loaded products = VocabularyLoader.products(loaded, trees, findings);
        Map<String, Declaration.RouteDeclaration> routes = new TreeMap<>(products.routes());
        own.tree().declarations().stream().filter(Declaration.RouteDeclaration.class::isInstance)
                .map(Declaration.RouteDeclaration.class::cast).forEach(r -> routes.put(r.head().name().text(), r));
        House one = House.load(new VocabularyLoader.Loaded(products.vocabulary(), products.things(), products.families(), routes), damage,
                findings);
        for (CheckedProduct product : HouseCheck.products(one, p -> true, false)) {
            findings.addAll(product.diagnostics());
        }
        List<Diagnostic> found = new ArrayList<>(findings.all());
        found.sort(Diagnostic.ORDER);
        return found;
    }

    private static House whole(Texts texts, Findings findings) {
        List<ParseResult> parsed = texts.files().stream().map(Parser::parse).toList();
        VocabularyLoader.Loaded all = VocabularyLoader.load(parsed.stream().map(ParseResult::tree).toList(), texts.data(),
                Ricasso.calculations(HouseOfFaults.class.getClassLoader()), findings);
        return LockedHouse.of(House.load(all, Damage.of(parsed), findings), Lock.read(texts.lock(), findings), Set.of(), findings);
    }

    /** A text without its knives, families and routes. */
    private static SourceFile withoutProducts(SourceFile file) {
        if (file.shipped()) {
            return file;
        }
        List<Declaration> declarations = Parser.parse(file).tree().declarations();
        StringBuilder left = new StringBuilder(file.text());
        for (int i = declarations.size() - 1; i >= 0; i--) {
            Declaration declaration = declarations.get(i);
            if (declaration instanceof Declaration.RouteDeclaration || declaration instanceof Declaration.WordsDeclaration
                    || declaration instanceof Declaration.ThingDeclaration thing && PRODUCTS.contains(thing.kind().text())) {
                int end = i + 1 < declarations.size() ? declarations.get(i + 1).span().start() : left.length();
                left.delete(declaration.span().start(), end);
            }
        }
        return new SourceFile(file.name(), left.toString(), false);
    }

    private static WrittenKnife written(Thing product, Route route) {
        Map<String, String> spec = new LinkedHashMap<>();
        entries("", product.entries(), product, spec);
        Map<String, List<WrittenStep>> parts = new LinkedHashMap<>();
        route.parts().forEach(part -> parts.put(part.part(), part.steps().stream().map(HouseOfFaults::written).toList()));
        return new WrittenKnife(product.name(), product.title(), spec, parts, route.steps().stream().map(HouseOfFaults::written).toList(),
                route.loops().stream().map(l -> new WrittenKnife.Loop(route.steps().get(l.from()).number(),
                        route.steps().get(l.to()).number(), l.when().name(), l.times())).toList());
    }

    private static void entries(String prefix, Map<String, Value> entries, Thing product, Map<String, String> spec) {
        entries.forEach((name, value) -> {
            String path = prefix + name;
            if (value instanceof Value.Entries block) {
                entries(path + ".", block.entries(), product, spec);
            } else if (product.places().containsKey(path)) {
                spec.put(path, text(value, product.places().get(path).value()));
            }
        });
    }

    private static WrittenStep written(RouteStep step) {
        Map<String, String> settings = new LinkedHashMap<>();
        for (int i = 0; i < step.settings().length; i++) {
            if (step.places()[i] != null) {
                settings.put(step.operation().takes().get(i).name(), text(step.settings()[i], step.places()[i]));
            }
        }
        Map<String, Map<String, String>> measures = new LinkedHashMap<>();
        for (RouteStep.Measure measure : step.measures()) {
            Map<String, String> how = new HashMap<>();
            measure.places().forEach((entry, place) -> how.put(entry, place.text()));
            measures.put(measure.property().name(), new TreeMap<>(how));
        }
        return new WrittenStep(step.number(), step.operation().name(), step.centre() == null ? null : step.centre().name(), settings,
                measures);
    }

    /** As it stands in the text; what was solved for, or is put together from stations, as it is. */
    private static String text(Value value, Span place) {
        if (value instanceof Value.Along along) {
            StringBuilder grid = new StringBuilder("\n                | at | value |");
            along.stations().forEach(s -> grid.append("\n                | ").append(s.name()).append(" | ")
                    .append(Shows.show(new Value.Num(s.quantity()))).append(" |"));
            return grid.toString();
        }
        return value instanceof Value.Num && (place.text().startsWith("solve") || place.file().name().equals(Lock.NAME))
                ? Shows.show(value) : place.text();
    }
}
