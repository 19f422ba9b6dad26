package org.ricasso.dsl.trial;

/** Edits of a route as an engineer makes them in its text: a step taken out, or put elsewhere under another number. */
public final class RouteEdit {
    private RouteEdit() {}

    /** The text without the step or block that begins so. */
    public static String without(String text, String begin) {
        Stretch stretch = block(text, begin);
        return text.substring(0, stretch.start()) + text.substring(stretch.end());
    }

    /** The text with a step put behind another, under another number. */
    public static String moved(String text, String begin, int number, String behind) {
        Stretch stretch = block(text, begin);
        String step = text.substring(stretch.start(), stretch.end()).replaceFirst("\\d+", Integer.toString(number));
        String left = text.substring(0, stretch.start()) + text.substring(stretch.end());
        int end = block(left, behind).end();
        return left.substring(0, end) + step + left.substring(end);
    }

    /** The lines from one that begins so to the end of its braces. */
    public static Stretch block(String text, String begin) {
        int from = text.lastIndexOf('\n', Stretch.once(text, begin).start()) + 1;
        int end = from;
        int depth = 0;
        char last;
        do {
            last = text.charAt(end++);
            depth += last == '{' ? 1 : last == '}' ? -1 : 0;
        } while (last != '\n' || depth > 0);
        return new Stretch(from, end);
    }
}
