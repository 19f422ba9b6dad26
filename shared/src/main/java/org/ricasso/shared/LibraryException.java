package org.ricasso.shared;

/** Libraries on the class path do not go together, or one of them is not whole. The message says what to do. */
public final class LibraryException extends IllegalStateException {
    private static final long serialVersionUID = 1;

    public LibraryException(String message) {
        super(message);
    }

    public LibraryException(String message, Throwable cause) {
        super(message, cause);
    }
}
