package org.ricasso.templates.page;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.words.Phrase;

/** The pages of a house in one language of its set. */
final class LanguagePages {
    /** With more products than this the overview keeps their steps folded. */
    private static final int OPEN_UP_TO = 6;

    private final TemplateEngine engine;
    private final String house;
    private final Tongue tongue;
    private final SetLanguages languages;
    private final Map<String, Object> common = new HashMap<>();

    LanguagePages(TemplateEngine engine, String house, Tongue tongue, SetLanguages languages) {
        this.engine = engine;
        this.house = house;
        this.tongue = tongue;
        this.languages = languages;
        new TemplateWords(tongue.page()).into(common);
        common.put("lang", tongue.tag());
        common.put("english", tongue.source().tag());
        common.put("dir", tongue.page().plain("language.direction").equals("rtl") ? "rtl" : "ltr");
        common.put("copyFoot", CssText.escaped(tongue.page().plain("print.copy")));
        common.put("pageFoot", pageFoot());
    }

    /** The number of a printed sheet as the value of {@code content} in a style sheet. */
    private String pageFoot() {
        return tongue.page().entry("print.page").pieces().stream().map(LanguagePages::content).collect(Collectors.joining(" "));
    }

    private static String content(Phrase.Piece piece) {
        return piece.isHole() ? "counter(" + piece.text() + ")" : "\"" + CssText.escaped(piece.text()) + "\"";
    }

    /** A product's files by path from the language's top, and its line on the overview. */
    record Made(Map<String, byte[]> files, Overview.Product line) {}

    Made product(CheckedProduct product, String folder) {
        Map<String, byte[]> files = new TreeMap<>();
        Identity identity = Identity.of(house, product.product(), tongue);
        Sheets sheets = Sheets.of(product, folder, tongue);
        String head = runningHead(identity);
        List<StepLink> steps = new ArrayList<>();
        InstructionPages instructions = new InstructionPages(identity, product, sheets, tongue);
        for (int i = 0; i < product.steps().size(); i++) {
            WorkInstruction page = instructions.page(i);
            Fingerprint fingerprint = Fingerprint.taken(page);
            StepLink link = Sheets.link(product.steps().get(i), fingerprint.digits(), tongue);
            steps.add(link);
            put(files, folder + "/" + link.href(), "work-instruction.ftlh", page, fingerprint,
                    head + ", " + plain("print.step", "step", page.number(), "title", page.title()),
                    plain("print.step-title", "model", identity.model(), "step", page.number(), "title", page.title()));
        }
        String notJudged = RulePages.notJudged(product);
        RuleReport rules = RulePages.page(identity, product, sheets, tongue);
        put(files, folder + "/" + Sheets.RULES, "rule-report.ftlh", rules, Fingerprint.taken(rules),
                head + ", " + plain("print.rules"),
                plain("print.rules-title", "model", identity.model(), "title", identity.title()));
        RouteCard card = CardPages.page(identity, product, sheets, tongue);
        put(files, folder + "/" + Sheets.CARD, "route-card.ftlh", card, Fingerprint.taken(card), head + ", " + plain("print.card"),
                plain("print.card-title", "model", identity.model(), "title", identity.title()));
        CoverageMatrix coverage = CoveragePages.page(identity, product, tongue);
        put(files, folder + "/" + Sheets.COVERAGE, "coverage-matrix.ftlh", coverage, Fingerprint.taken(coverage),
                head + ", " + plain("print.coverage"),
                plain("print.coverage-title", "model", identity.model(), "title", identity.title()));
        SpecSheet spec = SpecPages.page(identity, product, sheets, steps, notJudged, tongue);
        Fingerprint fingerprint = Fingerprint.taken(spec);
        put(files, folder + "/" + Sheets.SPEC_SHEET, "spec-sheet.ftlh", spec, fingerprint, head + ", " + plain("print.spec"),
                plain("print.spec-title", "model", identity.model(), "title", identity.title()));

        List<StepLink> fromOverview = steps.stream()
                .map(s -> new StepLink(s.number(), s.title(), s.centre(), folder + "/" + s.href(), ""))
                .toList();
        return new Made(files, new Overview.Product(identity, folder + "/" + Sheets.SPEC_SHEET, fingerprint.digits(),
                folder + "/" + Sheets.RULES, folder + "/" + Sheets.CARD,
                folder + "/" + Sheets.COVERAGE, fromOverview, notJudged));
    }

    Map<String, byte[]> overview(CheckedHouse checked, List<Overview.Product> lines) {
        Map<String, byte[]> files = new TreeMap<>();
        Overview overview = new Overview(house, lines, lines.size() <= OPEN_UP_TO, checked.diagnostics().stream()
                .filter(d -> d.severity() != Severity.ERROR)
                .map(Finding::of)
                .toList());
        put(files, Sheets.OVERVIEW, "overview.ftlh", overview, Fingerprint.taken(overview), house, house);
        return files;
    }

    private String plain(String key, String... filled) {
        return tongue.page().plain(key, filled);
    }

    /** What stands at the top of every printed sheet, so that a loose second sheet is known for what it is. */
    private String runningHead(Identity identity) {
        return identity.model() + (identity.revision().isEmpty() ? "" : ", "
                + plain("print.revision", "value", identity.revision()))
                + (identity.draft() ? ", " + plain("sheet.draft") : "");
    }

    private void put(Map<String, byte[]> files, String path, String template, Record page, Fingerprint fingerprint,
            String runningHead, String title) {
        Map<String, Object> model = new HashMap<>(common);
        model.put("page", page);
        model.put("root", "../".repeat((int) path.chars().filter(c -> c == '/').count()));
        model.put("top", languages.top(tongue, path));
        model.put("languages", languages.links(tongue, path));
        model.put("title", title);
        model.put("fingerprint", fingerprint.digits());
        model.put("borrows", fingerprint.borrows() || tongue.page().borrows());
        model.put("runningHead", CssText.escaped(Marks.plain(runningHead)));
        model.put("printedFingerprint", CssText.escaped(plain("print.fingerprint", "digits", fingerprint.digits())));
        String html = engine.render(template, model, languages.folder(tongue) + path);
        files.put(languages.folder(tongue) + path, html.getBytes(StandardCharsets.UTF_8));
    }
}
