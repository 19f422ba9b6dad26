package org.ricasso.dsl.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** Writes signs with blanks, line ends, comments and spellings as chance has it, wherever the language allows them. */
final class RandomWriter {
    private static final Set<String> ENDS_AFTER = Set.of("(", ",", "+", "-", "*", "/", ">=", "<=", ">", "<", "=", "and",
            "or", "not", "if", "then", "else", "per", "±", "..");
    private static final Set<String> ENDS_BEFORE = Set.of("else", "then", "and", "or", ")");
    private static final Set<String> TOUCHES = Set.of("(", ")", ":", "|", ".", "..");
    private static final Map<String, List<String>> SPELLINGS = Map.of("±", List.of("±", "+-", "+/-"), ">=", List.of(">=", "≥"),
            "<=", List.of("<=", "≤"), "*", List.of("*", "×"), "-", List.of("-", "\u2212"));
    private static final String[] BLANKS = {" ", " ", " ", "  ", "\t", "\u00A0", "      "};
    private static final String[] COMMENTS = {"// why", "//", "// a: 1 { ; \"", "//x   ", "// ± 5 °C, größer // zwei", "//// | "};

    private final Random random;
    private final StringBuilder out = new StringBuilder();
    private final List<String> comments = new ArrayList<>();
    private String last = "";
    private int flat;

    RandomWriter(Random random) {
        this.random = random;
    }

    String text() {
        return out.toString();
    }

    /** The comments in their order, without blanks at their ends. */
    List<String> comments() {
        return comments;
    }

    boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    /** Signs that follow each other on an entry's line, or on lines that go on. */
    void signs(String... signs) {
        for (String sign : signs) {
            boolean goesOn = ENDS_AFTER.contains(last) || !last.isEmpty() && ENDS_BEFORE.contains(sign);
            if (goesOn && flat == 0 && chance(6)) {
                lineEnd();
            } else if (!last.isEmpty() && !((TOUCHES.contains(last) || TOUCHES.contains(sign)) && chance(70))) {
                blanks();
            } else if (sign.equals("|") || last.equals(",")) {
                blanks();
            }
            out.append(spelt(sign));
            last = sign;
        }
    }

    /** A sign that touches the one before it. */
    void touching(String sign) {
        out.append(spelt(sign));
        last = sign;
    }

    private String spelt(String sign) {
        List<String> spellings = SPELLINGS.get(sign);
        return spellings == null ? sign : spellings.get(random.nextInt(spellings.size()));
    }

    /** A number; its sign may be the longer one. */
    void number(String digits) {
        signs(digits.startsWith("-") && chance(30) ? "\u2212" + digits.substring(1) : digits);
        last = digits;
    }

    private void blanks() {
        out.append(BLANKS[random.nextInt(BLANKS.length)]);
    }

    /** A line's end with whatever may stand there. */
    void lineEnd() {
        if (chance(15)) {
            blanks();
            comment();
        } else if (chance(10)) {
            blanks();
        }
        out.append('\n');
        while (chance(20)) {
            if (chance(50)) {
                indent();
                comment();
            }
            out.append('\n');
        }
        indent();
        last = "";
    }

    private void indent() {
        if (chance(80)) {
            out.append(" ".repeat(random.nextInt(13)));
        } else if (chance(50)) {
            out.append('\t');
        }
    }

    private void comment() {
        String comment = COMMENTS[random.nextInt(COMMENTS.length)];
        out.append(comment);
        comments.add(comment.stripTrailing());
    }

    /** What ends an entry. */
    void end() {
        if (flat > 0 || chance(15)) {
            if (chance(50)) {
                blanks();
            }
            out.append(';');
            last = ";";
        }
        if (flat == 0 && (!last.equals(";") || chance(70))) {
            lineEnd();
        } else {
            blanks();
            last = "";
        }
    }

    /** A line's end that must be one: the rows of a grid. */
    void newRow() {
        if (flat == 0) {
            lineEnd();
        } else {
            out.append('\n');
            last = "";
        }
    }

    /** A block; {@code items} write one item each. */
    void block(List<Runnable> items) {
        boolean onOneLine = chance(40);
        if (!out.isEmpty() && chance(90)) {
            blanks();
        }
        out.append('{');
        last = "";
        flat += onOneLine ? 1 : 0;
        if (flat == 0 && chance(90)) {
            lineEnd();
        } else if (chance(80)) {
            blanks();
        }
        for (int i = 0; i < items.size(); i++) {
            items.get(i).run();
            if (i + 1 < items.size() || chance(flat > 0 ? 10 : 60)) {
                end();
            }
        }
        if (flat == 0 && chance(80)) {
            lineEnd();
        } else {
            blanks();
        }
        flat -= onOneLine ? 1 : 0;
        out.append('}');
        last = "}";
    }
}
