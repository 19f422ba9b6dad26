package org.ricasso.dsl;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import org.ricasso.dsl.answer.Calculator;
import org.ricasso.dsl.answer.Explainer;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.rules.RuleExamples;
import org.ricasso.dsl.solve.Lock;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.Damage;
import org.ricasso.dsl.syntax.ParseResult;
import org.ricasso.dsl.syntax.Parser;
import org.ricasso.dsl.syntax.SyntaxTree;
import org.ricasso.dsl.vocabulary.VocabularyLoader;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.dsl.walk.HouseCheck;
import org.ricasso.dsl.walk.LockedHouse;
import org.ricasso.dsl.walk.Solved;
import org.ricasso.dsl.words.TranslatorSheet;
import org.ricasso.dsl.words.Words;
import org.ricasso.dsl.words.WordsLoader;
import org.ricasso.shared.Shipped;
import org.ricasso.shared.calculation.Calculation;
import org.ricasso.shared.calculation.Calculations;

/**
 * The door to the language: texts in, a checked house out.
 *
 * <p>One pass a stage: text → tree → vocabulary → house → checked house. A stage takes the last one's result and gives its
 * own and what it found; nothing is changed after it is handed on. The result depends on nothing but its input.
 */
public final class Ricasso {
    private final House house;
    private final CheckedHouse checked;
    private final Words words;

    private Ricasso(House house, CheckedHouse checked, Words words) {
        this.house = house;
        this.checked = checked;
        this.words = words;
    }

    /**
     * Loads and checks a house.
     *
     * @param texts the texts, vocabulary and all; nothing is added
     * @param calculations the calculations that the texts may call
     * @param only names or numbers of the products to check; empty for all
     */
    public static Ricasso check(Texts texts, List<Calculation> calculations, Set<String> only) {
        return check(texts, calculations, only, Set.of());
    }

    /**
     * Loads and checks a house whose pages are to be whole in some languages.
     *
     * @param whole tags of the languages in which each printed text must have words; without them it is an error
     */
    public static Ricasso check(Texts texts, List<Calculation> calculations, Set<String> only, Set<String> whole) {
        Loaded loaded = load(texts, calculations, whole);
        House house = LockedHouse.of(loaded.house(), Lock.read(texts.lock(), loaded.findings()), only, loaded.findings());
        return new Ricasso(house, HouseCheck.check(house, loaded.findings(), only), loaded.words());
    }

    /**
     * Solves for all settings that ask for it, and says what the lock is to hold. What cannot be solved now keeps its line.
     *
     * @param texts the texts, vocabulary and all, with the lock as it is
     * @param only names or numbers of the products to solve for; empty for all
     */
    public static Solved solve(Texts texts, List<Calculation> calculations, Set<String> only) {
        Loaded loaded = load(texts, calculations, Set.of());
        return Solved.of(loaded.house(), texts.lock(), only, loaded.findings().all());
    }

    /**
     * What is still to be written in a language, as texts to fill in, by file name.
     *
     * @param texts the texts, vocabulary and all
     * @param language the language's tag, such as {@code de}
     */
    public static SortedMap<String, String> wordsToWrite(Texts texts, List<Calculation> calculations, String language) {
        List<SyntaxTree> trees = texts.inOrder().stream().map(text -> Parser.parse(text).tree()).toList();
        return TranslatorSheet.of(trees, VocabularyLoader.load(trees, texts.data(), calculations, new Findings()), language);
    }

    private record Loaded(House house, Words words, Findings findings) {}

    /** Of the trees nothing is kept but what the house holds on to. */
    private static Loaded load(Texts texts, List<Calculation> calculations, Set<String> whole) {
        List<ParseResult> parsed = texts.inOrder().parallelStream().map(Parser::parse).toList();
        Damage damage = Damage.of(parsed);
        Findings findings = new Findings(damage);
        parsed.forEach(p -> findings.addSyntax(p.diagnostics()));
        List<SyntaxTree> trees = parsed.stream().map(ParseResult::tree).toList();
        VocabularyLoader.Loaded loaded = VocabularyLoader.load(trees, texts.data(), calculations, findings);
        RuleExamples.run(loaded.vocabulary(), findings);
        Words words = WordsLoader.load(trees, loaded, findings, whole);
        return new Loaded(House.load(loaded, damage, findings), words, findings);
    }

    /** The works' own texts with those shipped in {@code shared} before them. */
    public static Texts withShipped(Texts own) {
        return withShipped(own, Shipped.class.getClassLoader());
    }

    /** The works' own texts with those that a class loader finds before them: ours, then those of other libraries. */
    public static Texts withShipped(Texts own, ClassLoader loader) {
        List<SourceFile> files = new ArrayList<>();
        Map<String, SourceFile> data = new LinkedHashMap<>(own.data());
        Shipped.texts(loader).forEach((name, text) -> {
            SourceFile file = new SourceFile(name, text, true);
            if (name.endsWith(".csv")) {
                data.put(name, file);
            } else {
                files.add(file);
            }
        });
        files.addAll(own.files());
        return new Texts(files, data, own.lock());
    }

    /**
     * The calculations that a class loader finds, ours and those a works brings, in the order of their names.
     *
     * @throws IllegalStateException if two providers offer one name
     */
    public static List<Calculation> calculations(ClassLoader loader) {
        return List.copyOf(Calculations.all(loader).values());
    }

    public CheckedHouse checked() {
        return checked;
    }

    /** What the texts are in other languages. */
    public Words words() {
        return words;
    }

    /** The house as loaded. */
    public House house() {
        return house;
    }

    /**
     * Evaluates one expression of the language.
     *
     * @param expression the expression
     * @param product a product's name or number, so that the root of that kind, its entries and {@code after.…} can be
     *     used; or null
     */
    public Calculator.Answer calculate(String expression, String product) {
        return new Calculator(house).calculate(expression, product);
    }

    /** What the texts say of a name (rule, operation, kind, property, table, calculation, thing), as plain lines. */
    public Optional<List<String>> explain(String name) {
        List<String> lines = new Explainer(house).explain(name);
        return lines.isEmpty() ? Optional.empty() : Optional.of(lines);
    }

    /** Names near one that is not known, best first. */
    public List<String> near(String name) {
        return new Explainer(house).near(name);
    }
}
