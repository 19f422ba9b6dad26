package org.ricasso.dsl.syntax;

import java.math.BigDecimal;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.antlr.v4.runtime.Token;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.grammar.SpecLexer;

/** Mistakes that show in a token itself, whatever stands around it. */
final class TokenMistakes {
    private static final Pattern EXPONENT = Pattern.compile("([+\\-\u2212]?\\d+(?:\\.\\d+)?)[eE]([+\\-]?\\d{1,2})");
    private static final Pattern WITH_UNIT = Pattern.compile("([+\\-\u2212]?\\d+(?:\\.\\d+)?)([^\\d]+?(?:\\^\\d)?[²³]?)");
    /** Signs that look like another or say the same elsewhere. */
    private static final Map<Integer, String> MEANT = Map.ofEntries(
            Map.entry((int) '“', "\""), Map.entry((int) '”', "\""), Map.entry((int) '„', "\""),
            Map.entry((int) '«', "\""), Map.entry((int) '»', "\""), Map.entry((int) '–', "-"),
            Map.entry((int) '—', "-"), Map.entry((int) '…', ".."), Map.entry(0xBA, "°"), Map.entry(0x2DA, "°"),
            Map.entry((int) '；', ";"), Map.entry((int) '：', ":"), Map.entry((int) '，', ","),
            Map.entry((int) '÷', "/"), Map.entry((int) '∙', "*"), Map.entry((int) '#', "//"),
            Map.entry((int) '[', "("), Map.entry((int) ']', ")"), Map.entry((int) '&', "and"),
            Map.entry((int) '!', "not"));

    private TokenMistakes() {}

    /** What is wrong with the token itself, or {@code null}. */
    static Diagnostic find(Token token, Span span) {
        return switch (token.getType()) {
            case SpecLexer.COMMA_NUMBER -> SyntaxFindings.decimalComma(span);
            case SpecLexer.BAD_STRING -> SyntaxFindings.textNotClosed(span);
            case SpecLexer.DIGIT_WORD -> digitWord(span);
            case SpecLexer.STRANGE -> span.text().equals("'") || span.text().equals("‘") || span.text().equals("’")
                    ? SyntaxFindings.apostrophes(span)
                    : SyntaxFindings.unknownCharacter(span, MEANT.get(span.text().codePointAt(0)));
            default -> null;
        };
    }

    private static Diagnostic digitWord(Span span) {
        Matcher exponent = EXPONENT.matcher(span.text());
        if (exponent.matches()) {
            int power = Integer.parseInt(exponent.group(2));
            String plain = Math.abs(power) > 6 ? null
                    : new BigDecimal(exponent.group(1).replace('\u2212', '-')).scaleByPowerOfTen(power).toPlainString();
            return SyntaxFindings.exponent(span, plain);
        }
        Matcher unit = WITH_UNIT.matcher(span.text());
        if (unit.matches() && (unit.group(2).equals("C") || unit.group(2).equals("F"))) {
            return SyntaxFindings.nameOrTemperature(span, unit.group(1), unit.group(2));
        }
        return unit.matches() ? SyntaxFindings.unitTouchesNumber(span, unit.group(1), unit.group(2))
                : SyntaxFindings.nameBeginsWithDigit(span);
    }
}
