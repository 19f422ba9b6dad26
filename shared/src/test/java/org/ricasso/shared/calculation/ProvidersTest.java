package org.ricasso.shared.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ricasso.shared.LibraryException;
import org.ricasso.shared.quantity.Measure;

/** Calculations of several providers on one class path. */
class ProvidersTest {
    @TempDir
    Path folder;

    /** Offers a length. */
    public static class One implements Calculations {
        @Override
        public List<Calculation> calculations() {
            return List.of(Definition.define("length-for-test", "A length").rises("a", Measure.LENGTH, 0, 1)
                    .gives(Measure.LENGTH, "invented", a -> a[0]));
        }
    }

    /** Offers the same name. */
    public static final class Two extends One {}

    private URLClassLoader offering(String... classes) throws IOException {
        Path services = folder.resolve("META-INF/services/" + Calculations.class.getName());
        Files.createDirectories(services.getParent());
        Files.write(services, List.of(classes));
        return new URLClassLoader(new URL[] {folder.toUri().toURL()}, ProvidersTest.class.getClassLoader());
    }

    @Test
    void eachCalculationKnowsWhoBringsIt() throws IOException {
        try (URLClassLoader loader = offering(One.class.getName())) {
            assertThat(Calculations.all(loader).get("length-for-test").provider().type()).isEqualTo(One.class.getName());
            assertThat(Calculations.all(loader).get("length-for-test").provider().library()).isNotEmpty();
            assertThat(Calculations.all(loader).get("flank-thickness").provider())
                    .isEqualTo(new Calculation.Provider("", "org.ricasso.shared.geometry.BladeGeometry"));
        }
    }

    @Test
    void twoProvidersOfOneNameAreRefusedWithBothNames() throws IOException {
        try (URLClassLoader loader = offering(One.class.getName(), Two.class.getName())) {
            assertThatThrownBy(() -> Calculations.all(loader)).isInstanceOf(LibraryException.class)
                    .hasMessageContaining("the calculation length-for-test is offered twice, by " + One.class.getName())
                    .hasMessageContaining("and by " + Two.class.getName())
                    .hasMessageContaining("take one library out");
        }
    }

    @Test
    void aProviderThatIsNotThereIsRefusedWithItsName() throws IOException {
        try (URLClassLoader loader = offering("example.Gone")) {
            assertThatThrownBy(() -> Calculations.all(loader)).isInstanceOf(LibraryException.class)
                    .hasMessageContaining("a library's calculations cannot be used").hasMessageContaining("example.Gone");
        }
    }
}
