package org.ricasso.shared;

import java.net.URL;
import java.security.CodeSource;

/** What a library on the class path is called: its jar without the ending, or the module it was built in. */
public final class Library {
    private static final String BUILT = "/target/classes";

    private Library() {}

    /**
     * The name from the address of a resource.
     *
     * @param resource the resource's address
     * @param path its path inside the library
     */
    static String holding(URL resource, String path) {
        return named(holder(resource, path));
    }

    /** Whether a resource lies beside our classes: on a class path with others, ours need not come first. */
    static boolean isOurs(URL resource, String path) {
        String own = Library.class.getName().replace('.', '/') + ".class";
        URL here = Library.class.getResource("Library.class");
        return here != null && holder(here, own).equals(holder(resource, path));
    }

    private static String holder(URL resource, String path) {
        String address = resource.toString();
        return address.substring(0, Math.max(0, address.length() - path.length()));
    }

    /** The name of the library that brings a class; empty for ours and where nothing says it. */
    public static String bringing(Class<?> type) {
        CodeSource from = type.getProtectionDomain().getCodeSource();
        CodeSource ours = Library.class.getProtectionDomain().getCodeSource();
        if (from == null || from.getLocation() == null || ours != null && from.getLocation().equals(ours.getLocation())) {
            return "";
        }
        return named(from.getLocation().toString());
    }

    /** {@code jar:file:/…/works-1.jar!/} is works-1; {@code file:/…/works/target/classes/} is works; else library. */
    private static String named(String address) {
        String holder = address;
        while (holder.endsWith("/") || holder.endsWith("!")) {
            holder = holder.substring(0, holder.length() - 1);
        }
        boolean jar = holder.endsWith(".jar");
        if (!jar && !holder.endsWith(BUILT)) {
            return "library";
        }
        holder = holder.substring(0, holder.length() - (jar ? ".jar".length() : BUILT.length()));
        return holder.substring(holder.lastIndexOf('/') + 1);
    }
}
