package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Folder names are safe, different and lasting. */
class SlugsTest {
    @Test
    void aSafeNameIsKept() {
        assertThat(Slugs.of(List.of("AB-2120", "cooks-200"))).containsExactly("ab-2120", "cooks-200");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../etc/passwd", "C:\\temp", "con", "NUL", "", " ", ".", "a/b", "é", "刃物", "a b",
            "<script>", "a\u0000b", "İSTANBUL", "x.", "-", "0123456789012345678901234567890123456789012345678901234567"})
    void anOddNameBecomesASafeOne(String odd) {
        String slug = Slugs.slug(odd);
        assertThat(slug).matches("[a-z0-9]+(-[a-z0-9]+)*").hasSizeLessThan(64)
                .isNotIn("con", "nul", "prn", "aux");
        assertThat(Slugs.slug(odd)).isEqualTo(slug);
    }

    @Test
    void namesThatWouldMeetAreKeptApart() {
        assertThat(Slugs.of(List.of("AB-1", "ab-1", "AB 1", "AB-1"))).doesNotHaveDuplicates().hasSize(4);
        assertThat(Slugs.of(List.of("é", "è"))).doesNotHaveDuplicates();
    }

    @Test
    void aNameDoesNotDependOnItsNeighbours() {
        assertThat(Slugs.of(List.of("AB 1", "AB-2"))).isEqualTo(
                List.of(Slugs.of(List.of("AB 1")).get(0), Slugs.of(List.of("AB-2")).get(0)));
    }
}
