package org.ricasso.templates.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.words.Words;

/**
 * Renders the pages of a house.
 *
 * <p>The pages of a product are made first, its instructions before the spec sheet that lists their fingerprints, then
 * the overview that lists those of the spec sheets. Products are rendered in parallel; the bytes never depend on that,
 * nor on locale, time zone, clock or file system. Nothing is written: a whole set is handed out, or nothing.
 */
public final class PageRenderer {
    private final TemplateEngine engine;

    public PageRenderer() {
        this(TemplateEngine.OWN);
    }

    PageRenderer(TemplateEngine engine) {
        this.engine = engine;
    }

    /**
     * Renders a whole house in the language that its texts are written in.
     *
     * @param house a house that {@linkplain CheckedHouse#holds() holds}
     * @param title what the house is called on its pages
     * @return all pages and what they need
     * @throws IllegalArgumentException if the house does not hold: what does not check has no pages
     * @throws PageException if a template has a mistake
     */
    public PageSet render(CheckedHouse house, String title) {
        return render(house, title, Words.NONE, null, List.of(Words.SOURCE));
    }

    /**
     * Renders a whole house in several languages.
     *
     * @param house a house that {@linkplain CheckedHouse#holds() holds}
     * @param title what the house is called on its pages
     * @param words what its texts are in other languages
     * @param vocabulary its vocabulary, or null where nothing is known of the kinds of its blocks
     * @param languages tags of the languages, each once; the first one's pages lie at the top of the set
     * @return all pages and what they need
     * @throws IllegalArgumentException if the house does not hold, or no language is given
     * @throws PageException if a template has a mistake
     */
    public PageSet render(CheckedHouse house, String title, Words words, Vocabulary vocabulary, List<String> languages) {
        if (!house.holds()) {
            throw new IllegalArgumentException("the house does not hold, so it has no pages");
        }
        if (languages.isEmpty()) {
            throw new IllegalArgumentException("pages are in some language");
        }
        SetLanguages set = new SetLanguages(languages.stream().distinct().map(tag -> Tongue.of(words, vocabulary, tag)).toList());
        List<String> models = house.products().stream().map(CheckedProduct::product).map(Identity::model).toList();
        List<String> folders = Slugs.of(models, set.folders());
        SortedMap<String, byte[]> files = new TreeMap<>();
        for (Tongue tongue : set.tongues()) {
            LanguagePages pages = new LanguagePages(engine, title, tongue, set);
            List<Overview.Product> lines = new ArrayList<>();
            for (Attempt attempt : IntStream.range(0, models.size())
                    .parallel()
                    .mapToObj(i -> attempt(pages, house.products().get(i), folders.get(i)))
                    .collect(Collectors.toList())) {
                if (attempt.failure() != null) {
                    throw attempt.failure();
                }
                files.putAll(attempt.made().files());
                lines.add(attempt.made().line());
            }
            files.putAll(pages.overview(house, lines));
        }
        files.put(Sheets.STYLE, style());
        return new PageSet(files);
    }

    /** What became of a product's pages: the first failure in the order of the house is the one that is told. */
    private record Attempt(LanguagePages.Made made, PageException failure) {}

    private static Attempt attempt(LanguagePages pages, CheckedProduct product, String folder) {
        try {
            return new Attempt(pages.product(product, folder), null);
        } catch (PageException e) {
            return new Attempt(null, e);
        }
    }

    private static byte[] style() {
        try (InputStream in = PageRenderer.class.getResourceAsStream("/pages/" + Sheets.STYLE)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
