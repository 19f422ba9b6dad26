package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.source.Limits;
import org.ricasso.dsl.source.Span;

/**
 * All that the syntax has to say. How it is said:
 *
 * <ul>
 *   <li>The mark's text is one statement that stands alone: what is there, in words of the trade and of the page, not
 *       of a compiler ("a value", "a name", "the line's end"; never a token's name). It blames nobody.
 *   <li>Lower case, no full stop, no exclamation mark; what is written in the text stands in backquotes, as written.
 *   <li>The remedy is what to do, as a request ("write `1.5`"). It carries an edit exactly where only one change can be
 *       meant, or where it offers one of two.
 *   <li>The mark is the smallest stretch that shows the cause; a second mark shows what it hangs together with.
 *   <li>A name says the fault, is two to four words with hyphens, and is never given another meaning.
 * </ul>
 */
final class SyntaxFindings {
    /** Findings that a line may owe to another line or to a habit: many of them in one block have one cause. */
    static final Set<String> OF_ONE_CAUSE = Set.of("not-expected", "equals-for-colon", "colon-missing",
            "step-number-missing");

    private SyntaxFindings() {}

    private static Diagnostic error(String name, Span span, String text) {
        return Diagnostic.error(name, new Mark(span, text));
    }

    private static Remedy advice(String text) {
        return new Remedy(text, List.of());
    }

    private static Remedy write(Span span, String replacement) {
        return new Remedy("write `" + replacement + "`", List.of(new Edit(span, replacement)));
    }

    // Numbers, names and signs

    static Diagnostic decimalComma(Span span) {
        String text = span.text();
        return error("decimal-comma", span, "a comma parts the values of a list; the decimal sign is a point")
                .remedy(write(span, text.replace(',', '.')))
                .remedy(new Remedy("for a list, write `" + text.replace(",", ", ") + "`",
                        List.of(new Edit(span, text.replace(",", ", ")))));
    }

    static Diagnostic exponent(Span span, String plain) {
        Diagnostic result = error("number-with-exponent", span, "numbers are written out, without an exponent");
        return plain == null ? result.remedy(advice("write the number out, or take a larger unit"))
                : result.remedy(write(span, plain));
    }

    static Diagnostic unitTouchesNumber(Span span, String number, String unit) {
        return error("unit-touches-number", span, "a blank stands between a number and its unit")
                .remedy(write(span, number + " " + unit));
    }

    static Diagnostic nameBeginsWithDigit(Span span) {
        return error("name-begins-with-digit", span, "`" + span.text() + "` is neither a number nor a name")
                .because("a name begins with a letter, as in `bar-30x6`; a number has a blank behind it");
    }

    static Diagnostic nameOrTemperature(Span span, String number, String scale) {
        return nameBeginsWithDigit(span).remedy(new Remedy("for a temperature, write `" + number + " °" + scale + "`",
                List.of(new Edit(span, number + " °" + scale))));
    }

    static Diagnostic signWithoutBlanks(Span span, boolean afterNumber) {
        String sign = span.text().substring(0, 1);
        String digits = span.text().substring(1);
        Diagnostic result = error("sign-without-blanks", span, "a sign that touches digits belongs to them: `"
                + span.text() + "` is a second number here");
        String apart = sign + " " + digits;
        boolean touches = span.start() > 0 && !Character.isWhitespace(span.file().text().charAt(span.start() - 1));
        result = result.remedy(new Remedy("to calculate, write `" + apart + "` with a blank on both sides",
                List.of(new Edit(span, touches ? " " + apart : apart))));
        return !afterNumber || !touches || sign.equals("+") ? result
                : result.remedy(new Remedy("for a range, write `.." + digits + "`",
                        List.of(new Edit(span, ".." + digits))));
    }

    static Diagnostic minusInName(Span span) {
        String text = span.text();
        int minus = text.lastIndexOf('-');
        return error("minus-in-name", span, "`" + text + "` is one name, since nothing parts the minus from the letters")
                .remedy(write(span, text.substring(0, minus) + " - " + text.substring(minus + 1)));
    }

    static Diagnostic unknownCharacter(Span span, String meant) {
        int c = span.text().codePointAt(0);
        String shown = Character.isISOControl(c) || Character.isWhitespace(c) ? "this character" : "`" + span.text() + "`";
        Diagnostic result = error("unknown-character", span, shown + " (" + String.format(java.util.Locale.ROOT, "U+%04X", c)
                + ") has no meaning outside a text in quotes");
        return meant == null ? result : result.remedy(write(span, meant));
    }

    static Diagnostic apostrophes(Span span) {
        return error("unknown-character", span, "`'` does not open a text").remedy(advice("put texts in `\"`"));
    }

    static Diagnostic inch(Span span) {
        return error("in-as-a-unit", span, "`in` asks whether a value is in a list; the unit is called `inch`")
                .remedy(write(span, "inch"));
    }

    static Diagnostic reservedWord(Span span, List<String> things) {
        return error("reserved-word", span, "`" + span.text() + "` is a word of the language and cannot stand for "
                + list(things));
    }

    static Diagnostic limitOfNoNumber(Span limit, Span next) {
        String sign = limit.text().equals("max") ? "<=" : ">=";
        return error("limit-of-no-number", limit, "behind `" + limit.text() + "` stands a number with its unit")
                .and(new Mark(next, "this is an expression"))
                .remedy(write(limit, sign));
    }

    // Texts

    static Diagnostic textNotClosed(Span span) {
        return error("text-not-closed", span, "this text has no closing `\"` on its line")
                .remedy(advice("close it with `\"`; a `\"` inside a text is written `\\\"`"));
    }

    static Diagnostic holeNotClosed(Span span) {
        return error("hole-not-closed", span, "this `{` has no `}` in its text")
                .remedy(advice("close it with `}`, or write `{{` for a brace"));
    }

    static Diagnostic holeEmpty(Span span) {
        return error("hole-empty", span, "nothing stands between these braces")
                .remedy(advice("write what is to be shown here, or `{{` for a brace"));
    }

    static Diagnostic unknownEscape(Span span) {
        return error("unknown-escape", span, "a `\\` in a text stands before `\"` or before another `\\`")
                .remedy(write(span, "\\" + span.text()));
    }

    // Braces and brackets

    static Diagnostic blockNotClosed(Span brace, boolean before, List<Span> others) {
        Diagnostic result = error("brace-missing", brace, "this block is not closed");
        for (int i = 0; i < others.size(); i++) {
            result = result.and(new Mark(others.get(i), before && i == 0
                    ? "`}` belongs before this line, by its indentation" : "nor is this one"));
        }
        return result.remedy(advice("close it with `}`"));
    }

    static Diagnostic braceNotClosed(Span brace, List<Span> where) {
        Diagnostic result = error("brace-missing", brace, "this block is not closed");
        for (Span span : where) {
            result = result.and(new Mark(span, "`}` belongs here"))
                    .remedy(new Remedy("close it with `}`", List.of(new Edit(span, " }"))));
        }
        return result;
    }

    static Diagnostic braceMissingAtLineEnd(Span end) {
        return error("brace-missing", end, "`{` is missing here, since the next line is indented deeper")
                .remedy(new Remedy("write ` {`", List.of(new Edit(end, " {"))));
    }

    static Diagnostic blockMissing(Span end) {
        return error("brace-missing", end, "this declaration has no block in braces")
                .remedy(advice("write `{`, the entries, `}`"));
    }

    static Diagnostic braceReplaced(Span span, String brace, Span partner) {
        Diagnostic result = error("brace-missing", span, "`" + brace + "` is expected here, not `" + span.text() + "`");
        return (partner == null ? result : result.and(new Mark(partner, "to close this block")))
                .remedy(write(span, brace));
    }

    static Diagnostic braceStray(Span brace) {
        return error("brace-stray", brace, brace.text().equals("}") ? "this `}` closes nothing"
                : "this `{` opens a block where none can stand")
                .remedy(new Remedy("take it away, or add its partner", List.of()));
    }

    static Diagnostic bracketMissing(Span open, Span here) {
        return error("bracket-missing", open, "this `(` is not closed").and(new Mark(here, "`)` belongs before this"));
    }

    static Diagnostic bracketStray(Span span) {
        return error("bracket-stray", span, "this `)` closes nothing")
                .remedy(new Remedy("take it away", List.of(new Edit(span, ""))));
    }

    static Diagnostic tooDeep(Span span, int limit) {
        return error("nested-too-deep", span, "brackets and operators hang more than " + limit
                + " deep into each other here").remedy(advice("give parts of it names of their own"));
    }

    // Entries and lines

    static Diagnostic colonMissing(Span end, String name) {
        return error("colon-missing", end, "`:` is missing between `" + name + "` and its value")
                .remedy(new Remedy("write `:`", List.of(new Edit(end, ":"))));
    }

    static Diagnostic equalsForColon(Span span) {
        return error("equals-for-colon", span, "between a name and its value stands `:`; `=` compares")
                .remedy(write(span, ":"));
    }

    static Diagnostic equalsTwice(Span span) {
        return error("equals-twice", span, "one `=` compares").remedy(new Remedy("take this one away",
                List.of(new Edit(span, ""))));
    }

    static Diagnostic colonBeforeBlock(Span colon, Span brace) {
        return error("colon-before-block", colon, "before the brace of a block stands no `:`")
                .and(new Mark(brace, "the block")).remedy(new Remedy("take it away", List.of(new Edit(colon, ""))));
    }

    static Diagnostic valueMissing(Span span, String behind) {
        return error("value-missing", span, "behind `" + behind + "` stands no value");
    }

    static Diagnostic valueMissingAtLineEnd(Span operator, Span next) {
        return error("value-missing", operator, "behind `" + operator.text() + "` stands no value")
                .and(new Mark(next, "this line is taken for what is missing"));
    }

    static Diagnostic outcomeMissing(Span span) {
        return error("outcome-missing", span, "an example says what comes out of it")
                .remedy(advice("write `example passes` or `example fails`"));
    }

    static Diagnostic sideBySide(Span end, Span next) {
        return error("semicolon-missing", next, "entries on one line are parted by `;`")
                .remedy(new Remedy("write `;` before it", List.of(new Edit(end, ";"))));
    }

    static Diagnostic stepNumberMissing(Span span) {
        return error("step-number-missing", span, "a step begins with its number")
                .remedy(advice("write a number between its neighbours' before `" + span.text() + "`"));
    }

    static Diagnostic stepNumberNotWhole(Name number) {
        return error("step-number", number.span(), "a step's number is a whole number without a sign");
    }

    static Diagnostic otherwiseMissing(Span end) {
        return error("otherwise-missing", end, "a need says behind `else` what happens otherwise")
                .remedy(advice("write `else \"…\"`"));
    }

    static Diagnostic productMissing(Span span) {
        return error("product-missing", span, "a workpiece says what is made of it")
                .remedy(advice("write `workpiece of`, the kind that has the route, `{`"));
    }

    static Diagnostic sectionUnknown(Span span, Place place, String sections) {
        return error("section-unknown", span, place.words() + " has no section `" + span.text() + "`")
                .remedy(advice("its sections are " + sections));
    }

    static Diagnostic sectionTwice(Span second, Span first) {
        return error("section-twice", second, "`" + second.text() + "` is written twice")
                .and(new Mark(first, "first here")).remedy(advice("put all lines into one"));
    }

    static Diagnostic headOfAnother(Span head, Place as, Place other) {
        return error("head-of-another", head, "this opens " + as.words() + ", but the lines in it are those of "
                + other.words());
    }

    // Grids

    static Diagnostic rowOfOtherLength(Span row, int cells, Span head, int columns) {
        return error("row-length", row, "this row has " + count(cells, "cell"))
                .and(new Mark(head, "the head has " + count(columns, "column")));
    }

    static Diagnostic headOfOtherLength(Span head, int columns, Span row, int cells) {
        return error("row-length", head, "this head has " + count(columns, "column"))
                .and(new Mark(row, "each row has " + count(cells, "cell")));
    }

    static Diagnostic gridNotHere(Name name) {
        return error("grid-not-here", name.span(), "a table takes rows in its entry `rows` alone");
    }

    // All else

    static Diagnostic notExpected(Span span, List<String> things, String found) {
        String text = things.isEmpty() ? found + " cannot stand here" : list(things) + " is expected here, not " + found;
        return error("not-expected", span, text);
    }

    static Diagnostic lineGoesOn(Diagnostic finding, Span operator) {
        return finding.and(new Mark(operator, "the line goes on behind this"));
    }

    /** Whether two findings say the same of different places. */
    static boolean sameFault(Diagnostic a, Diagnostic b) {
        return a.name().equals(b.name()) && (!a.name().equals("not-expected")
                || a.primary().text().split(", not ")[0].equals(b.primary().text().split(", not ")[0]));
    }

    static Diagnostic alsoOthers(Diagnostic finding, int more) {
        return finding.also(more + " more lines beside it do not fit either");
    }

    static Diagnostic alsoHeads(Diagnostic finding, int more) {
        return more == 0 ? finding : finding.also("so it is with " + more + " more beside it");
    }

    /** The first findings of a text, in order; the last of them says how many there are more. */
    static List<Diagnostic> first(List<Diagnostic> findings) {
        int more = findings.size() - Limits.SYNTAX_FINDINGS;
        if (more <= 0) {
            return findings;
        }
        List<Diagnostic> result = new ArrayList<>(findings.subList(0, Limits.SYNTAX_FINDINGS));
        Diagnostic last = result.remove(result.size() - 1);
        result.add(last.also(count(more, "further finding") + " in this file " + (more == 1 ? "is" : "are") + " not told"));
        return result;
    }

    private static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    private static String list(List<String> things) {
        int last = things.size() - 1;
        return last <= 0 ? String.join("", things)
                : String.join(", ", things.subList(0, last)) + " or " + things.get(last);
    }
}
