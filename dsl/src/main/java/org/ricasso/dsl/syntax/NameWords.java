package org.ricasso.dsl.syntax;

import org.antlr.v4.runtime.misc.IntervalSet;
import org.ricasso.dsl.syntax.grammar.SpecParser;

/** Kinds of token that can be a name: plain words, and words that lead a clause elsewhere. The grammar says which. */
final class NameWords {
    private static final IntervalSet TYPES =
            SpecParser._ATN.nextTokens(SpecParser._ATN.ruleToStartState[SpecParser.RULE_word]);

    private NameWords() {}

    static boolean has(int type) {
        return TYPES.contains(type);
    }
}
