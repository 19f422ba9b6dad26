package org.ricasso.dsl.evaluate;

import java.util.List;
import java.util.Map;
import org.ricasso.shared.quantity.Measure;

/** What an entry, a setting, a property or an expression is, known before anything runs. */
public sealed interface Type {

    /** A number. {@code name} is the declared name of its dimension, for people. */
    record Measured(Measure measure, String name) implements Type {}

    /** A number that varies along an axis. */
    record AlongAxis(Measured element, Axis axis) implements Type {}

    /** One word of several. */
    record WordsOf(List<String> words) implements Type {
        public WordsOf {
            words = List.copyOf(words);
        }
    }

    /** A thing of a kind, or a block written in its place. */
    record ThingOf(String kind) implements Type {}

    record ListOf(Type element) implements Type {}

    /** A table's row. */
    record RowOf(String table, Map<String, Type> columns) implements Type {}

    /** The state before or after a step; {@code part} is null for the whole piece. */
    record StateOf(boolean after, String part) implements Type {}

    /** Types without further parts. */
    enum Plain implements Type {
        TEXT, DATE, LOGIC, RATE, CLOCK,
        /** The root {@code step}: its members are settings. */
        STEP,
        /** The root {@code operation}: its members are attributes. */
        OPERATION,
        /** A type that could not be made out; goes with everything, so that nothing is reported twice. */
        ANY
    }

    Type YES_NO = new WordsOf(List.of("yes", "no"));

    Measured NUMBER = new Measured(Measure.NUMBER, "number");

    /** The type for people, with its article. */
    static String describe(Type type) {
        if (type instanceof Measured measured) {
            return article(measured.name());
        }
        if (type instanceof AlongAxis along) {
            return article(along.element().name()) + " along " + along.axis().name();
        }
        if (type instanceof WordsOf words) {
            return words.equals(YES_NO) ? "yes or no" : "one of " + String.join(", ", words.words());
        }
        if (type instanceof ThingOf thing) {
            return article(thing.kind());
        }
        if (type instanceof ListOf list) {
            return "a list, each " + describe(list.element());
        }
        if (type instanceof RowOf row) {
            return "a row of table " + row.table();
        }
        if (type instanceof StateOf) {
            return "a state of the workpiece";
        }
        return switch ((Plain) type) {
            case TEXT -> "a text in quotes";
            case DATE -> "a date such as 2026-09-14";
            case LOGIC -> "a condition";
            case RATE -> "a rate such as 5 per load";
            case CLOCK -> "a clock";
            case STEP -> "a step";
            case OPERATION -> "an operation";
            case ANY -> "a value";
        };
    }

    private static String article(String noun) {
        return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
    }

    /** Whether a value of type {@code found} may stand where {@code asked} is wanted. */
    static boolean fits(Type asked, Type found) {
        if (asked == Plain.ANY || found == Plain.ANY) {
            return true;
        }
        if (asked instanceof Measured a && found instanceof Measured f) {
            return a.measure().accepts(f.measure());
        }
        if (asked instanceof AlongAxis a) {
            return found instanceof AlongAxis f ? fits(a.element(), f.element()) : fits(a.element(), found);
        }
        if (asked instanceof Measured && found instanceof AlongAxis f) {
            return fits(asked, f.element());
        }
        if (asked instanceof WordsOf a && found instanceof WordsOf f) {
            return a.words().containsAll(f.words()) || f.words().containsAll(a.words());
        }
        if (asked == Plain.LOGIC) {
            return found == Plain.LOGIC || found.equals(YES_NO);
        }
        if (asked.equals(YES_NO)) {
            return found == Plain.LOGIC;
        }
        if (asked instanceof ListOf a) {
            return found instanceof ListOf f ? fits(a.element(), f.element()) : fits(a.element(), found);
        }
        return asked.equals(found);
    }
}
