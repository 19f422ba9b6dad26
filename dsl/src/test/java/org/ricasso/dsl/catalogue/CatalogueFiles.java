package org.ricasso.dsl.catalogue;

import java.nio.file.Path;

/** Where the texts of catalogue and cases stand, seen from the module. */
final class CatalogueFiles {
    private static final Path PACKAGE = Path.of("org", "ricasso", "dsl", "catalogue");
    /** The catalogue itself. */
    static final Path FOLDER = Path.of("src", "main", "resources").resolve(PACKAGE);
    /** Cases of what is no finding. */
    static final Path CASES = Path.of("src", "test", "resources").resolve(PACKAGE).resolve("cases");

    private CatalogueFiles() {}
}
