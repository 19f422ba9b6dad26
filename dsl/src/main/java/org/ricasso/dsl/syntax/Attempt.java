package org.ricasso.dsl.syntax;

import java.util.List;
import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.misc.ParseCancellationException;
import org.ricasso.dsl.syntax.grammar.SpecParser;

/** One attempt to read tokens: the fast prediction, and out at the first token that does not fit. */
final class Attempt {
    /** What {@link #failsAt} says of tokens that fit. */
    static final int FITS = -1;

    private Attempt() {}

    static SpecParser parser(List<CommonToken> tokens) {
        SpecParser parser = new SpecParser(new CommonTokenStream(new ListTokenSource(tokens)));
        parser.removeErrorListeners();
        parser.setErrorHandler(new BailErrorStrategy());
        parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
        return parser;
    }

    /** The index of the first token that does not fit the place, or {@link #FITS}. */
    static int failsAt(Place place, List<CommonToken> tokens) {
        SpecParser parser = parser(tokens);
        parser.setBuildParseTree(false);
        try {
            place.read(parser);
            return FITS;
        } catch (ParseCancellationException failure) {
            return offending(failure).getTokenIndex();
        }
    }

    /** The token at which an attempt ended. */
    static Token offending(ParseCancellationException failure) {
        return ((RecognitionException) failure.getCause()).getOffendingToken();
    }
}
