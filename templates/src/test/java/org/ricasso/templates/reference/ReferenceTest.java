package org.ricasso.templates.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import nu.validator.validation.SimpleDocumentValidator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.catalogue.Catalogue;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.solve.Lock;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.vocabulary.Vocabulary;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** The reference of the demonstration house: every name has its place, links lead somewhere, the bytes are the same. */
class ReferenceTest {
    private static final Path HOUSE = Path.of("..", "specs", "src", "main", "ricasso");
    private static final Pattern HREF = Pattern.compile("(?:href|src)=\"([^\"]*)\"");
    private static Texts texts;
    private static Ricasso ricasso;
    private static SortedPages pages;

    /** Pages by path, as text. */
    private static final class SortedPages extends TreeMap<String, String> {
        private static final long serialVersionUID = 1;
    }

    @BeforeAll
    static void render() {
        texts = texts(false);
        ricasso = Ricasso.check(texts, Ricasso.calculations(ReferenceTest.class.getClassLoader()), Set.of());
        pages = rendered(ricasso, texts);
    }

    private static Texts texts(boolean reversed) {
        List<SourceFile> files = new ArrayList<>();
        Map<String, SourceFile> data = new LinkedHashMap<>();
        try (Stream<Path> walk = Files.walk(HOUSE)) {
            for (Path file : walk.filter(f -> f.toString().matches(".*\\.(ricasso|csv|lock)")).sorted().toList()) {
                String name = HOUSE.relativize(file).toString().replace('\\', '/');
                SourceFile text = new SourceFile(name, Files.readString(file, StandardCharsets.UTF_8), false);
                if (!name.endsWith(".ricasso")) {
                    data.put(name, text);
                } else {
                    files.add(text);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (reversed) {
            Collections.reverse(files);
        }
        return Ricasso.withShipped(new Texts(files, data, data.remove(Lock.NAME)));
    }

    private static SortedPages rendered(Ricasso house, Texts from) {
        SortedPages result = new SortedPages();
        ReferenceRenderer.render(house.house(), from, "Alderbeck Knife Works").files()
                .forEach((path, bytes) -> result.put(path, new String(bytes, StandardCharsets.UTF_8)));
        return result;
    }

    private static Vocabulary vocabulary() {
        return ricasso.house().vocabulary();
    }

    @Test
    void everyNameHasItsPlace() {
        assertThat(ricasso.checked().holds()).isTrue();
        assertThat(pages.keySet()).containsAll(vocabulary().operations().stream().map(o -> "operations/" + o.name() + ".html").toList())
                .containsAll(vocabulary().rules().stream().map(r -> "rules/" + r.name() + ".html").toList())
                .containsAll(vocabulary().tableNames().stream().map(t -> "tables/" + t + ".html").toList())
                .containsAll(vocabulary().kindNames().stream().map(k -> "kinds/" + k + ".html").toList());
        vocabulary().calculationNames().forEach(name -> assertThat(pages.get("calculations.html")).contains("id=\"" + Index.id(name) + "\""));
        vocabulary().properties().forEach(p -> assertThat(pages.get("workpiece.html")).contains("id=\"" + Index.id(p.path()) + "\""));
        vocabulary().parts().forEach(p -> assertThat(pages.get("workpiece.html")).contains("id=\"" + Index.id(p) + "\""));
        vocabulary().things().stream().filter(t -> !t.kind().equals(vocabulary().productKind())).forEach(t ->
                assertThat(pages.get("kinds/" + t.kind() + ".html")).contains("id=\"" + Index.id(t.name()) + "\""));
        vocabulary().units().all().stream().filter(u -> u.sign().equals("mm")).forEach(u ->
                assertThat(pages.get("units.html")).contains("sign: &quot;mm&quot;"));
        Catalogue.shipped().entries().forEach(e -> assertThat(pages.get("findings/" + e.theme() + ".html"))
                .contains("id=\"" + Index.id(e.name()) + "\"").contains(new Html().text(e.title()).toString()));
        assertThat(pages.get("language.html")).contains("id=\"limits\"").contains("id=\"the-workpiece\"");
    }

    @Test
    void whatTheTextsSayStandsThere() {
        for (Operation operation : vocabulary().operations()) {
            String page = pages.get("operations/" + operation.name() + ".html");
            assertThat(page).contains(new Html().text(operation.purpose()).toString());
            operation.takes().forEach(setting -> assertThat(page).contains("id=\"" + Index.id("takes." + setting.name()) + "\""));
            operation.needs().forEach(need -> assertThat(page).contains(new Html().text(need.complaint()).toString()));
            vocabulary().operationText(operation.name()).instruct()
                    .forEach(line -> assertThat(page).contains(new Html().text(line.written()).toString()));
        }
        for (Rule rule : vocabulary().rules()) {
            String page = pages.get("rules/" + rule.name() + ".html");
            assertThat(page).contains(new Html().text(rule.because()).toString()).contains(new Html().text(rule.source()).toString())
                    .contains("Example that passes").contains("Example that fails");
        }
        for (String name : vocabulary().tableNames()) {
            assertThat(Pattern.compile("<tr>").matcher(pages.get("tables/" + name + ".html")).results().count())
                    .isGreaterThanOrEqualTo(vocabulary().table(name).rows().size());
        }
        for (String name : vocabulary().calculationNames()) {
            assertThat(pages.get("calculations.html")).contains(new Html().text(vocabulary().calculation(name).source()).toString());
        }
    }

    @Test
    void everyLinkResolvesAndEveryPageIsReached() {
        Set<String> reached = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(List.of("index.html"));
        int links = 0;
        while (!open.isEmpty()) {
            String page = open.pop();
            if (!reached.add(page) || !page.endsWith(".html")) {
                continue;
            }
            for (MatchResult found : HREF.matcher(pages.get(page)).results().filter(r -> !r.group(1).equals("data:,")).toList()) {
                URI target = URI.create(page).resolve(found.group(1));
                String path = target.getPath().isEmpty() ? page : target.getPath();
                assertThat(pages).as("%s in %s", found.group(1), page).containsKey(path);
                if (target.getFragment() != null) {
                    assertThat(pages.get(path)).as(found.group(1)).contains("id=\"" + target.getFragment() + "\"");
                }
                if (!reached.contains(path)) {
                    open.push(path);
                }
                links++;
            }
        }
        assertThat(reached).isEqualTo(pages.keySet());
        assertThat(links).isGreaterThan(5_000);
    }

    @Test
    void nothingIsAskedForOutside() {
        pages.forEach((path, text) -> assertThat(text).as(path).doesNotContainPattern("(?i)(href|src)=\"(https?:|//)|@import|url\\(|<img|<iframe"));
    }

    @Test
    void theSameBytesInWhateverOrder() {
        Texts other = texts(true);
        Ricasso again = Ricasso.check(other, Ricasso.calculations(ReferenceTest.class.getClassLoader()), Set.of());
        SortedPages second = rendered(again, other);
        assertThat(second.keySet()).isEqualTo(pages.keySet());
        pages.forEach((path, text) -> assertThat(second.get(path)).as(path).isEqualTo(text));
    }

    @Test
    void addressesDependOnNamesAlone() {
        assertThat(Index.file("temper")).isEqualTo("temper");
        assertThat(Index.file("index")).isEqualTo("n-696e646578");
        assertThat(Index.file("1.4116")).isEqualTo("n-312e34313136");
        assertThat(Index.id("blade.härte")).isEqualTo("n-blade.h_e4_rte");
    }

    /** A text that is full of markup stays text. */
    @Test
    void textsAreEscaped() {
        String hostile = "kind thing \"<script>x</script>\" { note: text }\nthing one \"<b>&amp;\\\"\" { note: \"</main><img src=x>\" }\n";
        Texts one = new Texts(List.of(new SourceFile("<i>.ricasso", hostile, false)), Map.of());
        Ricasso house = Ricasso.check(one, List.of(), Set.of());
        assertThat(house.checked().diagnostics()).isEmpty();
        rendered(house, one).forEach((path, text) -> assertThat(text).as(path).doesNotContain("<script>x").doesNotContain("<b>&amp;")
                .doesNotContain("<img").doesNotContain("<i>"));
    }

    @Test
    void pagesAreGoodHtml() throws Exception {
        List<String> messages = new ArrayList<>();
        ErrorHandler handler = new ErrorHandler() {
            @Override
            public void warning(SAXParseException e) {
                messages.add("warning " + e.getLineNumber() + ": " + e.getMessage());
            }

            @Override
            public void error(SAXParseException e) {
                messages.add("error " + e.getLineNumber() + ": " + e.getMessage());
            }

            @Override
            public void fatalError(SAXParseException e) {
                error(e);
            }
        };
        SimpleDocumentValidator validator = new SimpleDocumentValidator(true, false, false);
        // a name: the schema is part of the checker
        validator.setUpMainSchema("http://s.validator.nu/html5-rdfalite.rnc", handler);
        validator.setUpValidatorAndParsers(handler, true, false);
        for (Map.Entry<String, String> page : pages.entrySet()) {
            if (page.getKey().endsWith(".html")) {
                messages.clear();
                InputSource in = new InputSource(new ByteArrayInputStream(page.getValue().getBytes(StandardCharsets.UTF_8)));
                in.setEncoding("UTF-8");
                in.setSystemId("file:///page.html");
                validator.checkHtmlInputSource(in);
                assertThat(messages).as(page.getKey()).isEmpty();
            }
        }
    }
}
