package org.ricasso.plugin.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.source.SourceFile;

/**
 * Findings as a SARIF 2.1.0 log (OASIS standard, errata 01 of 28 August 2023). The same findings give the same bytes
 * on every machine: nothing in it depends on clock, user, place of the repository or order of files.
 */
public final class SarifReport {
    private static final String SCHEMA =
            "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final Addresses addresses;
    private final String version;
    private final Function<String, ReportRule> rules;

    /**
     * @param root the directory that addresses are relative to
     * @param module the directory that the names of source files are relative to
     * @param version the plugin's version
     * @param rules what to say of a kind of finding, by its name
     */
    public SarifReport(Path root, Path module, String version, Function<String, ReportRule> rules) {
        this.addresses = new Addresses(root, module);
        this.version = version;
        this.rules = rules;
    }

    /** The log of these findings, UTF-8 with line feeds. */
    public byte[] of(List<Diagnostic> findings) {
        List<Diagnostic> sorted = findings.stream().sorted(Diagnostic.ORDER).toList();
        SortedMap<String, Severity> gravest = new TreeMap<>();
        sorted.forEach(d -> gravest.merge(d.name(), d.severity(), (a, b) -> a.compareTo(b) <= 0 ? a : b));
        List<String> names = new ArrayList<>(gravest.keySet());

        ObjectNode run = JSON.objectNode();
        run.set("tool", tool(gravest));
        run.set("originalUriBaseIds", Addresses.bases());
        run.put("columnKind", "unicodeCodePoints");
        run.putArray("newlineSequences").add("\r\n").add("\n").add("\r");
        ArrayNode results = run.putArray("results");
        Fingerprints fingerprints = new Fingerprints(addresses);
        for (Diagnostic finding : sorted) {
            results.add(result(finding, names.indexOf(finding.name()), fingerprints.of(finding)));
        }
        ObjectNode log = JSON.objectNode();
        log.put("version", "2.1.0");
        log.put("$schema", SCHEMA);
        log.putArray("runs").add(run);
        return bytes(log);
    }

    private ObjectNode tool(SortedMap<String, Severity> gravest) {
        ObjectNode driver = JSON.objectNode();
        driver.put("name", "Ricasso");
        driver.put("version", version);
        ArrayNode list = driver.putArray("rules");
        gravest.forEach((name, severity) -> {
            ReportRule rule = rules.apply(name);
            ObjectNode descriptor = list.addObject();
            descriptor.put("id", name);
            descriptor.set("shortDescription", Addresses.message(rule.title()));
            descriptor.set("fullDescription", Addresses.message(rule.text()));
            descriptor.set("defaultConfiguration", JSON.objectNode().put("level", level(severity)));
        });
        ObjectNode result = JSON.objectNode();
        result.set("driver", driver);
        return result;
    }

    private ObjectNode result(Diagnostic finding, int rule, String fingerprint) {
        ObjectNode result = JSON.objectNode();
        result.put("ruleId", finding.name());
        result.put("ruleIndex", rule);
        result.put("level", level(finding.severity()));
        result.set("message", Addresses.message(text(finding)));
        result.putArray("locations").add(location(finding.primary()));
        if (!finding.others().isEmpty()) {
            ArrayNode related = result.putArray("relatedLocations");
            for (Mark other : finding.others()) {
                ObjectNode location = related.addObject();
                location.put("id", related.size() - 1);
                location.setAll(location(other));
                if (!other.text().isEmpty()) {
                    location.set("message", Addresses.message(other.text()));
                }
            }
        }
        ArrayNode fixes = fixes(finding.remedies());
        if (!fixes.isEmpty()) {
            result.set("fixes", fixes);
        }
        result.set("partialFingerprints", JSON.objectNode().put("ricassoFinding/v1", fingerprint));
        return result;
    }

    /** The whole finding in lines: what, why, what else, what to do, where it is known from. */
    private static String text(Diagnostic finding) {
        List<String> lines = new ArrayList<>();
        lines.add(finding.primary().text().isEmpty() ? ReportRule.named(finding.name()).title()
                : finding.primary().text());
        finding.because().forEach(reason -> lines.add("because " + reason));
        finding.also().forEach(other -> lines.add("also " + other));
        finding.remedies().forEach(remedy -> lines.add("remedy: " + remedy.text()));
        finding.sources().forEach(source -> lines.add("source: " + source));
        return String.join("\n", lines);
    }

    private ObjectNode location(Mark mark) {
        ObjectNode result = JSON.objectNode();
        result.set("physicalLocation", addresses.physical(mark.span()));
        return result;
    }

    /** Remedies that change the works' own texts; a remedy that would change a shipped text is not for an editor. */
    private ArrayNode fixes(List<Remedy> remedies) {
        ArrayNode result = JSON.arrayNode();
        for (Remedy remedy : remedies) {
            if (remedy.edits().isEmpty() || remedy.edits().stream().anyMatch(e -> e.span().file().shipped())) {
                continue;
            }
            Map<SourceFile, List<Edit>> byFile = new LinkedHashMap<>();
            remedy.edits().stream().sorted((a, b) -> a.span().compareTo(b.span()))
                    .forEach(e -> byFile.computeIfAbsent(e.span().file(), f -> new ArrayList<>()).add(e));
            ObjectNode fix = result.addObject();
            fix.set("description", Addresses.message(remedy.text()));
            ArrayNode changes = fix.putArray("artifactChanges");
            byFile.forEach((file, edits) -> {
                ObjectNode change = changes.addObject();
                change.set("artifactLocation", addresses.file(file));
                ArrayNode replacements = change.putArray("replacements");
                for (Edit edit : edits) {
                    ObjectNode replacement = replacements.addObject();
                    replacement.set("deletedRegion", Addresses.region(edit.span()));
                    replacement.set("insertedContent", JSON.objectNode().put("text", edit.replacement()));
                }
            });
        }
        return result;
    }

    private static String level(Severity severity) {
        return switch (severity) {
            case ERROR -> "error";
            case WARNING -> "warning";
            case NOTE -> "note";
        };
    }

    private static byte[] bytes(ObjectNode log) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter()
                .withObjectIndenter(indenter).withArrayIndenter(indenter);
        try {
            return (JsonMapper.builder().build().writer(printer).writeValueAsString(log) + "\n")
                    .getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of JSON nodes could not be written", e);
        }
    }
}
