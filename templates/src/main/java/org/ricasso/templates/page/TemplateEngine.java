package org.ricasso.templates.page;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.StrongCacheStorage;
import freemarker.cache.TemplateLoader;
import freemarker.core.Environment;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.Version;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;

/**
 * Lays view models out. Templates come from this module alone, see view records alone, and cannot reach classes, files
 * or the network. Safe for several threads: the configuration is never changed once it is made.
 */
final class TemplateEngine {
    /** Fixed: a newer library must not change what a template means. */
    private static final Version SEMANTICS = Configuration.VERSION_2_3_34;

    /** The engine for the module's own templates, made once. */
    static final TemplateEngine OWN = new TemplateEngine(new ClassTemplateLoader(TemplateEngine.class, "/pages"));

    private final Configuration configuration;

    TemplateEngine(TemplateLoader templates) {
        Configuration made = new Configuration(SEMANTICS);
        made.setTemplateLoader(templates);
        made.setObjectWrapper(new ViewWrapper(SEMANTICS));
        made.setLocale(Locale.ROOT);
        made.setTimeZone(TimeZone.getTimeZone("UTC"));
        made.setNumberFormat("computer");
        made.setBooleanFormat("c");
        made.setDefaultEncoding(StandardCharsets.UTF_8.name());
        made.setOutputEncoding(StandardCharsets.UTF_8.name());
        made.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        made.setLogTemplateExceptions(false);
        made.setWrapUncheckedExceptions(true);
        made.setFallbackOnNullLoopVariable(false);
        made.setLocalizedLookup(false);
        made.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
        made.setCacheStorage(new StrongCacheStorage());
        made.setRecognizeStandardFileExtensions(true);
        made.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        made.setAPIBuiltinEnabled(false);
        made.setTagSyntax(Configuration.ANGLE_BRACKET_TAG_SYNTAX);
        made.setInterpolationSyntax(Configuration.LEGACY_INTERPOLATION_SYNTAX);
        made.setWhitespaceStripping(true);
        configuration = made;
    }

    /**
     * Renders a page.
     *
     * @param template the template's name
     * @param model the data
     * @param page the page's path, for a message
     * @return the whole page
     * @throws PageException if the template has a mistake
     */
    String render(String template, Map<String, Object> model, String page) {
        StringWriter out = new StringWriter(16_384);
        try {
            Template found = configuration.getTemplate(template);
            Environment environment = found.createProcessingEnvironment(model, out);
            environment.process();
        } catch (ParseException e) {
            throw new PageException(e.getTemplateName(), e.getLineNumber(), e.getColumnNumber(), page,
                    firstLine(e.getEditorMessage()), e);
        } catch (TemplateException e) {
            String at = e.getTemplateSourceName();
            throw new PageException(at == null ? template : at, number(e.getLineNumber()), number(e.getColumnNumber()),
                    page, problem(e), e);
        } catch (IOException e) {
            throw new PageException(template, 0, 0, page, firstLine(e.getMessage()), e);
        }
        return out.toString();
    }

    private static String problem(TemplateException e) {
        String blamed = e.getBlamedExpressionString();
        String first = firstLine(e.getMessageWithoutStackTop());
        return blamed == null ? first : first + " " + blamed;
    }

    private static int number(Integer value) {
        return value == null ? 0 : value;
    }

    private static String firstLine(String message) {
        return message == null ? "unknown" : message.lines().findFirst().orElse("unknown");
    }
}
