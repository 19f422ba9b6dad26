package org.ricasso.dsl.format;

import java.util.ArrayList;
import java.util.List;
import org.ricasso.dsl.format.Piece.Block;
import org.ricasso.dsl.format.Piece.Comment;
import org.ricasso.dsl.format.Piece.Entry;
import org.ricasso.dsl.format.Piece.Item;
import org.ricasso.dsl.format.Piece.Sign;
import org.ricasso.dsl.source.SourceFile;

/** Compares two texts sign by sign, spellings apart, and comment by comment. */
final class SameMeaning {
    private SameMeaning() {}

    /** @throws IllegalStateException if they say different things */
    static void require(SourceFile before, SourceFile after) {
        List<String> one = signs(before);
        List<String> other = signs(after);
        for (int i = 0; i < Math.max(one.size(), other.size()); i++) {
            String was = i < one.size() ? one.get(i) : "nothing";
            String is = i < other.size() ? other.get(i) : "nothing";
            if (!was.equals(is)) {
                throw new IllegalStateException("laid out, " + before.name() + " would say " + is + " instead of " + was
                        + " at its piece " + (i + 1));
            }
        }
    }

    private static List<String> signs(SourceFile file) {
        List<String> result = new ArrayList<>();
        block(BlockReader.read(file), result);
        return result;
    }

    private static void block(Block block, List<String> out) {
        add(block.comment(), out);
        for (Entry entry : block.entries()) {
            if (entry instanceof Item item) {
                item.pieces().forEach(piece -> piece(piece, out));
                out.add("an end");
                add(item.comment(), out);
            } else {
                piece(entry, out);
            }
        }
    }

    private static void piece(Piece piece, List<String> out) {
        if (piece instanceof Sign sign) {
            out.add('`' + sign.text() + '`');
        } else if (piece instanceof Comment comment) {
            out.add(comment.text());
        } else if (piece instanceof Block block) {
            out.add("`{`");
            block(block, out);
            out.add("`}`");
        }
    }

    private static void add(String comment, List<String> out) {
        if (comment != null) {
            out.add(comment);
        }
    }
}
