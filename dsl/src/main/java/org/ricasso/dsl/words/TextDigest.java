package org.ricasso.dsl.words;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** The fingerprint of texts that words stand for. */
final class TextDigest {
    private static final int DIGITS = 4;

    private TextDigest() {}

    /** The first four digits of a SHA-256 over the texts, UTF-8, a line feed between; a text ends with its line. */
    static String of(List<String> texts) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest(String.join("\n", texts).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
