package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/** One-token damage: at each token of a text, the token is taken away, another put before it, another put in its place. */
public final class TokenDamage {
    private static final String[] TOKENS = {"stray", "5", "\"text\"", ":", "{", "}", "(", ")", ",", ";", "|", "+", "=",
        "else", ".", "..", "mm", "at", "±", "2.5 mm", "if", "per", "like", "key"};

    /** A damaged text and what was done. */
    public record Damaged(SourceFile file, String what) {}

    private TokenDamage() {}

    /** The damaged texts, three for each token; {@code round} chooses among the tokens that are put in, so that rounds differ. */
    public static List<Damaged> of(SourceFile file, int round) {
        List<Damaged> result = new ArrayList<>();
        List<CommonToken> tokens = LineFilter.raw(file, 0, file.text().length());
        for (int i = 0; i < tokens.size(); i++) {
            CommonToken token = tokens.get(i);
            int start = token.getStartIndex();
            int end = token.getStopIndex() + 1;
            String shown = token.getType() == SpecLexer.NL ? "line's end" : token.getText();
            String where = " at " + file.name() + ":" + file.line(start) + ":" + file.column(start);
            result.add(damage(file, start, end, "", "without " + shown + where));
            String other = TOKENS[(i * 7 + round) % TOKENS.length];
            result.add(damage(file, start, start, other, other + " before " + shown + where));
            int choice = i * 5 + 3 + round;
            String another = TOKENS[choice % TOKENS.length];
            if (another.equals(token.getText())) {
                another = TOKENS[(choice + 1) % TOKENS.length];
            }
            result.add(damage(file, start, end, another, another + " for " + shown + where));
        }
        return result;
    }

    private static Damaged damage(SourceFile file, int start, int end, String replacement, String what) {
        String before = file.text().substring(0, start);
        String after = file.text().substring(end);
        boolean apart = !replacement.isEmpty();
        String text = before + (apart && !isBlank(file.text(), start - 1) ? " " : "") + replacement
                + (apart && !isBlank(file.text(), end) ? " " : "") + after;
        return new Damaged(new SourceFile(file.name(), text, false), what);
    }

    private static boolean isBlank(String text, int at) {
        return at < 0 || at >= text.length() || Character.isWhitespace(text.charAt(at));
    }
}
