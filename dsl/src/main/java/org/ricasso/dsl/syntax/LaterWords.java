package org.ricasso.dsl.syntax;

import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/** Clauses that are kept for a later version: named as what they are, at their word. */
final class LaterWords {
    private LaterWords() {}

    /** A finding where the token that does not fit leads such a clause, else {@code null}. */
    static Diagnostic find(Spans spans, Place place, List<CommonToken> tokens, int index) {
        Token token = tokens.get(index);
        String what = null;
        String instead = null;
        int type = token.getType();
        if (index == 0 && place == Place.FILE) {
            switch (type) {
                case SpecLexer.FAMILY -> {
                    what = "a family of things";
                    instead = "write each thing, with `like` for what it takes over";
                }
                case SpecLexer.WORDS -> {
                    what = "translation with `words`";
                    instead = "write titles and texts where they are declared";
                }
                case SpecLexer.ROUTE -> {
                    what = "a route of its own";
                    instead = "write the route in the thing that it makes";
                }
                default -> { }
            }
        } else if (index == 0 && place == Place.ROUTE) {
            switch (type) {
                case SpecLexer.ADD, SpecLexer.CHANGE, SpecLexer.OMIT -> {
                    what = "changing a route that is taken over";
                    instead = "write all steps of the route";
                }
                case SpecLexer.REWORK -> {
                    what = "rework";
                    instead = "name it as the reaction of the measurement";
                }
                case SpecLexer.PART -> {
                    what = "a route of a part";
                    instead = "write the part's steps in the one route";
                }
                default -> { }
            }
        } else if (type == SpecLexer.REPLACES) {
            what = "replacing a declaration";
            instead = "give it a name of its own";
        } else if (type == SpecLexer.LIKE && place == Place.BLOCK) {
            what = "a route like another";
            instead = "write all steps of the route";
        } else if (place == Place.FIELDS && token.getText().equals("sized")) {
            what = "the mark `sized`";
            instead = "leave it out";
        }
        return what == null ? null : SyntaxFindings.notInThisVersion(spans.of(token), what, instead);
    }
}
