package org.ricasso.templates.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/**
 * The signs of ISO 7010 by code, with the titles registered there. The titles stand in a text, {@code
 * pages/signs.csv}; a code that is not in it keeps its shape by its letter and has no title.
 */
final class Signs {
    private static final String LIST = "/pages/signs.csv";
    private static final Map<String, String> TITLES = read();

    private Signs() {}

    static WorkInstruction.Sign of(String code) {
        return new WorkInstruction.Sign(code, TITLES.getOrDefault(code, ""), shape(code));
    }

    /** ISO 7010 says the category by the code's letter. */
    private static String shape(String code) {
        if (!code.matches("[WPMEF]\\d{3}")) {
            return "none";
        }
        return switch (code.charAt(0)) {
            case 'W' -> "warning";
            case 'P' -> "prohibition";
            case 'M' -> "mandatory";
            case 'E' -> "safe";
            default -> "fire";
        };
    }

    private static Map<String, String> read() {
        try (InputStream in = Signs.class.getResourceAsStream(LIST)) {
            Map<String, String> result = new TreeMap<>();
            new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).forEach(line -> {
                int comma = line.indexOf(',');
                String title = line.substring(comma + 1);
                result.put(line.substring(0, comma),
                        title.startsWith("\"") ? title.substring(1, title.length() - 1) : title);
            });
            return Map.copyOf(result);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
