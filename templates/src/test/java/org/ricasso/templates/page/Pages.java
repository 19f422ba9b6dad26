package org.ricasso.templates.page;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.dsl.words.Words;

/** Pages as texts, for tests. */
final class Pages {
    private static final Pattern TAG = Pattern.compile("</?([a-zA-Z][a-zA-Z0-9]*)");

    private Pages() {}

    /** All files of the set as texts by path. */
    static Map<String, String> of(CheckedHouse house) {
        return of(house, "Small Knife Works");
    }

    static Map<String, String> of(CheckedHouse house, String title) {
        return of(house, title, Words.NONE, "en");
    }

    /** The set in some languages, for a house of whose vocabulary nothing is known. */
    static Map<String, String> of(CheckedHouse house, String title, Words words, String... languages) {
        return texts(new PageRenderer().render(house, title, words, null, List.of(languages)));
    }

    static Map<String, String> texts(PageSet set) {
        Map<String, String> result = new TreeMap<>();
        set.files()
                .forEach((path, bytes) -> result.put(path, new String(bytes, StandardCharsets.UTF_8)));
        return result;
    }

    /** The pages of the set without the style. */
    static Map<String, String> html(Map<String, String> files) {
        Map<String, String> result = new TreeMap<>(files);
        result.keySet().removeIf(path -> !path.endsWith(".html"));
        return result;
    }

    /** The names of all tags in order. */
    static List<String> tags(String html) {
        return TAG.matcher(html).results().map(r -> r.group().toLowerCase(java.util.Locale.ROOT)).toList();
    }

    /** What a page says in its own language: the page without all that is marked as being in another. */
    static String inItsLanguage(String html, String tag) {
        Deque<String> open = new ArrayDeque<>(List.of(tag));
        StringBuilder result = new StringBuilder();
        Matcher piece = Pattern.compile("<(/?)(span|article)\\b([^>]*)>|<[^>]*>|[^<]+").matcher(html);
        while (piece.find()) {
            if (piece.group(2) != null && !piece.group(1).isEmpty()) {
                open.pop();
            } else if (piece.group(2) != null) {
                Matcher lang = Pattern.compile("lang=\"([^\"]*)\"").matcher(piece.group(3));
                open.push(lang.find() ? lang.group(1) : open.peek());
            } else if (piece.group().startsWith("<") || tag.equals(open.peek())) {
                result.append(piece.group());
            }
        }
        return result.toString();
    }

    /** What a reader sees, with single blanks. */
    static String text(String html) {
        String body = html.substring(html.indexOf("<body"));
        String plain = body.replaceAll("<[^>]*>", " ").replaceAll("[\\s\u00A0\u202F]+", " ");
        Matcher entity = Pattern.compile("&(lt|gt|amp|quot|#39);").matcher(plain);
        return entity.replaceAll(r -> Matcher.quoteReplacement(switch (r.group(1)) {
            case "lt" -> "<";
            case "gt" -> ">";
            case "amp" -> "&";
            case "quot" -> "\"";
            default -> "'";
        }));
    }
}
