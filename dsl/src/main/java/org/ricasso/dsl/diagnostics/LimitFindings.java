package org.ricasso.dsl.diagnostics;

import java.util.List;
import org.ricasso.dsl.source.Limits;
import org.ricasso.dsl.source.Span;

/** What is said where a text goes beyond a {@linkplain Limits limit}: the limit, and what to do instead. */
public final class LimitFindings {
    private LimitFindings() {}

    private static Diagnostic error(String name, Span span, String text, String remedy) {
        return Diagnostic.error(name, new Mark(span, text)).remedy(new Remedy(remedy, List.of()));
    }

    /** @param count how many there are, at least */
    public static Diagnostic fileTooLarge(Span span, long count, String what, int most) {
        return error("file-too-large", span, "this file holds " + count + " " + what + ", more than the " + most
                + " that are read", "part it into several files");
    }

    public static Diagnostic lineTooLong(Span span) {
        return error("line-too-long", span, "this goes on for more than " + Limits.LINE_WORDS
                + " words, numbers and signs", "give parts of it names of their own, or write a table");
    }

    public static Diagnostic numberTooLong(Span span) {
        return error("number-too-long", span, "this number has more than " + Limits.DIGITS + " digits",
                "round it, or take another unit");
    }

    public static Diagnostic tableTooLong(Span span, String table) {
        return error("table-too-long", span, "table " + table + " has more than " + Limits.TABLE_ROWS + " rows",
                "leave out rows that straight lines between their neighbours give as well, or part it by a key");
    }

    public static Diagnostic routeTooLong(Span span, int steps) {
        return error("route-too-long", span, "this route has " + steps + " steps with those of its parts, more than the "
                + Limits.ROUTE_STEPS + " that are walked", "part it among several products");
    }

    public static Diagnostic reworkTooLong(Span span) {
        return error("route-too-long", span, "with this loop, rework adds more than the " + Limits.REWORK_STEPS
                + " steps that are walked", "go back fewer steps or fewer times");
    }

    public static Diagnostic likeTooDeep(Span span, String what) {
        return error("like-too-deep", span, what + " takes over from more than " + Limits.LIKE
                + " others, one behind the other", "take over from one that is nearer to the beginning");
    }
}
