package org.ricasso.dsl.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Grid;

/** Values put over the rows of a table. */
class StationsTest {
    @Test
    void aTableOfWhichNoRowIsLeftKeepsItsPlace() {
        Span place = new Span(new SourceFile("a.ricasso", "| heel |", false), 0, 8);
        Findings findings = new Findings();
        Grid over = new Stations().over(new Grid(List.of(), List.of(), place), "spine-to", findings);
        assertThat(over.rows()).isEmpty();
        assertThat(over.span()).isEqualTo(place);
        assertThat(findings.all()).isEmpty();
    }
}
