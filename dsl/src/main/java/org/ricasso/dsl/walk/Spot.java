package org.ricasso.dsl.walk;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.house.House;
import org.ricasso.dsl.house.Route;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Block;
import org.ricasso.dsl.syntax.RouteItem;
import org.ricasso.dsl.syntax.Step;

/** A place between two steps of a product's route: the numbers that are free there, and where a text for a step goes. */
final class Spot {
    private static final String ADD = "add";
    private static final int GAP = 10;
    private final House house;
    private final Thing product;
    private final RouteStep before;
    private final RouteStep after;
    private final Set<Integer> taken = new TreeSet<>();

    /**
     * @param among a step among whose like it is
     * @param index before which of all steps it is, or behind the last of them
     * @param without a step that is taken away from where it stands, or null
     */
    Spot(House house, Thing product, Route route, int among, int index, RouteStep without) {
        this.house = house;
        this.product = product;
        List<RouteStep> steps = route.all();
        int begin = route.begin(among);
        int end = route.end(among);
        int first = index - 1;
        while (first >= begin && steps.get(first) == without) {
            first--;
        }
        int next = index;
        while (next < end && steps.get(next) == without) {
            next++;
        }
        this.before = first >= begin ? steps.get(first) : null;
        this.after = next < end ? steps.get(next) : null;
        steps.stream().filter(s -> s != without).forEach(s -> taken.add(s.number()));
    }

    @Override
    public String toString() {
        return after == null ? "at the end" : "before step " + after.number();
    }

    /** Numbers that are free here and rise, the roundest first thought of; fewer than asked for where there are no more. */
    List<Integer> numbers(int count) {
        int low = before == null ? 0 : before.number();
        int high = after == null ? (low / GAP + count + 1) * GAP : after.number();
        List<Integer> result = new java.util.ArrayList<>();
        for (int i = 0; i < count; i++) {
            int number = free(low, high);
            if (number < 0) {
                break;
            }
            result.add(number);
            low = number;
        }
        return result;
    }

    /** The roundest free number between two others, the one nearest to their middle of several; or -1. */
    private int free(int low, int high) {
        for (int round : new int[] {GAP, GAP / 2, 1}) {
            int best = -1;
            for (int number = (low / round + 1) * round; number < high; number += round) {
                if (!taken.contains(number) && (best < 0 || Math.abs(2 * number - low - high) < Math.abs(2 * best - low - high))) {
                    best = number;
                }
            }
            if (best > 0) {
                return best;
            }
        }
        return -1;
    }

    /** The steps beside it. */
    List<RouteStep> beside() {
        return before == null ? after == null ? List.of() : List.of(after) : after == null ? List.of(before) : List.of(before, after);
    }

    /** What says which place it is. */
    List<Span> key() {
        return beside().stream().map(RouteStep::head).toList();
    }

    /** The place in another route that takes over the same text: behind the step before or before the step behind; or -1. */
    int index(Route route) {
        int index = before == null ? -1 : Takers.indexOf(route, before.head());
        return index >= 0 ? index + 1 : after == null ? -1 : Takers.indexOf(route, after.head());
    }

    /** A step of another route among whose like it is. */
    int among(Route route) {
        int index = before == null ? -1 : Takers.indexOf(route, before.head());
        return index >= 0 ? index : Takers.indexOf(route, after.head());
    }

    /** Whether both neighbours are written one behind the other. */
    private boolean inText() {
        if (before == null || after == null) {
            return before != after;
        }
        return Objects.equals(before.takenAt(), after.takenAt()) && before.whole().file() == after.head().file()
                && before.whole().end() <= after.head().start();
    }

    /** Whether a step is written in the same route as the neighbours. */
    boolean isWrittenWith(RouteStep step) {
        RouteStep beside = before != null ? before : after;
        return inText() && Objects.equals(beside.takenAt(), step.takenAt()) && beside.whole().file() == step.whole().file()
                && isAdded(step) == isAdded(beside);
    }

    /** What writes steps in the route that both neighbours are written in, or null where they are not. */
    Edit edit(List<String> steps) {
        if (!inText()) {
            return null;
        }
        String text = String.join(isAdded(beside().get(0)) ? "\n" + ADD + " " : "\n", steps);
        return before != null ? behind(before.head().start(), before.whole(), text) : ahead(after.head(), text);
    }

    /** What adds steps in the product's own route, which takes over another's; or null where it does not. */
    Edit added(List<String> steps, int number) {
        return written(ADD + " " + String.join("\n" + ADD + " ", steps), number);
    }

    /** What writes lines in the product's own route, which takes over another's; or null where it does not. */
    Edit written(String lines, int number) {
        Block.Item.Route own = house.written().get(product);
        return own == null || own.items().stream().anyMatch(RouteItem.Own.class::isInstance) ? null : added(own, lines, number);
    }

    /** In a route that takes over another's steps. */
    private static Edit added(Block.Item.Route own, String lines, int number) {
        Span last = null;
        for (RouteItem item : own.items()) {
            Step step = item instanceof RouteItem.Add add ? add.step() : item instanceof RouteItem.Change change ? change.step()
                    : item instanceof RouteItem.Omit omit ? omit.step() : null;
            // behind the line that leaves a step of this number out
            if (step != null && number(step) <= number) {
                last = new Span(item.span().file(), item.span().start(), Math.max(step.span().end(), step.block().span().end()));
            }
        }
        if (last != null) {
            return behind(last, lines);
        }
        int brace = own.span().file().text().indexOf('{', own.span().end());
        return brace < 0 ? null : behind(new Span(own.span().file(), own.span().start(), brace + 1), lines);
    }

    private static int number(Step step) {
        try {
            return Integer.parseInt(step.number().text());
        } catch (NumberFormatException tooLarge) {
            return Integer.MAX_VALUE;
        }
    }

    private static Edit behind(int start, Span whole, String text) {
        SourceFile file = whole.file();
        return behind(whole, (isAdded(file, start) ? ADD + " " : "") + text);
    }

    /** Behind what stands there, on lines of its own where nothing else follows. */
    private static Edit behind(Span whole, String text) {
        SourceFile file = whole.file();
        int line = file.line(Math.max(whole.start(), whole.end() - 1));
        int end = file.lineStart(line) + file.lineText(line).length();
        String rest = file.text().substring(whole.end(), Math.max(whole.end(), end)).strip();
        if (!rest.isEmpty() && !rest.startsWith("//")) {
            return new Edit(new Span(file, whole.end(), whole.end()), (file.text().charAt(whole.end() - 1) == '{' ? " " : "; ")
                    + text + (file.text().charAt(whole.end() - 1) == '{' ? ";" : ""));
        }
        String indent = indent(file, file.line(whole.start())) + (file.text().charAt(whole.end() - 1) == '{' ? "    " : "");
        return new Edit(new Span(file, end, end), lineEnd(file) + indented(text, indent, lineEnd(file)));
    }

    /** Before a step and the comments above it, or before it on its line where it is not the first there. */
    private static Edit ahead(Span head, String text) {
        SourceFile file = head.file();
        int line = head.line();
        boolean added = isAdded(file, head.start());
        String lead = file.text().substring(file.lineStart(line), head.start()).strip();
        String written = (added ? ADD + " " : "") + text;
        if (!lead.isEmpty() && !(added && lead.equals(ADD))) {
            int start = added ? file.text().lastIndexOf(ADD, head.start()) : head.start();
            return new Edit(new Span(file, start, start), written + "; ");
        }
        String indent = indent(file, line);
        while (line > 1 && file.lineText(line - 1).strip().startsWith("//")) {
            line--;
        }
        int start = file.lineStart(line);
        return new Edit(new Span(file, start, start), indented(written, indent, lineEnd(file)) + lineEnd(file));
    }

    /** Whether a route that takes over another's steps adds it. */
    static boolean isAdded(RouteStep step) {
        return isAdded(step.head().file(), step.head().start());
    }

    private static boolean isAdded(SourceFile file, int step) {
        return file.text().substring(Math.max(0, step - 12), step).matches("(?s).*\\b" + ADD + "\\s+");
    }

    private static String indent(SourceFile file, int line) {
        String text = file.lineText(line);
        return text.substring(0, text.length() - text.stripLeading().length());
    }

    private static String indented(String text, String indent, String lineEnd) {
        return indent + text.replace("\n", lineEnd + indent);
    }

    private static String lineEnd(SourceFile file) {
        return file.text().contains("\r\n") ? "\r\n" : "\n";
    }
}
