package org.ricasso.dsl.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.ricasso.dsl.format.Piece.Item;
import org.ricasso.dsl.format.Piece.Sign;
import org.ricasso.dsl.syntax.Lexeme.Kind;

/**
 * An item cut where its parts stand below those of its neighbours.
 *
 * @param shape which neighbours it goes with
 * @param cells its parts, at least one, all pieces of the item in their order
 * @param gap blanks between the last two cells
 */
record Cells(Shape shape, List<List<Piece>> cells, int gap) {
    /** Marks that say what a field is for, rather than what it may hold. */
    private static final Set<String> ROLES = Set.of("found", "key", "made", "starts");
    /** Words behind which a role's word is a name. */
    private static final Set<String> BEFORE_NAMES = Set.of("along", "as", "default", "of", "usual", "within");
    private static final int BEFORE_ROLE = 2;

    /** Items of one shape stand in common columns. */
    enum Shape {
        /** {@code name: value}, or a section on one line. */
        ENTRY,
        /** {@code let name: value} */
        LET,
        /** {@code 170 temper at temper-3 { … }} */
        STEP,
        /** {@code change 170 temper { … }} */
        CHANGED_STEP,
        /** Any other head with its block on one line. */
        HEAD,
        /** All else: it stands alone. */
        ALONE
    }

    /** What the items of a block are, as far as it matters. */
    enum Section {
        /** A whole text: its declarations stand alone. */
        TEXT(Set.of()),
        FIELDS(Set.of("columns", "kind", "part", "takes", "workpiece")),
        NEEDS(Set.of("needs")),
        OTHER(Set.of());

        private final Set<String> heads;

        Section(Set<String> heads) {
            this.heads = heads;
        }

        /** What stands in the block of an item. */
        static Section inside(Item item) {
            for (Section section : values()) {
                if (item.first().is(Kind.CLAUSE) && section.heads.contains(item.first().text())) {
                    return section;
                }
            }
            return OTHER;
        }
    }

    /** Cuts an item whose blocks all stand on one line. */
    static Cells of(Item item, Section section) {
        List<Piece> pieces = item.pieces();
        int colon = colon(pieces);
        if (section == Section.TEXT || item.isRow()) {
            return new Cells(Shape.ALONE, List.of(pieces), 1);
        }
        if (colon > 0) {
            return entry(pieces, colon, section);
        }
        int head = pieces.get(pieces.size() - 1) instanceof Piece.Block ? pieces.size() - 1 : pieces.size();
        int number = is(pieces, 0, Kind.NUMBER) ? 0 : is(pieces, 0, Kind.CLAUSE) && is(pieces, 1, Kind.NUMBER) ? 1 : -1;
        boolean named = number >= 0 && number + 1 < head && pieces.get(number + 1) instanceof Sign name
                && name.kind().isName();
        if (named && !(number == 1 && item.first().is("rework"))) {
            return step(pieces, number, head);
        }
        if (head == pieces.size()) {
            return new Cells(Shape.ALONE, List.of(pieces), 1);
        }
        boolean clause = head == 1 && item.first().is(Kind.CLAUSE);
        return cut(clause ? Shape.ENTRY : Shape.HEAD, pieces, List.of(head), 1);
    }

    private static Cells entry(List<Piece> pieces, int colon, Section section) {
        Shape shape = colon > 1 && is(pieces, 0, Kind.CLAUSE) && ((Sign) pieces.get(0)).is("let") ? Shape.LET
                : Shape.ENTRY;
        int value = colon + 1;
        if (value == pieces.size()) {
            return new Cells(shape, List.of(pieces), 1);
        }
        int second = section == Section.FIELDS ? role(pieces, value)
                : section == Section.NEEDS ? complaint(pieces, value) : -1;
        if (second < 0 || pieces.subList(1, second + 1).stream().anyMatch(Cells::breaks)) {
            return cut(shape, pieces, List.of(value), 1);
        }
        return cut(shape, pieces, List.of(value, second), section == Section.FIELDS ? BEFORE_ROLE : 1);
    }

    private static boolean breaks(Piece piece) {
        return !(piece instanceof Sign sign) || sign.newLine();
    }

    private static Cells step(List<Piece> pieces, int number, int head) {
        List<Integer> cuts = new ArrayList<>();
        for (int i = 1; i <= number + 2; i++) {
            cuts.add(i);
        }
        if (head > number + 2) {
            cuts.add(head);
        }
        cuts.removeIf(c -> c >= pieces.size());
        return cut(number == 0 ? Shape.STEP : Shape.CHANGED_STEP, pieces, cuts, 1);
    }

    private static Cells cut(Shape shape, List<Piece> pieces, List<Integer> at, int gap) {
        List<List<Piece>> cells = new ArrayList<>();
        int from = 0;
        for (int to : at) {
            cells.add(pieces.subList(from, to));
            from = to;
        }
        cells.add(pieces.subList(from, pieces.size()));
        return new Cells(shape, cells, gap);
    }

    /** The index of the colon behind an entry's name, or -1. */
    static int colon(List<Piece> pieces) {
        for (int i = 0; i < pieces.size(); i++) {
            if (!(pieces.get(i) instanceof Sign sign) || sign.is(Kind.OPEN_BRACKET) || sign.is(Kind.BAR)) {
                return -1;
            }
            if (sign.is(Kind.COLON)) {
                return i;
            }
        }
        return -1;
    }

    /** The index of the first mark that says what a field is for, or -1. */
    private static int role(List<Piece> pieces, int value) {
        int depth = 0;
        for (int i = value + 1; i < pieces.size(); i++) {
            if (!(pieces.get(i) instanceof Sign sign)) {
                return -1;
            }
            depth += sign.is(Kind.OPEN_BRACKET) ? 1 : sign.is(Kind.CLOSE_BRACKET) ? -1 : 0;
            boolean name = pieces.get(i - 1) instanceof Sign before && BEFORE_NAMES.contains(before.text());
            if (depth == 0 && sign.is(Kind.CLAUSE) && ROLES.contains(sign.text()) && !name) {
                return i;
            }
        }
        return -1;
    }

    /** The index of {@code else} before the text at a need's end, or -1. */
    private static int complaint(List<Piece> pieces, int value) {
        int at = pieces.size() - 2;
        return at > value && is(pieces, at, Kind.RESERVED) && ((Sign) pieces.get(at)).text().equals("else")
                && is(pieces, at + 1, Kind.TEXT) ? at : -1;
    }

    private static boolean is(List<Piece> pieces, int i, Kind kind) {
        return i < pieces.size() && pieces.get(i) instanceof Sign sign && sign.is(kind);
    }
}
