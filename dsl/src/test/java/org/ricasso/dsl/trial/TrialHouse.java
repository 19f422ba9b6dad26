package org.ricasso.dsl.trial;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.rules.RuleExamples;
import org.ricasso.dsl.solve.Lock;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.Damage;
import org.ricasso.dsl.syntax.ParseResult;
import org.ricasso.dsl.syntax.Parser;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.dsl.vocabulary.VocabularyLoader;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.dsl.walk.HouseCheck;
import org.ricasso.dsl.walk.LockedHouse;
import org.ricasso.dsl.walk.Solved;
import org.ricasso.shared.calculation.Calculation;

/**
 * The demonstration house with the shipped texts, in memory: what a trial changes is changed in a copy. The house is read
 * from its module beside this one.
 */
public final class TrialHouse {
    public static final String COOKS = "cooks-200.ricasso";
    public static final String ROUTE = "forged-riveted.ricasso";
    public static final String SIZES = "cooks.ricasso";
    public static final String PARING = "paring-90.ricasso";
    public static final String WORKS = "works.ricasso";
    /** The name of a knife that is written out, or of a row that begins with one. */
    private static final Pattern KNIFE = Pattern.compile("(?m)^knife ([a-z0-9-]+)|^ +\\| ([a-z]+-\\d+) +\\| \"");
    private static final Path FOLDER = Path.of("..", "specs", "src", "main", "ricasso");
    private static final List<Calculation> CALCULATIONS = Ricasso.calculations(TrialHouse.class.getClassLoader());
    private static final Texts WHOLE = Ricasso.withShipped(new Texts(works(), Map.of(), lock()));
    /** Texts that no trial changed are read once. */
    private static final Map<SourceFile, ParseResult> PARSED = new ConcurrentHashMap<>();

    private final Texts texts;

    private TrialHouse(Texts texts) {
        this.texts = texts;
    }

    public static TrialHouse whole() {
        return new TrialHouse(WHOLE);
    }

    /** The house with one cook's knife and the paring knife alone, so that a mistake in works or route is one knife's alone. */
    public static TrialHouse single() {
        return new TrialHouse(new Texts(WHOLE.files().stream().filter(f -> !isAnotherKnife(f)).toList(), WHOLE.data(), WHOLE.lock()));
    }

    /** The house with tools that say of no knife that they fit it, for further knives that are like those of the house. */
    public TrialHouse fitsAll() {
        return new TrialHouse(new Texts(texts.files().stream().map(f -> f.shipped() ? f : new SourceFile(f.name(),
                f.text().replaceAll("(; )?fits: +[a-z0-9-]+(, [a-z0-9-]+)*", ""), false)).toList(), texts.data(), texts.lock()));
    }

    private static boolean isAnotherKnife(SourceFile file) {
        return !file.shipped() && KNIFE.matcher(file.text()).find() && !file.name().equals(COOKS) && !file.name().equals(PARING);
    }

    /** Knives of the whole house that are left out here, with their text: tools may say that they fit them. */
    private Map<String, SourceFile> elsewhere() {
        Map<String, SourceFile> result = new TreeMap<>();
        WHOLE.files().stream().filter(f -> isAnotherKnife(f) && texts.files().stream().noneMatch(own -> own.name().equals(f.name())))
                .forEach(f -> KNIFE.matcher(f.text()).results().forEach(m -> result.put(m.group(1) != null ? m.group(1) : m.group(2), f)));
        return result;
    }

    public static TrialHouse of(Texts texts) {
        return new TrialHouse(texts);
    }

    private static List<SourceFile> works() {
        try (Stream<Path> walk = Files.walk(FOLDER)) {
            return walk.filter(p -> p.toString().endsWith(".ricasso")).sorted(Comparator.naturalOrder())
                    .map(TrialHouse::read).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static SourceFile lock() {
        Path file = FOLDER.resolve(Lock.NAME);
        return Files.exists(file) ? read(file) : null;
    }

    private static SourceFile read(Path path) {
        try {
            return new SourceFile(FOLDER.relativize(path).toString().replace('\\', '/'),
                    Files.readString(path, StandardCharsets.UTF_8), false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Texts texts() {
        return texts;
    }

    /** A text or a table's rows by name. */
    public SourceFile file(String name) {
        return Stream.concat(texts.files().stream(), texts.data().values().stream()).filter(f -> f.name().equals(name))
                .findFirst().orElseThrow(() -> new AssertionError("no text is named " + name));
    }

    /** The names of all texts that are not rows of a table. */
    public List<String> names() {
        return texts.files().stream().map(SourceFile::name).toList();
    }

    /** A copy in which one stretch of a text, which must stand there exactly once in whatever layout, is written otherwise. */
    public TrialHouse with(String file, String old, String other) {
        return with(file, text -> Stretch.replaced(text, old, other));
    }

    /** A copy with another text. */
    public TrialHouse with(String name, UnaryOperator<String> change) {
        SourceFile old = file(name);
        SourceFile changed = new SourceFile(old.name(), change.apply(old.text()), old.shipped());
        List<SourceFile> files = new ArrayList<>(texts.files());
        files.replaceAll(f -> f == old ? changed : f);
        Map<String, SourceFile> data = new LinkedHashMap<>(texts.data());
        data.replaceAll((n, f) -> f == old ? changed : f);
        return new TrialHouse(new Texts(files, data, texts.lock()));
    }

    /** A copy with another lock; null for none. */
    public TrialHouse withLock(String text) {
        return new TrialHouse(texts.with(text == null ? null : new SourceFile(Lock.NAME, text, false)));
    }

    /** The lock as it stands, or an empty text. */
    public String lockText() {
        return texts.lock() == null ? "" : texts.lock().text();
    }

    /** Solves as the facade does. */
    public Solved solve() {
        return Ricasso.solve(texts, CALCULATIONS, Set.of());
    }

    /** The facade itself on these texts. */
    public Ricasso ricasso() {
        // tools that fit knives which are left out here name what the facade cannot know
        return Ricasso.check(elsewhere().isEmpty() ? texts : fitsAll().texts(), CALCULATIONS, Set.of());
    }

    /** A copy with edits applied as they stand, in all files that they speak of. */
    public TrialHouse with(List<Edit> edits) {
        List<Edit> backwards = new ArrayList<>(edits);
        backwards.sort(Comparator.comparingInt((Edit e) -> e.span().start()).reversed());
        TrialHouse result = this;
        for (Edit edit : backwards) {
            result = result.with(edit.span().file().name(), text -> text.substring(0, edit.span().start())
                    + edit.replacement() + text.substring(edit.span().end()));
        }
        return result;
    }

    /** Checks as the facade does; texts that were read before are not read again. */
    public CheckedHouse check() {
        List<ParseResult> parsed = texts.files().stream().map(TrialHouse::parsed).toList();
        Damage damage = Damage.of(parsed);
        Findings findings = new Findings(damage);
        VocabularyLoader.Loaded loaded = load(parsed, findings);
        House house = LockedHouse.of(House.load(loaded, damage, findings), Lock.read(texts.lock(), findings), Set.of(), findings);
        return HouseCheck.check(house, findings, Set.of());
    }

    /** Loads the vocabulary and runs the examples of its rules, and goes no further. */
    public Vocabulary vocabulary(Findings findings) {
        return load(texts.files().stream().map(TrialHouse::parsed).toList(), findings).vocabulary();
    }

    private VocabularyLoader.Loaded load(List<ParseResult> parsed, Findings findings) {
        parsed.forEach(p -> findings.addSyntax(p.diagnostics()));
        VocabularyLoader.Loaded loaded = VocabularyLoader.load(parsed.stream().map(ParseResult::tree).toList(), texts.data(),
                CALCULATIONS, findings, elsewhere());
        RuleExamples.run(loaded.vocabulary(), findings);
        return loaded;
    }

    private static ParseResult parsed(SourceFile file) {
        return WHOLE.files().contains(file) ? PARSED.computeIfAbsent(file, Parser::parse) : Parser.parse(file);
    }

    public List<Diagnostic> diagnostics() {
        return check().diagnostics();
    }

    public List<Diagnostic> errors() {
        return diagnostics().stream().filter(d -> d.severity() == Severity.ERROR).toList();
    }
}
