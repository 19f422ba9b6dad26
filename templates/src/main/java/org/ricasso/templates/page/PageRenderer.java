package org.ricasso.templates.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.dsl.walk.CheckedProduct;

/**
 * Renders the pages of a house.
 *
 * <p>The pages of a product are made first, its instructions before the spec sheet that lists their fingerprints, then
 * the overview that lists those of the spec sheets. Products are rendered in parallel; the bytes never depend on that,
 * nor on locale, time zone, clock or file system. Nothing is written: a whole set is handed out, or nothing.
 */
public final class PageRenderer {
    /** With more products than this the overview keeps their steps folded. */
    private static final int OPEN_UP_TO = 6;

    private final TemplateEngine engine;

    public PageRenderer() {
        this(TemplateEngine.OWN);
    }

    PageRenderer(TemplateEngine engine) {
        this.engine = engine;
    }

    /**
     * Renders a whole house.
     *
     * @param house a house that {@linkplain CheckedHouse#holds() holds}
     * @param title what the house is called on its pages
     * @return all pages and what they need
     * @throws IllegalArgumentException if the house does not hold: what does not check has no pages
     * @throws PageException if a template has a mistake
     */
    public PageSet render(CheckedHouse house, String title) {
        if (!house.holds()) {
            throw new IllegalArgumentException("the house does not hold, so it has no pages");
        }
        List<CheckedProduct> products = house.products();
        List<Identity> identities = products.stream().map(p -> Identity.of(title, p.product())).toList();
        List<String> folders = Slugs.of(identities.stream().map(Identity::model).toList());

        List<Attempt> attempts = IntStream.range(0, products.size())
                .parallel()
                .mapToObj(i -> attempt(identities.get(i), products.get(i), folders.get(i)))
                .collect(Collectors.toList());

        SortedMap<String, byte[]> files = new TreeMap<>();
        List<Overview.Product> lines = new ArrayList<>();
        for (Attempt attempt : attempts) {
            if (attempt.failure() != null) {
                throw attempt.failure();
            }
            files.putAll(attempt.files());
            lines.add(attempt.line());
        }
        Overview overview = new Overview(title, lines, lines.size() <= OPEN_UP_TO, house.diagnostics().stream()
                .filter(d -> d.severity() != Severity.ERROR)
                .map(Finding::of)
                .toList());
        put(files, Sheets.OVERVIEW, "overview.ftlh", overview, "", Fingerprint.of(overview), title);
        files.put(Sheets.STYLE, style());
        return new PageSet(files);
    }

    /** What became of a product's pages: the first failure in the order of the house is the one that is told. */
    private record Attempt(Map<String, byte[]> files, Overview.Product line, PageException failure) {}

    private Attempt attempt(Identity identity, CheckedProduct product, String folder) {
        try {
            return product(identity, product, folder);
        } catch (PageException e) {
            return new Attempt(Map.of(), null, e);
        }
    }

    private Attempt product(Identity identity, CheckedProduct product, String folder) {
        Map<String, byte[]> files = new TreeMap<>();
        Sheets sheets = Sheets.of(product, folder);
        String head = runningHead(identity);
        List<StepLink> steps = new ArrayList<>();
        InstructionPages instructions = new InstructionPages(identity, product, sheets);
        for (int i = 0; i < product.steps().size(); i++) {
            WorkInstruction page = instructions.page(i);
            String fingerprint = Fingerprint.of(page);
            StepLink link = Sheets.link(product.steps().get(i), fingerprint);
            steps.add(link);
            put(files, folder + "/" + link.href(), "work-instruction.ftlh", page, "../", fingerprint,
                    head + ", step " + page.number() + " " + page.title());
        }
        String notJudged = RulePages.notJudged(product);
        RuleReport rules = RulePages.page(identity, product, sheets);
        put(files, folder + "/" + Sheets.RULES, "rule-report.ftlh", rules, "../", Fingerprint.of(rules),
                head + ", rule report");
        SpecSheet spec = SpecPages.page(identity, product, sheets, steps, notJudged);
        String fingerprint = Fingerprint.of(spec);
        put(files, folder + "/" + Sheets.SPEC_SHEET, "spec-sheet.ftlh", spec, "../", fingerprint,
                head + ", specification");

        List<StepLink> fromOverview = steps.stream()
                .map(s -> new StepLink(s.number(), s.title(), s.centre(), folder + "/" + s.href(), ""))
                .toList();
        return new Attempt(files, new Overview.Product(identity, folder + "/" + Sheets.SPEC_SHEET, fingerprint,
                folder + "/" + Sheets.RULES, fromOverview, notJudged), null);
    }

    /** What stands at the top of every printed sheet, so that a loose second sheet is known for what it is. */
    private static String runningHead(Identity identity) {
        return identity.model() + (identity.revision().isEmpty() ? "" : ", revision " + identity.revision())
                + (identity.draft() ? ", DRAFT" : "");
    }

    private void put(Map<String, byte[]> files, String path, String template, Record page, String root,
            String fingerprint, String runningHead) {
        String html = engine.render(template, Map.of("page", page, "root", root, "fingerprint", fingerprint,
                "runningHead", CssText.escaped(runningHead)), path);
        files.put(path, html.getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] style() {
        try (InputStream in = PageRenderer.class.getResourceAsStream("/pages/" + Sheets.STYLE)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
