package org.ricasso.plugin;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Edits of a text as they happen at a keyboard: a token or a line gone, doubled, moved, exchanged; a number or a unit changed. */
final class RandomEdits {
    private static final Pattern TOKEN = Pattern.compile("\"[^\"\\n]*\"|[\\p{L}\\d][\\p{L}\\d-]*|\\S");
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.-])\\d+(\\.\\d+)?(?![\\w.-])");
    private static final String[] OTHERS = {"stray", "5", "\"text\"", ":", "{", "}", "(", ",", ";", "|", "=", "mm", "°C", "at",
        "±", "2.5 mm", "200 °C", "like", "1.4125", "temper", "max", "//"};
    private static final String[] NUMBERS = {"0", "1", "0.5", "7", "12", "99", "180", "300", "1200", "0.01"};

    private final Random random;

    RandomEdits(Random random) {
        this.random = random;
    }

    /** The text after one edit. */
    String edited(String text) {
        return switch (random.nextInt(10)) {
            case 0, 1, 2, 3 -> numberChanged(text);
            case 4, 5 -> lineEdited(text);
            default -> tokenEdited(text);
        };
    }

    private String numberChanged(String text) {
        int[] at = one(NUMBER, text);
        String other = random.nextBoolean() ? NUMBERS[random.nextInt(NUMBERS.length)]
                : text.substring(at[0], at[1]) + random.nextInt(10);
        return text.substring(0, at[0]) + other + text.substring(at[1]);
    }

    private String tokenEdited(String text) {
        int[] at = one(TOKEN, text);
        String token = text.substring(at[0], at[1]);
        String before = text.substring(0, at[0]);
        String after = text.substring(at[1]);
        return switch (random.nextInt(4)) {
            case 0 -> before + after;
            case 1 -> before + token + " " + token + after;
            case 2 -> {
                Matcher next = TOKEN.matcher(after);
                yield next.find() ? before + next.group() + after.substring(0, next.start()) + token + after.substring(next.end())
                        : before;
            }
            default -> before + OTHERS[random.nextInt(OTHERS.length)] + after;
        };
    }

    private String lineEdited(String text) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        switch (random.nextInt(4)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(at, lines.get(at));
            case 2 -> lines.add(random.nextInt(lines.size()), lines.remove(at));
            default -> lines.set(at, lines.get(random.nextInt(lines.size())));
        }
        return String.join("\n", lines);
    }

    /** Where one of a pattern's matches stands; every one is as likely. */
    private int[] one(Pattern pattern, String text) {
        List<int[]> all = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            all.add(new int[] {matcher.start(), matcher.end()});
        }
        return all.isEmpty() ? new int[] {0, 0} : all.get(random.nextInt(all.size()));
    }
}
