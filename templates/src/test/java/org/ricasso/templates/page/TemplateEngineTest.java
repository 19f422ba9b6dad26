package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.StringTemplateLoader;
import freemarker.cache.TemplateLoader;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A mistake in a template is told with its place, and templates reach nothing but view records. */
class TemplateEngineTest {
    private static final Fact MODEL = new Fact("label", Shown.of("value"));

    @Test
    void aMistakeIsToldWithTemplateLineColumnAndPage() {
        StringTemplateLoader mistaken = new StringTemplateLoader();
        mistaken.putTemplate("work-instruction.ftlh", "<p>\n  ${page.titel}</p>");
        PageRenderer renderer = new PageRenderer(new TemplateEngine(new MultiTemplateLoader(new TemplateLoader[] {
                mistaken, new ClassTemplateLoader(PageRenderer.class, "/pages")})));
        PageException failure = catchThrowableOfType(PageException.class,
                () -> renderer.render(TestHouses.small(), "House"));
        assertThat(failure.template()).isEqualTo("work-instruction.ftlh");
        assertThat(failure.line()).isEqualTo(2);
        assertThat(failure.column()).isEqualTo(5);
        // the first page in the order of the house, whichever thread came first
        assertThat(failure.page()).isEqualTo("ab-1109/step-155.html");
        assertThat(failure.problem()).contains("page.titel");
    }

    @Test
    void aTemplateThatCannotBeReadIsToldWithItsPlace() {
        PageException failure = catchThrowableOfType(PageException.class, () -> render("a\n<#if x>"));
        assertThat(failure.line()).isEqualTo(2);
        assertThat(failure.getMessage()).startsWith("t.ftlh:2:").contains("while rendering p.html");
    }

    @ParameterizedTest
    @ValueSource(strings = {
            "${page.class}",
            "${page.getClass()}",
            "${page.hashCode()}",
            "${page.toString()}",
            "${page.value.text()}",
            "${page?api.class}",
            "${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
            "${\"freemarker.template.utility.ObjectConstructor\"?new()(\"java.io.File\", \"/\")}",
            "<#include \"/../style.css\">",
            "<#include \"file:///etc/hostname\">"})
    void nothingElseIsReached(String template) {
        assertThatThrownBy(() -> render(template)).isInstanceOf(PageException.class);
    }

    @Test
    void recordsListsAndTextsAreReachedAndEscaped() {
        assertThat(render("${page.label}|<#list page.value.lines as line>${line.text}</#list>")).isEqualTo("label|value");
        assertThat(render("${\"<\" + page.label}")).isEqualTo("&lt;label");
    }

    @Test
    void aHouseThatDoesNotHoldHasNoPages() {
        var good = TestHouses.small();
        var error = org.ricasso.dsl.diagnostics.Diagnostic.error("x", good.diagnostics().get(0).primary());
        var house = new org.ricasso.dsl.walk.CheckedHouse(good.products(), List.of(), List.of(error));
        assertThatThrownBy(() -> new PageRenderer().render(house, "House")).isInstanceOf(IllegalArgumentException.class);
    }

    private static String render(String template) {
        StringTemplateLoader loader = new StringTemplateLoader();
        loader.putTemplate("t.ftlh", template);
        return new TemplateEngine(loader).render("t.ftlh", Map.of("page", MODEL), "p.html");
    }
}
