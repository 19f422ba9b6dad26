package org.ricasso.dsl.syntax;

import java.util.function.Consumer;
import org.ricasso.dsl.syntax.grammar.SpecParser;

/** Where a line stands: what it may be, and what the lines inside its braces may be. */
enum Place {
    FILE("the text", SpecParser::declarationAlone),
    BLOCK("a block", SpecParser::itemAlone),
    ROUTE("a route", SpecParser::routeItemAlone),
    FIELDS("a list of fields", SpecParser::fieldAlone),
    PIECE("a workpiece", SpecParser::pieceItemAlone),
    OPERATION("an operation", SpecParser::operationItemAlone),
    NEEDS("`needs`", SpecParser::needAlone),
    LEAVES("`leaves`", SpecParser::effectAlone),
    TEXTS("`instruct`", SpecParser::textAlone),
    VALUES("a list of values", SpecParser::valueEntryAlone),
    TABLE("a table", SpecParser::tableItemAlone),
    RULE("a rule", SpecParser::ruleItemAlone),
    EXAMPLE("an example", SpecParser::bindingAlone),
    WORDS("`words`", SpecParser::wordsItemAlone),
    WORDS_PART("words for a declaration", SpecParser::wordsLineAlone),
    /** A text that is one value: a cell, an expression to calculate. */
    VALUE("a value", SpecParser::valueAlone),
    /** A hole of a text. */
    HOLE("a hole", SpecParser::hole);

    private final String words;
    private final Consumer<SpecParser> reading;

    Place(String words, Consumer<SpecParser> reading) {
        this.words = words;
        this.reading = reading;
    }

    /** What it is, for people. */
    String words() {
        return words;
    }

    void read(SpecParser parser) {
        reading.accept(parser);
    }

    /** What a block is whose head begins with the token, or {@code null} where no block may stand. */
    Place inside(int firstToken) {
        return switch (this) {
            case FILE -> declaration(firstToken);
            case BLOCK -> firstToken == SpecParser.ROUTE ? ROUTE : BLOCK;
            case ROUTE -> BLOCK;
            case PIECE -> firstToken == SpecParser.PART ? FIELDS : null;
            case OPERATION -> section(firstToken);
            case TABLE -> firstToken == SpecParser.COLUMNS ? FIELDS : null;
            case RULE -> firstToken == SpecParser.REMEDY ? VALUES : firstToken == SpecParser.EXAMPLE ? EXAMPLE : null;
            case WORDS -> WORDS_PART;
            case WORDS_PART -> firstToken == SpecParser.INSTRUCT ? TEXTS : null;
            default -> null;
        };
    }

    private static Place declaration(int firstToken) {
        return switch (firstToken) {
            case SpecParser.KIND -> FIELDS;
            case SpecParser.WORKPIECE -> PIECE;
            case SpecParser.OPERATION -> OPERATION;
            case SpecParser.TABLE -> TABLE;
            case SpecParser.RULE -> RULE;
            case SpecParser.ROUTE -> ROUTE;
            case SpecParser.WORDS -> WORDS;
            case SpecParser.WORD, SpecParser.FAMILY -> BLOCK;
            default -> null;
        };
    }

    private static Place section(int firstToken) {
        return switch (firstToken) {
            case SpecParser.TAKES -> FIELDS;
            case SpecParser.NEEDS -> NEEDS;
            case SpecParser.LEAVES -> LEAVES;
            case SpecParser.TIME -> VALUES;
            case SpecParser.INSTRUCT -> TEXTS;
            default -> null;
        };
    }
}
