package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import nu.validator.validation.SimpleDocumentValidator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.walk.CheckedHouse;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** Every kind of page is good HTML by the Nu HTML checker, which implements the HTML standard's conformance rules. */
class NuCheckerTest {
    private static final List<String> MESSAGES = new ArrayList<>();
    private static SimpleDocumentValidator validator;

    @BeforeAll
    static void setUp() throws Exception {
        ErrorHandler handler = new ErrorHandler() {
            @Override
            public void warning(SAXParseException e) {
                MESSAGES.add("warning " + e.getLineNumber() + ": " + e.getMessage());
            }

            @Override
            public void error(SAXParseException e) {
                MESSAGES.add("error " + e.getLineNumber() + ": " + e.getMessage());
            }

            @Override
            public void fatalError(SAXParseException e) {
                error(e);
            }
        };
        validator = new SimpleDocumentValidator(true, false, false);
        // a name: the schema is part of the checker
        validator.setUpMainSchema("http://s.validator.nu/html5-rdfalite.rnc", handler);
        validator.setUpValidatorAndParsers(handler, true, false);
    }

    @Test
    void theSmallHouse() throws Exception {
        check(TestHouses.small());
    }

    @Test
    void aForeignHouse() throws Exception {
        check(TestHouses.bakery());
    }

    @Test
    void aHouseWithoutProducts() throws Exception {
        check(new CheckedHouse(List.of(), List.of(), List.of()));
    }

    @Test
    void hostileTexts() throws Exception {
        check(TestHouses.of(text -> text + "\"'<b>&amp;</style>\u0000\u202E\uFFFE${x}--> "));
    }

    @Test
    void theCheckerFindsMistakes() throws Exception {
        assertThat(messages("<!DOCTYPE html><html lang=en><meta charset=utf-8><title>x</title><p></b>")).isNotEmpty();
    }

    private static void check(CheckedHouse house) throws Exception {
        for (Map.Entry<String, String> page : Pages.html(Pages.of(house)).entrySet()) {
            assertThat(messages(page.getValue())).as(page.getKey()).isEmpty();
            assertThat(page.getValue()).contains("<meta charset=\"utf-8\">").contains("<html lang=\"en\">");
        }
    }

    private static List<String> messages(String html) throws Exception {
        MESSAGES.clear();
        InputSource in = new InputSource(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
        in.setEncoding("UTF-8");
        in.setSystemId("file:///page.html");
        validator.checkHtmlInputSource(in);
        return List.copyOf(MESSAGES);
    }
}
