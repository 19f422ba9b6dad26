package org.ricasso.dsl.diagnostics;

/** How grave a finding is. */
public enum Severity {
    /** It cannot be made, or it can hurt somebody: the build fails. */
    ERROR,
    /** The shop would ask. */
    WARNING,
    /** Waste, or something worth knowing. */
    NOTE;

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
