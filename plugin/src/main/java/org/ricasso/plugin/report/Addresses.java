package org.ricasso.plugin.report;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;

/**
 * Places as SARIF writes them. A file is named relative to a base, so that the report does not depend on where the
 * repository lies; lines and columns count from 1, columns in code points, and the end column is the one behind the
 * last character.
 */
final class Addresses {
    static final String SOURCE_ROOT = "%SRCROOT%";
    static final String SHIPPED = "%RICASSO%";

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final Path root;
    private final Path module;

    /**
     * @param root the directory that addresses are relative to
     * @param module the directory that the names of source files are relative to
     */
    Addresses(Path root, Path module) {
        this.root = root.toAbsolutePath().normalize();
        this.module = module.toAbsolutePath().normalize();
    }

    /** The two bases. Neither has an address of its own: where the repository lies is the reader's matter. */
    static ObjectNode bases() {
        ObjectNode result = JSON.objectNode();
        result.set(SHIPPED, described("The texts that come with the plugin."));
        result.set(SOURCE_ROOT, described("The root of the repository."));
        return result;
    }

    private static ObjectNode described(String text) {
        ObjectNode result = JSON.objectNode();
        result.set("description", message(text));
        return result;
    }

    ObjectNode file(SourceFile file) {
        ObjectNode result = JSON.objectNode();
        result.put("uri", uri(path(file)));
        result.put("uriBaseId", file.shipped() ? SHIPPED : SOURCE_ROOT);
        return result;
    }

    /** The file's path below its base, with forward slashes. */
    String path(SourceFile file) {
        if (file.shipped()) {
            return file.name();
        }
        Path path = module.resolve(file.name()).normalize();
        return root.relativize(path).toString().replace(path.getFileSystem().getSeparator(), "/");
    }

    static ObjectNode region(Span span) {
        SourceFile file = span.file();
        ObjectNode result = JSON.objectNode();
        result.put("startLine", span.line());
        result.put("startColumn", span.column());
        result.put("endLine", file.line(span.end()));
        result.put("endColumn", file.column(span.end()));
        return result;
    }

    ObjectNode physical(Span span) {
        ObjectNode result = JSON.objectNode();
        result.set("artifactLocation", file(span.file()));
        ObjectNode region = region(span);
        if (span.end() > span.start()) {
            region.set("snippet", JSON.objectNode().put("text", span.text()));
        }
        result.set("region", region);
        return result;
    }

    /** A message; braces are doubled because single ones are holes for arguments (SARIF 2.1.0, section 3.11.5). */
    static ObjectNode message(String text) {
        return JSON.objectNode().put("text", text.replace("{", "{{").replace("}", "}}"));
    }

    private static String uri(String path) {
        try {
            // "./" keeps a colon in the first folder's name from being read as the end of a scheme
            String safe = path.indexOf(':') >= 0 && path.indexOf('/') != 0 ? "./" + path : path;
            return new URI(null, null, safe, null).toASCIIString();
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException("no address can be made of the path " + path, e);
        }
    }
}
