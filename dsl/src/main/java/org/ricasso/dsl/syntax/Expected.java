package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/** What could stand at a place, found by trying, and said as things a person knows rather than as tokens. */
final class Expected {
    /** The kinds that tell things apart; trying others would say nothing more. */
    private static final int[] TRIED = {SpecLexer.NUMBER, SpecLexer.STRING, SpecLexer.WORD, SpecLexer.KEY, SpecLexer.END,
        SpecLexer.COLON, SpecLexer.LBRACE, SpecLexer.RPAREN, SpecLexer.BAR, SpecLexer.OF, SpecLexer.AS, SpecLexer.TO,
        SpecLexer.LIKE, SpecLexer.THEN, SpecLexer.ELSE};
    private final BitSet types = new BitSet();
    private final Place place;

    /** Tries kinds of token behind the first {@code index} ones. */
    Expected(Place place, List<CommonToken> tokens, int index) {
        this.place = place;
        CommonToken here = tokens.get(index);
        List<CommonToken> trial = new ArrayList<>(tokens.subList(0, index));
        trial.add(here);
        trial.add(LineFilter.insert(here, Token.EOF, here.getStopIndex() + 1));
        for (int type : TRIED) {
            trial.set(index, LineFilter.insert(here, type, here.getStartIndex()));
            int fails = Attempt.failsAt(place, trial);
            if (fails == Attempt.FITS || fails > index) {
                types.set(type);
            }
        }
    }

    boolean has(int type) {
        return types.get(type);
    }

    boolean aValue() {
        return types.get(SpecLexer.NUMBER) && types.get(SpecLexer.STRING) && types.get(SpecLexer.WORD);
    }

    boolean aName() {
        return types.get(SpecLexer.WORD) && types.get(SpecLexer.KEY) && !types.get(SpecLexer.STRING);
    }

    /** The things, best first, at most three. */
    List<String> things() {
        List<String> things = new ArrayList<>();
        if (aValue()) {
            things.add("a value");
        } else if (aName()) {
            things.add(types.get(SpecLexer.NUMBER) ? "a name or a number" : "a name");
        } else if (types.get(SpecLexer.NUMBER)) {
            things.add("a number");
        } else if (types.get(SpecLexer.STRING)) {
            things.add("a text in quotes");
        } else if (types.get(SpecLexer.WORD) && !types.get(SpecLexer.END)) {
            things.add("a name");
        }
        add(things, SpecLexer.COLON, "`:`");
        add(things, SpecLexer.LBRACE, "`{`");
        add(things, SpecLexer.RPAREN, "`)`");
        add(things, SpecLexer.BAR, "`|`");
        if (!aName() && !aValue()) {
            add(things, SpecLexer.OF, "`of`");
            add(things, SpecLexer.AS, "`as`");
            add(things, SpecLexer.TO, "`to`");
        }
        if (things.isEmpty()) {
            add(things, SpecLexer.LIKE, "`like`");
        }
        add(things, SpecLexer.THEN, "`then`");
        add(things, SpecLexer.ELSE, "`else`");
        add(things, SpecLexer.END, end());
        return things.subList(0, Math.min(3, things.size()));
    }

    private String end() {
        return switch (place) {
            case HOLE -> "the hole's end";
            case VALUE -> "the text's end";
            default -> "the line's end";
        };
    }

    private void add(List<String> things, int type, String thing) {
        if (types.get(type)) {
            things.add(thing);
        }
    }
}
