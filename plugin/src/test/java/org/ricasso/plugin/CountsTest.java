package org.ricasso.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CountsTest {
    @Test
    void speaksInWords() {
        assertThat(new Counts(1, 0, 0).words()).isEqualTo("1 error");
        assertThat(new Counts(2, 1, 0).words()).isEqualTo("2 errors and 1 warning");
        assertThat(new Counts(2, 3, 1).words()).isEqualTo("2 errors, 3 warnings and 1 note");
        assertThat(new Counts(0, 0, 0).words()).isEqualTo("nothing found against them");
    }
}
