package org.ricasso.dsl;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.rules.RuleExamples;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.Damage;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.syntax.Expression;
import org.ricasso.dsl.syntax.ParseResult;
import org.ricasso.dsl.syntax.Parser;
import org.ricasso.dsl.syntax.SyntaxTree;
import org.ricasso.dsl.vocabulary.VocabularyLoader;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.HouseCheck;
import org.ricasso.dsl.words.WordsLoader;
import org.ricasso.shared.calculation.Calculation;

/**
 * Checks a house of any number of products in a heap that holds its texts and a batch of products: batch by batch, and
 * of each nothing is kept but what was found.
 *
 * <p>What is found is the same as by {@link Ricasso#check}. A batch in which nothing is found is done with. All texts in which
 * something is found are checked once more together, since findings in several texts may have one cause. Remedies that look at how
 * other products do something look at those of these texts alone. A house that can
 * only be judged as a whole is: one with a lock or settings to be solved, with words of its own, with a vocabulary of its own
 * altogether, or one whose common texts cannot be read.
 */
public final class LargeHouse {
    /** Products that are held at a time. */
    private static final int BATCH = 64;
    /** The name of no product. */
    private static final String NOTHING = "";
    private static final Pattern WORKPIECE = Pattern.compile("(?m)^[ \\t]*workpiece[ \\t]+of[ \\t]+([\\p{L}\\d_-]+)");
    private final Texts texts;
    private final Map<SourceFile, Integer> places = new IdentityHashMap<>();
    private final List<Calculation> calculations;
    private final Consumer<CheckedProduct> products;
    private final boolean pages;
    private List<ParseResult> common;
    /** Products of the texts that are checked in batches, with their text: common things may name them. */
    private Map<String, SourceFile> elsewhere = Map.of();
    /** What the common texts declare. */
    private VocabularyLoader.Loaded vocabulary;
    private int checked;

    private LargeHouse(Texts texts, List<Calculation> calculations, Consumer<CheckedProduct> products, boolean pages) {
        this.texts = texts;
        this.calculations = calculations;
        this.products = products;
        this.pages = pages;
    }

    /** Checks for what is found alone. */
    public static Verdict check(Texts texts, List<Calculation> calculations) {
        return new LargeHouse(texts, calculations, product -> { }, false).check(BATCH);
    }

    /**
     * Checks, and hands on each product for its pages.
     *
     * @param products is handed each product once, from one thread, those of one batch in the order of their names
     */
    public static Verdict check(Texts texts, List<Calculation> calculations, Consumer<CheckedProduct> products) {
        return check(texts, calculations, products, BATCH);
    }

    static Verdict check(Texts texts, List<Calculation> calculations, Consumer<CheckedProduct> products, int batch) {
        return new LargeHouse(texts, calculations, products, true).check(batch);
    }

    private Verdict check(int size) {
        List<SourceFile> inOrder = texts.inOrder();
        String productKind = productKind(inOrder);
        if (productKind == null || texts.lock() != null
                || inOrder.stream().anyMatch(file -> !file.shipped() && solves(file))) {
            return whole();
        }
        for (int i = 0; i < inOrder.size(); i++) {
            places.put(inOrder.get(i), i);
        }
        Batches batches = new Batches(inOrder, productKind);
        elsewhere = batches.products();
        common = parsed(batches.common());
        // what cannot be read may be what any product lacks; words of the works may be missing for any of them
        if (common.stream().anyMatch(result -> !result.diagnostics().isEmpty() || !result.tree().file().shipped()
                && result.tree().declarations().stream().anyMatch(Declaration.WordsDeclaration.class::isInstance))) {
            return whole();
        }
        List<Diagnostic> ofAll = together(List.of(), set(batches.common()));
        Set<SourceFile> strange = set(List.of());
        for (List<SourceFile> batch : batches.of(size)) {
            strange.addAll(batch(batch, Set.copyOf(ofAll), batches));
        }
        List<Diagnostic> found = strange.isEmpty() ? ofAll : together(batches.groupsOf(strange), strange);
        return new Verdict(checked, found);
    }

    /** Whether settings of a text are to be solved: a lock speaks of all products at once. */
    private static boolean solves(SourceFile file) {
        String text = file.text();
        for (int at = text.indexOf(Expression.Call.SOLVE); at >= 0; at = text.indexOf(Expression.Call.SOLVE, at + 1)) {
            int behind = at + Expression.Call.SOLVE.length();
            while (behind < text.length() && (text.charAt(behind) == ' ' || text.charAt(behind) == '\t')) {
                behind++;
            }
            if (behind < text.length() && text.charAt(behind) == '(') {
                return true;
            }
        }
        return false;
    }

    /** The kind of the products as a shipped text declares it; null where the works declares its own. */
    private static String productKind(List<SourceFile> inOrder) {
        for (SourceFile file : inOrder) {
            Matcher workpiece = WORKPIECE.matcher(file.text());
            if (workpiece.find()) {
                return file.shipped() ? workpiece.group(1) : null;
            }
        }
        return null;
    }

    private Verdict whole() {
        CheckedHouse house = Ricasso.check(texts, calculations, Set.of()).checked();
        house.products().forEach(products);
        return new Verdict(house.products().size(), house.diagnostics());
    }

    /** @return the texts with findings, and those in their groups: their products are not handed on */
    private Set<SourceFile> batch(List<SourceFile> batch, Set<Diagnostic> ofAll, Batches batches) {
        Set<SourceFile> own = set(batch);
        List<ParseResult> parsed = inOrder(batch);
        Damage damage = Damage.of(parsed);
        Findings findings = new Findings(damage);
        parsed.forEach(result -> findings.addSyntax(result.diagnostics()));
        House house = House.load(VocabularyLoader.products(vocabulary,
                parsed.stream().map(ParseResult::tree).toList(), findings), damage, findings);
        parsed.clear();
        List<CheckedProduct> held = HouseCheck.products(house, product -> own.contains(product.span().file()), pages);
        held.forEach(product -> findings.addAll(product.diagnostics()));
        Set<SourceFile> marked = set(List.of());
        for (Diagnostic diagnostic : findings.all()) {
            if (!ofAll.contains(diagnostic)) {
                List<SourceFile> marks = Stream.concat(Stream.of(diagnostic.primary()), diagnostic.others().stream())
                        .map(mark -> mark.span().file()).filter(own::contains).toList();
                // what marks none of them may be due to any of them
                marked.addAll(marks.isEmpty() ? batch : marks);
            }
        }
        Set<SourceFile> strange = set(batches.groupsOf(marked));
        held.stream().filter(product -> !strange.contains(product.product().span().file())).forEach(this::hand);
        return strange;
    }

    private void hand(CheckedProduct product) {
        checked++;
        products.accept(product);
    }

    /** What all texts rest on with some more, parsed, in the order of the texts. */
    private List<ParseResult> inOrder(List<SourceFile> some) {
        List<ParseResult> parsed = new ArrayList<>(common);
        parsed.addAll(parsed(some));
        parsed.sort(Comparator.comparing(result -> places.get(result.tree().file())));
        return parsed;
    }

    /**
     * Checks what all texts rest on together with some more, as a house of its own.
     *
     * @param in the texts whose products are checked
     */
    private List<Diagnostic> together(List<SourceFile> some, Set<SourceFile> in) {
        List<ParseResult> parsed = inOrder(some);
        Damage damage = Damage.of(parsed);
        Findings findings = new Findings(damage);
        parsed.forEach(result -> findings.addSyntax(result.diagnostics()));
        List<SyntaxTree> trees = parsed.stream().map(ParseResult::tree).toList();
        VocabularyLoader.Loaded loaded = VocabularyLoader.load(trees, texts.data(), calculations, findings, elsewhere);
        RuleExamples.run(loaded.vocabulary(), findings);
        WordsLoader.load(trees, loaded, findings, Set.of());
        House house = House.load(loaded, damage, findings);
        if (vocabulary == null) {
            vocabulary = loaded;
        }
        Set<String> names = new TreeSet<>(Set.of(NOTHING));
        house.routes().keySet().stream().filter(product -> in.contains(product.span().file()))
                .forEach(product -> names.add(product.name()));
        CheckedHouse result = HouseCheck.check(house, findings, names);
        result.products().stream().filter(product -> in.contains(product.product().span().file())).forEach(this::hand);
        return result.diagnostics();
    }

    private static List<ParseResult> parsed(List<SourceFile> files) {
        return files.parallelStream().map(Parser::parse).toList();
    }

    private static Set<SourceFile> set(List<SourceFile> files) {
        Set<SourceFile> result = Collections.newSetFromMap(new IdentityHashMap<>());
        result.addAll(files);
        return result;
    }
}
