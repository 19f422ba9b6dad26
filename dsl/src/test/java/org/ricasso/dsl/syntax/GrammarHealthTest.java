package org.ricasso.dsl.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.antlr.v4.runtime.BaseErrorListener;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Recognizer;
import org.antlr.v4.runtime.atn.ATNConfigSet;
import org.antlr.v4.runtime.atn.DecisionInfo;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.dfa.DFA;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.grammar.SpecParser;

/** Over all good texts of the repository the grammar is never of two minds and never looks far ahead. */
class GrammarHealthTest {

    private static List<CommonToken> tokens(SourceFile file) {
        return LineFilter.filter(LineFilter.raw(file, 0, file.text().length()), file.text().length());
    }

    @Test
    void noAmbiguityNoFullContextAndLittleLookAhead() {
        List<String> reports = new ArrayList<>();
        long most = 0;
        int texts = 0;
        for (SourceFile file : Samples.repository()) {
            SpecParser parser = new SpecParser(new CommonTokenStream(new ListTokenSource(tokens(file))));
            parser.removeErrorListeners();
            parser.addErrorListener(new Reports(file.name(), reports));
            parser.getInterpreter().setPredictionMode(PredictionMode.LL_EXACT_AMBIG_DETECTION);
            parser.setProfile(true);
            parser.file();
            for (DecisionInfo decision : parser.getParseInfo().getDecisionInfo()) {
                most = Math.max(most, Math.max(decision.SLL_MaxLook, decision.LL_MaxLook));
            }
            texts++;
        }
        System.out.println("grammar over " + texts + " texts: look-ahead at most " + most);
        assertThat(reports).isEmpty();
        assertThat(most).isBetween(1L, 3L);
    }

    /** The fast first reading does for every good text: reading line by line is for damaged ones. */
    @Test
    void goodTextsAreReadAtOnce() {
        for (SourceFile file : Samples.repository()) {
            Attempt.parser(tokens(file)).file();
        }
    }

    private static final class Reports extends BaseErrorListener {
        private final String file;
        private final List<String> reports;

        Reports(String file, List<String> reports) {
            this.file = file;
            this.reports = reports;
        }

        @Override
        public void syntaxError(Recognizer<?, ?> recognizer, Object symbol, int line, int column, String message,
                RecognitionException e) {
            reports.add(file + ": " + message);
        }

        @Override
        public void reportAmbiguity(Parser recognizer, DFA dfa, int start, int stop, boolean exact, BitSet alternatives,
                ATNConfigSet configs) {
            report("ambiguity", recognizer, dfa, start, stop);
        }

        @Override
        public void reportAttemptingFullContext(Parser recognizer, DFA dfa, int start, int stop, BitSet alternatives,
                ATNConfigSet configs) {
            report("full context", recognizer, dfa, start, stop);
        }

        private void report(String what, Parser recognizer, DFA dfa, int start, int stop) {
            reports.add(file + ": " + what + " in " + recognizer.getRuleNames()[dfa.atnStartState.ruleIndex] + " at "
                    + recognizer.getTokenStream().getText(
                            recognizer.getTokenStream().get(start), recognizer.getTokenStream().get(stop)));
        }
    }
}
