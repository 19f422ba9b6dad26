package org.ricasso.plugin.publish;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.SortedMap;

/** The list of a set's files with their SHA-256 digests, in the form that {@code sha256sum --check} reads. */
final class Checksums {
    static final String NAME = "SHA256SUMS";

    private Checksums() {}

    static byte[] of(SortedMap<String, byte[]> files) {
        MessageDigest digest = sha256();
        StringBuilder result = new StringBuilder();
        files.forEach((name, bytes) -> result.append(HexFormat.of().formatHex(digest.digest(bytes)))
                .append("  ").append(name).append('\n'));
        return result.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
