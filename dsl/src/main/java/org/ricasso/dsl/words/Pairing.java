package org.ricasso.dsl.words;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.syntax.Text;

/** A text and what is given for it in another language. */
record Pairing(Printed.Line line, Text given) {

    /** The phrase; null after a finding where its holes are not those of the text. */
    static Phrase phrase(Pairing pair, Findings findings) {
        List<String> holes = pair.line().holes();
        List<Phrase.Piece> pieces = new ArrayList<>();
        List<Text.Hole> strange = new ArrayList<>();
        Set<String> missing = new LinkedHashSet<>(holes);
        for (Text.Piece piece : pair.given().pieces()) {
            if (piece instanceof Text.Plain plain) {
                pieces.add(new Phrase.Piece(plain.text(), -1));
                continue;
            }
            Text.Hole hole = (Text.Hole) piece;
            String written = Lines.written(hole);
            int index = holes.indexOf(written);
            if (index < 0) {
                strange.add(hole);
            } else {
                pieces.add(new Phrase.Piece(written, index));
                missing.remove(written);
            }
        }
        if (strange.isEmpty() && missing.isEmpty()) {
            return new Phrase(pieces);
        }
        findings.add(WordsFindings.otherHoles(pair.given(), strange, List.copyOf(missing)));
        return null;
    }
}
