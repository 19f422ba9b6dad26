package org.ricasso.plugin.publish;

import java.io.IOException;
import java.nio.file.Path;

/** A set of pages would replace something that is not one. */
public final class ForeignDirectoryException extends IOException {
    private static final long serialVersionUID = 1L;

    ForeignDirectoryException(Path directory) {
        super(directory + " holds something else than a published set (it has no file " + Checksums.NAME
                + "), so it is left as it is");
    }
}
