package org.ricasso.plugin.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.Span;

/**
 * Marks by which a finding is known again after lines were added above it: its name, its file, its line's text with
 * blanks evened out, and its number among those for which all of this is the same. Feed in {@link Diagnostic#ORDER}.
 */
final class Fingerprints {
    private final Addresses addresses;
    private final Map<String, Integer> seen = new HashMap<>();

    Fingerprints(Addresses addresses) {
        this.addresses = addresses;
    }

    String of(Diagnostic finding) {
        Span span = finding.primary().span();
        String line = span.file().lineText(span.line()).strip().replaceAll("\\s+", " ");
        String key = String.join("\0", finding.name(), addresses.path(span.file()), line);
        int ordinal = seen.merge(key, 1, Integer::sum);
        return HexFormat.of().formatHex(sha256(key + "\0" + ordinal), 0, 16);
    }

    private static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
