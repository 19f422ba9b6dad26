package org.ricasso.templates.page;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A whole set of pages in memory: relative path with forward slashes to the file's bytes (UTF-8, lines end with LF).
 * All of its links are relative and lead into the set.
 *
 * @param files the files in the order of their paths
 */
public record PageSet(SortedMap<String, byte[]> files) {
    public PageSet {
        files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
    }
}
